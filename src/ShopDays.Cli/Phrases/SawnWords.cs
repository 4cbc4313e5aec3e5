using System.Globalization;
using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Phrases;

/// <summary>Lengths of sawing, volumes of timber and quantities of work in the units that the job is written in.</summary>
internal static class SawnWords
{
    private const double MetresPerFoot = 0.3048;

    private const int MostPlaces = 6;

    /// <summary>Below so many of a unit a tenth of it is told.</summary>
    private const double Small = 10;

    /// <summary>The blanks of a board by their labels: <c>side 1, side 2</c>.</summary>
    public static string Blanks(BoardLayout board) => board.Blanks.Count == 0 ? "no blanks" : string.Join(", ", board.Blanks.Select(placed => placed.Blank.Label));

    /// <summary><c>48 ft</c>, <c>0.3 ft</c> or <c>14.6 m</c>.</summary>
    public static string Of(Length length, LengthFormat format) => IsMetric(format)
        ? Number(length.Millimetres / 1000) + " m"
        : Number(length.Feet) + " ft";

    /// <summary><c>2.4 board feet</c>, or <c>0.006 m3</c>.</summary>
    public static string Of(Volume volume, LengthFormat format) => IsMetric(format)
        ? string.Create(CultureInfo.InvariantCulture, $"{volume.CubicMetres:0.000} m3")
        : string.Create(CultureInfo.InvariantCulture, $"{volume.BoardFeet:0.0} board feet");

    /// <summary>A quantity of work with its unit: feet become metres where the job is written in them, counted things stay.</summary>
    public static (double Quantity, string Unit) Of(double quantity, string unit, LengthFormat format)
    {
        var (first, rest) = (unit.Split(' ')[0], unit[unit.Split(' ')[0].Length..]);
        return (IsMetric(format), first) switch
        {
            (true, "ft") => (quantity * MetresPerFoot, "m" + rest),
            (true, "ft2") => (quantity * MetresPerFoot * MetresPerFoot, "m2" + rest),
            (true, "in") => (quantity * MetresPerFoot / 12, "m" + rest),
            _ => (quantity, unit),
        };
    }

    /// <summary>
    /// A quantity of work as a number: tenths as a rule, below one two figures that count, so that a little work is not told
    /// as none: <c>17.6</c>, <c>0.2</c>, <c>0.043</c>.
    /// </summary>
    public static string Quantity(double quantity)
    {
        if (quantity is <= 0 or >= 1)
        {
            return quantity.ToString("0.#", CultureInfo.InvariantCulture);
        }

        var places = Math.Min(MostPlaces, 1 - (int)Math.Floor(Math.Log10(quantity)));
        return quantity.ToString("0." + new string('#', places), CultureInfo.InvariantCulture);
    }

    private static bool IsMetric(LengthFormat format) => format == LengthFormat.Millimetres;

    private static string Number(double number) => number.ToString(number < Small ? "0.0" : "0", CultureInfo.InvariantCulture);
}
