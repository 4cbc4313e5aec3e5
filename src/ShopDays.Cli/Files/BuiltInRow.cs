using System.Globalization;
using CsvHelper;

namespace ShopDays.Cli.Files;

/// <summary>One row of a data file of the program, its cells read by the name of their column.</summary>
internal sealed class BuiltInRow(CsvReader reader)
{
    // The package recovers from broken rows and guesses the separator unless told not to.
    private static readonly CsvReaderOptions Strict = new()
    {
        Separator = ',',
        FieldCountMismatch = CsvFieldCountHandling.Throw,
        MalformedData = CsvMalformedDataHandling.Throw,
        FormatProvider = CultureInfo.InvariantCulture,
    };

    /// <summary>Reads every row of a data file into what it stands for.</summary>
    /// <param name="file">The file's name, for example <c>species.csv</c>.</param>
    /// <param name="read">What makes one thing of one row.</param>
    /// <exception cref="InvalidDataException">The file is not there or a row is broken; its number is named, counted from 1 below the header.</exception>
    public static IReadOnlyList<T> ReadAll<T>(string file, Func<BuiltInRow, T> read)
    {
        using var stream = typeof(BuiltInRow).Assembly.GetManifestResourceStream("data/" + file)
            ?? throw new InvalidDataException($"the data file '{file}' is not part of the program");
        using var reader = CsvReader.Create(stream, Strict);
        var row = new BuiltInRow(reader);
        var all = new List<T>();
        while (reader.Read())
        {
            try
            {
                all.Add(read(row));
            }
            catch (Exception fault) when (fault is FormatException or ArgumentException or OverflowException or KeyNotFoundException)
            {
                throw new InvalidDataException(FormattableString.Invariant($"{file}, row {reader.RowNumber}: {fault.Message}"), fault);
            }
        }

        return all;
    }

    /// <summary>The text of a cell, which must not be empty.</summary>
    public string Text(string column) => TextOrNone(column) is { Length: > 0 } text
        ? text
        : throw new FormatException($"'{column}' is empty");

    /// <summary>The text of a cell; empty when it is.</summary>
    public string TextOrNone(string column) => reader.GetString(column).Trim();

    /// <summary>The number in a cell.</summary>
    public double Number(string column) => NumberOrNone(column) ?? throw new FormatException($"'{column}' is empty");

    /// <summary>The number in a cell; null when it is empty.</summary>
    public double? NumberOrNone(string column) => TextOrNone(column) switch
    {
        "" => null,
        var text when double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) => number,
        var text => throw new FormatException($"'{column}' is '{text}', not a number"),
    };

    /// <summary>A yes or no.</summary>
    public bool YesNo(string column) => Text(column) switch
    {
        "yes" => true,
        "no" => false,
        var text => throw new FormatException($"'{column}' is '{text}', not yes or no"),
    };

    /// <summary>One of a closed set, by its name, spaces and hyphens not counted.</summary>
    public T OneOf<T>(string column)
        where T : struct, Enum => Named<T>(column, Text(column));

    /// <summary>Words separated by semicolons; none when the cell is empty.</summary>
    public IReadOnlyList<string> List(string column) =>
        TextOrNone(column).Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    /// <summary>Members of a closed set separated by semicolons.</summary>
    public IReadOnlyList<T> ListOf<T>(string column)
        where T : struct, Enum => [.. List(column).Select(text => Named<T>(column, text))];

    private static T Named<T>(string column, string text)
        where T : struct, Enum
    {
        var word = text.Replace(" ", "", StringComparison.Ordinal).Replace("-", "", StringComparison.Ordinal);
        return Enum.TryParse<T>(word, ignoreCase: true, out var value) && Enum.IsDefined(value)
            ? value
            : throw new FormatException($"'{column}' is '{text}'; expected one of {string.Join(", ", Enum.GetNames<T>())}");
    }
}
