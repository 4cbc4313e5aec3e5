using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>A plan with its forecast, or why there is none.</summary>
public abstract record PlanAnswer
{
    private PlanAnswer()
    {
    }

    /// <summary>It can be planned.</summary>
    /// <param name="Plan">The plan.</param>
    /// <param name="Forecasts">What may become of each order, in their order; at least one.</param>
    public sealed record Planned(Plan Plan, IReadOnlyList<FinishForecast> Forecasts) : PlanAnswer
    {
        /// <summary>What may become of the first order: of a single job.</summary>
        public FinishForecast Forecast => Forecasts[0];

        /// <summary>What of the first order's finish is for what may be spoiled; null where nothing may be.</summary>
        public SpoilingForecast? Spoiling { get; init; }
    }

    /// <summary>It cannot be planned.</summary>
    /// <param name="Reasons">Every reason that was found, at least one, in the order of the tasks.</param>
    public sealed record CannotBePlanned(IReadOnlyList<Unplannable> Reasons) : PlanAnswer;
}

/// <summary>What stands against a plan.</summary>
public enum UnplannableKind
{
    /// <summary>There are no sessions.</summary>
    NoSessions,

    /// <summary>A task takes more people than work in the shop.</summary>
    CrewTooLarge,

    /// <summary>A task takes clamps that the shop does not have.</summary>
    NotEnoughClamps,

    /// <summary>A task stands on more floor than the shop has free.</summary>
    FloorTooSmall,

    /// <summary>A task that is done in one go is longer than every session.</summary>
    NoSessionLongEnough,

    /// <summary>A noisy task would fit into a session were it not for quiet hours.</summary>
    QuietHours,

    /// <summary>A heavy task that is done in one go is more than a day's heavy work.</summary>
    TooHeavyForADay,

    /// <summary>A task for several people would fit into a session, but they are not there together for long enough.</summary>
    NotTogetherLongEnough,

    /// <summary>Tasks that belong in one session do not fit into one.</summary>
    NoSessionForAllOfThem,

    /// <summary>It is never warm enough for the glue or coat that sets after a task, or never when a session is open.</summary>
    TooCold,

    /// <summary>A task that is fixed for a time cannot be begun then.</summary>
    AppointmentNotKept,

    /// <summary>It would take longer than the years that are looked at.</summary>
    TooLong,
}

/// <summary>One thing that stands against a plan, told so that the maker can do something about it.</summary>
/// <param name="Kind">What stands against it.</param>
/// <param name="Task">The task; null when it is not about one task.</param>
/// <param name="Limit">What is wrong, in a maker's words.</param>
/// <param name="Cure">The least that would help.</param>
public sealed record Unplannable(UnplannableKind Kind, ShopTask? Task, string Limit, string Cure)
{
    /// <summary>The order that the task is of; null when it is not about one task.</summary>
    public string? Order { get; init; }
}
