using ShopDays.Cli.Phrases;
using ShopDays.Work.Materials;

namespace ShopDays.Cli.Terminal;

/// <summary>A materials list for the eyes.</summary>
internal static class MaterialsPrint
{
    /// <summary>Prints it.</summary>
    public static void Print(Screen screen, ToldMaterials told)
    {
        var list = told.List;
        screen.Wrapped($"{told.Read.Job.Name}: " + (list.ToBuy.Count, list.NotToBeBought.Count) switch
        {
            (0, 0) => "no timber is to be bought; every part comes out of the stock.",
            (0, _) => "the stock does not yield every part, and buying timber does not help.",
            _ => "timber to buy",
        });
        foreach (var one in list.ToBuy)
        {
            PrintToBuy(screen, told, one);
        }

        foreach (var line in UnplacedWords.Lines(list.NotToBeBought, told.Format))
        {
            screen.Wrapped("- " + line, indent: 2);
        }

        if (list.ToBuy.Count > 0)
        {
            screen.Wrapped(told.OfTimber);
        }

        PrintOnHand(screen, told);
        PrintSpread(screen, told, "Glue", list.Adhesives);
        PrintSpread(screen, told, "Finish", list.Finishes);
        if (list.Adhesives.Count + list.Finishes.Count > 0)
        {
            screen.Wrapped(ToldMaterials.OfQuantities);
        }

        PrintList(screen, "Fittings", list.Hardware.Select(ToldMaterials.Fitting));
        PrintList(screen, "On order", list.OnOrder.Select(ToldMaterials.Order));
    }

    private static void PrintToBuy(Screen screen, ToldMaterials told, TimberToBuy one)
    {
        screen.Wrapped($"- {told.Timber(one.Species, one.Thickness)}: {told.Volume(one.Net)} in the piece, so {told.WithWaste(one)}", indent: 2);
        foreach (var boards in told.Boards(one))
        {
            screen.Hanging("    ", boards);
        }

        screen.Hanging("    ", $"{told.Clear(one)}, for {CountWords.Names([.. one.Parts.Select(part => part.Name)], 4)}");
    }

    private static void PrintOnHand(Screen screen, ToldMaterials told)
    {
        if (told.List.OnHand.Count == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Wrapped("From the stack");
        foreach (var one in told.List.OnHand)
        {
            screen.Wrapped($"- {told.Timber(one.Species, one.Thickness)}, {string.Join(", ", one.Boards.Select(board => board.Board.Name))}; {told.Found(one)}", indent: 2);
        }
    }

    private static void PrintSpread(Screen screen, ToldMaterials told, string heading, IReadOnlyList<SpreadWanted> all) =>
        PrintList(screen, heading, all.Select(one => $"{one.Name}: {told.Quantity(one)} ({told.Surface(one)})"));

    private static void PrintList(Screen screen, string heading, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length == 0)
        {
            return;
        }

        screen.Out.WriteLine();
        screen.Wrapped(heading);
        foreach (var line in all)
        {
            screen.Wrapped("- " + line, indent: 2);
        }
    }
}
