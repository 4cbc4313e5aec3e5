namespace ShopDays.Measures;

/// <summary>A place in the text of a measure, from which its pieces are read one after the other.</summary>
/// <param name="text">The whole text.</param>
/// <param name="expected">What the text should be, with an example, for faults that have nothing better to say.</param>
internal sealed class TextCursor(string text, string expected)
{
    public string Text => text;

    public string Expected => expected;

    public int Position { get; set; }

    public bool IsAtEnd => Position >= text.Length;

    /// <summary>The character here, or NUL at the end.</summary>
    public char Current => Ahead(0);

    public char Ahead(int count) => Position + count < text.Length ? text[Position + count] : '\0';

    public void SkipSpaces()
    {
        while (!IsAtEnd && char.IsWhiteSpace(Current))
        {
            Position++;
        }
    }

    public bool TrySkip(char wanted)
    {
        if (Current != wanted || IsAtEnd)
        {
            return false;
        }

        Position++;
        return true;
    }

    /// <summary>The letters from here on; empty when there are none.</summary>
    public string ReadWord()
    {
        var start = Position;
        while (char.IsLetter(Current))
        {
            Position++;
        }

        return text[start..Position];
    }

    /// <summary>The ASCII digits from here on; empty when there are none.</summary>
    public string ReadDigits()
    {
        var start = Position;
        while (char.IsAsciiDigit(Current))
        {
            Position++;
        }

        return text[start..Position];
    }

    /// <summary>The characters from <paramref name="start"/> to the next space, for quoting.</summary>
    public string PieceAt(int start)
    {
        var end = start;
        while (end < text.Length && !char.IsWhiteSpace(text[end]))
        {
            end++;
        }

        return text[start..end];
    }

    /// <summary>A fault when something other than spaces is left.</summary>
    public TextFault? RequireEnd()
    {
        SkipSpaces();
        return IsAtEnd ? null : Fault(Position, $"{QuotedText.Of(text[Position..])} is left over");
    }

    public TextFault Fault(int offset, string what) => new(offset, what, expected);
}
