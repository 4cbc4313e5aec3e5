using CsCheck;
using ShopDays.Measures;
using ShopDays.Prices;
using Xunit;

namespace ShopDays.Tests.Prices;

public sealed class PriceRiskTests
{
    private static readonly Gen<PriceRisk> Any =
        from currency in AnyPrice.Currencies
        from minutes in Gen.Double[60, 9_000].Array[1, 400]
        from rate in Gen.Int[1, 9_000]
        from outlay in Gen.Int[0, 90_000]
        select new PriceRisk(minutes, new(rate * currency.MinorUnit * 10, currency), new(outlay * currency.MinorUnit, currency));

    [Fact]
    public void A_higher_price_never_has_a_greater_risk() => Gen.Select(Any, Gen.Int[0, 2_000], Gen.Int[0, 2_000]).Sample((risk, some, more) =>
        Assert.True(risk.ChanceBelowRate(risk.Outlay + (risk.Rate * (some + more) * 0.1m)) <= risk.ChanceBelowRate(risk.Outlay + (risk.Rate * some * 0.1m))));

    [Fact]
    public void The_less_risk_is_taken_the_higher_is_the_least_price() => Gen.Select(Any, Gen.Double[0, 0.99], Gen.Double[0, 0.99]).Sample((risk, one, other) =>
        Assert.True(risk.LeastPrice(Math.Min(one, other)).Amount >= risk.LeastPrice(Math.Max(one, other)).Amount));

    [Fact]
    public void The_chance_at_the_least_price_is_the_chosen_risk() => Gen.Select(Any, Gen.Double[0, 0.99]).Sample((risk, chosen) =>
    {
        // Of so many courses; a price in whole coins may keep those that miss it by less than a coin.
        var least = risk.LeastPrice(chosen);
        var courses = risk.Courses;
        Assert.True(risk.ChanceBelowRate(least) <= chosen + 1e-9);
        Assert.True(courses < 2 || Math.Floor(chosen * courses) == 0 || risk.ChanceBelowRate(least - new Money(2 * least.Currency.MinorUnit, least.Currency)) > chosen - (1.0 / courses));
    });

    [Fact]
    public void With_ten_thousand_courses_the_chance_at_the_least_price_is_the_chosen_risk_to_a_ten_thousandth()
    {
        var dollars = new Currency("USD", 2);
        var risk = new PriceRisk(Enumerable.Range(1, 10_000).Select(course => course * 0.37), new(60, dollars), new(500, dollars));
        Assert.All((double[])[0.01, 0.05, 0.1, 0.2, 0.5, 0.9], chosen => Assert.Equal(chosen, risk.ChanceBelowRate(risk.LeastPrice(chosen)), 0.0001 + 1e-12));
    }

    [Fact]
    public void An_hour_earns_the_rate_where_the_price_breaks_even() => Any.Sample(risk =>
    {
        var price = risk.LeastPrice(0.5);
        Assert.Equal((double)risk.Rate.Amount, (double)risk.PerHour(price, risk.BreakEven(price)!.Value).Amount, (double)risk.Rate.Currency.MinorUnit);
    });

    [Fact]
    public void A_price_below_the_outlay_always_misses_and_where_an_hour_need_earn_nothing_only_that_does()
    {
        var dollars = new Currency("USD", 2);
        Money Of(decimal amount) => new(amount, dollars);
        Assert.Equal(1, new PriceRisk([60, 90], Of(50), Of(200)).ChanceBelowRate(Of(199)));
        var unpaid = new PriceRisk([60, 90], Of(0), Of(200));
        Assert.Equal((1, 0), (unpaid.ChanceBelowRate(Of(199)), unpaid.ChanceBelowRate(Of(200))));
        Assert.Null(unpaid.BreakEven(Of(300)));
        Assert.Equal(Of(200), unpaid.LeastPrice(0.1));
    }
}
