using NodaTime;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>Reads the table of waits: adhesives, finishes and rests, told apart by their kind.</summary>
internal static class WaitRows
{
    /// <summary>Reads them all.</summary>
    public static WaitTable Read()
    {
        var all = BuiltInRow.ReadAll<object>("waits.csv", row => row.Text("kind") switch
        {
            "adhesive" => AdhesiveIn(row),
            "finish" when row.NumberOrNone("recoat_h") is not null => FinishIn(row),
            "finish" or "stock" or "joint" or "air-drying" => RestIn(row),
            var kind => throw new FormatException($"'{kind}' is not a kind of wait"),
        });
        return new WaitTable([.. all.OfType<Adhesive>()], [.. all.OfType<Finish>()], [.. all.OfType<Rest>()]);
    }

    private static Adhesive AdhesiveIn(BuiltInRow row) => new()
    {
        Name = row.Text("wait"),
        OpenTime = WorkTime.FromMinutes(row.Number("open_time_min")),
        AssemblyTime = WorkTime.FromMinutes(row.Number("total_assembly_min")),
        ClampTime = Duration.FromMinutes(row.Number("clamp_min")),
        UntilWorked = Hours(row, "until_worked_h"),
        FullCure = Hours(row, "full_cure_h"),
        LeastTemperature = row.Number("min_temp_c"),
        Note = row.TextOrNone("note"),
        Source = row.Text("source"),
    };

    private static Finish FinishIn(BuiltInRow row) => new()
    {
        Name = row.Text("wait"),
        Layer = row.OneOf<FinishLayer>("layer"),
        IsBrushed = row.Text("applied") switch
        {
            "brushed" => true,
            "wiped" => false,
            var text => throw new FormatException($"'applied' is '{text}', not brushed or wiped"),
        },
        IsFilm = row.YesNo("film"),
        LeavesOilyRags = row.YesNo("oily_rags"),
        Blooms = row.YesNo("blooms"),
        DustFree = Hours(row, "dust_free_h"),
        Recoat = Hours(row, "recoat_h"),
        LightUse = Hours(row, "light_use_h"),
        FullCure = Hours(row, "full_cure_h"),
        LeastTemperature = row.Number("min_temp_c"),
        Source = row.Text("source"),
    };

    private static Rest RestIn(BuiltInRow row) => new()
    {
        Name = row.Text("wait"),
        Low = Duration.FromDays(row.Number("low_days")),
        Likely = Duration.FromDays(row.Number("likely_days")),
        High = Duration.FromDays(row.Number("high_days")),
        Note = row.TextOrNone("note"),
        Source = row.Text("source"),
    };

    private static Duration Hours(BuiltInRow row, string column) => Duration.FromHours(row.Number(column));
}
