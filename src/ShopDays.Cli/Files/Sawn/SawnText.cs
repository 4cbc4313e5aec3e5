using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Files.Sawn;

/// <summary>Writes what is sawn as a file that a maker may change by hand and that is read back without loss.</summary>
internal static partial class SawnText
{
    /// <summary>The whole file.</summary>
    /// <param name="job">The name of the piece.</param>
    /// <param name="sawn">The boards that are sawn.</param>
    /// <param name="format">How lengths of the job are written.</param>
    public static string Of(string job, IReadOnlyList<BoardLayout> sawn, LengthFormat format)
    {
        var text = new StringBuilder();
        text.Append("# Boards already sawn for ").Append(job).Append(".\n");
        text.Append("# Take out a blank that is spoiled: it is laid out again. Take out a board that is not sawn after all, or this\n");
        text.Append("# whole file. A rest is an offcut kept: a board of its own, from which parts may come. 'at' says how far from the\n");
        text.Append("# end and from the edge of its board a piece lay. 'on' says when the last cut was made: the pieces rest from\n");
        text.Append("# then on before they are planed.\n");
        text.Append("sawn:\n");
        foreach (var board in sawn)
        {
            text.Append("  - board: ").Append(Scalar(board.Board.Name)).Append('\n');
            if (board.SawnOn is { } on)
            {
                text.Append(CultureInfo.InvariantCulture, $"    on: {on:uuuu'-'MM'-'dd}\n");
            }

            text.Append("    blanks:\n");
            foreach (var (blank, region) in board.Blanks)
            {
                var numbers = string.Join(", ", blank.Numbers.Select(number => number.ToString(CultureInfo.InvariantCulture)));
                var number = blank.IsResawn ? $"[{numbers}]" : numbers;
                var strip = blank.Strips > 0 ? FormattableString.Invariant($", strip: {blank.Strip} of {blank.Strips}") : "";
                text.Append(CultureInfo.InvariantCulture, $"      - {{part: {Scalar(blank.Part.Name)}, number: {number}{strip}, {Place(region, format)}}}\n");
            }

            if (board.Offcuts.Count > 0)
            {
                text.Append("    rests:\n");
            }

            foreach (var offcut in board.Offcuts)
            {
                text.Append(CultureInfo.InvariantCulture, $"      - {{rest: {Scalar(offcut.Name!)}, {Place(offcut.Region, format)}}}\n");
            }
        }

        return text.ToString();
    }

    private static string Place(Region region, LengthFormat format) =>
        $"length: {Exact(region.Length, format)}, width: {Exact(region.Width, format)}, at: [{Exact(region.X, format)}, {Exact(region.Y, format)}]";

    /// <summary>A length as the job writes it where that loses nothing, else in finer fractions or in thousandths of a millimetre.</summary>
    private static string Exact(Length length, LengthFormat format)
    {
        LengthFormat[] formats = format == LengthFormat.Millimetres ? [format] : [format, LengthFormat.Inches(64)];
        return formats.FirstOrDefault(one => one.IsExact(length)) is { } exact
            ? exact.Write(length)
            : (length.EighthMicrometres / 8_000m).ToString("0.######", CultureInfo.InvariantCulture) + " mm";
    }

    private static string Scalar(string text) => Plain().IsMatch(text)
        ? text
        : "\"" + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";

    [GeneratedRegex("^[A-Za-z0-9]([A-Za-z0-9 _.()/-]*[A-Za-z0-9)])?$", RegexOptions.CultureInvariant)]
    private static partial Regex Plain();
}
