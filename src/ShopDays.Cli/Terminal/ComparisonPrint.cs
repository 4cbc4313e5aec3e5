using System.Globalization;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Terminal;

/// <summary>Ways of doing a job side by side, for the eyes.</summary>
internal static class ComparisonPrint
{
    /// <summary>Columns beside the job as it is that a terminal of 80 columns holds.</summary>
    private const int MostInARow = 3;

    /// <summary>Prints them.</summary>
    public static void Print(Screen screen, ToldComparison told)
    {
        screen.Out.WriteLine($"{told.Read.Job.Name}: {(told.Suggested is null ? "done otherwise" : "single changes that would save days or money")}");
        screen.Out.WriteLine();
        if (told.Others.Count > 0)
        {
            PrintTables(screen, told);
            PrintWords(screen, told);
        }

        if (told.AsIs.Outcome is null)
        {
            screen.Wrapped($"The job as it is cannot be planned: {string.Join("; ", told.AsIs.Against)}");
        }

        foreach (var note in Notes(told))
        {
            screen.Wrapped(note);
        }

        TimesPrint.Print(screen, told.Behind);
    }

    private static void PrintTables(Screen screen, ToldComparison told)
    {
        foreach (var some in told.Others.Index().Chunk(MostInARow))
        {
            var table = Grid.WithHeads(["", ">as it is", .. some.Select(one => ">" + Number(one.Index))]);
            foreach (var row in ComparedRows.Of(told, [told.AsIs, .. some.Select(one => one.Item)]))
            {
                table.AddTexts([row.Name, .. row.Cells]);
            }

            screen.Console.Write(table);
        }
    }

    private static void PrintWords(Screen screen, ToldComparison told)
    {
        foreach (var (index, other) in told.Others.Index())
        {
            screen.Hanging(Number(index).PadRight(3), other.Name);
            if (other.Outcome is null)
            {
                screen.Hanging("   ", $"Cannot be done: {string.Join("; ", other.Against)}");
            }
            else if (told.Of(other) is { } difference)
            {
                screen.Hanging("   ", $"Changes: {DifferenceWords.Changes(difference, told.Risk)}.");
                screen.Hanging("   ", $"Because: {DifferenceWords.Causes(difference, told.AsIs.Outcome!, other.Outcome)}.");
            }

            if (other.Text is { } text)
            {
                screen.Hanging("   ", $"As a variant: {text}");
            }
        }

        screen.Out.WriteLine();
    }

    private static IEnumerable<string> Notes(ToldComparison told)
    {
        if (told.Suggested is { } tried)
        {
            yield return tried == 0
                ? "There was no single change to try: the shop file names no machines, no helper to call in, and no hours to lengthen."
                : $"{CountWords.Of(tried, "single change")} tried; those that save neither a day of the promise nor money are not shown.";
        }

        yield return "All ways are reckoned in the same drawn courses of the work, so that what differs is not luck, and each has a plan of its own.";
        if (told.BringsMachines)
        {
            yield return "A machine brings dangers of its own: its cautions stand on the plan of a job that is done by it, and whoever is new to it learns it from somebody who knows it.";
        }

        if (told.IsBegun)
        {
            yield return "Work of this job is logged; the whole job is compared, as if nothing were done.";
        }
    }

    private static string Number(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);
}
