namespace ShopDays.Measures;

/// <summary>What a maker typed, as it is shown in a message: in quotes, on one line, clipped.</summary>
public static class QuotedText
{
    /// <summary>The most characters that are shown between the quotes.</summary>
    public const int Limit = 40;

    /// <summary>
    /// The text in single quotes. Beyond <see cref="Limit"/> characters it ends in an ellipsis; control characters
    /// become spaces, so that a message stays one line and cannot drive a terminal.
    /// </summary>
    public static string Of(string text)
    {
        var shown = text.Trim();
        if (shown.Length > Limit)
        {
            var kept = char.IsHighSurrogate(shown[Limit - 2]) ? Limit - 2 : Limit - 1;
            shown = string.Concat(shown.AsSpan(0, kept), "…");
        }

        return "'" + string.Create(shown.Length, shown, static (target, source) =>
        {
            for (var i = 0; i < source.Length; i++)
            {
                target[i] = char.IsControl(source[i]) ? ' ' : source[i];
            }
        }) + "'";
    }
}
