using System.Text;

namespace ShopDays.Cli.Calendars;

/// <summary>The lines that a calendar is made of (RFC 5545, 3.1), and text in them (3.3.11).</summary>
internal static class ContentLine
{
    /// <summary>Octets of a line at the most, its break not counted (RFC 5545, 3.1).</summary>
    public const int LongestOctets = 75;

    /// <summary>What ends a line.</summary>
    public const string Break = "\r\n";

    /// <summary>Adds a line; one that is too long is folded between two characters, never within one.</summary>
    public static void AddTo(StringBuilder text, string line)
    {
        var octets = 0;
        foreach (var rune in line.EnumerateRunes())
        {
            if (octets + rune.Utf8SequenceLength > LongestOctets)
            {
                text.Append(Break).Append(' ');
                octets = 1;
            }

            text.Append(rune.ToString());
            octets += rune.Utf8SequenceLength;
        }

        text.Append(Break);
    }

    /// <summary>Words as they stand in the value of a property: what would end it is escaped, control characters are spaces.</summary>
    public static string Text(string words)
    {
        var text = new StringBuilder(words.Length);
        foreach (var rune in words.ReplaceLineEndings("\n").EnumerateRunes())
        {
            text.Append(rune.Value switch
            {
                '\n' => "\\n",
                '\\' or ';' or ',' => $"\\{rune}",
                _ when Rune.IsControl(rune) => " ",
                _ => rune.ToString(),
            });
        }

        return text.ToString();
    }

    /// <summary>The lines of a file as they were before folding, each with the number of its first line in the file, from 1.</summary>
    public static IReadOnlyList<(int Number, string Line)> Unfolded(string text)
    {
        List<(int Number, string Line)> lines = [];
        foreach (var (place, line) in text.ReplaceLineEndings("\n").Split('\n').Index())
        {
            if (lines.Count > 0 && line.StartsWith(' '))
            {
                lines[^1] = lines[^1] with { Line = lines[^1].Line + line[1..] };
            }
            else if (line.Length > 0)
            {
                lines.Add((place + 1, line));
            }
        }

        return lines;
    }

    /// <summary>The name of a line's property: what stands before its parameters and its value.</summary>
    public static string NameOf(string line) => line.IndexOfAny([':', ';']) is var end and > 0 ? line[..end] : line;
}
