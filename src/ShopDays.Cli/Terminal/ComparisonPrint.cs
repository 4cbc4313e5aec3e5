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
        screen.Out.WriteLine($"{told.Read.Job.Name}: {ComparisonWords.Title(told)}");
        screen.Out.WriteLine();
        if (told.Others.Count > 0)
        {
            PrintTables(screen, told);
            PrintWords(screen, told);
        }

        if (ComparisonWords.AsItIs(told) is { } cannot)
        {
            screen.Wrapped(cannot);
        }

        foreach (var note in ComparisonWords.Notes(told))
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
            foreach (var (lead, words) in ComparisonWords.Of(told, other))
            {
                screen.Hanging("   ", lead + words);
            }
        }

        screen.Out.WriteLine();
    }

    private static string Number(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);
}
