using System.Globalization;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work.Materials;

namespace ShopDays.Cli.Phrases;

/// <summary>A materials list with all that is told about it, in the shop's own units.</summary>
/// <param name="Read">The shop and the job.</param>
/// <param name="Layout">Where the parts come out of the boards.</param>
/// <param name="List">The list.</param>
/// <param name="Today">The date by the shop's clock.</param>
internal sealed record ToldMaterials(ShopAndJob Read, Layout Layout, MaterialsList List, LocalDate Today)
{
    private const double OuncesPerLitre = 33.814;
    private const double OuncesPerKilogram = 35.274;

    /// <summary>Says how quantities of glue and finish are meant.</summary>
    public const string OfQuantities = "Glue and finish are what is spread, by usual coverage; what stays in pot, rag and brush is not in it, and the container's own sheet goes first.";

    /// <summary>Says how timber to buy is meant.</summary>
    public string OfTimber => List.ByBoardFeet
        ? "Board feet are thickness x width x length as rough, with 4/4 as the least thickness; \"with waste\" is what the trade adds to what stays in the piece. The boards named are the least by which the layout comes out."
        : "\"With waste\" is what the trade adds to what stays in the piece. The boards named are the least by which the layout comes out.";

    /// <summary>How lengths are written.</summary>
    public LengthFormat Format => Read.Located.Format;

    /// <summary>A volume: <c>2.4 board feet</c>, <c>0.006 m3</c>.</summary>
    public string Volume(Volume volume) => SawnWords.Of(volume, Format);

    /// <summary>Timber with its rough thickness: <c>black cherry, 5/4</c>.</summary>
    public string Timber(Species species, Length thickness) => $"{species.Name}, {UnplacedWords.Thickness(thickness, Format)}";

    /// <summary>What to buy by the rule of the trade: <c>5.6 to 6.5 board feet (30 to 50 % waste)</c>.</summary>
    public string WithWaste(TimberToBuy one) => string.Create(CultureInfo.InvariantCulture, $"{Range(one.Least, one.Most)} ({one.Waste.Low * 100:0} to {one.Waste.High * 100:0} % waste)");

    /// <summary>The boards by which the layout comes out, each kind in a line.</summary>
    public IEnumerable<string> Boards(TimberToBuy one) => one.Boards.Select((board, place) => $"{CountWords.Number(board.Count)} of {Format.Write(board.Length)} x {Format.Write(board.Width)} or wider{(board.ClearOfFlaws ? ", clear of flaws" : "")}{(place == one.Boards.Count - 1 ? $": {Volume(one.InBoards)}{(one.Boards.Count > 1 ? " in all" : "")}" : "")}");

    /// <summary>What a board must give: <c>47" clear, 6 1/4" wide</c>.</summary>
    public string Clear(TimberToBuy one) => $"{Format.Write(Format.RoundedUp(one.Longest))} clear, {Format.Write(Format.RoundedUp(one.Widest))} wide";

    /// <summary>What becomes of boards on hand: <c>30.0 board feet: 12.4 stay in the piece, 10.1 are kept, 7.5 lost (60 % of what stays)</c>.</summary>
    public string Found(TimberOnHand one) => $"{Volume(one.InBoards)}: {Figure(one.Net)} in the piece, {Figure(one.Kept)} kept as offcuts, {Figure(one.Lost)} lost{(one.WasteFound is { } waste ? string.Create(CultureInfo.InvariantCulture, $" (waste {Math.Round(waste * 100, MidpointRounding.AwayFromZero):0} % of what is in the piece)") : "")}";

    /// <summary>How much of a glue or finish: <c>5 to 8 fl oz</c>, <c>140 to 210 ml</c>; that it is not known.</summary>
    public string Quantity(SpreadWanted one)
    {
        if (one is not { Least: { } least, Most: { } most, Coverage: { } coverage })
        {
            return "how far it goes is not known here";
        }

        var (factor, unit) = (List.ByBoardFeet, coverage.Measure) switch
        {
            (true, CoverageMeasure.Litres) => (OuncesPerLitre, "fl oz"),
            (true, CoverageMeasure.Kilograms) => (OuncesPerKilogram, "oz"),
            (false, CoverageMeasure.Litres) => (1000, "ml"),
            (false, CoverageMeasure.Kilograms) => (1000.0, "g"),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        var (low, high) = (Rounded(least * factor), Rounded(most * factor));
        return low == high ? $"{low} {unit}" : $"{low} to {high} {unit}";
    }

    /// <summary>What a glue or finish is spread on: <c>3 coats, 21 sq ft in all</c>.</summary>
    public string Surface(SpreadWanted one)
    {
        var area = List.ByBoardFeet
            ? string.Create(CultureInfo.InvariantCulture, $"{one.Surface.SquareFeet:0.0} sq ft")
            : string.Create(CultureInfo.InvariantCulture, $"{one.Surface.SquareMetres:0.00} m2");
        return one.Coats == 1 ? area : $"{area}, {CountWords.Number(one.Coats)} coats counted";
    }

    /// <summary>A fitting to buy: <c>16 x brass screw, reckoned at 0.35 USD each</c>.</summary>
    public static string Fitting(BoughtItem one) => $"{CountWords.Number(one.Count)} x {one.Name}, reckoned at {one.Each}{(one.Count == 1 ? "" : " each")}";

    /// <summary>A thing on order: <c>brass screws, from the ironmonger, ordered Tue 6 Apr 2027</c>.</summary>
    public static string Order(Decision one) => $"{one.What}{(one.Asked is { } date ? $", ordered {DateWords.Of(date)}" : ", to be ordered")}";

    private string Range(Volume low, Volume high) => $"{Figure(low)} to {Volume(high)}";

    private string Figure(Volume volume) => Volume(volume).Split(' ')[0];

    // Two figures that count are more than such a coverage is worth; never told as nothing.
    private static string Rounded(double quantity)
    {
        if (quantity < 1)
        {
            return Math.Max(0.1, Math.Round(quantity, 1, MidpointRounding.AwayFromZero)).ToString("0.#", CultureInfo.InvariantCulture);
        }

        var step = Math.Pow(10, Math.Max(0, Math.Floor(Math.Log10(quantity)) - 1));
        return (Math.Ceiling(quantity / step) * step).ToString("0", CultureInfo.InvariantCulture);
    }
}
