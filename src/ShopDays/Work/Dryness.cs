using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>What is known of a board's moisture by.</summary>
public enum DrynessBasis
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>What the meter said.</summary>
    Reading,

    /// <summary>Two weights, a week or more apart.</summary>
    Weighings,

    /// <summary>The time since it was stacked fresh from the saw.</summary>
    Stacked,

    /// <summary>Weights that are not enough: one alone, less than a week apart, falling faster than timber dries, or rising more than its air explains.</summary>
    PoorWeighings,
}

/// <summary>Whether one board may be brought to its final sizes, or from when.</summary>
/// <param name="Board">The board.</param>
/// <param name="Basis">What it is known by.</param>
/// <param name="Moisture">Its moisture when it was last known; null when nothing is, or it was above the 20 % that the table of stacks goes down to.</param>
/// <param name="On">The date of that; null when it was not written down.</param>
/// <param name="Air">The moisture that its air brings it to in the month in which it may first be planed: not before the work begins, nor before it is ready.</param>
/// <param name="Earliest">The date from which it is ready if it dries quickly; null when not known or not within ten years.</param>
/// <param name="Likely">The same as is likely.</param>
/// <param name="Latest">The same if it dries slowly.</param>
public sealed record Dryness(Board Board, DrynessBasis Basis, MoistureContent? Moisture, LocalDate? On, MoistureContent Air, LocalDate? Earliest, LocalDate? Likely, LocalDate? Latest)
{
    /// <summary>Two weights must lie so many days apart to say anything (common practice, no source).</summary>
    public const int DaysBetweenWeights = 7;

    /// <summary>The moisture in percent below which a board never is: a kiln goes no lower (common practice, no source).</summary>
    public const double LeastOfTimber = 3;

    private const double MostOfTimber = 250;

    /// <summary>
    /// A board's own pace, once two readings show it, holds within this much of it either way: a quarter less, half more
    /// (the meter's error at either reading; from our own reckoning).
    /// </summary>
    private static readonly (double Quick, double Slow) OwnPace = (0.75, 1.5);

    /// <summary>Whether its pace is that of its own readings; otherwise that of its like.</summary>
    public bool IsOwnPace { get; init; }

    /// <summary>Whether anything is known of it; otherwise it has to be measured.</summary>
    public bool IsKnown => Basis is DrynessBasis.Reading or DrynessBasis.Weighings or DrynessBasis.Stacked;

    /// <summary>Whether it is known, and ready on a date.</summary>
    public bool IsReadyOn(LocalDate date) => IsKnown && Likely <= date;

    /// <summary>Whether it was measured, and has come as near to its air on a date as a meter can tell: within half a point, or below.</summary>
    public bool IsAtRestOn(LocalDate date, YearAir? air, WaitTable waits) =>
        air is not null && Basis is DrynessBasis.Reading or DrynessBasis.Weighings && ExpectedOn(date, air, waits) is { } moisture && moisture.Percent <= air!.EquilibriumOn(date).Percent + 0.5;

    /// <summary>Its likely moisture on a date, no sooner than it was last known; as assumed when nothing is known.</summary>
    public MoistureContent ExpectedOn(LocalDate date, YearAir? air, WaitTable waits)
    {
        var course = OwnOf(Board, CourseOf(Board, air, waits, DryingPace.Usual)) ?? CourseOf(Board, air, waits, DryingPace.Usual);
        return Basis switch
        {
            DrynessBasis.Stacked => course.SinceStacked(Board.Drying.Since!.Value, date) ?? Board.Moisture,
            DrynessBasis.Reading or DrynessBasis.Weighings when air is not null && On is { } on && on < date => course.Later(Moisture!.Value, on, date),
            DrynessBasis.Reading or DrynessBasis.Weighings => Moisture!.Value,
            _ => Board.Moisture,
        };
    }

