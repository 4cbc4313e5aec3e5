namespace ShopDays.Cli.Bench.Pages;

/// <summary>A table of texts.</summary>
/// <param name="Caption">What it is of.</param>
/// <param name="Heads">The names of its columns.</param>
/// <param name="Rows">The rows, each with a text for every column; the first names the row.</param>
public sealed record TextTable(string Caption, IReadOnlyList<Head> Heads, IReadOnlyList<IReadOnlyList<string>> Rows);

/// <summary>The head of a column.</summary>
/// <param name="Words">Its name.</param>
/// <param name="IsFigure">Whether figures stand in it, one below the other.</param>
public sealed record Head(string Words, bool IsFigure = true);
