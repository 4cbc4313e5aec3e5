namespace ShopDays.Cli.Bench.Pages;

/// <summary>How a job stands, in words.</summary>
public sealed record JobSheet
{
    /// <summary>All jobs in hand.</summary>
    public required IReadOnlyList<Link> Jobs { get; init; }

    /// <summary>What it is called.</summary>
    public required string Title { get; init; }

    /// <summary>The whole at one glance.</summary>
    public required string Glance { get; init; }

    /// <summary>Where the maker stopped; empty where nothing is noted that still holds.</summary>
    public required string Stopped { get; init; }

    /// <summary>When it may be finished, beside what was promised.</summary>
    public required TextTable Dates { get; init; }

    /// <summary>The chance that it is finished by its date; empty without a date.</summary>
    public required string Chance { get; init; }

    /// <summary>On which dates the drawn courses are finished.</summary>
    public required IReadOnlyList<CourseBar> Courses { get; init; }

    /// <summary>The hours: promised, spent, to come.</summary>
    public required TextTable Hours { get; init; }

    /// <summary>How far the finish moved, in a sentence; empty while that is being worked out, or cannot be said.</summary>
    public required string Moved { get; init; }

    /// <summary>Why it moved: by how much, and what it was.</summary>
    public required IReadOnlyList<string> Why { get; init; }

    /// <summary>What decides the finish most.</summary>
    public required IReadOnlyList<string> Deciding { get; init; }

    /// <summary>What else is to be known.</summary>
    public required IReadOnlyList<string> Notes { get; init; }

    /// <summary>Its parts and boards.</summary>
    public required IReadOnlyList<Link> Pieces { get; init; }

    /// <summary>Its paper.</summary>
    public required Link Paper { get; init; }
}

/// <summary>How many of the drawn courses are finished on a date or in some weeks.</summary>
/// <param name="When">When.</param>
/// <param name="Share">The share of all courses, 0 to 1.</param>
/// <param name="Words">The share in words, with what else falls on the date.</param>
public sealed record CourseBar(string When, double Share, string Words);
