using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>How fast timber dries: whether it is reckoned at its quickest, as is usual, or at its slowest.</summary>
public enum DryingPace
{
    /// <summary>As quick as it may be.</summary>
    Quick,

    /// <summary>As is likely.</summary>
    Usual,

    /// <summary>As slow as it may be.</summary>
    Slow,
}

/// <summary>
/// The way of one thickness of one timber to the moisture of its air: what it has more than the air halves in a certain
/// number of days, and thickness counts with the power 1.5.
/// </summary>
/// <remarks>
/// An inch under a roof takes 14 days, 7 to 42, for each 3 points that it is behind (common practice, no source); read as
/// the halving of 3 points to 1.5, which a meter cannot tell from none. Fresh from the saw the days to 20 % are the
/// table's; from there on what is above the air halves in 0.35 of those days, which is what the same law gives from 70 %
/// down (70 to 20 % in an air of 12 % is 2.9 halvings). Together an inch of white oak stacked in spring then takes eight
/// months, and fourteen at the slowest; the trade's rule of a year an inch lies between (common practice, no source).
/// </remarks>
public sealed class DryingCourse
{
    /// <summary>Timber within so many points of its air is ready: a meter does not tell it from none (common practice, no source).</summary>
    public const double Settled = 1.5;

    /// <summary>The moisture down to which the table of air-drying goes.</summary>
    public static MoistureContent OnTheStack { get; } = MoistureContent.FromPercent(20);

    private const double ThicknessPower = 1.5;
    private const double HalvingsAfterTheTable = 0.35;
    private const int MostDays = 10 * 366;
    private const string TableName = "air-drying 1 in to 20% moisture: ";

    /// <summary>An inch of a timber that the table does not have, to 20 %: as with a year in all for the inch (common practice, no source).</summary>
    private static readonly (double Quick, double Usual, double Slow) DaysOfAnInch = (118, 205, 300);

    private static readonly (double Quick, double Usual, double Slow) HalvingsUnderRoof = (7, 14, 42);

    /// <summary>A meter is not surer than this many points (common practice, no source).</summary>
    private const double MeterError = 1;

    private const int LeastDaysBetween = 14;

    /// <summary>A board that dries so many times as fast or as slowly as is likely was not read right.</summary>
    private const double MostUnlike = 8;

    private readonly Func<LocalDate, MoistureContent> air;
    private readonly double toTwenty;
    private readonly double halvingOnTheStack;

    /// <summary>The course of a board.</summary>
    /// <param name="species">The timber.</param>
    /// <param name="thickness">Its thickness, above 0.</param>
    /// <param name="air">The moisture that timber would come to in the air of a date.</param>
    /// <param name="waits">The table with the days of air-drying.</param>
    /// <param name="pace">How fast it is reckoned.</param>
    public DryingCourse(Species species, Length thickness, Func<LocalDate, MoistureContent> air, WaitTable waits, DryingPace pace)
    {
        this.air = air;
        var factor = Math.Pow(thickness.Inches, ThicknessPower);
        toTwenty = factor * (waits.Rests.FirstOrDefault(rest => rest.Name.StartsWith(TableName, StringComparison.Ordinal) && species.IsKindOf(rest.Name[TableName.Length..])) is { } rest
            ? Of((rest.Low.TotalDays, rest.Likely.TotalDays, rest.High.TotalDays), pace)
            : Of(DaysOfAnInch, pace));
        halvingOnTheStack = HalvingsAfterTheTable * toTwenty;
        HalvingDays = factor * Of(HalvingsUnderRoof, pace);
    }

    private DryingCourse(DryingCourse other) => (air, toTwenty, halvingOnTheStack) = (other.air, other.toTwenty, other.halvingOnTheStack);

    /// <summary>Days in which what it has more than the air halves, under a roof.</summary>
    public double HalvingDays { get; private init; }

    /// <summary>
    /// The same board at the pace that two of its own readings show; null when they do not: less than two weeks apart, not
    /// falling, or so near the air that the meter's own error would decide.
    /// </summary>
    /// <param name="earlier">The earlier moisture.</param>
    /// <param name="from">Its date.</param>
    /// <param name="later">The later moisture.</param>
    /// <param name="to">Its date.</param>
    public DryingCourse? AsRead(MoistureContent earlier, LocalDate from, MoistureContent later, LocalDate to)
    {
        if (to < from.PlusDays(LeastDaysBetween) || earlier.Percent - later.Percent < MeterError || later.Percent < air(to).Percent + MeterError)
        {
            return null;
        }

        var (quick, slow) = (HalvingDays / MostUnlike, HalvingDays * MostUnlike);
        if (At(quick) > later || At(slow) < later)
        {
            return null;
        }

        while (slow - quick > 0.01)
        {
            var middle = (quick + slow) / 2;
            (quick, slow) = At(middle) < later ? (middle, slow) : (quick, middle);
        }

        return Paced(quick);

        MoistureContent At(double halving) => Paced(halving).Later(earlier, from, to);
    }

    /// <summary>The same board when what it has more than the air halves in other days.</summary>
    /// <param name="halvingDays">Days, above 0.</param>
    public DryingCourse Paced(double halvingDays) => new(this) { HalvingDays = halvingDays };

    /// <summary>Its moisture on a date, when it had some on another, no later.</summary>
    public MoistureContent Later(MoistureContent then, LocalDate on, LocalDate date) => Course(then.Percent, on, HalvingDays).TakeWhile(one => one.On <= date).Last().Moisture;

    /// <summary>The first date on which it is ready, when it had some moisture on another; null when ten years are not enough.</summary>
    public LocalDate? ReadyFrom(MoistureContent then, LocalDate on) => FirstReady(Course(then.Percent, on, HalvingDays));

    /// <summary>The first date on which timber stacked fresh from the saw is ready; null when ten years are not enough.</summary>
    public LocalDate? ReadySinceStacked(LocalDate since) => FirstReady(Course(OnTheStack.Percent, TwentyFrom(since), halvingOnTheStack));

    /// <summary>Its moisture on a date since it was stacked fresh; null while it is above 20 %, which the table says nothing of.</summary>
    public MoistureContent? SinceStacked(LocalDate since, LocalDate date) => date < TwentyFrom(since)
        ? null
        : Course(OnTheStack.Percent, TwentyFrom(since), halvingOnTheStack).TakeWhile(one => one.On <= date).Last().Moisture;

    private LocalDate TwentyFrom(LocalDate since) => since.PlusDays((int)Math.Ceiling(toTwenty));

    private LocalDate? FirstReady(IEnumerable<(LocalDate On, MoistureContent Moisture)> course)
    {
        foreach (var (on, moisture) in course)
        {
            if (moisture.Percent <= air(on).Percent + Settled)
            {
                return on;
            }
        }

        return null;
    }

    private IEnumerable<(LocalDate On, MoistureContent Moisture)> Course(double moisture, LocalDate on, double halvingDays)
    {
        var left = Math.Pow(2, -1 / halvingDays);
        for (var day = 0; day <= MostDays; day++)
        {
            yield return (on.PlusDays(day), MoistureContent.FromPercent(moisture));
            var there = air(on.PlusDays(day)).Percent;
            moisture = there + ((moisture - there) * left);
        }
    }

    private static double Of((double Quick, double Usual, double Slow) three, DryingPace pace) => pace switch
    {
        DryingPace.Quick => three.Quick,
        DryingPace.Usual => three.Usual,
        DryingPace.Slow => three.Slow,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
