using YamlDotNet.Core;

namespace ShopDays.Cli.Files.Yaml;

/// <summary>
/// Says in the maker's words what stopped the YAML parser, from the line where it stopped: its own messages speak of
/// tokens and mappings.
/// </summary>
internal static class YamlFault
{
    public static Finding Explain(string file, string text, YamlException fault)
    {
        var lines = text.Split('\n');
        var number = (int)Math.Clamp(fault.Start.Line, 1, lines.Length);
        var line = lines[number - 1].TrimEnd('\r');
        var place = new Place(file, number, (int)Math.Max(1, fault.Start.Column));
        var indent = line.Length - line.TrimStart().Length;
        if (TabBeforeText(file, lines) is { } tab)
        {
            return YamlMistakes.TabBeforeText(tab);
        }

        if (IsOpenQuote(fault))
        {
            return YamlMistakes.CannotBeRead(place, "the quotes that begin here are not closed", "close them, or leave quotes out where a value does not begin with one");
        }

        var value = ValueOf(line, place.Column);
        if (value.Text.StartsWith('"') || value.Text.StartsWith('\''))
        {
            return YamlMistakes.CannotBeRead(
                place with { Column = value.Column },
                "something follows the closing quotes of this value",
                "put the whole value in quotes of the other kind");
        }

        if (value.Text.StartsWith('@') || value.Text.StartsWith('`') || value.Text.StartsWith('%'))
        {
            return YamlMistakes.CannotBeRead(
                place with { Column = value.Column },
                $"a value cannot begin with {value.Text[0]}",
                "put the value in quotes");
        }

        if (place.Column == indent + 1 && line.Contains(':', StringComparison.Ordinal))
        {
            return YamlMistakes.CannotBeRead(
                place,
                "this line does not begin where the lines above let it",
                "keys of one section begin in one column, and a value does not go on after its list or quotes have ended");
        }

        if (fault.Message.Contains("mapping values", StringComparison.OrdinalIgnoreCase) || value.Text.Contains(": ", StringComparison.Ordinal))
        {
            return YamlMistakes.CannotBeRead(
                place,
                "a colon and a space stand here in the middle of a value, or a line above is not finished",
                "put a value that holds a colon in quotes");
        }

        if (fault.Message.Contains("flow", StringComparison.OrdinalIgnoreCase) || IsOpenBracket(text))
        {
            return YamlMistakes.CannotBeRead(
                place,
                "a bracket is not closed before here, or a comma is missing",
                "look for a [ or { without its ] or }");
        }

        return YamlMistakes.CannotBeRead(
            place,
            "the file cannot be read from here",
            "look at the colon, the dash and the indent of this line and of the one above: keys of one section begin in one column");
    }

    /// <summary>The first tab in an indent: where a file cannot be read and has one, it is the cause.</summary>
    private static Place? TabBeforeText(string file, string[] lines)
    {
        for (var number = 0; number < lines.Length; number++)
        {
            var line = lines[number].TrimEnd();
            var tab = line.AsSpan(0, line.Length - line.TrimStart().Length).IndexOf('\t');
            if (tab >= 0)
            {
                return new(file, number + 1, tab + 1);
            }
        }

        return null;
    }

    private static bool IsOpenQuote(YamlException fault) => fault.Message.Contains("quoted", StringComparison.OrdinalIgnoreCase);

    private static bool IsOpenBracket(string text) =>
        text.Count(one => one is '[' or '{') > text.Count(one => one is ']' or '}');

    /// <summary>What stands after the last key at or before a column of a line.</summary>
    private static (string Text, int Column) ValueOf(string line, int column)
    {
        var end = Math.Clamp(column - 1, 0, line.Length);
        var colon = line.LastIndexOf(": ", Math.Max(0, end - 1), StringComparison.Ordinal);
        var start = colon < 0 ? 0 : colon + 2;
        var text = line[start..];
        return (text.TrimStart(), start + (text.Length - text.TrimStart().Length) + 1);
    }
}
