using NodaTime;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>When something that an order waits for is over, in the minutes of a plan: as it is planned, and as it may be drawn.</summary>
/// <remarks>
/// As long as the likely end is still ahead, that is planned. When it is past and nothing came, what is planned is the
/// middle of what may still come; a day begun counts as a whole one.
/// </remarks>
internal sealed class AwaitedTime
{
    private readonly OpenHours hours;
    private readonly Awaited one;
    private readonly Instant? counted;
    private readonly Duration gone;

    /// <summary>Looks at one wait of an order.</summary>
    public AwaitedTime(OrderInHand order, Awaited one, OpenHours hours)
    {
        (this.one, this.hours) = (one, hours);
        var first = hours.BeginOf(order);
        if (one.Decision.Arrived is { } date)
        {
            Begin = Math.Max(first, hours.MinuteOf(date));
            return;
        }

        Asked = AskedAt(order, one, hours);
        if (Asked is not { } asked)
        {
            (Begin, Minutes, IsByCalendar) = (first, ProblemCompiler.MinutesOf(one.Wait.Likely), true);
            return;
        }

        // Of the time before what is known now, it is known that nothing came; but a board that dries tells nobody.
        var known = one.Decision.IsDrying ? asked.ToInstant() : order.KnownUntil ?? asked.ToInstant();
        gone = Duration.Max(Duration.Zero, known - asked.ToInstant());
        counted = asked.ToInstant() + gone;
        Begin = Math.Max(first, hours.MinuteUpTo(asked.ToInstant()));
        Minutes = MinutesUntil(PlannedEnd(asked, known));
    }

    /// <summary>When it was asked for; null when that is still to come, and of what has come.</summary>
    public ZonedDateTime? Asked { get; }

    /// <summary>The first minute in which it runs.</summary>
    public int Begin { get; }

    /// <summary>How long it runs in the plan, 0 or more.</summary>
    public int Minutes { get; }

    /// <summary>Whether whole days of it are days of the calendar, to be counted from whenever it begins.</summary>
    public bool IsByCalendar { get; }

    /// <summary>When something was asked for; null when that is still to come, and of what has come.</summary>
    public static ZonedDateTime? AskedAt(OrderInHand order, Awaited one, OpenHours hours) => one switch
    {
        { HasCome: true } => null,
        { Decision.Asked: { } date } => hours.StartOf(date),
        { Since: { } since } => since.InZone(hours.Zone),
        { BeginsWithTheJob: true } => hours.OpeningOf(order),
        _ => null,
    };

    /// <summary>How long it runs at a normal deviate, 0 or more.</summary>
    public int Drawn(double deviate)
    {
        if (one.HasCome)
        {
            return 0;
        }

        return counted is { } from
            ? MinutesUntil(from + Duration.FromMinutes(gone > Duration.Zero ? GuessedWait.Left(one.Wait, gone, deviate) : GuessedWait.Minutes(one.Wait, deviate)))
            : (int)Math.Ceiling(Math.Min(GuessedWait.Minutes(one.Wait, deviate), Scheduling.CompiledCalendar.Never));
    }

    private Instant PlannedEnd(ZonedDateTime asked, Instant known)
    {
        var likely = Awaited.EndOf(asked, one.Wait.Likely);
        if (likely.ToInstant() > known || gone == Duration.Zero)
        {
            return likely.ToInstant();
        }

        var middle = (known + Duration.FromMinutes(GuessedWait.Left(one.Wait, gone, 0))).InZone(asked.Zone);
        return hours.StartOf(middle.Date.PlusDays(1)).ToInstant();
    }

    private int MinutesUntil(Instant end) => Math.Max(0, hours.MinuteUpTo(end) - Begin);
}
