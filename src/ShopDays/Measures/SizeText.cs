namespace ShopDays.Measures;

/// <summary>Reads and writes sizes: <c>8' x 9 1/2" x 5/4</c>, <c>1206 mm × 240 mm × 32 mm</c>.</summary>
public static class SizeText
{
    private const string Expected = "length x width x thickness, such as 42\" x 17\" x 7/8\"";
    private static readonly string[] Measures = ["length", "width", "thickness"];

    /// <summary>Reads a size: length, width and thickness in this order, between them <c>x</c>, <c>×</c> or <c>by</c>.</summary>
    /// <param name="text">The three lengths, each above zero and each with its own unit.</param>
    /// <param name="bareUnit">The unit of a number without one; a unit further along does not reach back.</param>
    /// <param name="roughThickness">Whether a thickness such as 5/4 is quarters of an inch (<see cref="LengthText.ReadRoughThickness"/>).</param>
    public static TextResult<Size> Read(string text, LengthUnit bareUnit, bool roughThickness)
    {
        var pieces = Split(text);
        if (string.IsNullOrWhiteSpace(text))
        {
            return TextResult<Size>.Failed(0, "nothing is written here", Expected);
        }

        Span<Length> lengths = stackalloc Length[3];
        for (var i = 0; i < Math.Min(pieces.Count, 3); i++)
        {
            (var start, var end) = pieces[i];
            var piece = text[start..end];
            var offset = start + piece.Length - piece.TrimStart().Length;
            if (string.IsNullOrWhiteSpace(piece))
            {
                return TextResult<Size>.Failed(offset, $"the {Measures[i]} is missing", Expected);
            }

            var read = i == 2 && roughThickness ? LengthText.ReadRoughThickness(piece, bareUnit) : LengthText.Read(piece, bareUnit);
            if (!read.IsRead)
            {
                return TextResult<Size>.Failed(read.Fault with { Offset = start + read.Fault.Offset });
            }

            if (read.Value == Length.Zero)
            {
                return TextResult<Size>.Failed(offset, $"the {Measures[i]} {QuotedText.Of(piece)} is zero", "a size above zero, such as 42\" x 17\" x 7/8\"");
            }

            lengths[i] = read.Value;
        }

        return pieces.Count switch
        {
            3 => TextResult<Size>.Read(new Size(lengths[0], lengths[1], lengths[2])),
            < 3 => TextResult<Size>.Failed(text.Length, $"{QuotedText.Of(text)} has no {Measures[pieces.Count]}", Expected),
            _ => TextResult<Size>.Failed(pieces[3].Start, $"{QuotedText.Of(text[pieces[3].Start..])} follows the thickness", Expected),
        };
    }

    /// <summary>A size as text, each of the three rounded by the format.</summary>
    public static string Write(Size size, LengthFormat format) =>
        $"{format.Write(size.Length)} x {format.Write(size.Width)} x {format.Write(size.Thickness)}";

    private static List<(int Start, int End)> Split(string text)
    {
        List<(int Start, int End)> pieces = [];
        var start = 0;
        for (var i = 0; i < text.Length; i++)
        {
            var separator = SeparatorAt(text, i);
            if (separator > 0)
            {
                pieces.Add((start, i));
                start = i + separator;
                i = start - 1;
            }
        }

        pieces.Add((start, text.Length));
        return pieces;
    }

    /// <summary>How long the separator is that begins here, 0 for none. An x inside a word parts nothing.</summary>
    private static int SeparatorAt(string text, int at)
    {
        var followsLetter = at > 0 && char.IsLetter(text[at - 1]);
        return text[at] switch
        {
            '×' => 1,
            'x' or 'X' => followsLetter && IsLetterAt(text, at + 1) ? 0 : 1,
            'b' or 'B' => !followsLetter && at + 1 < text.Length && text[at + 1] is 'y' or 'Y' && !IsLetterAt(text, at + 2) ? 2 : 0,
            _ => 0,
        };
    }

    private static bool IsLetterAt(string text, int at) => at < text.Length && char.IsLetter(text[at]);
}
