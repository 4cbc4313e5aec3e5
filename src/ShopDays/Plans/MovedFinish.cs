using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Why a finish is not where it was promised.</summary>
public enum MoveCause
{
    /// <summary>The same work, planned by the shop and the job as their files are now: hours, closed dates, the start, limits.</summary>
    FilesChanged,

    /// <summary>Tasks that came in since the promise, went out, or were never in it and took their time.</summary>
    TasksChanged,

    /// <summary>Tasks that are done, or half done, take more or less than promised.</summary>
    Took,

    /// <summary>Tasks that are still to do are expected to take more or less than promised.</summary>
    ToCome,

    /// <summary>What is done took what it took: it has no bad luck ahead any more, and no good luck. It moves only a date with room for bad luck.</summary>
    Luck,

    /// <summary>What is still to do is known better or worse than it was: its ranges became narrower or wider, its likely times left aside. It moves only a date with room for bad luck.</summary>
    Certainty,

    /// <summary>Word, money or goods from others: each that came, sooner or later than was expected, and then what is still awaited.</summary>
    Awaited,

    /// <summary>Work done, or found to be better done, otherwise than in the plan's order, and what the ends of sessions round up or down: the rest.</summary>
    Order,

    /// <summary>Sessions that went by without the work that was planned in them; below zero, work done ahead of them.</summary>
    Sessions,

    /// <summary>Glue set and coats laid later than planned: what waits for them waits longer.</summary>
    LateWaits,
}

/// <summary>One cause, and how far it moved the finish.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Days">Dates of the calendar by which it moved the finish back; below zero when it brought it forward.</param>
/// <param name="Work">Hands-on time behind it, more or less than promised; for sessions that went by, the planned work that is not done. Zero where it is not about hands-on time.</param>
public readonly record struct FinishMove(MoveCause Cause, int Days, WorkTime Work)
{
    /// <summary>What came from others; null for any other cause, and for what is still awaited.</summary>
    public ArrivedOtherwise? Arrived { get; init; }
}

/// <summary>How far a finish moved against what was promised, and why.</summary>
/// <remarks>
/// The promised job is planned again, each time with one thing more as it came about, and each cause has the dates by
/// which the finish moved when its turn came: the date that four courses in five keep, where that was promised. So the
/// causes add up to the whole. What a cause moves hangs on those before
/// it: an hour more moves nothing where it fills up a session, and days where it calls for another one.
/// </remarks>
/// <param name="Promised">The date then: that which four trials in five kept, or the planned one where there is none.</param>
/// <param name="Now">The same date as things stand.</param>
/// <param name="IsSafe">Whether both are the dates that four trials in five keep; false for the planned ones.</param>
/// <param name="Moves">The causes in the order of <see cref="MoveCause"/>, what came from others in the order in which it came, those that moved no date and have not half a minute of work left out; their days add up.</param>
public sealed record MovedFinish(LocalDate Promised, LocalDate Now, bool IsSafe, IReadOnlyList<FinishMove> Moves)
{
    /// <summary>Dates of the calendar by which the finish moved back; below zero when it moved forward.</summary>
    public int Days => Period.DaysBetween(Promised, Now);

    /// <summary>Asks why.</summary>
    /// <param name="progress">Where the job stands against its promise.</param>
    /// <param name="then">The job as it was when it was promised.</param>
    /// <param name="ahead">What is left, as it was asked to be planned.</param>
    /// <param name="answer">The plan of it.</param>
    /// <exception cref="ArgumentException">The draws are not those of the promised job's tasks, or there is more than one order.</exception>
    public static MovedFinish Of(JobProgress progress, PromisedJob then, PlanRequest ahead, PlanAnswer.Planned answer)
    {
        if (then.Draws.Trials == 0 || then.Draws.Minutes.Any(trial => trial.Length != then.Left.Graph.Tasks.Count) || ahead.Orders.Count != 1)
        {
            throw new ArgumentException("the causes are asked for one job, with drawn times for each task that was left of it", nameof(then));
        }

        var promise = progress.Promise;
        var isSafe = promise.P80 is not null && answer.Forecast.P80 is not null;
        var promised = (isSafe ? promise.P80!.Value : promise.Planned).InZone(ahead.Zone).Date;
        var now = isSafe ? answer.Forecast.P80!.Value.Date : answer.Plan.Finish.Date;
        var plans = new PlansOtherwise(progress, then, ahead, isSafe);
        var steps = plans.Steps(promised, now);
        var moves = steps.Select((step, place) => new FinishMove(step.Cause, Period.DaysBetween(place == 0 ? promised : steps[place - 1].Date, step.Date), plans.WorkOf(step.Cause)) { Arrived = step.Arrived });
        return new(promised, now, isSafe, [.. moves.Where(move => move.Days != 0 || Math.Abs(move.Work.Minutes) >= 0.5)]);
    }
}

/// <summary>A job as it was when it was promised.</summary>
/// <param name="Graph">Its tasks and their order, no board sawn yet that was not.</param>
/// <param name="Standing">How far they had come.</param>
/// <param name="Left">What was left of it, from the moment from which it was planned; before anything was done, from its start.</param>
/// <param name="Draws">Drawn times of what was left, around those that it was planned with.</param>
public sealed record PromisedJob(TaskGraph Graph, JobStanding Standing, RemainingWork Left, TimeDraws Draws);
