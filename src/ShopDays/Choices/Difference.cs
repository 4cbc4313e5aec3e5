using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Choices;

/// <summary>What doing a job otherwise changes, and where that comes from. Every figure is that of the other way less that of the one.</summary>
public sealed record Difference
{
    /// <summary>Days on which somebody works.</summary>
    public required int ShopDays { get; init; }

    /// <summary>Days by the calendar to the finish that is as likely as not; null where one of the two is not known.</summary>
    public required int? DaysAtP50 { get; init; }

    /// <summary>Days by the calendar to the date that four courses in five keep; null where one of the two is not known.</summary>
    public required int? DaysAtP80 { get; init; }

    /// <summary>Hands-on time that is as likely as not.</summary>
    public required WorkTime HandsOn { get; init; }

    /// <summary>The heavy part of it, on average.</summary>
    public required WorkTime Heavy { get; init; }

    /// <summary>Days on which somebody is called in.</summary>
    public required int CalledIn { get; init; }

    /// <summary>Boards that are cut.</summary>
    public required int Boards { get; init; }

    /// <summary>The volume of these boards.</summary>
    public required Volume Bought { get; init; }

    /// <summary>The price of these boards; null without money.</summary>
    public required Money? Timber { get; init; }

    /// <summary>What it costs, with what may go wrong; null without money.</summary>
    public required Money? Cost { get; init; }

    /// <summary>The least price at the same risk; null without money.</summary>
    public required Money? Least { get; init; }

    /// <summary>The hours by operation, the greatest difference first; none of those that are the same.</summary>
    public required IReadOnlyList<HoursOtherwise> Hours { get; init; }

    /// <summary>All waits added up.</summary>
    public required Duration Waits { get; init; }

    /// <summary>Whether nothing at all differs.</summary>
    public bool IsNone => ShopDays == 0 && DaysAtP50 is 0 or null && DaysAtP80 is 0 or null && HandsOn == WorkTime.Zero && Heavy == WorkTime.Zero
        && CalledIn == 0 && Boards == 0 && Bought == Volume.Zero && Cost is null or { Amount: 0 } && Least is null or { Amount: 0 } && Hours.Count == 0 && Waits == Duration.Zero;

    /// <summary>The difference between two ways of doing a job.</summary>
    /// <param name="one">The one, such as the job as it is.</param>
    /// <param name="other">The other, reckoned in the same courses.</param>
    public static Difference Between(Outcome one, Outcome other) => new()
    {
        ShopDays = other.Plan.ShopDays - one.Plan.ShopDays,
        DaysAtP50 = Days(one.Forecast.P50, other.Forecast.P50),
        DaysAtP80 = Days(one.Forecast.P80, other.Forecast.P80),
        HandsOn = other.Estimate.HandsOn.P50 - one.Estimate.HandsOn.P50,
        Heavy = other.Estimate.Heavy.Mean - one.Estimate.Heavy.Mean,
        CalledIn = other.CalledIn - one.CalledIn,
        Boards = other.Boards - one.Boards,
        Bought = other.Bought - one.Bought,
        Timber = one.Money is null || other.Money is null ? null : other.Timber.Total - one.Timber.Total,
        Cost = one.Money is { } cost && other.Money is { } otherCost ? otherCost.Cost - cost.Cost : null,
        Least = one.Money is { } least && other.Money is { } otherLeast ? otherLeast.Least - least.Least : null,
        Hours = HoursOtherwise.Between(one.Estimate, other.Estimate),
        Waits = other.Estimate.Waits - one.Estimate.Waits,
    };

    private static int? Days(ZonedDateTime? one, ZonedDateTime? other) =>
        one is { } from && other is { } to ? Period.DaysBetween(from.Date, to.Date) : null;
}
