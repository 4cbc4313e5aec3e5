using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work.Materials;

/// <summary>What a job takes: timber to buy and timber that is there, glue, finish, fittings, and what is on order.</summary>
public sealed record MaterialsList
{
    /// <summary>Timber that is missing, by species and rough thickness.</summary>
    public required IReadOnlyList<TimberToBuy> ToBuy { get; init; }

    /// <summary>Parts that no yard sells a board for, or that must come from a board which does not yield them; buying does not help.</summary>
    public required IReadOnlyList<Unplaced> NotToBeBought { get; init; }

    /// <summary>Boards on hand that are to be cut, by species and rough thickness.</summary>
    public required IReadOnlyList<TimberOnHand> OnHand { get; init; }

    /// <summary>The adhesives, in the order in which the job needs them.</summary>
    public required IReadOnlyList<SpreadWanted> Adhesives { get; init; }

    /// <summary>The finishes, in the order in which they are written.</summary>
    public required IReadOnlyList<SpreadWanted> Finishes { get; init; }

    /// <summary>Fittings to be bought, each with its count and price.</summary>
    public required IReadOnlyList<BoughtItem> Hardware { get; init; }

    /// <summary>Things that are ordered from others, or to be, and have not come.</summary>
    public required IReadOnlyList<Decision> OnOrder { get; init; }

    /// <summary>Whether timber is measured by the board foot; by the cubic metre otherwise.</summary>
    public required bool ByBoardFeet { get; init; }

    /// <summary>Works it out.</summary>
    /// <param name="job">The piece.</param>
    /// <param name="layout">Where its parts come out of the boards.</param>
    /// <param name="operations">The operations.</param>
    /// <param name="waits">Adhesives and finishes.</param>
    /// <param name="coverages">How far each goes, by its name.</param>
    /// <param name="byBoardFeet">Whether timber is sold by the board foot.</param>
    public static MaterialsList Of(Job job, Layout layout, OperationCatalogue operations, WaitTable waits, IReadOnlyDictionary<string, Coverage> coverages, bool byBoardFeet)
    {
        var missing = layout.Unplaced.Where(one => one.MoreStock == StockHelp.Helps).ToList();
        var spread = new SpreadReckoning(job, layout, operations, waits, coverages);
        return new()
        {
            ToBuy = [.. layout.Wanted.GroupBy(wanted => (wanted.Species, wanted.Thickness)).Select(alike => TimberToBuy.Of([.. alike], [.. missing.Where(one => ThicknessFor(one.Part, layout.Wanted, job.Allowances) == alike.Key)], job.Allowances, byBoardFeet))],
            NotToBeBought = [.. layout.Unplaced.Where(one => one.MoreStock != StockHelp.Helps)],
            OnHand = [.. layout.ToCut.Where(board => board.Blanks.Count > 0).GroupBy(board => (board.Board.Species, board.Board.Thickness)).Select(alike => TimberOnHand.Of([.. alike], layout, byBoardFeet))],
            Adhesives = spread.Adhesives(),
            Finishes = spread.Finishes(),
            Hardware = job.Commission.Hardware,
            OnOrder = [.. job.Decisions.Where(one => one is { IsOrdered: true, Arrived: null })],
            ByBoardFeet = byBoardFeet,
        };
    }

    /// <summary>The thinnest of the stock wanted that a part comes out of.</summary>
    private static (Species, Length)? ThicknessFor(Part part, IReadOnlyList<StockWanted> wanted, Allowances allowances) => wanted
        .Where(one => one.Species == part.Species && one.Thickness - allowances.PlaningDepth(one.Each) >= part.Thickness)
        .OrderBy(one => one.Thickness)
        .Select(one => ((Species, Length)?)(one.Species, one.Thickness))
        .FirstOrDefault();
}

/// <summary>Timber of one species and thickness that is missing.</summary>
public sealed record TimberToBuy
{
    /// <summary>The timber.</summary>
    public required Species Species { get; init; }

    /// <summary>Rough thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>What stays in the piece.</summary>
    public required Volume Net { get; init; }

    /// <summary>How much more is bought as a rule of the trade, without a layout on the boards of the yard.</summary>
    public required WasteFactor Waste { get; init; }

    /// <summary>The boards by which the layout comes out, in sizes that a yard sells.</summary>
    public required IReadOnlyList<StockWanted> Boards { get; init; }

    /// <summary>What those boards measure at the yard.</summary>
    public required Volume InBoards { get; init; }

