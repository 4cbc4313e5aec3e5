using ShopDays.Measures;
using ShopDays.Prices;

namespace ShopDays.Cli.Phrases;

/// <summary>From the cost to what the client pays, row by row.</summary>
internal static class QuotedRows
{
    /// <summary>The rows.</summary>
    public static IEnumerable<(string What, string Working, Money Amount)> Of(PriceBuildUp price)
    {
        var quoted = price.Quoted;
        yield return ("price", Working(price), price.Reckoned);
        yield return (
            (price.IsGiven ? "given in its place" : "as quoted") + (quoted.TaxIsIncluded ? ", before tax" : ""),
            quoted.TaxIsIncluded ? $"so that the total is {(price.IsGiven ? "as given" : Rounded(price))}" : price.IsGiven ? "by the job" : Rounded(price),
            quoted.BeforeTax);

        foreach (var line in quoted.Lines.Where(line => line.TaxRate > Percent.Zero))
        {
            var on = quoted.Lines.Count == 1 ? "" : line.For == QuotedFor.Delivery ? " on delivery" : " on the piece";
            yield return ($"tax{on}", $"{MoneyWords.Share(line.TaxRate)}{(quoted.Lines.Count == 1 ? "" : $" of {MoneyWords.Of(quoted.TaxIsIncluded ? line.Amount - line.Tax : line.Amount)}")}", line.Tax);
        }

        yield return ("to pay in all", "", quoted.Total);
    }

    /// <summary>What the price leaves over the cost, or lacks, and that margin and markup are two sides of it.</summary>
    public static string MarginLeft(PriceBuildUp price) => price.Profit.Amount < 0
        ? $"It is {MoneyWords.Of(price.Profit with { Amount = -price.Profit.Amount })} under the cost: there is no margin."
        : price is { MarginLeft: { } margin, MarkupLeft: { } markup }
            ? $"It leaves {MoneyWords.Of(price.Profit)} over the cost: a margin of {MoneyWords.Share(margin)} of the price, which is a markup of {MoneyWords.Share(markup)} on the cost."
            : $"It leaves {MoneyWords.Of(price.Profit)} over the cost.";

    private static string Working(PriceBuildUp price) => (price.Terms.Markup, price.Terms.Margin.Share) switch
    {
        ({ } markup, _) => $"{MoneyWords.Of(price.CostWithContingency)} × (1 + {MoneyWords.Share(markup.Share)})",
        (_, 0) => "the cost, with no margin",
        (_, var margin) => $"{MoneyWords.Of(price.CostWithContingency)} / (1 - {MoneyWords.Share(margin)})",
    };

    private static string Rounded(PriceBuildUp price) => price.Terms.Rounding is { } rule ? $"rounded {RoundingText.Write(rule)}" : "rounded to the minor unit";
}
