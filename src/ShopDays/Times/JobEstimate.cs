using NodaTime;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>The hands-on time of all tasks of one operation by one method.</summary>
/// <param name="Operation">The operation; for a free task its name.</param>
/// <param name="Method">The method; <c>guess</c> for a free task.</param>
/// <param name="Quantity">How much in all, in the unit.</param>
/// <param name="Unit">The trade's unit.</param>
/// <param name="Tasks">How many tasks.</param>
/// <param name="Time">The range of their sum.</param>
public sealed record OperationTime(string Operation, string Method, double Quantity, string Unit, int Tasks, TimeRange Time);

/// <summary>What pieces that may be spoiled add to a job's hands-on time.</summary>
/// <param name="Pieces">Pieces, glue-ups and coats that are spoiled in a course, on average.</param>
/// <param name="ChanceOfNone">The share of courses in which nothing is, 0 to 1.</param>
/// <param name="Mean">Time to come as far again, on average.</param>
/// <param name="AddsToPromise">What it adds to the time that four courses in five keep; zero or more.</param>
public sealed record SpoilingTime(double Pieces, double ChanceOfNone, WorkTime Mean, WorkTime AddsToPromise)
{
    /// <summary>Takes it out of drawn courses.</summary>
    internal static SpoilingTime Of(TimeDraws draws)
    {
        var (all, without) = (draws.OfAll(), (draws with { Reworks = null }).OfAll());
        return new(
            draws.Reworks!.Average(trial => trial.Length),
            draws.Reworks!.Average(trial => trial.Length == 0 ? 1.0 : 0),
            all.Mean - without.Mean,
            all.P80 - without.P80);
    }
}

/// <summary>How long a job takes.</summary>
public sealed record JobEstimate
{
    /// <summary>The range of all hands-on time.</summary>
    public required TimeRange HandsOn { get; init; }

    /// <summary>The range of the heavy part of it.</summary>
    public required TimeRange Heavy { get; init; }

    /// <summary>What may be spoiled, in <see cref="HandsOn"/>; null where nothing may be.</summary>
    public SpoilingTime? Spoiling { get; init; }

    /// <summary>By operation and method, what is done again left out, in the order in which they first come.</summary>
    public required IReadOnlyList<OperationTime> Operations { get; init; }

    /// <summary>How many tasks there are.</summary>
    public required int Tasks { get; init; }

    /// <summary>How many edges are honed as part of the work.</summary>
    public int EdgesHoned { get; init; }

    /// <summary>What of the hands-on time goes into honing, by the catalogue.</summary>
    public WorkTime Honing { get; init; }

    /// <summary>All waits added up as if none overlapped, glue and coats at the temperature of the tables; for others, what is likely.</summary>
    public required Duration Waits { get; init; }

    /// <summary>The same in the shop's nights; null in a heated shop, and where nothing sets.</summary>
    public NightWaits? InNights { get; init; }

    /// <summary>The seed of the draws.</summary>
    public required int Seed { get; init; }

    /// <summary>How many courses of the job were drawn.</summary>
    public required int Draws { get; init; }

    /// <summary>Adds up a job's tasks.</summary>
    /// <param name="graph">The tasks.</param>
    /// <param name="draws">Drawn courses of them.</param>
    /// <param name="start">When the job begins; null where nights do not matter.</param>
    public static JobEstimate Of(TaskGraph graph, TimeDraws draws, ZonedDateTime? start = null) => new()
    {
        HandsOn = draws.OfAll(),
        Heavy = draws.OfSum([.. graph.Tasks.Where(task => task.WorkClass == WorkClass.Heavy).Select(task => task.Id)]),
        Spoiling = draws.Reworks is null ? null : SpoilingTime.Of(draws),
        Operations = [.. graph.Tasks.GroupBy(task => task.SetupKey).Select(group => Add([.. group], draws))],
        Tasks = graph.Tasks.Count,
        EdgesHoned = graph.Tasks.Sum(task => task.Honed is { } honed ? honed.AtATime * honed.Times : 0),
        Honing = graph.Tasks.Aggregate(WorkTime.Zero, (sum, task) => sum + (task.Honed?.Time ?? WorkTime.Zero)),
        Waits = WaitsOf(graph, wait => wait.Duration),
        InNights = start is { } from ? NightWaits.Of(graph, from, waits => WaitsOf(graph, waits)) : null,
        Seed = draws.Seed,
        Draws = draws.Trials,
    };

    private static OperationTime Add(IReadOnlyList<ShopTask> tasks, TimeDraws draws)
    {
        var time = draws.OfSum([.. tasks.Select(task => task.Id)]);
        return tasks[0].Timing is TaskTiming.ByOperation first
            ? new(first.Operation.Name, first.Method.Name, tasks.Sum(task => ((TaskTiming.ByOperation)task.Timing).Quantity), first.Operation.Unit.Name, tasks.Count, time)
            : new(tasks[0].Name, "guess", tasks.Count, "task", tasks.Count, time);
    }

    // What was asked for on a date, or dries since one, runs beside whatever the job does: how much of it is left the plan tells.
    private static Duration WaitsOf(TaskGraph graph, Func<Wait, Duration> length) =>
        graph.Precedences
            .Where(one => one.Wait is not null)
            .Select(one => (one.Before, Wait: one.Wait!))
            .Concat(graph.ClosingWaits.Select(one => (Before: one.After, one.Wait)))
            .Distinct()
            .Select(one => length(one.Wait))
            .Concat(graph.Awaited.Where(one => one is { HasCome: false, Decision.Asked: null }).Select(one => one.Wait.Likely))
            .Aggregate(Duration.Zero, (sum, one) => sum + one);
}
