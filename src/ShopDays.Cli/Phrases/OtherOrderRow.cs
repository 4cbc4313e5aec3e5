using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>What becomes of an order in hand when another piece is taken on: the chance of its date, or the date to promise where it has none.</summary>
/// <param name="Order">The order.</param>
/// <param name="Date">Its date.</param>
/// <param name="Now">As it is.</param>
/// <param name="Behind">With the new piece in the time that the others leave.</param>
/// <param name="Among">With the new piece worked in among them.</param>
internal sealed record OtherOrderRow(string Order, string Date, string Now, string Behind, string Among)
{
    /// <summary>The orders with a date, then those without.</summary>
    /// <param name="told">The orders in hand.</param>
    /// <param name="another">The new piece.</param>
    /// <param name="among">The plan in which it is worked in among them.</param>
    public static IEnumerable<OtherOrderRow> Of(ToldOrders told, ToldNewOrder another, PlanAnswer.Planned among) => told.Orders.Index()
        .OrderBy(one => one.Item.Date is null)
        .Select(one => Of(one.Item, another.Behind.Forecasts[one.Index], among.Forecasts[one.Index]));

    private static OtherOrderRow Of(ToldOrder order, FinishForecast behind, FinishForecast among) => order.Date is { } date
        ? new(order.Title, DateWords.Plain(date), OrderWords.ChanceOf(order.Forecast), OrderWords.ChanceOf(behind), OrderWords.ChanceOf(among))
        : new($"{order.Title} (80\u00a0%)", "none", OrderWords.DateOf(order.Forecast.P80), OrderWords.DateOf(behind.P80), OrderWords.DateOf(among.P80));
}
