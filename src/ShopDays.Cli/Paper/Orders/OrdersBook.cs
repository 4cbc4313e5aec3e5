using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Paper.Orders;

/// <summary>The orders in hand as a sheet to pin up: their dates, and whose work the sessions of the next two weeks hold.</summary>
internal static class OrdersBook
{
    // The roomiest first: the orders take the first that lets them stand on one side of a sheet.
    private static readonly Way[] Ways = [new(10.5, 9, 6), new(10, 8.5, 4), new(9.5, 8, 3)];

    /// <summary>Sets it. The same values give the same bytes.</summary>
    /// <param name="told">The orders.</param>
    /// <param name="another">When a new one could be promised; null when that was not asked.</param>
    /// <param name="made">When.</param>
    /// <returns>A PDF file.</returns>
    public static byte[] Set(ToldOrders told, ToldNewOrder? another, Instant made)
    {
        using var book = new Book(new Imprint("Orders in hand", $"Orders in hand, {told.Shop.Name}", "en", made));
        var sheet = new Sheet(book, told.Shop.Paper, Margins.Usual, new($"Orders in hand, {told.Shop.Name}", $"Two weeks from {DateWords.Of(told.From)}", $"Made {DateWords.Long(told.Today)}"));
        var blocks = Densities.First(Ways, way => [.. Blocks(told, another, way)], new(sheet.Area.Width, sheet.Area.Height)) ?? [.. Blocks(told, another, Ways[0])];
        foreach (var block in blocks)
        {
            sheet.Add(block);
        }

        sheet.Finish();
        return book.ToBytes();
    }

    private static IEnumerable<Block> Blocks(ToldOrders told, ToldNewOrder? another, Way way)
    {
        yield return new Heading("Orders in hand", TypeScale.Title) { BookmarkLevel = 0, Above = 0 };
        if (told.Plan is not { } plan)
        {
            yield return new Paragraph($"{told.Shop.Name}, {DateWords.Long(told.Today)}. None is in hand.", TypeScale.Body);
            foreach (var block in NewOrder(told, another, way))
            {
                yield return block;
            }

            yield break;
        }

        yield return new Paragraph($"{told.Shop.Name}, {DateWords.Long(told.Today)}. All of it takes {CountWords.Of(plan.ShopDays, "shop day")} and ends on {DateWords.Of(plan.Finish.Date)} if all goes as expected.", TypeScale.Body);
        yield return new Table(
            [
                Column.Shared("Order"),
                Column.Fixed("Its date", 78),
                Column.Fixed("As likely as not", 78),
                Column.Fixed("Four in five", 78),
                Column.Fixed("Chance of its date", 62, Align.Right),
            ],
            [.. told.Orders.Select(order => RowOf(order, way))],
            TypeScale.Bench with { Size = way.Size + 0.5 });
        foreach (var block in NewOrder(told, another, way))
        {
            yield return block;
        }

        if (told.Room is { } room)
        {
            yield return new Paragraph(room, TypeScale.Body with { Size = way.Size });
        }

        string[] notes = [.. told.Orders.Where(order => order.DaysLate > 0).Select(order => $"{order.Title} is {CountWords.Of(order.DaysLate, "day")} late in this plan."), .. OrderWords.OfLate(told.Orders), .. OrderWords.OfDates(told.Orders, told.Today), .. OrderWords.OfBoards(told.Orders)];
        if (notes.Length > 0)
        {
            yield return new NoteBox("To settle", notes, TypeScale.Body with { Size = way.Size }) { Caution = true };
        }

        if (told.AtRisk.Count > 0)
        {
            yield return new Together(
                new Heading(PlanWords.AtRiskInShort, TypeScale.Subheading with { Size = way.Size + 1.5 }) { Above = way.Above },
                new Bullets([.. told.AtRisk.Select(one => PlanWords.OfRiskInShort(one.Risk, told.Shop.Workers.Count > 1, told.Orders.Count > 1 ? one.Order.Title : null))], TypeScale.Body with { Size = way.Size }));
        }

        yield return new Heading($"Two weeks from {DateWords.Long(told.From)}", TypeScale.Heading) { BookmarkLevel = 0 };
        foreach (var day in told.Near.GroupBy(session => session.Session.Date))
        {
            yield return DayOf(told, day.Key, [.. day], way);
        }

        if (PaperNames.Remark([told.Shop.Name, .. told.Orders.Select(order => order.Title), .. told.Near.SelectMany(session => session.Work).Select(work => work.Task.Name)]) is { } remark)
        {
            yield return new Paragraph(remark, TypeScale.Small);
        }
    }

    /// <summary>When a new piece could be promised, and what it would do to the others.</summary>
    private static IEnumerable<Block> NewOrder(ToldOrders told, ToldNewOrder? another, Way way)
    {
        if (another is null)
        {
            yield break;
        }

        var body = TypeScale.Body with { Size = way.Size };
        yield return new Heading($"{another.Title}: when it could be promised", TypeScale.Heading) { BookmarkLevel = 0 };
        yield return new Paragraph(another.Answer, body.In(Weight.SemiBold));
        yield return new Paragraph(another.Policy, body);
        if (another.Among is { } among)
        {
            yield return new Table(
                [Column.Shared("Chance of its date"), Column.Fixed("Its date", 78), Column.Fixed("Now", 78, Align.Right), Column.Fixed("With it behind", 78, Align.Right), Column.Fixed("With it among", 78, Align.Right)],
                [.. OtherOrderRow.Of(told, another, among).Select(row => Row.Of(row.Order, row.Date, row.Now, row.Behind, row.Among))],
                body);
        }
    }

    private static Row RowOf(ToldOrder order, Way way) => Row.Of(
        new TextCell(order.Title) { Style = new(way.Size + 0.5, Weight.SemiBold), Note = $"{HourWords.Of(order.Left)} at the bench{(order.IsBegun ? " left" : "")}, planned {DateWords.Plain(order.Planned.Date)}" },
        order.Date is { } date ? DateWords.Plain(date) : "none",
        OrderWords.DateOf(order.Forecast.P50),
        OrderWords.DateOf(order.Forecast.P80),
        OrderWords.ChanceOf(order.Forecast));

    private static Together DayOf(ToldOrders told, LocalDate date, IReadOnlyList<PlannedSession> sessions, Way way) => new(
        new Heading(DateWords.Long(date), TypeScale.Subheading with { Size = way.Size + 1.5 }) { Above = way.Above },
        new Table(
            [Column.Fixed("", 78), Column.Fixed("", 14), Column.Shared("")],
            [.. sessions.SelectMany(session => RowsOf(told, session, way))],
            TypeScale.Body with { Size = way.Size }) { After = 2 });

    private static IEnumerable<Row> RowsOf(ToldOrders told, PlannedSession session, Way way)
    {
        var hours = $"{DateWords.At(session.Session.Start)}-{DateWords.At(session.Session.End)}{(told.Shop.Workers.Count > 1 ? " " + session.Session.Worker : "")}";
        foreach (var (place, (order, words)) in OrderWords.Of(session).Index())
        {
            yield return Row.Of(place == 0 ? hours : "", new TickCell(), new TextCell(order) { Style = new(way.Size, Weight.SemiBold), Note = words, NoteStyle = TypeScale.Small with { Size = way.Aside }, NoteRunsOn = true });
        }
    }

    /// <summary>How closely the sheet is set.</summary>
    /// <param name="Size">Of its text.</param>
    /// <param name="Aside">Of what is done in a session.</param>
    /// <param name="Above">White above each date, in points.</param>
    private readonly record struct Way(double Size, double Aside, double Above);
}
