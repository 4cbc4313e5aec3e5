using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Paper.Orders;

/// <summary>The orders in hand as a sheet to pin up: their dates, and whose work the sessions of the next two weeks hold.</summary>
internal static class OrdersBook
{
    /// <summary>Sets it. The same values give the same bytes.</summary>
    /// <param name="told">The orders.</param>
    /// <param name="made">When.</param>
    /// <returns>A PDF file.</returns>
    public static byte[] Set(ToldOrders told, Instant made)
    {
        using var book = new Book(new Imprint("Orders in hand", $"Orders in hand, {told.Shop.Name}", "en", made));
        var sheet = new Sheet(book, told.Shop.Paper, Margins.Usual, new($"Orders in hand, {told.Shop.Name}", $"Two weeks from {DateWords.Of(told.From)}", $"Made {DateWords.Long(told.Today)}"));
        foreach (var block in Blocks(told))
        {
            sheet.Add(block);
        }

        sheet.Finish();
        return book.ToBytes();
    }

    private static IEnumerable<Block> Blocks(ToldOrders told)
    {
        yield return new Heading("Orders in hand", TypeScale.Title) { BookmarkLevel = 0, Above = 0 };
        if (told.Plan is not { } plan)
        {
            yield return new Paragraph($"{told.Shop.Name}, {DateWords.Long(told.Today)}. None is in hand.", TypeScale.Body);
            yield break;
        }

        yield return new Paragraph($"{told.Shop.Name}, {DateWords.Long(told.Today)}. All of it takes {CountWords.Of(plan.ShopDays, "shop day")} and is finished on {DateWords.Of(plan.Finish.Date)} if all goes as expected.", TypeScale.Body);
        yield return new Table(
            [
                Column.Shared("Order"),
                Column.Fixed("Its date", 74),
                Column.Fixed("As likely as not", 74),
                Column.Fixed("Four in five", 74),
                Column.Fixed("Chance of its date", 52, Align.Right),
            ],
            [.. told.Orders.Select(RowOf)],
            TypeScale.Bench with { Size = 11.5 });
        string[] notes = [.. told.Orders.Where(order => order.DaysLate > 0).Select(order => $"{order.Title} is {CountWords.Of(order.DaysLate, "day")} late in this plan."), .. OrderWords.OfDates(told.Orders, told.Today), .. OrderWords.OfBoards(told.Orders)];
        if (notes.Length > 0)
        {
            yield return new NoteBox("To settle", notes, TypeScale.Body) { Caution = true };
        }

        yield return new Heading("The next two weeks", TypeScale.Heading) { BookmarkLevel = 0 };
        foreach (var day in told.Near.GroupBy(session => session.Session.Date))
        {
            yield return DayOf(told, day.Key, [.. day]);
        }

        if (PaperNames.Remark([told.Shop.Name, .. told.Orders.Select(order => order.Title), .. told.Near.SelectMany(session => session.Work).Select(work => work.Task.Name)]) is { } remark)
        {
            yield return new Paragraph(remark, TypeScale.Small);
        }
    }

    private static Row RowOf(ToldOrder order) => Row.Of(
        new TextCell(order.Title) { Style = (TypeScale.Bench with { Size = 11.5 }).In(Weight.SemiBold), Note = $"{HourWords.Of(order.Left)} at the bench{(order.IsBegun ? " left" : "")}, planned for {DateWords.Of(order.Planned.Date)}" },
        order.Date is { } date ? DateWords.Plain(date) : "none",
        DateOf(order.Forecast.P50),
        DateOf(order.Forecast.P80),
        order.Forecast.ChanceOfDue is { } chance ? OrderWords.Chance(chance) : "");

    private static Together DayOf(ToldOrders told, LocalDate date, IReadOnlyList<PlannedSession> sessions) => new(
        new Heading(DateWords.Long(date), TypeScale.Subheading) { Above = 6 },
        new Table(
            [Column.Fixed("", 78), Column.Fixed("", 14), Column.Shared("")],
            [.. sessions.SelectMany(session => RowsOf(told, session))],
            TypeScale.Body) { After = 2 });

    private static IEnumerable<Row> RowsOf(ToldOrders told, PlannedSession session)
    {
        var hours = $"{DateWords.At(session.Session.Start)}-{DateWords.At(session.Session.End)}{(told.Shop.Workers.Count > 1 ? " " + session.Session.Worker : "")}";
        foreach (var (place, (order, words)) in OrderWords.Of(session).Index())
        {
            yield return Row.Of(place == 0 ? hours : "", new TickCell(), new TextCell(order) { Style = TypeScale.Body.In(Weight.SemiBold), Note = words, NoteStyle = TypeScale.Small, NoteRunsOn = true });
        }
    }

    private static string DateOf(ZonedDateTime? time) => time is { } known ? DateWords.Plain(known.Date) : "not in years";
}
