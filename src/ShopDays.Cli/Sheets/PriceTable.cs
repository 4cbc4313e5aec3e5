using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Prices;

namespace ShopDays.Cli.Sheets;

/// <summary>The price of a job as a table: each line of its cost, then what is asked for it.</summary>
internal static class PriceTable
{
    /// <summary>The table. The lines of the cost add up to the cost, and the amounts that are quoted with their tax to the total.</summary>
    public static SheetTable Of(PriceBuildUp price, PriceWords words) => new(
        "price",
        [new("group", 22), new("line", 34), new("working", 34), new($"amount, {price.Reckoned.Currency.Code}", 14)],
        [
            .. price.Lines.Select(line => Row(PriceWords.GroupOf(line), PriceWords.NameOf(line), words.WorkingOf(line, price.Terms.Rate.PerHour), line.Amount)),
            Row("in all", "cost", "", price.Cost),
            Row("in all", "cost with what may go wrong", "", price.CostWithContingency),
            .. QuotedRows.Of(price).Select(row => Row("asked for", row.What, row.Working, row.Amount)),
        ]);

    private static IReadOnlyList<SheetCell> Row(string group, string line, string working, Money amount) =>
        [SheetCell.Of(group), SheetCell.Of(line), SheetCell.Of(working), new SheetCell.Number(amount.Amount, amount.Currency.MinorDigits)];
}