    /// <summary>The parts that are missing, each once.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>The longest blank: a board is to be clear for as long.</summary>
    public required Length Longest { get; init; }

    /// <summary>The widest blank of one piece, or strip of a panel: a board is to be sound for as wide.</summary>
    public required Length Widest { get; init; }

    /// <summary>What to buy by the rule of the trade, with luck.</summary>
    public Volume Least => Net * (1 + Waste.Low);

    /// <summary>What to buy by the rule of the trade, without.</summary>
    public Volume Most => Net * (1 + Waste.High);

    internal static TimberToBuy Of(IReadOnlyList<StockWanted> boards, IReadOnlyList<Unplaced> missing, Allowances allowances, bool byBoardFeet)
    {
        var first = boards[0];
        List<Part> parts = [.. missing.Select(one => one.Part).Distinct()];
        return new()
        {
            Species = first.Species,
            Thickness = first.Thickness,
            Net = missing.Where(one => one.Number <= one.Part.Count).Aggregate(Volume.Zero, (sum, one) => sum + one.Part.Volume),
            Waste = WasteFactor.Of(first.Species, first.Each.Edges),
            Boards = boards,
            InBoards = boards.Aggregate(Volume.Zero, (sum, one) => sum + (YardMeasure.Of(one.Length, one.Width, one.Thickness, byBoardFeet) * one.Count)),
            Parts = parts,
            Longest = parts.Select(part => part.Length + allowances.Length).DefaultIfEmpty().Max(),
            Widest = parts.Select(part => part.IsPanel ? Blank.LeastStrip + allowances.Strip : part.Width + allowances.Width).DefaultIfEmpty().Max(),
        };
    }
}

/// <summary>Boards of one species and thickness that are on hand and will be cut.</summary>
public sealed record TimberOnHand
{
    /// <summary>The timber.</summary>
    public required Species Species { get; init; }

    /// <summary>Rough thickness.</summary>
    public required Length Thickness { get; init; }

    /// <summary>The boards.</summary>
    public required IReadOnlyList<BoardLayout> Boards { get; init; }

    /// <summary>What they measure as a yard measures them.</summary>
    public required Volume InBoards { get; init; }

    /// <summary>What of them stays in the piece; a spare blank does not.</summary>
    public required Volume Net { get; init; }

    /// <summary>What of them is kept as useful offcuts, measured in the same way.</summary>
    public required Volume Kept { get; init; }

    /// <summary>What is neither in the piece nor kept: sawn and planed away, trimmed, flawed, too small, spare.</summary>
    public Volume Lost => InBoards - Net - Kept;

    /// <summary>The waste factor that the layout found: what is lost, as a share of what stays in the piece; null where nothing does.</summary>
    public double? WasteFound => Net > Volume.Zero ? Lost / Net : null;

    internal static TimberOnHand Of(IReadOnlyList<BoardLayout> boards, Layout layout, bool byBoardFeet) => new()
    {
        Species = boards[0].Board.Species,
        Thickness = boards[0].Board.Thickness,
        Boards = boards,
        InBoards = boards.Aggregate(Volume.Zero, (sum, one) => sum + YardMeasure.Of(one.Board.Length, one.Board.Width, one.Board.Thickness, byBoardFeet)),
        Net = boards.SelectMany(board => board.Blanks).Aggregate(Volume.Zero, (sum, placed) => sum + InThePiece(placed.Blank, layout)),
        Kept = boards.SelectMany(board => board.Offcuts.Where(offcut => offcut.IsUseful), (board, offcut) => YardMeasure.Of(offcut.Region.Length, offcut.Region.Width, board.Board.Thickness, byBoardFeet)).Aggregate(Volume.Zero, (sum, one) => sum + one),
    };

    /// <summary>What of a blank stays in the piece: of a panel's strip its share by width.</summary>
    private static Volume InThePiece(Blank blank, Layout layout)
    {
        var whole = blank.Part.Volume * blank.Numbers.Count(number => number <= blank.Part.Count);
        if (blank.Strip == 0)
        {
            return whole;
        }

        var all = layout.Boards.SelectMany(board => board.Blanks).Where(one => one.Blank.Part == blank.Part && one.Blank.Numbers[0] == blank.Numbers[0]).Aggregate(Length.Zero, (sum, one) => sum + one.Blank.Width);
        return whole * (blank.Width / all);
    }
}
