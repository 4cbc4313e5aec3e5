using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Terminal;

/// <summary>The orders in hand for the eyes: the dates side by side, each order in words, then whose work the next sessions hold.</summary>
internal static class OrdersPrint
{
    /// <summary>Weeks that are told one by one after the sessions.</summary>
    private const int MostWeeks = 8;

    /// <summary>Prints them.</summary>
    /// <param name="screen">Where to.</param>
    /// <param name="told">The orders.</param>
    /// <param name="all">Whether every session is printed.</param>
    public static void Print(Screen screen, ToldOrders told, bool all)
    {
        screen.Wrapped($"Orders in hand, {told.Shop.Name}, {DateWords.Of(told.Today)}");
        if (told.Plan is not { } plan)
        {
            screen.Wrapped("None is in hand.");
            PrintNotes(screen, told);
            return;
        }

        var table = Grid.WithHeads("", "date", "50 %", "80 %", "90 %", ">chance");
        foreach (var order in told.Orders)
        {
            var forecast = order.Forecast;
            table.AddTexts(order.Title, order.Date is { } date ? DateWords.Plain(date) : "none", OrderWords.DateOf(forecast.P50), OrderWords.DateOf(forecast.P80), OrderWords.DateOf(forecast.P90), OrderWords.ChanceOf(forecast));
        }

        screen.Console.Write(table);
        foreach (var order in told.Orders)
        {
            screen.Wrapped($"{order.Title}: {order.Outlook}", indent: 2);
        }

        screen.Out.WriteLine();
        screen.Wrapped($"All of it takes {CountWords.Of(plan.ShopDays, "shop day")} in {CountWords.Of(plan.Sessions.Count, "session")}. Nothing can end before {DateWords.Of(plan.LowerBound.At)}, because of {plan.LowerBound.Reason}.");
        if (told.Room is { } room)
        {
            screen.Wrapped(room);
        }

        PlanPrint.PrintVisits(screen, plan.Visits);
        PlanPrint.PrintAtRisk(screen, [.. told.AtRisk.Select(one => PlanWords.OfRisk(one.Risk, told.Shop.Workers.Count > 1, told.Orders.Count > 1 ? one.Order.Title : null))]);

        PrintNotes(screen, told);
        PrintSessions(screen, all ? plan.Sessions : told.Near);
        if (!all)
        {
            PrintWeeks(screen, told.Later);
        }
    }

    /// <summary>Prints when a new one could be promised.</summary>
    public static void Print(Screen screen, ToldOrders told, ToldNewOrder another, bool all)
    {
        screen.Wrapped(another.Answer);
        screen.Wrapped(another.Policy);
        if (another.Among is { } among)
        {
            var table = Grid.WithHeads("chance of its date", "date", ">now", ">with it behind", ">with it among");
            foreach (var row in OtherOrderRow.Of(told, another, among))
            {
                table.AddTexts(row.Order, row.Date, row.Now, row.Behind, row.Among);
            }

            screen.Console.Write(table);
        }

        PrintNotes(screen, told);
        if (all)
        {
            PrintSessions(screen, another.Behind.Plan.Sessions);
        }
    }

    /// <summary>Prints why there is no plan.</summary>
    public static void Print(Screen screen, PlanAnswer.CannotBePlanned answer)
    {
        screen.Error.WriteLine("The orders cannot be planned:");
        foreach (var line in ObstacleWords.Lines(answer.Reasons, withOrders: true))
        {
            screen.Wrapped(screen.Error, "- " + line, indent: 2);
        }
    }

    private static void PrintNotes(Screen screen, ToldOrders told)
    {
        TimesPrint.Print(screen, told.Behind);
        foreach (var note in told.Notes)
        {
            screen.Wrapped(note);
        }
    }

    private static void PrintSessions(Screen screen, IReadOnlyList<PlannedSession> sessions)
    {
        foreach (var day in sessions.GroupBy(session => session.Session.Date))
        {
            screen.Out.WriteLine();
            screen.Out.WriteLine(DateWords.Of(day.Key));
            foreach (var session in day)
            {
                screen.Out.WriteLine($"  {DateWords.At(session.Session.Start)}-{DateWords.At(session.Session.End)}  {session.Session.Worker}");
                foreach (var (order, words) in OrderWords.Of(session))
                {
                    screen.Hanging("    ", $"{order} {words}");
                }
            }
        }
    }

    private static void PrintWeeks(Screen screen, IReadOnlyList<PlannedSession> later)
    {
        if (later.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine("After that, hours at the bench by week");
        var weeks = later.GroupBy(session => OrderWords.WeekOf(session.Session.Date)).ToList();
        foreach (var week in weeks.Take(MostWeeks))
        {
            screen.Hanging($"  {DateWords.Short(week.Key)}: ", OrderWords.Of(week));
        }

        screen.Wrapped($"{CountWords.Of(later.Count, "session")} up to {DateWords.Of(later[^1].Session.Date)}; --all prints each.");
    }
}
