using System.Text;
using ShopDays.Cli.Files.Yaml;

namespace ShopDays.Cli.Files;

/// <summary>
/// Splits CSV (RFC 4180, with comma, semicolon or tab) into fields that know their places. Written here because a place
/// needs the column of each field's first character, which the usual readers do not keep. An inch mark inside an unquoted
/// field is text: <c>47 1/2",9"</c>.
/// </summary>
internal static class CsvRows
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads all rows that are not empty; null when there are mistakes in how they are written, or too few of them.</summary>
    public static IReadOnlyList<IReadOnlyList<YamlText>>? Read(SourceFile file, Findings findings, CsvList list)
    {
        var start = new Place(file.Name, 1, 1);
        if (file.Bytes.Length > list.LargestBytes)
        {
            findings.Add(YamlMistakes.TooLargeAFile(start, file.Bytes.Length, list.LargestBytes));
            return null;
        }

        string text;
        try
        {
            text = Strict.GetString(file.Bytes).TrimStart('\uFEFF');
        }
        catch (DecoderFallbackException)
        {
            findings.Add(YamlMistakes.NotUtf8(start));
            return null;
        }

        var before = findings.Count;
        var rows = new List<IReadOnlyList<YamlText>>();
        var cursor = new Cursor(file.Name, text, findings);
        while (!cursor.IsAtEnd && findings.Count == before)
        {
            var row = cursor.ReadRow();
            if (row.All(field => string.IsNullOrWhiteSpace(field.Value)))
            {
                continue;
            }

            rows.Add(row);
            if (rows.Count > list.MostRows + 1)
            {
                findings.Add(CsvMistakes.TooManyRows(row[0].Place, list));
            }
        }

        if (findings.Count == before && rows.Count < (list.MayBeEmpty ? 1 : 2))
        {
            findings.Add(CsvMistakes.NoRows(start, list));
        }

        return findings.Count == before ? rows : null;
    }

    private sealed class Cursor(string file, string text, Findings findings)
    {
        private static readonly char[] Separators = [',', ';', '\t'];

        private readonly char separator = Separator(text);
        private int at;
        private int line = 1;
        private int lineStart;

        public bool IsAtEnd => at >= text.Length;

        private Place Here => new(file, line, at - lineStart + 1);

        public List<YamlText> ReadRow()
        {
            var row = new List<YamlText> { ReadField() };
            while (!IsAtEnd && text[at] == separator)
            {
                at++;
                row.Add(ReadField());
            }

            EndLine();
            return row;
        }

        private YamlText ReadField()
        {
            while (!IsAtEnd && text[at] == ' ')
            {
                at++;
            }

            return !IsAtEnd && text[at] == '"' ? ReadQuoted() : ReadPlain();
        }

        private YamlText ReadPlain()
        {
            var (place, start) = (Here, at);
            while (!IsAtEnd && text[at] != separator && text[at] is not ('\r' or '\n'))
            {
                at++;
            }

            return new(place, text[start..at].Trim());
        }

        private YamlText ReadQuoted()
        {
            var place = Here;
            var value = new StringBuilder();
            for (at++; !IsAtEnd; at++)
            {
                if (text[at] == '"')
                {
                    if (at + 1 >= text.Length || text[at + 1] != '"')
                    {
                        at++;
                        AfterQuotes(place);
                        return new(place, value.ToString()) { IsQuoted = true };
                    }

                    at++;
                }

                value.Append(text[at]);
                if (text[at] == '\n')
                {
                    line++;
                    lineStart = at + 1;
                }
            }

            findings.Add(CsvMistakes.QuotesOpen(place));
            return new(place, value.ToString());
        }

        private void AfterQuotes(Place place)
        {
            var rest = ReadPlain();
            if (rest.Value.Length > 0)
            {
                findings.Add(CsvMistakes.QuotesInTheMiddle(place));
            }
        }

        private void EndLine()
        {
            if (!IsAtEnd && text[at] == '\r')
            {
                at++;
            }

            if (!IsAtEnd && text[at] == '\n')
            {
                at++;
            }

            line++;
            lineStart = at;
        }

        /// <summary>The separator is the one of the three that stands most often in the headings.</summary>
        private static char Separator(string text)
        {
            var headings = text.AsSpan(0, text.AsSpan().IndexOfAny('\r', '\n') is var end and >= 0 ? end : text.Length).ToString();
            return Separators.MaxBy(one => headings.Count(letter => letter == one));
        }
    }
}
