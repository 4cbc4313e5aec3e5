using ShopDays.Cli.Phrases;
using ShopDays.Measures;

namespace ShopDays.Cli.Terminal;

/// <summary>How a job stands, for the eyes: one glance first, then hours, dates, and what made the difference.</summary>
internal static class ProgressPrint
{
    private const int MostRows = 10;

    /// <summary>Prints it.</summary>
    public static void Print(Screen screen, ToldProgress told)
    {
        screen.Wrapped(told.Glance);
        if (told.Stopped is { } stopped)
        {
            screen.Wrapped(StoppedWords.Of(stopped, told.Marks));
        }

        screen.Out.WriteLine();
        PrintHours(screen, told);
        PrintDates(screen, told);
        screen.Out.WriteLine();
        PrintMoved(screen, told);
        PrintDifferences(screen, told);
        foreach (var note in told.Notes)
        {
            screen.Wrapped(note);
        }

        TimesPrint.Print(screen, told.Behind);
    }

    private static void PrintHours(Screen screen, ToldProgress told)
    {
        var table = Grid.WithHeads("", ">tasks", ">promised", ">spent", ">to come", ">difference");
        foreach (var row in StateRow.Of(told.Progress))
        {
            table.AddTexts(row.Name, CountWords.Number(row.Tasks), HourWords.Of(row.Promised), HourWords.Of(row.Spent), HourWords.Of(row.Left), HourWords.Signed(row.Difference));
        }

        screen.Console.Write(table);
        if (told.Progress.LeftTime is { } left)
        {
            screen.Wrapped($"Hours and minutes, each task by its likely time. All that is to come takes {HourWords.Of(left.P50)} as likely as not, and between {HourWords.Of(left.P10)} and {HourWords.Of(left.P90)} four times in five.");
        }
    }

    private static void PrintDates(Screen screen, ToldProgress told)
    {
        if (told.Ahead is not { } ahead || told.FinishedOn is not null)
        {
            return;
        }

        screen.Out.WriteLine();
        var promise = told.Progress.Promise;
        var table = Grid.WithHeads("finished", told.IsRecorded ? $"promised {told.DateOf(promise.Made)}" : "would have been promised", "now");
        table.AddTexts("as likely as not", told.DateOf(promise.P50), told.DateOf(ahead.Forecast.P50?.ToInstant()));
        table.AddTexts("to promise (four in five)", told.DateOf(promise.P80), told.DateOf(ahead.Forecast.P80?.ToInstant()));
        table.AddTexts("with bad luck (nine in ten)", told.DateOf(promise.P90), told.DateOf(ahead.Forecast.P90?.ToInstant()));
        if (told.Read.Job.Due is { } due && ahead.Forecast.ChanceOfDue is { } chance)
        {
            table.AddTexts($"due {DateWords.Of(due)}", promise.ChanceOfDue is { } then ? Chance(then) : "", Chance(chance));
        }

        screen.Console.Write(table);
    }

    private static void PrintMoved(Screen screen, ToldProgress told)
    {
        if (told.Moved is { } moved && told.Why.Count > 0)
        {
            MovedPrint.Print(screen, moved, told.Why, told.IsRecorded);
            screen.Out.WriteLine();
        }
    }

    private static void PrintDifferences(Screen screen, ToldProgress told)
    {
        var rows = told.Differences.Where(row => HourWords.WholeMinutes(row.Difference) != 0).ToList();
        if (rows.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine("What made the difference at the bench");
        var shown = rows.Count <= MostRows + 1 ? rows : rows[..MostRows];
        foreach (var row in shown)
        {
            Line(row.Difference, row.Mark.Length == 0 ? row.What : $"{row.Mark} {row.What}", row.Why);
        }

        // What the lines do not name, the rounding of their minutes included, so that they add up to the sum as printed.
        var rest = HourWords.WholeMinutes(told.Progress.Difference) - shown.Sum(row => HourWords.WholeMinutes(row.Difference));
        if (rest != 0 || shown.Count < rows.Count)
        {
            Line(WorkTime.FromMinutes(rest), shown.Count < rows.Count ? $"{CountWords.Of(rows.Count - shown.Count, "other")}" : "parts of minutes", "together");
        }

        screen.Out.WriteLine();

        void Line(WorkTime difference, string what, string why) => screen.Hanging(FormattableString.Invariant($"  {HourWords.Signed(difference),6}  "), $"{what}: {why}");
    }

    private static string Chance(double chance) => $"a chance of {ChanceWords.Of(chance)}";
}