    /// <summary>Looks at a board. What was measured last counts.</summary>
    /// <param name="board">The board.</param>
    /// <param name="air">The air it lies in; null when not known: then it is taken for that in which timber is air-dry.</param>
    /// <param name="start">When the work begins: a reading without a date counts from then.</param>
    /// <param name="waits">The table with the days of air-drying.</param>
    public static Dryness Of(Board board, YearAir? air, LocalDate start, WaitTable waits)
    {
        var (drying, usual) = (board.Drying, CourseOf(board, air, waits, DryingPace.Usual));
        var read = drying.Readings.Count > 0 ? drying.Readings[^1] : (MoistureReading?)null;
        var isWeighedLast = drying.Weighings.Count > 0 && (read is null || drying.Weighings[^1].On > (read.Value.On ?? start));
        if (isWeighedLast && ByWeights(drying.Weighings, EquilibriumOf(air, drying.Weighings[^1].On), usual) is { } weighed)
        {
            return Known(DrynessBasis.Weighings, weighed, drying.Weighings[^1].On);
        }

        if (read is { } reading)
        {
            return Known(DrynessBasis.Reading, reading.Moisture, reading.On);
        }

        if (drying.Since is { } since)
        {
            var likely = usual.ReadySinceStacked(since);
            return new(board, DrynessBasis.Stacked, usual.SinceStacked(since, start), start, AirWhenPlaned(likely), Course(DryingPace.Quick).ReadySinceStacked(since), likely, Course(DryingPace.Slow).ReadySinceStacked(since));
        }

        return new(board, isWeighedLast ? DrynessBasis.PoorWeighings : DrynessBasis.None, null, null, EquilibriumOf(air, start), null, null, null);

        MoistureContent AirWhenPlaned(LocalDate? ready) => EquilibriumOf(air, ready > start ? ready.Value : start);

        DryingCourse Course(DryingPace pace) => CourseOf(board, air, waits, pace);

        Dryness Known(DrynessBasis basis, MoistureContent moisture, LocalDate? on)
        {
            var from = on ?? start;
            var own = basis == DrynessBasis.Reading ? OwnOf(board, usual) : null;
            var likely = (own ?? usual).ReadyFrom(moisture, from);
            var (quick, slow) = own is null
                ? (Course(DryingPace.Quick), Course(DryingPace.Slow))
                : (own.Paced(own.HalvingDays * OwnPace.Quick), own.Paced(own.HalvingDays * OwnPace.Slow));
            return new(board, basis, moisture, on, AirWhenPlaned(likely), quick.ReadyFrom(moisture, from), likely, slow.ReadyFrom(moisture, from)) { IsOwnPace = own is not null };
        }
    }

    /// <summary>The course at the pace of the last two readings with dates; null when there are not two, or they do not show it.</summary>
    private static DryingCourse? OwnOf(Board board, DryingCourse usual) =>
        board.Drying.Readings.Where(one => one.On is not null).ToList() is [.., var earlier, var later] ? usual.AsRead(earlier.Moisture, earlier.On!.Value, later.Moisture, later.On!.Value) : null;

    /// <summary>
    /// The moisture at the last of two weights a week or more apart: what was lost between them is the part of what is above
    /// the air that a board of its thickness loses in that time. Two equal weights say that it has come to rest (common
    /// practice, no source). Null when they say nothing, or it lost or gained more than any timber could.
    /// </summary>
    private static MoistureContent? ByWeights(IReadOnlyList<Weighing> weighings, MoistureContent air, DryingCourse course)
    {
        var last = weighings[^1];
        if (weighings.LastOrDefault(one => one.On.PlusDays(DaysBetweenWeights) <= last.On) is not { Weight.Kilograms: > 0 } first)
        {
            return null;
        }

        // With e the share that is left of what is above the air: w1 / w2 = (1 + air + x) / (1 + air + e x).
        var left = Math.Pow(2, -Period.DaysBetween(first.On, last.On) / course.HalvingDays);
        var (before, after) = (first.Weight.Kilograms, last.Weight.Kilograms);
        var above = (before - after) * (1 + (air.Percent / 100)) / (after - (before * left));
        var moisture = air.Percent + (100 * above * left);
        return after <= before * left || moisture is < LeastOfTimber or > MostOfTimber || air.Percent + (100 * above) < LeastOfTimber ? null : MoistureContent.FromPercent(moisture);
    }

    private static DryingCourse CourseOf(Board board, YearAir? air, WaitTable waits, DryingPace pace) => new(board.Species, board.Thickness, date => EquilibriumOf(air, date), waits, pace);

    private static MoistureContent EquilibriumOf(YearAir? air, LocalDate date) => air?.EquilibriumOn(date) ?? Board.AirDry;
}
