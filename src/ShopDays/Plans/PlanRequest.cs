using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Everything that a plan is made from.</summary>
public sealed record PlanRequest
{
    /// <summary>The work.</summary>
    public required TaskGraph Graph { get; init; }

    /// <summary>The time that each task is planned with, by its id: the median of its range, as a rule. Rounded up to whole minutes, 1 at least.</summary>
    public required IReadOnlyList<WorkTime> Times { get; init; }

    /// <summary>Drawn times, for the forecast; at least one trial.</summary>
    public required TimeDraws Draws { get; init; }

    /// <summary>One calendar for each worker, the maker's first; at least one, all in one zone.</summary>
    public required IReadOnlyList<WorkingCalendar> Calendars { get; init; }

    /// <summary>What the shop has and can do.</summary>
    public required ShopLimits Limits { get; init; }

    /// <summary>The date on which the job begins; opening waits run from its first moment.</summary>
    public required LocalDate Start { get; init; }

    /// <summary>How the shop stands when the rest of a job is planned in the middle of it; null for a whole job, from its start on.</summary>
    public UnderWay? UnderWay { get; init; }

    /// <summary>The date by the end of which it should be finished; null for none.</summary>
    public LocalDate? Due { get; init; }

    /// <summary>
    /// What turning to another operation or method costs within a session: other tools out, the bench cleared.
    /// Whole minutes, rounded up; 5 unless said otherwise (3 to 8 are common practice, no source).
    /// </summary>
    public WorkTime Changeover { get; init; } = WorkTime.FromMinutes(5);

    /// <summary>Schedules to look at, 1 or more.</summary>
    public int Budget { get; init; } = 2000;

    /// <summary>Where the search draws from; one seed gives one plan.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How lengths are written where a reason names one.</summary>
    public LengthFormat Lengths { get; init; } = LengthFormat.Millimetres;

    /// <summary>The zone of the shop's clock.</summary>
    public DateTimeZone Zone => Calendars[0].Place.Zone;

    /// <exception cref="ArgumentException">Something is missing or of the wrong number.</exception>
    internal void Check()
    {
        if (Calendars.Count == 0)
        {
            throw new ArgumentException("a plan needs a worker");
        }

        if (Calendars.Any(calendar => !calendar.Place.Zone.Equals(Zone)))
        {
            throw new ArgumentException("the workers' calendars are in different zones");
        }

        if (Times.Count != Graph.Tasks.Count)
        {
            throw new ArgumentException($"{Times.Count} times for {Graph.Tasks.Count} tasks");
        }

        if (Draws.Trials == 0 || Draws.Minutes.Any(trial => trial.Length != Graph.Tasks.Count))
        {
            throw new ArgumentException("every task is drawn in every trial, and there is one trial at least");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(Budget, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(Changeover, WorkTime.Zero);
    }
}
