using System.Globalization;
using NodaTime;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Days;
using ShopDays.Measures;

namespace ShopDays.Cli.Files;

/// <summary>Readers of single values.</summary>
internal static class Values
{
    private const int LongestName = 80;
    private const int LongestProse = 1_500;

    /// <summary>A text of any kind, not empty.</summary>
    public static ValueReader<string> Text(string expected) => (node, reading) =>
    {
        if (node is not YamlText text)
        {
            reading.Findings.Add(ValueMistakes.NotOneValue(node.Place, node.Shape, expected));
            return Field<string>.Wrong(node.Place);
        }

        if (text.IsLeftOut || string.IsNullOrWhiteSpace(text.Value))
        {
            reading.Findings.Add(ValueMistakes.NothingWritten(node.Place, expected));
            return Field<string>.Wrong(node.Place);
        }

        return Field<string>.Read(node.Place, text.Value.Trim());
    };

    /// <summary>A name: one line, not too long for a label.</summary>
    public static ValueReader<string> Name(string expected) => (node, reading) =>
        Text(expected)(node, reading).Unless(reading.Findings, name => name switch
        {
            _ when name.Any(char.IsControl) => ValueMistakes.NoName(node.Place, name),
            { Length: > LongestName } => ValueMistakes.NameTooLong(node.Place, name.Length, LongestName),
            _ => null,
        });

    /// <summary>Words for people to read: letters, figures, signs and line ends, not too many for a page.</summary>
    public static ValueReader<string> Prose(string expected) => (node, reading) =>
        Text(expected)(node, reading)
            .Unless(reading.Findings, text => text.Length > LongestProse ? ValueMistakes.TextTooLong(node.Place, text.Length, LongestProse) : null)
            .Select(text => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));

    /// <summary>A value that a reader of the library makes of a text.</summary>
    public static ValueReader<T> Of<T>(string expected, Func<string, Reading, TextResult<T>> read) => (node, reading) =>
    {
        var text = Text(expected)(node, reading);
        if (!text.IsRead)
        {
            return Field<T>.Wrong(node.Place);
        }

        var result = read(text.Value!, reading);
        if (result.IsRead)
        {
            return Field<T>.Read(node.Place, result.Value);
        }

        reading.Findings.Add(ValueMistakes.CannotBeRead(node.Place, result.Fault));
        return Field<T>.Wrong(node.Place);
    };

    /// <summary>A number, both ends of the range included.</summary>
    /// <param name="what">What the number is, with its article, for the message.</param>
    /// <param name="least">The least.</param>
    /// <param name="most">The most.</param>
    public static ValueReader<double> Number(string what, double least, double most) => (node, reading) =>
    {
        var expected = FormattableString.Invariant($"a number from {least:#,0.###} to {most:#,0.###}");
        return Parsed(node, reading, expected).Unless(reading.Findings, value => value < least || value > most
            ? ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, what, expected)
            : null);
    };

    /// <summary>A whole number, both ends of the range included.</summary>
    /// <inheritdoc cref="Number(string, double, double)"/>
    public static ValueReader<int> Whole(string what, int least, int most) => (node, reading) =>
    {
        var expected = FormattableString.Invariant($"a whole number from {least:#,0} to {most:#,0}");
        return Parsed(node, reading, expected).Unless(reading.Findings, value => value != Math.Floor(value) || value < least || value > most
            ? ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, what, expected)
            : null).Select(value => (int)value);
    };

    private static Field<double> Parsed(YamlNode node, Reading reading, string expected)
    {
        var text = Text(expected)(node, reading);
        if (!text.IsRead)
        {
            return Field<double>.Wrong(node.Place);
        }

        if (double.TryParse(text.Value, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number))
        {
            return Field<double>.Read(node.Place, number);
        }

        reading.Findings.Add(ValueMistakes.NotANumber(node.Place, text.Value!, expected));
        return Field<double>.Wrong(node.Place);
    }

    /// <summary>One of a few words, in small letters or in large ones: paper is a4 or A4.</summary>
    /// <param name="noun">What they are, with its article: <c>a daylight limit</c>.</param>
    /// <param name="choices">The words, which are also the list in the message, with what they mean.</param>
    public static ValueReader<T> Choice<T>(string noun, params (string Word, T Value)[] choices) => (node, reading) =>
    {
        string[] words = [.. choices.Select(choice => choice.Word)];
        var text = Text(ValueMistakes.AnyOf(words, "words"))(node, reading);
        if (!text.IsRead)
        {
            return Field<T>.Wrong(node.Place);
        }

        var at = Array.FindIndex(words, word => string.Equals(word, text.Value, StringComparison.OrdinalIgnoreCase));
        if (at >= 0)
        {
            return Field<T>.Read(node.Place, choices[at].Value);
        }

        reading.Findings.Add(ValueMistakes.NotAChoice(node.Place, text.Value!, noun, words));
        return Field<T>.Wrong(node.Place);
    };

    /// <summary>Yes or no.</summary>
    public static ValueReader<bool> YesOrNo { get; } = Choice("an answer", ("true", true), ("false", false), ("yes", true), ("no", false));

    /// <summary>A date.</summary>
    public static ValueReader<LocalDate> Date { get; } = Of("a date such as 2027-03-14", (text, _) => DateText.Read(text));

    /// <summary>Hands-on time.</summary>
    public static ValueReader<WorkTime> Time { get; } = Of("a working time such as 45m or 1h30", (text, _) => WorkTimeText.Read(text));

    /// <summary>A wait on the wall clock.</summary>
    public static ValueReader<Duration> Wait { get; } = Of("a wait such as 12h or 3d", (text, _) => WaitText.Read(text));

    /// <summary>A percentage.</summary>
    public static ValueReader<Percent> Percentage { get; } = Of("a percentage such as 15%", (text, _) => PercentText.Read(text));

    /// <summary>A weight.</summary>
    public static ValueReader<Mass> Weight { get; } = Of("a weight such as 23 kg or 51 lb", (text, _) => MassText.Read(text));

    /// <summary>An area of floor.</summary>
    public static ValueReader<Area> Floor { get; } = Of("an area such as 40 sq ft or 3.7 m2", (text, _) => AreaText.Read(text));

    /// <summary>A temperature.</summary>
    public static ValueReader<Temperature> Degrees { get; } = Of("a temperature such as 14 C or 57 F", (text, _) => TemperatureText.Read(text));

    /// <summary>One value or a list of them.</summary>
    public static ValueReader<IReadOnlyList<Field<T>>> OneOrMore<T>(ValueReader<T> read) => (node, reading) =>
    {
        Field<T>[] all = node is YamlList list ? [.. list.Items.Select(item => read(item, reading))] : [read(node, reading)];
        return Field<IReadOnlyList<Field<T>>>.Read(node.Place, all);
    };
}
