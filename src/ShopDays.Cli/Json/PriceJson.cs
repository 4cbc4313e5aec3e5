using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Prices;

namespace ShopDays.Cli.Json;

/// <summary>
/// The answer of <c>shopdays price --json</c>: amounts as decimal strings that add up to the last digit. The lines come to the
/// cost, the price and its tax to the total, the stages, each with its tax, to the total.
/// </summary>
internal static class PriceJson
{
    private const int StepsOfCurve = 40;
    private const double MinutesOfAnHour = 60;

    /// <summary>The price as an object to be written.</summary>
    public static object Of(ToldPrice told)
    {
        var (price, quoted) = (told.Price, told.Price.Quoted);
        return new
        {
            Job = told.Job.Name,
            told.Job.Commission.Client,
            Currency = price.Reckoned.Currency.Code,
            Hours = Math.Round(price.Lines.OfType<CostLine.Labour>().Sum(line => line.Share.Minutes) / MinutesOfAnHour, 4),
            Rate = RateOf(price.Terms.Rate),
            Lines = price.Lines.Select(line => LineOf(told, line)),
            ExpectedCost = CostJson.Text(price.Cost),
            Contingency = CostJson.Text(price.Contingency),
            Cost = CostJson.Text(price.CostWithContingency),
            Outlay = CostJson.Text(price.Outlay),
            Margin = price.Terms.Margin.Share,
            Markup = decimal.Round(price.Terms.Margin.AsMarkup.Share, 6),
            Reckoned = CostJson.Text(price.Reckoned),
            price.IsGiven,
            Rounding = price.Terms.Rounding is { } rule ? RoundingText.Write(rule) : null,
            Price = CostJson.Text(quoted.BeforeTax),
            Tax = CostJson.Text(quoted.Tax),
            Total = CostJson.Text(quoted.Total),
            Quoted = new
            {
                Price = CostJson.Text(quoted.Price),
                quoted.TaxIsIncluded,
                Lines = quoted.Lines.Select(line => new { line.For, Amount = CostJson.Text(line.Amount), TaxPercent = line.TaxRate.Value, Tax = CostJson.Text(line.Tax) }),
                ValidUntil = JsonAnswer.Date(told.ValidUntil),
            },
            Profit = CostJson.Text(price.Profit),
            MarginLeft = price.MarginLeft is { } margin ? decimal.Round(margin, 6) : (decimal?)null,
            MarkupLeft = price.MarkupLeft is { } markup ? decimal.Round(markup, 6) : (decimal?)null,
            Stages = told.Payments.Select(one => new
            {
                Name = PriceWords.When(one.Payment.Stage.On),
                one.Payment.Stage.On,
                one.Payment.Stage.Share,
                Date = one.Date is { } date ? JsonAnswer.Date(date) : null,
                Amount = CostJson.Text(one.Payment.ToPay),
                BeforeTax = CostJson.Text(one.Payment.BeforeTax),
                Tax = CostJson.Text(one.Payment.OfTax),
            }),
            Risk = RiskOf(told),
            Earning = EarningOf(told),
            HandsOnMinutes = EstimateJson.RangeOf(told.HandsOn),
            told.Seed,
            Times = TimesJson.Of(told.Behind),
            told.Notes,
        };
    }

    private static object RateOf(ShopRate rate) => new
    {
        PerHour = CostJson.Text(rate.PerHour),
        ToEarnInAYear = rate.ToEarn is { } all ? CostJson.Text(all) : null,
        BillableMinutesInAYear = rate.Billable is { } time ? JsonAnswer.Minutes(time) : (double?)null,
        InAYear = rate.PerYear.Select(one => new { one.Name, Amount = CostJson.Text(one.PerYear) }),
    };

    private static object LineOf(ToldPrice told, CostLine line) => new
    {
        Kind = KindOf(line),
        Line = PriceWords.NameOf(line),
        Working = told.Words.WorkingOf(line, told.Risk.Rate),
        Minutes = line switch { CostLine.Labour labour => labour.Share.Minutes, CostLine.Slack slack => slack.Minutes, _ => (long?)null },
        BoardFeet = line switch { CostLine.TimberUsed used => BoardFeet(used.Line.InThePiece), CostLine.TimberLost lost => BoardFeet(lost.Line.Bought - lost.Line.InThePiece), _ => (double?)null },
        line.IsContingency,
        Amount = CostJson.Text(line.Amount),
    };

    private static string KindOf(CostLine line) => line switch
    {
        CostLine.Labour => "labour",
        CostLine.TimberUsed => "timberUsed",
        CostLine.TimberLost => "timberLost",
        CostLine.Hardware => "hardware",
        CostLine.Consumables => "consumables",
        CostLine.Outside => "outside",
        CostLine.Travel => "travel",
        CostLine.Slack => "contingencyHours",
        CostLine.Spare => "spareBoard",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>The chance at prices before tax from one that loses money to one that hardly can.</summary>
    private static IEnumerable<object> RiskOf(ToldPrice told)
    {
        var (from, to) = RiskRow.SpanOf(told.Risk, told.Marks);
        return told.Risk.Curve(from, to, StepsOfCurve).Select(point => new { Price = CostJson.Text(point.Price), ChanceOfLoss = point.Chance });
    }

    /// <summary>What the price as it is quoted may come to.</summary>
    private static object EarningOf(ToldPrice told) => new
    {
        told.Risk.Courses,
        ChanceBelowRate = told.Chance,
        BreakEvenMinutes = told.Risk.BreakEven(told.Price.Quoted.BeforeTax) is { } even ? JsonAnswer.Minutes(even) : (double?)null,
        PerHourAtP50 = told.PerHour(told.HandsOn.P50) is { } likely ? CostJson.Text(likely) : null,
        PerHourAtP90 = told.PerHour(told.HandsOn.P90) is { } bad ? CostJson.Text(bad) : null,
        Chosen = told.ChosenRisk,
        LeastPrice = CostJson.Text(told.Least),
    };

    private static double BoardFeet(Volume volume) => Math.Round(volume.BoardFeet, 3, MidpointRounding.AwayFromZero);
}
