using NodaTime;
using ShopDays.Work;

namespace ShopDays.Logbook;

/// <summary>A run of pieces that was done, and how many of them were spoiled.</summary>
/// <param name="Timing">What was done.</param>
/// <param name="On">The date of the last of its entries.</param>
/// <param name="Spoiled">Entries of it that say that a piece was spoiled, one for each of them; no more than there were pieces.</param>
/// <param name="EarlierPass">Whether the pieces were gone on with in a later pass, which counts them: only those count here that were spoiled, and did not come so far.</param>
public sealed record SpoiledRun(TaskTiming.ByOperation Timing, LocalDate On, int Spoiled, bool EarlierPass = false)
{
    /// <summary>How many pieces, cuts or joints: at least 1, but for an earlier pass none where none was spoiled.</summary>
    public int Pieces { get; } = EarlierPass ? Spoiled : Timing.Run;

    /// <summary>
    /// The runs of a log: all that was timed, and what was marked as unusual, since a day on which a piece is spoiled is
    /// that. Nothing else is left out, for a spoiled piece counts whatever time it took.
    /// </summary>
    /// <param name="work">The log put together.</param>
    /// <param name="entries">Its entries.</param>
    /// <param name="catalogue">The operations as they are known now.</param>
    public static IReadOnlyList<SpoiledRun> Of(WorkTimed work, IReadOnlyList<LogEntry> entries, OperationCatalogue catalogue)
    {
        var spoiled = entries.Where(entry => entry.Setback == Setback.Spoiled).Select(entry => entry.Id).ToHashSet();
        return
        [
            .. work.Timed.Select(one => Run(one.Timing, one.Task, one.On, one.Entries.Count(spoiled.Contains))),
            .. work.LeftOut
                .Where(one => one.Reason == LeftOutReason.MarkedUnusual && one.Entries[^1].Work is { IsPossible: true })
                .Select(one => (Timing: one.Entries[^1].Work!.In(catalogue), one.Entries))
                .Where(one => one.Timing is not null)
                .Select(one => Run(one.Timing!, one.Entries[^1].Task, one.Entries.Max(entry => entry.On.Date), one.Entries.Count(entry => spoiled.Contains(entry.Id)))),
        ];

        static SpoiledRun Run(TaskTiming.ByOperation timing, string task, LocalDate on, int spoiled) => new(timing, on, Math.Min(spoiled, timing.Run), LongMoves.IsEarlierPass(task, timing));
    }
}
