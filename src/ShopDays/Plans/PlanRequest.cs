using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Plans;

/// <summary>Everything that a plan is made from.</summary>
public sealed record PlanRequest
{
    /// <summary>The jobs that share the shop, in the order in which they were taken on; at least one.</summary>
    public required IReadOnlyList<OrderInHand> Orders { get; init; }

    /// <summary>One calendar for each worker, the maker's first; at least one, all in one zone.</summary>
    public required IReadOnlyList<WorkingCalendar> Calendars { get; init; }

    /// <summary>What the shop has and can do.</summary>
    public required ShopLimits Limits { get; init; }

    /// <summary>
    /// What turning to another operation or method costs within a session: other tools out, the bench cleared.
    /// Whole minutes, rounded up; 5 unless said otherwise (3 to 8 are common practice, no source).
    /// </summary>
    public WorkTime Changeover { get; init; } = WorkTime.FromMinutes(5);

    /// <summary>Schedules to look at, 1 or more; fewer are when no better plan can be.</summary>
    public int Budget { get; init; } = 10_000;

    /// <summary>Told of every better plan while it is looked for; null for nobody.</summary>
    public IProgress<SearchStep>? Progress { get; init; }

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

        if (Orders.Count == 0)
        {
            throw new ArgumentException("a plan needs an order");
        }

        foreach (var order in Orders)
        {
            order.Check(Orders[0].Draws.Trials);
        }

        if (Orders.SkipWhile(order => !order.GivesWay).Any(order => !order.GivesWay))
        {
            throw new ArgumentException("orders that give way stand behind those that do not");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(Budget, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(Changeover, WorkTime.Zero);
    }
}
