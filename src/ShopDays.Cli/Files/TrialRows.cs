namespace ShopDays.Cli.Files;

/// <summary>Reads how operations are tried on an offcut: one operation a row.</summary>
internal static class TrialRows
{
    /// <summary>What to do, by the operation's name.</summary>
    public static IReadOnlyDictionary<string, string> Read() => BuiltInRow
        .ReadAll("trials.csv", row => (Operation: row.Text("operation"), Trial: row.Text("trial")))
        .ToDictionary(row => row.Operation, row => row.Trial, StringComparer.OrdinalIgnoreCase);
}
