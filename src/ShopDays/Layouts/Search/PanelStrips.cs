namespace ShopDays.Layouts.Search;

/// <summary>How freely panels are split into strips: from the fewest that some board gives, up to a few more.</summary>
/// <param name="More">How many more strips than the fewest are tried.</param>
/// <param name="Always">Whether a panel that some board gives in one piece is tried in strips too.</param>
internal sealed record PanelStrips(int More, bool Always)
{
    private readonly HashSet<(string Part, int Number)> split = [];

    /// <summary>The usual: in one piece where a board is wide enough.</summary>
    public static PanelStrips Usual() => new(3, Always: false);

    /// <summary>For when timber is short: narrow strips out of what lies beside other parts are better than another board.</summary>
    public static PanelStrips WhenShort() => new(6, Always: true);

    /// <summary>Lets a panel be split although a board would give it in one piece; false when it was let before.</summary>
    public bool Let(string part, int number) => split.Add((part, number));

    /// <summary>How many more strips than the fewest are tried.</summary>
    public int MoreThanFewest(Want want, int fewest) =>
        want.Part.IsPanel && (fewest > 1 || Always || want.Numbers.Any(number => split.Contains((want.Part.Name, number)))) ? More : 0;
}
