using NodaTime;
using ShopDays.Logbook;
using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>Answers of <c>shopdays log</c> for other programs.</summary>
internal static class LogJson
{
    /// <summary>Some entries.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="zone">The shop's zone.</param>
    /// <param name="all">How many there are in all.</param>
    public static object Of(IReadOnlyList<LogEntry> entries, DateTimeZone zone, int all) => new
    {
        Entries = entries.Select(entry => Of(entry, zone)),
        All = all,
    };

    /// <summary>Entries that were just logged.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="zone">The shop's zone.</param>
    /// <param name="odd">The numbers of the entries whose times look odd.</param>
    public static object Logged(IReadOnlyList<LogEntry> entries, DateTimeZone zone, IReadOnlyList<long> odd) => new
    {
        Entries = entries.Select(entry => Of(entry, zone)),
        All = entries.Count,
        Odd = odd,
    };

    /// <summary>One entry.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="zone">The shop's zone.</param>
    /// <param name="odd">Where it was just logged, the numbers of the entries whose times look odd with it; else null.</param>
    public static object Of(LogEntry entry, DateTimeZone zone, IReadOnlyList<long>? odd = null) => new
    {
        entry.Id.Number,
        entry.Job,
        entry.Task,
        TookMinutes = JsonAnswer.Minutes(entry.Took),
        Date = JsonAnswer.Date(entry.On.Date),
        Ended = JsonAnswer.Time(entry.On.Ended?.InZone(zone)),
        entry.Worker,
        entry.Finished,
        entry.Setback,
        entry.Standing,
        entry.Note,
        entry.Stopped,
        Odd = odd,
        Work = entry.Work is not { } work ? null : new
        {
            work.Operation,
            work.Method,
            work.Unit,
            work.Quantity,
            work.Setups,
            BesidesMinutes = JsonAnswer.Minutes(work.Besides),
            work.Run,
            work.Batch,
            work.Factor,
            ThicknessInches = Property(work, Covariate.Thickness),
            HardnessPoundsForce = Property(work, Covariate.Hardness),
            DepthInches = Property(work, Covariate.Depth),
            WidthInches = Property(work, Covariate.Width),
        },
    };

    /// <summary>An entry and what became of it.</summary>
    /// <param name="entry">The entry; null for one that is deleted.</param>
    /// <param name="trace">What was done, when, why, and the entry as it was.</param>
    /// <param name="zone">The shop's zone.</param>
    public static object Of(LogEntry? entry, IReadOnlyList<(string What, Instant At, string Why, LogEntry Before)> trace, DateTimeZone zone) => new
    {
        Entry = entry is null ? null : Of(entry, zone),
        Trace = trace.Select(line => new { line.What, At = JsonAnswer.Time(line.At.InZone(zone)), line.Why, Before = Of(line.Before, zone) }),
    };

    /// <summary>A change: what was and what is.</summary>
    public static object Changed(LogEntry before, LogEntry after, DateTimeZone zone) => new { Before = Of(before, zone), After = Of(after, zone) };

    private static double? Property(LoggedWork work, Covariate covariate) => work.Covariates.TryGetValue(covariate, out var value) ? value : null;
}
