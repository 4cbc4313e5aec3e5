namespace ShopDays.Cli.Bench.Pages;

/// <summary>A page of the log.</summary>
public sealed record LogListing
{
    /// <summary>The entries, the newest first.</summary>
    public required IReadOnlyList<Link> Entries { get; init; }

    /// <summary>How many there are in all, in words.</summary>
    public required string Count { get; init; }

    /// <summary>The way to newer ones; null on the first page.</summary>
    public required Link? Newer { get; init; }

    /// <summary>The way to older ones; null on the last page.</summary>
    public required Link? Older { get; init; }

    /// <summary>The jobs whose sheets can be entered.</summary>
    public required IReadOnlyList<Link> Sheets { get; init; }
}

/// <summary>An entry, to be looked at and put right.</summary>
public sealed record EntrySheet
{
    /// <summary>Its number.</summary>
    public required long Number { get; init; }

    /// <summary>The whole in a line.</summary>
    public required string Whole { get; init; }

    /// <summary>How long it took, as it is typed.</summary>
    public required string Took { get; init; }

    /// <summary>The date, ISO 8601.</summary>
    public required string Date { get; init; }

    /// <summary>The latest date that can be given, ISO 8601.</summary>
    public required string Today { get; init; }

    /// <summary>Who.</summary>
    public required string Who { get; init; }

    /// <summary>Whether it finished its task.</summary>
    public required bool IsFinished { get; init; }

    /// <summary>Whether whether it finished its task can be changed: not of work timed by itself.</summary>
    public required bool IsOfAJob { get; init; }

    /// <summary>What went wrong, by its word.</summary>
    public required string Setback { get; init; }

    /// <summary>The remark.</summary>
    public required string Note { get; init; }

    /// <summary>Where it was stopped.</summary>
    public required string Stopped { get; init; }

    /// <summary>Why it looks odd; empty where it does not.</summary>
    public required string Odd { get; init; }

    /// <summary>What became of it since it was written, oldest first.</summary>
    public required IReadOnlyList<string> Trace { get; init; }

    /// <summary>Whether it was deleted: it can be put back.</summary>
    public required bool IsDeleted { get; init; }
}

/// <summary>A job's tasks, to be entered from a pencilled sheet or afterwards.</summary>
/// <param name="Job">The job's name in the log.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Today">The date, ISO 8601.</param>
/// <param name="Days">The tasks by the date for which they are planned.</param>
/// <param name="Others">The tasks that are not planned: those that are done, to which time may be added.</param>
public sealed record PencilSheet(string Job, string Title, string Today, IReadOnlyList<PencilDay> Days, IReadOnlyList<PencilTask> Others);

/// <summary>The tasks that are planned for a date.</summary>
/// <param name="Date">The date.</param>
/// <param name="Tasks">The tasks.</param>
public sealed record PencilDay(string Date, IReadOnlyList<PencilTask> Tasks);

/// <summary>A task on a pencilled sheet.</summary>
/// <param name="Mark">Its mark, by which its field is called.</param>
/// <param name="Name">Its name.</param>
/// <param name="Expected">How long it is expected to take; empty where it is done.</param>
public sealed record PencilTask(string Mark, string Name, string Expected);
