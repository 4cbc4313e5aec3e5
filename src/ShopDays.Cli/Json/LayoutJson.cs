using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays layout --json</c>.</summary>
internal static class LayoutJson
{
    /// <summary>The layout as an object to be written.</summary>
    public static object Of(Layout layout, Job job, IReadOnlyList<Movement> movements, LengthFormat format, TimesBehind behind) => new
    {
        layout.Fits,
        Unplaced = UnplacedOf(layout, format),
        Wanted = WantedOf(layout),

        // The boards that are cut and those that are sawn already: as many as there are in boards below.
        BoardsUsed = layout.Boards.Count,
        layout.Yield,
        Bound = layout.BestPossibleYield,
        Proven = layout.HasBestYield,
        Cost = CostJson.Of(layout.Cost),
        RipFeet = Math.Round(layout.RipLength.Feet, 4, MidpointRounding.AwayFromZero),
        CrosscutFeet = Math.Round(layout.CrosscutLength.Feet, 4, MidpointRounding.AwayFromZero),
        SawingMinutes = JsonAnswer.Minutes(layout.SawingTime),
        MatchesNotKept = MatchesNotKept(layout),
        NotHonoured = NotHonoured(layout),
        behind.Entries,
        behind.PriorOnly,
        Times = TimesJson.Of(behind),
        Movement = DrynessJson.Of(movements, job),
        Boards = layout.Boards.Select(BoardOf),
    };

    /// <summary>What no board yields, spares among it.</summary>
    public static IEnumerable<object> UnplacedOf(Layout layout, LengthFormat format) => layout.Unplaced.Select(one => new
    {
        Part = one.Part.Name,
        one.Number,
        IsSpare = one.Number > one.Part.Count,
        Reason = UnplacedWords.Why(one, format),
        MoreStockHelps = one.MoreStock == StockHelp.Helps,
    });

    /// <summary>The stock that would do.</summary>
    public static IEnumerable<object> WantedOf(Layout layout) => layout.Wanted.Select(one => new
    {
        Species = one.Species.Name,
        one.Count,
        LengthMm = JsonAnswer.Millimetres(one.Length),
        WidthMm = JsonAnswer.Millimetres(one.Width),
        ThicknessMm = JsonAnswer.Millimetres(one.Thickness),
        BoardFeet = Math.Round(one.Volume.BoardFeet, 2, MidpointRounding.AwayFromZero),
        CubicMetres = Math.Round(one.Volume.CubicMetres, 5, MidpointRounding.AwayFromZero),
        one.ClearOfFlaws,
    });

    /// <summary>The names of matched parts that do not come from one board in sequence.</summary>
    public static IEnumerable<string> MatchesNotKept(Layout layout) =>
        layout.NotHonoured.Where(wish => wish is not UnmetWish.NotBestFace).Select(wish => wish.Name);

    /// <summary>What the maker wished and does not get.</summary>
    public static IEnumerable<object> NotHonoured(Layout layout) => layout.NotHonoured.Select(wish => new
    {
        wish.Name,
        Wish = wish is UnmetWish.NotBestFace ? "best face" : "matched",
        Kept = wish switch
        {
            UnmetWish.NotInOneBoard => "not in one board",
            UnmetWish.NotInSequence => "in one board, not in sequence",
            _ => "not the best face",
        },
        Numbers = wish is UnmetWish.NotBestFace not ? not.Numbers : [],
    });

    /// <summary>One board.</summary>
    public static object BoardOf(BoardLayout board) => new
    {
        Board = board.Board.Name,
        Species = board.Board.Species.Name,
        LengthMm = JsonAnswer.Millimetres(board.Board.Length),
        WidthMm = JsonAnswer.Millimetres(board.Board.Width),
        ThicknessMm = JsonAnswer.Millimetres(board.Board.Thickness),
        WeightKg = Math.Round(board.Board.Weight.Kilograms, 2, MidpointRounding.AwayFromZero),
        Sawn = board.IsSawn,
        BestFaceUp = board.IsBestFaceUp,
        Pieces = board.Blanks.SelectMany(PiecesOf),
        Cuts = board.Cuts.Select(cut => new
        {
            cut.Order,
            cut.Kind,
            AtMm = JsonAnswer.Millimetres(cut.At),
            LengthMm = JsonAnswer.Millimetres(cut.Length),
            Of = RegionOf(cut.Of),
            cut.Frees,
        }),
        Offcuts = board.Offcuts.Select(offcut => new
        {
            XMm = JsonAnswer.Millimetres(offcut.Region.X),
            YMm = JsonAnswer.Millimetres(offcut.Region.Y),
            LengthMm = JsonAnswer.Millimetres(offcut.Region.Length),
            WidthMm = JsonAnswer.Millimetres(offcut.Region.Width),
            Kept = offcut.IsUseful,
            offcut.Name,
        }),
    };

    /// <summary>A blank that is resawn is as many pieces as parts come of it, one above the other: <c>layer</c> counts them.</summary>
    private static IEnumerable<object> PiecesOf(PlacedBlank placed) => placed.Blank.Numbers.Select((number, layer) => new
    {
        Part = placed.Blank.Part.Name,
        Number = number,
        placed.Blank.Strip,
        placed.Blank.Strips,
        Layer = layer,
        Layers = placed.Blank.Numbers.Count,
        XMm = JsonAnswer.Millimetres(placed.Region.X),
        YMm = JsonAnswer.Millimetres(placed.Region.Y),
        LengthMm = JsonAnswer.Millimetres(placed.Region.Length),
        WidthMm = JsonAnswer.Millimetres(placed.Region.Width),
    });

    private static object RegionOf(Region region) => new
    {
        XMm = JsonAnswer.Millimetres(region.X),
        YMm = JsonAnswer.Millimetres(region.Y),
        LengthMm = JsonAnswer.Millimetres(region.Length),
        WidthMm = JsonAnswer.Millimetres(region.Width),
    };
}
