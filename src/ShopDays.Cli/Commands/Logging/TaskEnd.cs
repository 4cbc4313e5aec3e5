using NodaTime;
using ShopDays.Cli.Store;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>What is said when a begun task is ended, by whatever way it is said.</summary>
internal sealed record TaskEnd
{
    /// <summary>Nobody works longer at one task in one go: a longer time was left running overnight (common practice, no source).</summary>
    public static readonly WorkTime LongestStretch = WorkTime.FromHours(12);

    /// <summary>Less than this is a slip of the hand, not work.</summary>
    public static readonly WorkTime ShortestStretch = WorkTime.FromMinutes(0.5);

    /// <summary>Whether it is finished; otherwise it goes on another day.</summary>
    public required bool Finished { get; init; }

    /// <summary>How much of it was done; null where that is not said.</summary>
    public double? Quantity { get; init; }

    /// <summary>How long it took; null where the clock is believed.</summary>
    public WorkTime? Took { get; init; }

    /// <summary>The date; null where that follows from the moment.</summary>
    public LocalDate? On { get; init; }

    /// <summary>What went wrong.</summary>
    public Setback Setback { get; init; }

    /// <summary>Remarks.</summary>
    public string Note { get; init; } = "";

    /// <summary>Where it was stopped; null where nothing is said of it, and what was said when it was laid aside stays.</summary>
    public string? Stopped { get; init; }

    /// <summary>Whether the clock can be believed: neither a slip of the hand nor left running overnight.</summary>
    public static bool CanBe(WorkTime time) => time >= ShortestStretch && time <= LongestStretch;

    /// <summary>The entry.</summary>
    /// <param name="work">The task.</param>
    /// <param name="now">The moment.</param>
    /// <param name="zone">The zone of the shop's clock.</param>
    public LogEntry EntryOf(BegunWork work, Instant now, DateTimeZone zone) => new()
    {
        Job = work.Job,
        Task = work.Task,
        Work = new LoggableTask(work.Task, work.Work).Done(Finished, Quantity),
        Took = Took ?? work.TookBy(now),
        On = When(work, now, zone),
        Worker = work.Worker,
        Finished = Finished,
        Setback = Setback,
        Note = Note,
        // Of a task that is done, where it was paused matters to nobody any more.
        Stopped = Stopped ?? (Finished ? "" : work.Stopped),
    };

    /// <summary>A time that is said for a task begun on another day was not spent up to now: only its date is known.</summary>
    private WorkedOn When(BegunWork work, Instant now, DateTimeZone zone)
    {
        var ended = WorkedOn.At(work.PausedAt ?? now, zone);
        var begun = WorkedOn.At(work.Began, zone).Date;
        return On switch
        {
            { } date => date == ended.Date ? ended : new(date),
            null when Took is not null && begun < ended.Date => new(begun),
            _ => ended,
        };
    }
}
