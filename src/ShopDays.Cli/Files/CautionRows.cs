using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>Reads the table of cautions: one kind of work a row.</summary>
internal static class CautionRows
{
    /// <summary>Reads them all.</summary>
    public static IReadOnlyList<Caution> Read() => BuiltInRow.ReadAll(
        "cautions.csv", row => new Caution(row.Text("kind"), row.Text("print"), row.Text("said_by")));
}
