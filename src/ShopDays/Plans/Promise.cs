using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>What a plan gave hope of on a day: kept, so that it can be said later how things went against it.</summary>
public sealed record Promise
{
    /// <summary>The job, by the name of its file without ending.</summary>
    public required string Job { get; init; }

    /// <summary>When it was made.</summary>
    public required Instant Made { get; init; }

    /// <summary>From when the rest of the job was planned, work of it being done; null when the whole was planned, from its start.</summary>
    public Instant? RestFrom { get; init; }

    /// <summary>The last entry that the log held when it was made, number 0 for none; null where that is not known.</summary>
    public EntryId? LastEntry { get; init; }

    /// <summary>When the plan would finish if all went as expected.</summary>
    public required Instant Planned { get; init; }

    /// <summary>When half of the trials were finished; null when not within the years looked at.</summary>
    public required Instant? P50 { get; init; }

    /// <summary>When four trials in five were finished: the date that was promised; null when not within the years looked at.</summary>
    public required Instant? P80 { get; init; }

    /// <summary>When nine trials in ten were finished; null when not within the years looked at.</summary>
    public required Instant? P90 { get; init; }

    /// <summary>The chance of the due date as it was then, 0 to 1; null without one.</summary>
    public required double? ChanceOfDue { get; init; }

    /// <summary>The range of all hands-on time.</summary>
    public required TimeRange HandsOn { get; init; }

    /// <summary>The tasks, in their order then.</summary>
    public required IReadOnlyList<PromisedTask> Tasks { get; init; }

    /// <summary>What a plan promises.</summary>
    /// <param name="job">The job, by the name of its file.</param>
    /// <param name="made">When.</param>
    /// <param name="planned">The plan and its forecast.</param>
    /// <param name="graph">Its tasks.</param>
    /// <param name="model">The rates that it was planned with.</param>
    /// <param name="handsOn">The range of all its hands-on time.</param>
    public static Promise Of(string job, Instant made, PlanAnswer.Planned planned, TaskGraph graph, RateModel model, TimeRange handsOn) => new()
    {
        Job = job,
        Made = made,
        Planned = planned.Plan.Finish.ToInstant(),
        P50 = planned.Forecast.P50?.ToInstant(),
        P80 = planned.Forecast.P80?.ToInstant(),
        P90 = planned.Forecast.P90?.ToInstant(),
        ChanceOfDue = planned.Forecast.ChanceOfDue,
        HandsOn = handsOn,
        Tasks = [.. graph.Tasks.Zip(WholeMinutes.Of(graph, model), TaskOf)],
    };

    /// <summary>
    /// What a plan of the rest of a job promises. It is a promise of the whole job all the same: what is done counts with the
    /// time that it took, what is begun with that and what is left of it.
    /// </summary>
    /// <param name="job">The job, by the name of its file.</param>
    /// <param name="made">When.</param>
    /// <param name="planned">The plan of what is left and its forecast.</param>
    /// <param name="standing">How far its tasks have come.</param>
    /// <param name="left">What is left of them.</param>
    /// <param name="model">The rates that it was planned with.</param>
    /// <param name="draws">Drawn times of what is left.</param>
    /// <exception cref="ArgumentException">The draws are of other tasks.</exception>
    public static Promise OfTheRest(string job, Instant made, PlanAnswer.Planned planned, JobStanding standing, RemainingWork left, RateModel model, TimeDraws draws)
    {
        var leftOf = left.LikelyTimes(model, draws);
        var spent = standing.Tasks.Aggregate(WorkTime.Zero, (sum, one) => sum + one.Spent);
        var ahead = left.Graph.Tasks.Count == 0 ? new(WorkTime.Zero, WorkTime.Zero, WorkTime.Zero, WorkTime.Zero, WorkTime.Zero) : draws.OfAll();
        return Of(job, made, planned, left.Graph, model, new(ahead.P10 + spent, ahead.P50 + spent, ahead.P80 + spent, ahead.P90 + spent, ahead.Mean + spent)) with
        {
            RestFrom = left.UnderWay.From,
            Tasks = [.. standing.Tasks.Select(one => TaskOf(one.Task, one.Spent + leftOf.GetValueOrDefault(one.Task.Id, WorkTime.Zero)))],
        };
    }

    private static PromisedTask TaskOf(ShopTask task, WorkTime expected) => new(task.Name, (task.Timing as TaskTiming.ByOperation)?.Operation.Name, task.Board, expected);
}

/// <summary>A task as it was promised.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Operation">Its operation; null for one timed by a guess.</param>
/// <param name="Board">The board that it works on; null for none.</param>
/// <param name="Expected">The time that was expected of it: as likely more as less, in whole minutes as it was planned, by what older versions wrote down exactly; above zero.</param>
public sealed record PromisedTask(string Name, string? Operation, string? Board, WorkTime Expected);
