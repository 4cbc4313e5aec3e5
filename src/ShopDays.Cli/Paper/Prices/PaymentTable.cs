using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Paper.Prices;

/// <summary>The payments, as both the maker and the client see them.</summary>
internal static class PaymentTable
{
    private const double AmountWidth = 72;

    /// <summary>The table.</summary>
    /// <param name="told">The price.</param>
    /// <param name="style">How it is set.</param>
    public static Table Of(ToldPrice told, TextStyle style)
    {
        var quoted = told.Price.Quoted;
        var isTaxed = quoted.Tax.Amount > 0;
        return new(
            [
                Column.Shared("When"),
                Column.Fixed("About", 96),
                Column.Fixed("Share", 40, Align.Right),
                .. (Column[])(isTaxed ? [Column.Fixed("Of it tax", AmountWidth, Align.Right)] : []),
                Column.Fixed($"To pay, {quoted.Total.Currency.Code}", AmountWidth, Align.Right),
            ],
            [
                .. told.Payments.Select(one => Row.Of(
                [
                    Wording.Capital(PriceWords.When(one.Payment.Stage.On)),
                    one.Date is { } date ? DateWords.Of(date) : "to be agreed",
                    MoneyWords.Share(one.Payment.Stage.Share),
                    .. Taxed(one.Payment.OfTax),
                    MoneyWords.Of(one.Payment.ToPay),
                ])),
                new Row(RowKind.Total, ["In all", "", "", .. Taxed(quoted.Tax), MoneyWords.Of(quoted.Total)]),
            ],
            style);

        Cell[] Taxed(Measures.Money tax) => isTaxed ? [MoneyWords.Of(tax)] : [];
    }
}
