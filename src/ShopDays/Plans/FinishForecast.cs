using NodaTime;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>
/// When a plan will be finished, from doing it again, in its order, with each trial's drawn times. In a trial the rest
/// of the plan moves up or back as work goes.
/// </summary>
/// <remarks>
/// A drawn time can be too long for any session of the week although the task should be done in one. Such a task begins
/// where its planned time would fit and goes on in the next session, as it would in life, rather than be put off for
/// more than a week; tasks that should share a session and cannot within a week do not. Both are counted in
/// <see cref="Overruns"/>.
/// </remarks>
public sealed record FinishForecast
{
    /// <summary>When half of the trials were finished; null when not within the years looked at.</summary>
    public required ZonedDateTime? P50 { get; init; }

    /// <summary>When four trials in five were finished: what may be promised; null when not within the years looked at.</summary>
    public required ZonedDateTime? P80 { get; init; }

    /// <summary>When nine trials in ten were finished; null when not within the years looked at.</summary>
    public required ZonedDateTime? P90 { get; init; }

    /// <summary>The share of trials finished by the end of the due date, 0 to 1; null without one.</summary>
    public required double? ChanceOfDue { get; init; }

    /// <summary>The tasks that decide the finish most, the first most of all; five at the most. Another order's only where it is begun before this one's finish.</summary>
    public required IReadOnlyList<DecidingTask> Deciding { get; init; }

    /// <summary>The sessions of the plan in which it slips most often, the first most often of all; five at the most. Of the trials that were finished within the years looked at.</summary>
    public IReadOnlyList<SessionAtRisk> SessionsAtRisk { get; init; } = [];

    /// <summary>The finish of each trial that was finished, earliest first.</summary>
    public required IReadOnlyList<Instant> Finishes { get; init; }

    /// <summary>How many trials there were.</summary>
    public required int Trials { get; init; }

    /// <summary>How many of them were not finished within the years looked at.</summary>
    public required int Unfinished { get; init; }

    /// <summary>How many of them had work that ran over the session it should have ended in.</summary>
    public required int Overruns { get; init; }

    /// <summary>The seed of the draws.</summary>
    public required int Seed { get; init; }
}

/// <summary>A task, or what is awaited from others, that helps to decide the finish.</summary>
/// <param name="Order">The order that it is of: another than the one that is forecast where that one waits for it.</param>
/// <param name="Task">The task; of what is awaited only its name says anything, which is that in words.</param>
/// <param name="Share">Its share of how the finish goes with the tasks' times, above 0 and at most 1.</param>
/// <param name="Correlation">How its time goes with the finish, above 0 and at most 1.</param>
public sealed record DecidingTask(string Order, ShopTask Task, double Share, double Correlation)
{
    /// <summary>What is awaited; null for a task.</summary>
    public Awaited? Awaited { get; init; }
}
