using ShopDays.Measures;
using ShopDays.Prices;

namespace ShopDays.Cli.Phrases;

/// <summary>A price beside the chance that an hour then earns less than the rate.</summary>
/// <param name="Price">The price, before tax.</param>
/// <param name="Chance">The chance, 0 to 1.</param>
/// <param name="Mark">What is special about the price; empty for nothing.</param>
internal sealed record RiskRow(Money Price, double Chance, string Mark)
{
    private const int MostSteps = 9;

    /// <summary>Chances between which prices are told: beyond them hardly anything changes.</summary>
    private const double Certain = 0.995;

    private const double Unlikely = 0.005;

    /// <summary>The first and the last price that are worth telling, the marked ones between them.</summary>
    public static (Money From, Money To) SpanOf(PriceRisk risk, IReadOnlyList<(Money Price, string Mark)> marks)
    {
        Money[] all = [risk.LeastPrice(Certain), risk.LeastPrice(Unlikely), .. marks.Select(mark => mark.Price)];
        return (all.MinBy(price => price.Amount)!, all.MaxBy(price => price.Amount)!);
    }

    /// <summary>Round prices in steps, and those that are marked among them.</summary>
    public static IReadOnlyList<RiskRow> Of(PriceRisk risk, IReadOnlyList<(Money Price, string Mark)> marks)
    {
        var (from, to) = SpanOf(risk, marks);
        var step = StepOf((to - from).Amount, from.Currency);
        var first = decimal.Ceiling(from.Amount / step) * step;
        var round = Enumerable.Range(0, MostSteps + 1).Select(number => new Money(first + (number * step), from.Currency)).Where(price => price.Amount <= to.Amount);
        return
        [
            .. round.Where(price => marks.All(mark => mark.Price.Amount != price.Amount)).Select(price => (Price: price, Mark: ""))
                .Concat(marks.GroupBy(mark => mark.Price.Amount).Select(same => (same.First().Price, Mark: string.Join(", ", same.Select(mark => mark.Mark)))))
                .OrderBy(one => one.Price.Amount)
                .Select(one => new RiskRow(one.Price, risk.ChanceBelowRate(one.Price), one.Mark)),
        ];
    }

    /// <summary>A step of 1, 2 or 5 and zeros, so that no more than so many lie in a span.</summary>
    public static decimal StepOf(decimal span, Currency currency)
    {
        var step = currency.MinorUnit;
        for (var turn = 0; span / step > MostSteps; turn++)
        {
            step *= turn % 3 == 1 ? 2.5m : 2;
        }

        return step;
    }
}
