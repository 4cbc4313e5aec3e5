using System.Globalization;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Times;

namespace ShopDays.Cli.Paper;

/// <summary>How the paper of one plan writes ranges of time, lengths, sizes and weights.</summary>
/// <param name="Plan">The plan.</param>
internal sealed record Wording(PlanPaper Plan)
{
    /// <summary>The range that four times in five holds: <c>16 to 41 min</c>, <c>1 h 40 to 3 h 05</c>.</summary>
    /// <param name="range">The range of the whole.</param>
    /// <param name="share">The share of it that is meant, above 0 and at most 1.</param>
    public static string Span(TimeRange range, double share = 1)
    {
        var (low, high) = (Minutes(range.P10 * share), Minutes(range.P90 * share));
        return high < 120 ? $"{CountWords.Number(low)} to {CountWords.Number(high)} min" : $"{HoursAndMinutes(low)} to {HoursAndMinutes(high)}";
    }

    /// <summary>Whole hours from ten up, quarters of an hour below: <c>38 h</c>, <c>1.75 h</c>; halves away from zero.</summary>
    public static string Hours(WorkTime time) => time.Hours >= 10
        ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(time.Hours, MidpointRounding.AwayFromZero):0} h")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(time.Hours * 4, MidpointRounding.AwayFromZero) / 4:0.##} h");

    /// <summary>A share as a whole percentage.</summary>
    public static string Share(double share) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round(share * 100, MidpointRounding.AwayFromZero):0} %");

    /// <summary>The same words with a capital at their head.</summary>
    public static string Capital(string words) =>
        words.Length == 0 ? words : string.Concat(words[..1].ToUpperInvariant(), words.AsSpan(1));

    /// <summary>Words with the signs that a terminal may lack: 2 × 3 m².</summary>
    public static string Signed(string words) =>
        words.Replace(" x ", " × ", StringComparison.Ordinal).Replace(" m2", " m²", StringComparison.Ordinal).Replace(" m3", " m³", StringComparison.Ordinal);

    /// <summary>A length as the shop writes it.</summary>
    public string Length(Length length) => Plan.Format.Write(length);

    /// <summary>Two or three sides: <c>30" × 2"</c>, <c>560 × 140 × 20 mm</c>.</summary>
    public string Sides(params IReadOnlyList<Length> sides) => Sides(Plan.Format, sides);

    /// <summary>Two or three sides as a format writes them; millimetres are named once.</summary>
    public static string Sides(LengthFormat format, params IReadOnlyList<Length> sides) =>
        string.Join(" × ", sides.Select((side, order) => order < sides.Count - 1 ? Figure(format, side) : format.Write(side)));

    /// <summary>A length beside others of its kind: millimetres go without their name, as on a drawing.</summary>
    public static string Figure(LengthFormat format, Length length)
    {
        var written = format.Write(length);
        return written.EndsWith(" mm", StringComparison.Ordinal) ? written[..^3] : written;
    }

    /// <summary>The finished size of a part.</summary>
    public string Finished(Part part) => Sides(part.Length, part.Width, part.Thickness);

    /// <summary>A board with its timber and size.</summary>
    public string Board(Board board) => $"Board {board.Name}: {board.Species.Name}, {Sides(board.Length, board.Width, board.Thickness)}";

    /// <summary>How much sawing: feet in a shop of inches, metres otherwise.</summary>
    public string Sawing(Length length) => InInches
        ? string.Create(CultureInfo.InvariantCulture, $"{Math.Round(length.Feet, MidpointRounding.AwayFromZero):0} ft")
        : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(length.Millimetres / 1000, 1, MidpointRounding.AwayFromZero):0.#} m");

    /// <summary>A weight: pounds in a shop of inches, kilograms otherwise.</summary>
    public string Weight(Mass mass) => MassText.Write(mass, InInches);

    /// <summary>A board's blanks that come of a part, with the piece's size.</summary>
    public string Blank(Blank blank) => Sides(blank.Length, blank.Width);

    private static int Minutes(WorkTime time) => (int)Math.Round(time.Minutes, MidpointRounding.AwayFromZero);

    private static string HoursAndMinutes(int minutes) => minutes < 60
        ? $"{CountWords.Number(minutes)} min"
        : string.Create(CultureInfo.InvariantCulture, $"{minutes / 60} h {minutes % 60:00}");

    private bool InInches => Plan.Shop.Units is LengthUnit.Inch or LengthUnit.Foot;
}
