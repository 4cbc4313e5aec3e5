using ShopDays.Measures;

namespace ShopDays.Cli.Files;

/// <summary>What can be wrong with a CSV file beyond its single values.</summary>
internal static class CsvMistakes
{
    public static Finding UnknownColumn(Place place, string heading, CsvList list, IReadOnlyList<string> valid) =>
        Finding.At(place, $"{QuotedText.Of(heading)} is not a column of {list.Name}") with { Expected = ValueMistakes.AnyOf(valid, "columns"), Nearest = NearestName.To(heading, valid) };

    public static Finding ColumnTwice(Place place, string heading) =>
        Finding.At(place, $"the column {QuotedText.Of(heading)} stands here for the second time") with { Expected = "each column once" };

    public static Finding ColumnsMissing(Place place, IReadOnlyList<string> missing) =>
        Finding.At(place, $"the parts list has no column {ValueMistakes.AnyOf(missing, "columns").Replace(" or ", " and ", StringComparison.Ordinal)}") with { Expected = "a row of headings with name, length, width and thickness at least" };

    public static Finding TooManyFields(Place place, int fields, int columns) =>
        Finding.At(place, FormattableString.Invariant($"the row has {fields} fields")) with { Expected = FormattableString.Invariant($"at most {columns}, one for each column"), Cure = "put quotes around a value that holds a comma" };

    public static Finding FieldMissing(Place place, string column) =>
        Finding.At(place, $"the row ends before its {column}") with { Expected = "a field for each column" };

    public static Finding QuotesOpen(Place place) =>
        Finding.At(place, "the quotes that begin here are not closed") with { Cure = "close them; a quote inside quotes is written twice" };

    public static Finding QuotesInTheMiddle(Place place) =>
        Finding.At(place, "something follows the closing quotes of this field") with { Expected = "a comma; a quote inside quotes is written twice" };

    public static Finding TooManyRows(Place place, CsvList list) =>
        Finding.At(place, $"{list.Name} goes on") with { Expected = FormattableString.Invariant($"at most {list.MostRows:N0} rows") };

    public static Finding NoRows(Place place, CsvList list) =>
        Finding.At(place, $"no {list.Row} is in {list.Name}") with { Expected = $"a row of headings, then a row for each {list.Row}" };
}
