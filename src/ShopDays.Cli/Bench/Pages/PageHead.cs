namespace ShopDays.Cli.Bench.Pages;

/// <summary>What stands on every page beside what it is about.</summary>
/// <param name="Shop">The shop's name; empty while it is not known.</param>
/// <param name="Who">Who looks at it.</param>
/// <param name="Workers">Who works in the shop.</param>
/// <param name="Said">What was just done, or why not; null for nothing.</param>
/// <param name="Note">A further sentence: what could not be planned, or that it is being worked out anew.</param>
public sealed record PageHead(string Shop, string Who, IReadOnlyList<string> Workers, Said? Said, IReadOnlyList<string> Note)
{
    /// <summary>When what the page shows was worked out, where that is not now; null where it is.</summary>
    public string? WorkedOutAt { get; init; }
}

/// <summary>What was just done, or why nothing was.</summary>
/// <param name="Words">A sentence.</param>
/// <param name="IsRefusal">Whether nothing was done.</param>
public sealed record Said(string Words, bool IsRefusal);
