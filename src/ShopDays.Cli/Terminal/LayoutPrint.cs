using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Measures;
using Spectre.Console;

namespace ShopDays.Cli.Terminal;

/// <summary>A layout for the eyes: what it comes to, what is missing, then each board with its sketch, key and cuts.</summary>
internal static class LayoutPrint
{
    /// <summary>Prints it.</summary>
    /// <param name="screen">Where to.</param>
    /// <param name="job">Name of the job.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="preference">Which way it leans.</param>
    /// <param name="format">How lengths are written.</param>
    public static void Print(Screen screen, string job, Layouts.Layout layout, LayoutPreference preference, LengthFormat format)
    {
        screen.Wrapped(layout.Fits ? $"{job}: every part comes out of the stock." : $"{job}: the stock does not yield every part.");
        if (layout.Sawn.Count > 0)
        {
            screen.Wrapped("Already sawn:");
            foreach (var board in layout.Sawn)
            {
                screen.Wrapped($"- {board.Board.Name}: {SawnWords.Blanks(board)}", indent: 2);
            }
        }

        if (layout.ToCut.Count > 0 || layout.Sawn.Count == 0)
        {
            screen.Wrapped(FormattableString.Invariant(
                $"{CountWords.Of(layout.ToCut.Count, "board")} cut: {YieldWords.Of(layout)}."));
            screen.Wrapped(FormattableString.Invariant(
                $"{SawnWords.Of(layout.RipLength, format)} of rip and straightening, {SawnWords.Of(layout.CrosscutLength, format)} of crosscut, about {WorkTimeText.Write(layout.SawingTime)} at the saw, lining up and rest included."));
            PrintCost(screen, layout.Cost, preference, format);
        }
        else
        {
            screen.Wrapped("No board is left to be sawn.");
        }

        PrintMissing(screen.Out, screen, layout, format);
        foreach (var wish in layout.NotHonoured)
        {
            screen.Wrapped(WishWords.Of(wish));
        }

        if (layout.ToCut.Count > 0)
        {
            screen.Out.WriteLine();
            screen.Wrapped("In the sketches the end to measure from is at the left, the edge below; dots are lost, what is left blank is kept, × is a flaw. Each cut is told by its near side: the saw goes beyond it.");
        }

        foreach (var board in layout.ToCut)
        {
            PrintBoard(screen, board, format);
        }
    }

    /// <summary>Prints what no board yields and what would do; nothing when everything fits.</summary>
    /// <param name="output">Where to.</param>
    /// <param name="screen">How wide.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="format">How lengths are written.</param>
    public static void PrintMissing(TextWriter output, Screen screen, Layouts.Layout layout, LengthFormat format)
    {
        if (layout.Fits)
        {
            return;
        }

        output.WriteLine();
        output.WriteLine("Left over:");
        foreach (var line in UnplacedWords.Lines(layout.Unplaced, format))
        {
            screen.Wrapped(output, "- " + line, indent: 2);
        }

        output.WriteLine(layout.Wanted.Count > 0
            ? "The least extra stock that would do, in sizes that a yard sells:"
            : "More stock would not help.");
        foreach (var one in layout.Wanted)
        {
            screen.Wrapped(output, "- " + UnplacedWords.Wanted(one, format), indent: 2);
        }
    }

    /// <summary>Prints which files were written; nothing where none were.</summary>
    public static void PrintWritten(Screen screen, IReadOnlyList<string> files)
    {
        if (files.Count > 0)
        {
            screen.Out.WriteLine();
            screen.Wrapped($"Written: {string.Join(", ", files)}", indent: 2);
        }
    }

    private static void PrintCost(Screen screen, LayoutCost cost, LayoutPreference preference, LengthFormat format)
    {
        List<(string Name, string Amount)> lines = [.. CostWords.Lines(cost).Where(line => line.Amount.Amount != 0).Select(line => (line.Name, line.Amount.ToString()))];
        if (lines.Count > 0)
        {
            screen.Out.WriteLine();
            screen.Out.WriteLine("What the layout decides, in money:");
            var (names, amounts) = (lines.Max(line => line.Name.Length), lines.Max(line => line.Amount.Length));
            foreach (var (name, amount) in lines)
            {
                screen.Out.WriteLine($"  {name.PadRight(names)}  {amount.PadLeft(amounts)}");
            }
        }

        foreach (var remark in CostWords.Assumptions(cost, format).Prepend(CostWords.Bound(cost)).Append(CostWords.Leaning(preference)).OfType<string>())
        {
            screen.Wrapped(remark);
        }
    }

    private static void PrintBoard(Screen screen, BoardLayout board, LengthFormat format)
    {
        var stock = board.Board;
        screen.Out.WriteLine();
        screen.Wrapped(FormattableString.Invariant(
            $"{stock.Name}  {stock.Species}, {format.Write(stock.Length)} x {format.Write(stock.Width)} x {format.Write(stock.Thickness)}, {MassText.Write(stock.Weight, pounds: format != LengthFormat.Millimetres)}{(board.IsBestFaceUp ? ", best face up" : "")}"));
        foreach (var line in BoardSketch.Lines(board, screen.Width))
        {
            screen.Out.WriteLine(line);
        }

        screen.Wrapped(string.Join("; ", board.Blanks.Select((blank, place) =>
            $"{BoardSketch.LetterOf(place)} {blank.Blank.Label}, {format.Write(blank.Region.Length)} x {format.Write(blank.Region.Width)}{(blank.Blank.IsResawn ? ", resawn" : "")}".Replace(' ', '\u00a0'))));
        List<string> kept = [.. board.Offcuts.Where(offcut => offcut.IsUseful).Select(offcut => $"{format.Write(offcut.Region.Length)} x {format.Write(offcut.Region.Width)}".Replace(' ', '\u00a0'))];
        if (kept.Count > 0)
        {
            screen.Wrapped("keep " + string.Join("; ", kept), indent: 2);
        }

        screen.Out.WriteLine();
        var table = Grid.WithHeads(">cut", "kind", ">at", "from", ">length", "frees");
        foreach (var cut in board.Cuts)
        {
            table.AddTexts(
                FormattableString.Invariant($"{cut.Order}"),
                CutWords.Of(cut.Kind),
                format.Write(cut.At),
                CutWords.MeasuredFrom(cut.Kind),
                format.Write(cut.Length),
                cut.Frees);
        }

        screen.Console.Write(table);
    }
}
