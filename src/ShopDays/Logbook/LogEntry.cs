using ShopDays.Measures;

namespace ShopDays.Logbook;

/// <summary>One stretch of work as it was logged. A task that went over several sessions has several.</summary>
public sealed record LogEntry
{
    /// <summary>Its number in the log; 0 before it is there.</summary>
    public EntryId Id { get; init; }

    /// <summary>The job, by the name of its file without ending; null for work timed by itself.</summary>
    public string? Job { get; init; }

    /// <summary>The task by its name in the job; for work timed by itself the operation's name.</summary>
    public required string Task { get; init; }

    /// <summary>What was done; null for a task that no operation times.</summary>
    public LoggedWork? Work { get; init; }

    /// <summary>Time at the task, from start to end less what was paused; above zero.</summary>
    public required WorkTime Took { get; init; }

    /// <summary>When.</summary>
    public required WorkedOn On { get; init; }

    /// <summary>Who.</summary>
    public required string Worker { get; init; }

    /// <summary>Whether the task was finished with it.</summary>
    public required bool Finished { get; init; }

    /// <summary>What went wrong, if anything did.</summary>
    public Setback Setback { get; init; }

    /// <summary>Remarks.</summary>
    public string Note { get; init; } = "";

    /// <summary>Where the maker stopped and what comes first next time, for whoever goes on; may be empty.</summary>
    public string Stopped { get; init; } = "";

    /// <summary>What the maker said of it when it looked odd.</summary>
    public Standing Standing { get; init; }
}
