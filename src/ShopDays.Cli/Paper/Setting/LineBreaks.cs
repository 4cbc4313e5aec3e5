using System.Globalization;
using System.Text.RegularExpressions;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// Breaks text into lines: each takes as many words as fit. Spaces that do not break (U+00A0) hold their
/// words together, and so do the spaces within a measure such as 9 1/4 in, 1 h 15 min or 20 × 9 in, within a count such as
/// (1 of 4), and within the numbers of cuts such as cuts 4, 6. What is wider than a whole line is broken
/// there after all, and at last between characters, so that nothing is lost.
/// </summary>
public static partial class LineBreaks
{
    private const char Held = '\u00A0';
    private static readonly char[] Blanks = [' ', '\t'];

    /// <summary>Breaks a text.</summary>
    /// <param name="text">Words; a line feed in it begins a new line.</param>
    /// <param name="style">How it will be set.</param>
    /// <param name="width">Of a line, in points.</param>
    /// <returns>The lines from the top; one empty line for a text without words.</returns>
    public static IReadOnlyList<string> Of(string text, TextStyle style, double width)
    {
        var lines = new List<string>();
        foreach (var stretch in text.ReplaceLineEndings("\n").Split('\n'))
        {
            AddLines(lines, stretch, style, width);
        }

        return lines;
    }

    private static void AddLines(List<string> lines, string stretch, TextStyle style, double width)
    {
        var space = style.WidthOf(" ");
        var line = new List<string>();
        var used = 0.0;
        foreach (var word in WithinMeasureOrCuts().Replace(stretch, $"{Held}").Split(Blanks, StringSplitOptions.RemoveEmptyEntries))
        {
            foreach (var part in Parts(word, style, width))
            {
                var needed = style.WidthOf(part);
                if (line.Count > 0 && used + space + needed > width)
                {
                    lines.Add(string.Join(' ', line));
                    line.Clear();
                }

                used = line.Count == 0 ? needed : used + space + needed;
                line.Add(part);
            }
        }

        lines.Add(string.Join(' ', line));
    }

    // After a figure: a common fraction, or a unit.
    private const string OfAFigure = @"(?<=[0-9¼½¾]) (?=[0-9]+/[0-9]|(?:in|ft|mm|cm|m|ft2|m2|bf|lb|kg|min|h|d|°C|°F|%)(?![\p{L}\p{N}]))";

    // Hours before minutes, days before hours.
    private const string OfATime = @"(?<=[0-9] h) (?=[0-9]{1,2}(?: min)?\b)|(?<=[0-9] d) (?=[0-9]+ h\b)";

    // About the sign between two sides.
    private const string OfSides = @"(?<=[0-9a-z""]) (?=× [0-9])|(?<=[0-9a-z""] ×) (?=[0-9])";

    // In brackets, which of how many.
    private const string OfACount = @"(?<=\([0-9]+(?:[-–][0-9]+)?) (?=of [0-9]+\))|(?<=\([0-9]+(?:[-–][0-9]+)? of) (?=[0-9]+\))";

    // After the word cut or cuts: one number after the other.
    private const string OfCuts = @"(?<=\bcuts?(?: [0-9]+(?:[-–][0-9]+)?,)*) (?=[0-9])";

    [GeneratedRegex($"{OfAFigure}|{OfATime}|{OfSides}|{OfACount}|{OfCuts}")]
    private static partial Regex WithinMeasureOrCuts();

    private static IEnumerable<string> Parts(string word, TextStyle style, double width)
    {
        if (style.WidthOf(word) <= width)
        {
            yield return word;
            yield break;
        }

        if (word.Contains(Held))
        {
            foreach (var part in word.Split(Held).SelectMany(held => Parts(held, style, width)))
            {
                yield return part;
            }

            yield break;
        }

        var start = 0;
        var end = 0;
        while (end < word.Length)
        {
            var next = end + StringInfo.GetNextTextElementLength(word, end);
            if (end > start && style.WidthOf(word.AsSpan(start, next - start)) > width)
            {
                yield return word[start..end];
                start = end;
            }

            end = next;
        }

        yield return word[start..];
    }
}
