namespace ShopDays.Cli.Paper.Setting;

/// <summary>What a drawing is to who has the file read out.</summary>
public abstract record Meaning
{
    private protected Meaning()
    {
    }

    /// <summary>Lines for a pencil and the like: nothing is read out.</summary>
    public static Meaning None { get; } = new ForTheEye();

    /// <summary>Its words are read out, in the order in which they are drawn.</summary>
    public static Meaning Words { get; } = new OfWords();

    /// <summary>A picture.</summary>
    /// <param name="words">What it shows, for who cannot see it.</param>
    /// <exception cref="ArgumentException">There are no words.</exception>
    public static Meaning Picture(string words)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(words);
        return new Pictured(words);
    }

    /// <summary>A heading.</summary>
    /// <param name="rank">How far in it stands: 0 names the whole, 1 a section, 2 a part of one.</param>
    public static Meaning Heading(int rank) => new Headed(rank);

    internal abstract void Draw(Surface page, Box box, Action draw);

    private sealed record ForTheEye : Meaning
    {
        internal override void Draw(Surface page, Box box, Action draw) => page.Unread(draw);
    }

    private sealed record OfWords : Meaning
    {
        internal override void Draw(Surface page, Box box, Action draw) => page.As(new(Tag.Paragraph), draw);
    }

    private sealed record Pictured(string Alternative) : Meaning
    {
        internal override void Draw(Surface page, Box box, Action draw) =>
            page.As(new(Tag.Figure) { Alternative = Alternative, Place = box }, draw);
    }

    private sealed record Headed(int Rank) : Meaning
    {
        internal override void Draw(Surface page, Box box, Action draw) => page.As(new(Tag.Heading) { Rank = Rank }, draw);
    }
}
