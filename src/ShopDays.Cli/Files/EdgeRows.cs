using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>Reads the edges that handwork dulls: one edge a row, with the operations that use it.</summary>
internal static class EdgeRows
{
    /// <summary>The edges, by the operations whose handwork dulls them.</summary>
    public static IReadOnlyDictionary<string, CuttingEdge> Read() => BuiltInRow
        .ReadAll("edges.csv", ReadRow)
        .SelectMany(row => row)
        .ToDictionary(one => one.Operation, one => one.Edge, StringComparer.Ordinal);

    private static List<(string Operation, CuttingEdge Edge)> ReadRow(BuiltInRow row)
    {
        var edge = new CuttingEdge
        {
            Name = row.Text("edge"),
            AtATime = (int)row.Number("at_a_time"),
            MinutesEach = row.Number("minutes_each"),
            SharpenedBy = row.Text("sharpened_by"),
            IsForKeenWork = false,
            Source = row.Text("source"),
        };
        return
        [
            .. row.List("work").Select(operation => (operation, edge)),
            .. row.List("keen_work").Select(operation => (operation, edge with { IsForKeenWork = true })),
        ];
    }
}
