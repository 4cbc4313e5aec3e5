using NodaTime;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Word, money or goods that have come from others.</summary>
/// <param name="One">What came.</param>
/// <param name="On">The date on which it came; null where only work that waited for it says that it has.</param>
/// <param name="Asked">The date on which it was asked for, by its file or by the log; null where that is not known.</param>
public sealed record CameFromOthers(Awaited One, LocalDate? On, LocalDate? Asked);

/// <summary>What came from others, beside when the promised plan expected it.</summary>
/// <param name="One">What came.</param>
/// <param name="DaysLate">Dates of the calendar by which it came later than that plan expected; below zero when it came sooner.</param>
/// <param name="DaysAskedLate">Dates by which it was asked for later than planned, for which it is not late; below zero when it was asked for sooner, 0 where that is not known.</param>
public sealed record ArrivedOtherwise(Awaited One, int DaysLate, int DaysAskedLate)
{
    /// <summary>Compares what came with what a plan expected of it.</summary>
    /// <param name="came">What came.</param>
    /// <param name="on">The date.</param>
    /// <param name="expected">Its wait in the plan.</param>
    internal static ArrivedOtherwise Of(CameFromOthers came, LocalDate on, PlannedWait expected)
    {
        var askedLate = came.Asked is { } asked ? Period.DaysBetween(expected.Start.Date, asked) : 0;
        return new(came.One, Period.DaysBetween(expected.End.Date, on) - askedLate, askedLate);
    }
}
