using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Logbook;

/// <summary>All the work of a log that something can be learned from, and all that nothing can, with the reason.</summary>
/// <param name="Timed">Work and its times, in the order in which it was begun.</param>
/// <param name="LeftOut">The rest; every entry stands in one of the two.</param>
public sealed record WorkTimed(IReadOnlyList<TimedWork> Timed, IReadOnlyList<LeftOut> LeftOut)
{
    /// <summary>
    /// Puts the entries of each task together. A task goes over as many entries as it takes until one finishes it: its time
    /// is theirs together and its quantity is the finishing one's. One that is not finished yet counts with the quantity
    /// that its entries have so far, where each says it of the same operation and method. Work timed by itself is whole in
    /// each entry.
    /// </summary>
    /// <param name="entries">The log, in any order; they are taken by <see cref="WorkOrder"/>.</param>
    /// <param name="catalogue">The operations as they are known now.</param>
    public static WorkTimed Of(IEnumerable<LogEntry> entries, OperationCatalogue catalogue)
    {
        var rounds = new List<List<LogEntry>>();
        var open = new Dictionary<(string Job, string Task), List<LogEntry>>();
        foreach (var entry in WorkOrder.Of(entries))
        {
            if (entry.Job is not { } job)
            {
                rounds.Add([entry]);
                continue;
            }

            if (!open.TryGetValue((job, entry.Task), out var round))
            {
                round = [];
                rounds.Add(round);
                open.Add((job, entry.Task), round);
            }

            round.Add(entry);
            if (entry.Finished)
            {
                open.Remove((job, entry.Task));
            }
        }

        var timed = new List<TimedWork>();
        var leftOut = new List<LeftOut>();
        foreach (var round in rounds)
        {
            if (Reason(round, catalogue, out var timing) is { } reason)
            {
                leftOut.Add(new(round, reason));
            }
            else
            {
                timed.Add(Together(round, timing!));
            }
        }

        return new(timed, leftOut);
    }

    private static LeftOutReason? Reason(List<LogEntry> round, OperationCatalogue catalogue, out TaskTiming.ByOperation? timing)
    {
        var last = round[^1];
        timing = null;
        if (round.Any(entry => entry.Standing == Standing.Unusual))
        {
            return LeftOutReason.MarkedUnusual;
        }

        var isWhole = last.Finished || last.Job is null;
        if (!isWhole && !round.All(entry => entry.Work is { } work && work.IsLike(last.Work)))
        {
            return LeftOutReason.NotFinished;
        }

        if (last.Work is null)
        {
            return LeftOutReason.NoOperation;
        }

        if (!round.TrueForAll(entry => entry.Work is not { IsPossible: false } && LoggedWork.IsMeasure(entry.Took.Minutes)))
        {
            return LeftOutReason.ImpossibleFigures;
        }

        timing = last.Work.In(catalogue);
        if (timing is not null && !isWhole)
        {
            timing = timing with
            {
                Quantity = round.Sum(entry => entry.Work!.Quantity),
                Setups = round.Sum(entry => entry.Work!.Setups),
                Besides = round.Aggregate(WorkTime.Zero, (sum, entry) => sum + entry.Work!.Besides),
            };
        }

        return timing is null ? LeftOutReason.UnknownOperation : null;
    }

    private static TimedWork Together(List<LogEntry> round, TaskTiming.ByOperation timing)
    {
        var last = round[^1];
        return new()
        {
            Timing = timing,
            Took = round.Aggregate(WorkTime.Zero, (sum, entry) => sum + entry.Took),
            On = round.Max(entry => entry.On.Date),
            Worker = round.GroupBy(entry => entry.Worker, StringComparer.Ordinal).MaxBy(one => one.Sum(entry => entry.Took.Minutes))!.Key,
            Job = last.Job,
            Task = last.Task,
            IsKept = round.All(entry => entry.Standing == Standing.Kept),
            Entries = [.. round.Select(entry => entry.Id)],
        };
    }
}
