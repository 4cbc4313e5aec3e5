using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Work.Materials;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays materials --json</c>: volumes in cubic metres and board feet, surfaces in square metres.</summary>
internal static class MaterialsJson
{
    /// <summary>The list as an object to be written.</summary>
    public static object Of(ToldMaterials told) => new
    {
        Job = told.Read.Job.Name,
        ToBuy = told.List.ToBuy.Select(one => new
        {
            Species = one.Species.Name,
            ThicknessMm = JsonAnswer.Millimetres(one.Thickness),
            Net = VolumeOf(one.Net),
            WasteLow = one.Waste.Low,
            WasteHigh = one.Waste.High,
            Least = VolumeOf(one.Least),
            Most = VolumeOf(one.Most),
            InBoards = VolumeOf(one.InBoards),
            LongestMm = JsonAnswer.Millimetres(one.Longest),
            WidestMm = JsonAnswer.Millimetres(one.Widest),
            Parts = one.Parts.Select(part => part.Name),
            Boards = one.Boards.Select(board => new { board.Count, LengthMm = JsonAnswer.Millimetres(board.Length), WidthMm = JsonAnswer.Millimetres(board.Width), board.ClearOfFlaws }),
        }),
        NotToBeBought = told.List.NotToBeBought.Select(one => new { Part = one.Part.Name, one.Number, Why = UnplacedWords.Why(one, told.Format) }),
        OnHand = told.List.OnHand.Select(one => new
        {
            Species = one.Species.Name,
            ThicknessMm = JsonAnswer.Millimetres(one.Thickness),
            Boards = one.Boards.Select(board => board.Board.Name),
            InBoards = VolumeOf(one.InBoards),
            Net = VolumeOf(one.Net),
            Kept = VolumeOf(one.Kept),
            Lost = VolumeOf(one.Lost),
            WasteFound = one.WasteFound is { } waste ? Math.Round(waste, 4, MidpointRounding.AwayFromZero) : (double?)null,
        }),
        Adhesives = told.List.Adhesives.Select(SpreadOf),
        Finishes = told.List.Finishes.Select(SpreadOf),
        Hardware = told.List.Hardware.Select(one => new { one.Name, one.Count, Each = CostJson.Text(one.Each) }),
        OnOrder = told.List.OnOrder.Select(one => new { What = one.Name, From = one.From, Ordered = one.Asked is { } date ? JsonAnswer.Date(date) : null }),
    };

    private static object VolumeOf(Volume volume) => new
    {
        BoardFeet = Math.Round(volume.BoardFeet, 4, MidpointRounding.AwayFromZero),
        CubicMetres = Math.Round(volume.CubicMetres, 6, MidpointRounding.AwayFromZero),
    };

    private static object SpreadOf(SpreadWanted one) => new
    {
        one.Name,
        one.Coats,
        SurfaceM2 = Math.Round(one.Surface.SquareMetres, 4, MidpointRounding.AwayFromZero),
        one.Coverage?.Measure,
        Least = Rounded(one.Least),
        Most = Rounded(one.Most),
        Source = one.Coverage?.Source,
    };

    private static double? Rounded(double? quantity) => quantity is { } known ? Math.Round(known, 4, MidpointRounding.AwayFromZero) : null;
}
