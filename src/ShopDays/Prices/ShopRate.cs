using ShopDays.Measures;

namespace ShopDays.Prices;

/// <summary>One of the things that an hour has to earn, by the year.</summary>
/// <param name="Name">What it is, for example <c>rent</c>.</param>
/// <param name="PerYear">How much in a year.</param>
public sealed record YearlyCost(string Name, Money PerYear);

/// <summary>
/// What an hour of work has to earn: wage, social contributions and overhead of a year over the hours of it that somebody
/// pays for. Those are 50 to 70 % of the hours in the shop: letters, drawings, fetching timber, repairs, selling and sweeping
/// are not billed (common practice, no source).
/// </summary>
public sealed record ShopRate
{
    private const int MonthsOfAYear = 12;

    private ShopRate(Money perHour, Money ownHour) => (PerHour, OwnHour) = (perHour, ownHour);

    /// <summary>What an hour has to earn, rounded to the minor unit, as it is printed and reckoned with.</summary>
    public Money PerHour { get; }

    /// <summary>What of it is not overhead by the hour: the hour that was given, or all of a rate that was built up.</summary>
    public Money OwnHour { get; }

    /// <summary>What it is built up from, by the year; empty where it was given as it stands.</summary>
    public IReadOnlyList<YearlyCost> PerYear { get; private init; } = [];

    /// <summary>Hours of a year that somebody pays for; null where the rate was given as it stands.</summary>
    public WorkTime? Billable { get; private init; }

    /// <summary>All that is to be earned in a year; null where the rate was given.</summary>
    public Money? ToEarn => PerYear.Count == 0 ? null : Money.Sum(PerYear.Select(one => one.PerYear), PerHour.Currency);

    /// <summary>A rate as the maker says it, overhead and all.</summary>
    public static ShopRate Given(Money perHour) => new(perHour.Rounded(), perHour.Rounded());

    /// <summary>A rate for the maker's own hour, to which the overhead is added.</summary>
    /// <param name="ownHour">What an hour earns for the maker.</param>
    /// <param name="overhead">Overhead, at least one line.</param>
    /// <param name="billable">Hours of a year that somebody pays for, above zero.</param>
    public static ShopRate Given(Money ownHour, IReadOnlyList<YearlyCost> overhead, WorkTime billable)
    {
        var own = ownHour.Rounded();
        IReadOnlyList<YearlyCost> all = [new("the maker's own hours", (own * HoursOf(billable)).Rounded()), .. overhead];
        return new(ByHour(all, billable), own) { PerYear = all, Billable = billable };
    }

    /// <summary>A rate that is built up.</summary>
    /// <param name="wage">The wage wanted, by the year.</param>
    /// <param name="social">Social contributions, as a share of the wage.</param>
    /// <param name="overhead">Overhead; may be empty.</param>
    /// <param name="billable">Hours of a year that somebody pays for, above zero.</param>
    public static ShopRate BuiltUp(Money wage, Percent social, IReadOnlyList<YearlyCost> overhead, WorkTime billable)
    {
        IReadOnlyList<YearlyCost> contributions = social > Percent.Zero
            ? [new(FormattableString.Invariant($"social contributions, {social}"), (wage * ((decimal)social.Value / 100)).Rounded())]
            : [];
        IReadOnlyList<YearlyCost> all = [new("wage", wage.Rounded()), .. contributions, .. overhead];
        var perHour = ByHour(all, billable);
        return new(perHour, perHour) { PerYear = all, Billable = billable };
    }

    /// <summary>An amount by the month or by the year as one by the year.</summary>
    /// <exception cref="ArgumentException">The price is for something else.</exception>
    public static Money ByTheYear(PricePer price) => price.Unit switch
    {
        PriceUnit.Month => price.Amount * MonthsOfAYear,
        PriceUnit.Year => price.Amount,
        _ => throw new ArgumentException("a price by the month or by the year", nameof(price)),
    };

    /// <summary>What some hands-on time earns at this rate, to whole minutes and rounded to the minor unit.</summary>
    public Money Of(long minutes) => (PerHour * (minutes / 60m)).Rounded();

    private static Money ByHour(IReadOnlyList<YearlyCost> all, WorkTime billable)
    {
        if (billable <= WorkTime.Zero)
        {
            throw new ArgumentOutOfRangeException(nameof(billable), billable, "somebody pays for some hours of a year");
        }

        var sum = Money.Sum(all.Select(one => one.PerYear), all[0].PerYear.Currency);
        return (sum with { Amount = sum.Amount / HoursOf(billable) }).Rounded();
    }

    private static decimal HoursOf(WorkTime time) => (decimal)time.Minutes / 60;
}
