namespace ShopDays.Cli.Sheets;

/// <summary>A table as a sheet of a workbook, or as a file of its own.</summary>
/// <param name="Name">Its name, in plain words: at most 31 characters, none of <c>: \ / ? * [ ]</c>.</param>
/// <param name="Columns">From the left.</param>
/// <param name="Rows">From the top, each with a field for every column.</param>
internal sealed record SheetTable(string Name, IReadOnlyList<SheetColumn> Columns, IReadOnlyList<IReadOnlyList<SheetCell>> Rows);

/// <summary>A column of a table.</summary>
/// <param name="Head">Its name, with the unit where there is one.</param>
/// <param name="Width">In widths of a digit.</param>
internal readonly record struct SheetColumn(string Head, double Width);
