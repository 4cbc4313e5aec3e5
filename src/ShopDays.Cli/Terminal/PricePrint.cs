using ShopDays.Cli.Phrases;
using ShopDays.Prices;

namespace ShopDays.Cli.Terminal;

/// <summary>A price for the eyes.</summary>
internal static class PricePrint
{
    private const int LongestBar = 24;

    /// <summary>Prints it.</summary>
    public static void Print(Screen screen, ToldPrice told)
    {
        var (price, rate) = (told.Price, told.Risk.Rate);
        screen.Out.WriteLine($"{told.Job.Name}: price in {rate.Currency.Code}");
        screen.Out.WriteLine();
        PrintRate(screen, price.Terms.Rate);
        PrintCost(screen, told);
        PrintQuoted(screen, told);
        PrintPayments(screen, told);
        PrintRisk(screen, told);
        foreach (var note in told.Notes)
        {
            screen.Wrapped(note);
        }

        TimesPrint.Print(screen, told.Behind);
    }

    private static void PrintRate(Screen screen, ShopRate rate)
    {
        if (rate is not { ToEarn: { } toEarn, Billable: { } billable })
        {
            screen.Wrapped($"An hour has to earn {rate.PerHour}, as the shop says.");
            return;
        }

        var table = Grid.WithHeads("what an hour has to earn", ">in a year");
        foreach (var (name, amount) in rate.PerYear)
        {
            table.AddTexts(name, MoneyWords.Of(amount));
        }

        table.AddTexts("in all", MoneyWords.Of(toEarn));
        table.AddTexts($"by the hour, of {HourWords.Of(billable)} that are paid for", MoneyWords.Of(rate.PerHour));
        screen.Console.Write(table);
    }

    private static void PrintCost(Screen screen, ToldPrice told)
    {
        var table = Grid.WithHeads("what it costs", "working", ">amount");
        foreach (var group in told.Price.Lines.GroupBy(line => line.IsContingency))
        {
            foreach (var line in group)
            {
                table.AddTexts(PriceWords.NameOf(line), told.Words.WorkingOf(line, told.Risk.Rate), MoneyWords.Of(line.Amount));
            }

            table.AddTexts(group.Key ? "cost with what may go wrong" : "cost", "", MoneyWords.Of(group.Key ? told.Price.CostWithContingency : told.Price.Cost));
        }

        screen.Console.Write(table);
    }

    private static void PrintQuoted(Screen screen, ToldPrice told)
    {
        var table = Grid.WithHeads("what is asked for", "working", ">amount");
        foreach (var (what, working, amount) in QuotedRows.Of(told.Price))
        {
            table.AddTexts(what, working, MoneyWords.Of(amount));
        }

        screen.Console.Write(table);
        screen.Wrapped(QuotedRows.MarginLeft(told.Price));
    }

    private static void PrintPayments(Screen screen, ToldPrice told)
    {
        var table = Grid.WithHeads("payments", ">share", "about", ">of it tax", ">to pay");
        foreach (var (payment, date) in told.Payments)
        {
            table.AddTexts(
                PriceWords.When(payment.Stage.On),
                MoneyWords.Share(payment.Stage.Share),
                date is { } known ? DateWords.Of(known) : "no date",
                MoneyWords.Of(payment.OfTax),
                MoneyWords.Of(payment.ToPay));
        }

        screen.Console.Write(table);
    }

    private static void PrintRisk(Screen screen, ToldPrice told)
    {
        screen.Out.WriteLine();
        screen.Wrapped($"What the price may come to, before tax, in {CountWords.Of(told.Risk.Courses, "drawn course")} of the work:");
        foreach (var said in RiskWords.Of(told))
        {
            screen.Hanging("- ", said);
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine($"Chance that an hour earns less than {MoneyWords.Of(told.Risk.Rate)}, by the price before tax");
        var rows = RiskRow.Of(told.Risk, told.Marks);
        var widest = rows.Max(row => MoneyWords.Of(row.Price).Length);
        foreach (var row in rows)
        {
            var halves = (int)Math.Round(2.0 * LongestBar * row.Chance, MidpointRounding.AwayFromZero);
            var bar = new string('█', halves / 2) + (halves % 2 == 0 ? "" : "▌");
            screen.Out.WriteLine($"  {MoneyWords.Of(row.Price).PadLeft(widest)}  {bar.PadRight(LongestBar)} {ChanceWords.Of(row.Chance),9}  {row.Mark}".TrimEnd());
        }

        screen.Out.WriteLine();
    }
}
