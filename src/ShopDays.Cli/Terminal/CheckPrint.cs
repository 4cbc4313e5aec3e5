using System.Globalization;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Work;
using Spectre.Console;

namespace ShopDays.Cli.Terminal;

/// <summary>Prints what <c>shopdays check</c> found: mistakes, or the stock and the parts with their weights.</summary>
internal static class CheckPrint
{
    private const string HeavyMark = "*";

    /// <summary>Prints it.</summary>
    /// <param name="screen">Where.</param>
    /// <param name="reading">What was read.</param>
    /// <param name="foreseen">What stands against a plan as it is.</param>
    /// <param name="now">The moment.</param>
    public static void Print(Screen screen, ShopAndJobReading reading, IReadOnlyList<Unplannable> foreseen, Instant now)
    {
        if (reading.Read is { } read)
        {
            PrintSummary(screen, read);
            PrintDoubts(screen, reading.Doubts);
            PrintAwaited(screen, AwaitedWords.InFile(read, now));
            PrintForeseen(screen, foreseen);
            return;
        }

        foreach (var finding in reading.Findings)
        {
            screen.Located(screen.Out, finding.Place.ToString(), finding.Message);
        }

        screen.Out.WriteLine(CountWords.Of(reading.Findings.Count, "mistake"));
    }

    private static void PrintSummary(Screen screen, ShopAndJob read)
    {
        var limits = read.Shop.Limits;
        var format = read.Located.Format;
        var inPounds = read.Located.Units == LengthUnit.Inch;
        screen.Out.WriteLine($"{read.Job.Name}: no mistakes in {read.JobFileName}");
        screen.Out.WriteLine();

        var stock = Table("stock", "timber", "as it lies there", "each");
        foreach (var alike in Alike(read.Job.Boards))
        {
            stock.AddRow(Marks(alike), alike[0].Species.Name, Written(alike[0].Length, alike[0].Width, alike[0].Thickness), Weight(alike[0].Weight));
        }

        screen.Console.Write(stock);
        screen.Out.WriteLine($"{CountWords.Of(read.Job.Boards.Count, "board")}, {MassText.Write(Weights.OfBoards(read.Job.Boards), inPounds)} in all");
        screen.Out.WriteLine();

        var parts = Table("part", "timber", "finished", "each");
        foreach (var part in read.Job.Parts)
        {
            parts.AddRow(
                Markup.Escape(part.Count == 1 ? part.Name : string.Create(CultureInfo.InvariantCulture, $"{part.Count} x {part.Name}")),
                part.Species.Name,
                Written(part.Length, part.Width, part.Thickness),
                Weight(Weights.OfPart(part, read.Job.Boards)));
        }

        screen.Console.Write(parts);
        screen.Out.WriteLine($"{CountWords.Of(read.Job.Parts.Sum(part => part.Count), "piece")} of {CountWords.Of(read.Job.Parts.Count, "part")}");
        if (read.Job.Boards.Any(board => limits.IsForTwo(board.Weight)) || read.Job.Parts.Any(part => limits.IsForTwo(Weights.OfPart(part, read.Job.Boards))))
        {
            screen.Out.WriteLine();
            screen.Wrapped($"{HeavyMark} over {MassText.Write(limits.LiftAlone, inPounds)}, what one person lifts alone in this shop: get a second pair of hands, or move one end at a time", indent: 2);
        }

        DrynessPrint.Print(screen, read);
        DrynessPrint.Print(screen, read.Job, Movement.Of(read.Job, null, read.Waits), format);
        PrintNights(screen, read);
        PlanPrint.PrintUnused(screen, [.. UnusedWords.OfYear(read).Select(span => UnusedWords.Of(span, read.Shop))]);
        PrintDoubled(screen, UnusedWords.Doubled(read));

        string Written(Length length, Length width, Length thickness) => $"{format.Write(length)} x {format.Write(width)} x {format.Write(thickness)}";

        string Weight(Mass mass) => MassText.Write(mass, inPounds) + (limits.IsForTwo(mass) ? " " + HeavyMark : "");
    }

    private static void PrintDoubts(Screen screen, IReadOnlyList<Finding> doubts)
    {
        if (doubts.Count > 0)
        {
            screen.Out.WriteLine();
            screen.Out.WriteLine("Look at this again:");
            foreach (var doubt in doubts)
            {
                screen.Wrapped($"- {doubt}", indent: 2);
            }
        }
    }

    /// <summary>Hours with a time that the clock shows twice; nothing when there are none.</summary>
    private static void PrintDoubled(Screen screen, IReadOnlyList<string> hours)
    {
        if (hours.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine("Times that come twice:");
        foreach (var one in hours)
        {
            screen.Wrapped("- " + one, indent: 2);
        }
    }

    /// <summary>What is still awaited from others; nothing when nothing is.</summary>
    private static void PrintAwaited(Screen screen, IReadOnlyList<string> awaited)
    {
        if (awaited.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine("Still awaited:");
        foreach (var one in awaited)
        {
            screen.Wrapped("- " + one, indent: 2);
        }
    }

    /// <summary>What the shop's nights mean for glue-ups and finishes; nothing in a heated shop.</summary>
    private static void PrintNights(Screen screen, ShopAndJob read)
    {
        var remarks = NightRemarks.Of(read.Job, null, read.Waits, read.Shop.Limits.Nights);
        if (remarks.Count > 0)
        {
            screen.Out.WriteLine();
            screen.Out.WriteLine("The nights in the shop:");
            foreach (var said in RemarkGroups.Said(remarks))
            {
                screen.Wrapped($"- {said}", indent: 2);
            }
        }
    }

    /// <summary>What stands against a plan; nothing when nothing does that can be seen yet.</summary>
    private static void PrintForeseen(Screen screen, IReadOnlyList<Unplannable> foreseen)
    {
        if (foreseen.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine("As it stands, it cannot be planned:");
        foreach (var line in ObstacleWords.Lines(foreseen))
        {
            screen.Wrapped("- " + line, indent: 2);
        }
    }

    private static Table Table(params string[] heads)
    {
        var table = new Table().Border(TableBorder.Simple);
        foreach (var head in heads)
        {
            table.AddColumn(head);
        }

        table.Columns[^1].RightAligned();
        return table;
    }

    /// <summary>Boards that follow each other and differ in nothing but their marks.</summary>
    private static List<List<Board>> Alike(IReadOnlyList<Board> boards)
    {
        var groups = new List<List<Board>>();
        foreach (var board in boards)
        {
            if (groups.Count > 0 && groups[^1][0] is var first && first with { Name = board.Name } == board)
            {
                groups[^1].Add(board);
            }
            else
            {
                groups.Add([board]);
            }
        }

        return groups;
    }

    private static string Marks(List<Board> alike) => Markup.Escape(alike.Count == 1 ? alike[0].Name : $"{alike[0].Name} to {alike[^1].Name}");
}
