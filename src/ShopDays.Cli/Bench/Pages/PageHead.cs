namespace ShopDays.Cli.Bench.Pages;

/// <summary>What stands on every page beside what it is about.</summary>
/// <param name="Shop">The shop's name; empty while it is not known.</param>
/// <param name="Who">Who looks at it.</param>
/// <param name="Workers">Who works in the shop.</param>
/// <param name="Said">What was just done; null for nothing.</param>
/// <param name="Note">A further sentence: what could not be planned, or that it is being worked out anew.</param>
public sealed record PageHead(string Shop, string Who, IReadOnlyList<string> Workers, string? Said, IReadOnlyList<string> Note)
{
    /// <summary>When what the page shows was worked out, where that is not now; null where it is.</summary>
    public string? WorkedOutAt { get; init; }
}
