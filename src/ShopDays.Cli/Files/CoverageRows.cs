using ShopDays.Work.Materials;

namespace ShopDays.Cli.Files;

/// <summary>Reads how far adhesives and finishes go: one a row, each with its source.</summary>
internal static class CoverageRows
{
    /// <summary>All of them, by their names in the table of waits.</summary>
    public static IReadOnlyDictionary<string, Coverage> Read() => BuiltInRow.ReadAll("coverage.csv", row => new Coverage
    {
        Of = row.Text("name"),
        Measure = row.OneOf<CoverageMeasure>("measure"),
        Low = row.Number("low_m2"),
        High = row.Number("high_m2"),
        Source = row.Text("source"),
    }).ToDictionary(one => one.Of, StringComparer.Ordinal);
}
