using NodaTime;
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
        Tasks = [.. graph.Tasks.Select(task => new PromisedTask(task.Name, (task.Timing as TaskTiming.ByOperation)?.Operation.Name, task.Board, model.LikelyTime(task)))],
    };
}

/// <summary>A task as it was promised.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Operation">Its operation; null for one timed by a guess.</param>
/// <param name="Board">The board that it works on; null for none.</param>
/// <param name="Expected">The time that was expected of it: as likely more as less; above zero.</param>
public sealed record PromisedTask(string Name, string? Operation, string? Board, WorkTime Expected);
