using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Spectre.Console;

namespace ShopDays.Cli.Terminal;

/// <summary>How dry the boards are, and how much the parts will move, for the eyes.</summary>
internal static class DrynessPrint
{
    /// <summary>Prints the verdict on each board, those with the same together.</summary>
    public static void Print(Screen screen, ShopAndJob read)
    {
        if (read.Job.Boards.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine("Dry enough for final sizes?");
        var verdicts = read.Job.Boards
            .Select(board => Dryness.Of(board, read.Job.Air, read.Job.Start, read.Waits))
            .GroupBy(one => $"{DrynessWords.Verdict(one, read.Job.Start)} ({DrynessWords.Reason(one, read.Job.Air, read.Job.Start)})");
        foreach (var alike in verdicts)
        {
            screen.Wrapped($"- {BoardMarks.Of(alike.Select(one => one.Board), read.Job.Boards)}: {alike.Key}", indent: 2);
        }
    }

    /// <summary>Prints how much the wide parts will move; nothing where none is wide.</summary>
    public static void Print(Screen screen, Job job, IReadOnlyList<Movement> movements, LengthFormat format)
    {
        if (movements.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Out.WriteLine("How much wide parts will move across the grain over the year:");
        var table = Grid.WithHeads("part", "made at", ">shrinks", ">swells", ">groove side", ">slot");
        foreach (var one in movements)
        {
            table.AddTexts(one.Part.Name, MovementWords.Made(one), MovementWords.By(one.Shrinks, format), MovementWords.By(one.Swells, format), MovementWords.By(one.Swells / 2, format), MovementWords.By(one.InAll, format));
        }

        screen.Console.Write(table);
        screen.Wrapped($"{MovementWords.Range(job)} Groove side: the room to leave at either side of a panel that floats in grooves. Slot: how long it must be at the far edge when the other is fixed; a top fixed along its middle moves half of that at each edge, and a drawer as high as this wants a gap of what it swells.");
    }
}
