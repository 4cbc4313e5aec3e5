using System.Text;
using System.Text.RegularExpressions;
using Xunit;

namespace ShopDays.Cli.Tests.Calendars;

/// <summary>Goes over the bytes of a calendar by the letter of RFC 5545; made apart from the writer.</summary>
internal static partial class StrictLines
{
    private static readonly UTF8Encoding Utf8 = new(false, throwOnInvalidBytes: true);

    /// <summary>The lines as they were before folding.</summary>
    public static IReadOnlyList<string> Of(byte[] file)
    {
        List<string> lines = [];
        foreach (var line in Split(file))
        {
            // 3.1: no more than 75 octets, the break excluded; a fold never cuts a character here, so that each line is UTF-8 by itself (6).
            Assert.InRange(line.Length, 1, 75);
            var text = Utf8.GetString(line);

            // 3.1: CONTROL is all controls but the tab.
            Assert.DoesNotContain(text, letter => char.IsControl(letter) && letter != '\t');
            if (text[0] is ' ' or '\t')
            {
                lines[^1] += text[1..];
            }
            else
            {
                lines.Add(text);
            }
        }

        Assert.All(lines, line => Assert.Matches(Line(), line));
        return lines;
    }

    /// <summary>3.1: lines are delimited by CRLF; neither half stands alone, and the last line is ended too.</summary>
    private static List<byte[]> Split(byte[] file)
    {
        List<byte[]> lines = [];
        var from = 0;
        for (var at = 0; at < file.Length; at++)
        {
            Assert.False(file[at] == '\n', $"a line feed without a carriage return at byte {at}");
            if (file[at] != '\r')
            {
                continue;
            }

            Assert.True(at + 1 < file.Length && file[at + 1] == '\n', $"a carriage return without a line feed at byte {at}");
            lines.Add(file[from..at]);
            at++;
            from = at + 1;
        }

        Assert.Equal(file.Length, from);
        return lines;
    }

    /// <summary>3.1: a name, parameters with values that are quoted or hold no colon, semicolon, comma or quote, a colon, a value.</summary>
    [GeneratedRegex("""^[A-Za-z0-9-]+(;[A-Za-z0-9-]+=("[^"]*"|[^":;,]*)(,("[^"]*"|[^":;,]*))*)*:.*$""", RegexOptions.CultureInvariant)]
    private static partial Regex Line();
}
