using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>Reads the catalogue: one method of one operation a row, the usual method first.</summary>
internal static class OperationRows
{
    private sealed record Row(string Operation, string Unit, Method Method, IReadOnlyList<string> Cautions, IReadOnlyList<Holding> Holds);

    /// <summary>Reads them all.</summary>
    public static OperationCatalogue Read()
    {
        var edges = EdgeRows.Read();
        var operations = BuiltInRow
            .ReadAll("operations.csv", ReadRow)
            .GroupBy(row => row.Operation, StringComparer.Ordinal)
            .Select(rows => OperationOf([.. rows], edges.GetValueOrDefault(rows.Key)))
            .ToList();
        return edges.Keys.FirstOrDefault(name => !operations.Exists(operation => operation.Name == name)) is { } unknown
            ? throw new InvalidDataException($"edges.csv: '{unknown}' is not an operation")
            : new(operations);
    }

    private static Operation OperationOf(IReadOnlyList<Row> rows, CuttingEdge? edge)
    {
        if (rows.FirstOrDefault(row => row.Unit != rows[0].Unit) is { } odd)
        {
            throw new InvalidDataException($"operations.csv: '{odd.Operation}' is counted in '{rows[0].Unit}' and in '{odd.Unit}'");
        }

        var shared = rows[0].Cautions.Where(kind => rows.All(row => row.Cautions.Contains(kind))).ToList();
        return new Operation
        {
            Name = rows[0].Operation,
            Unit = new TradeUnit { Name = rows[0].Unit },
            Methods =
            [
                .. rows.Select(row => row.Method with
                {
                    Cautions = [.. row.Cautions.Except(shared, StringComparer.Ordinal)],
                    Edge = row.Method.Name == "hand" ? edge : null,
                }),
            ],
            Cautions = shared,
            Holds = rows[0].Holds,
        };
    }

    private static Row ReadRow(BuiltInRow row) => new(
        row.Text("operation"),
        row.Text("unit"),
        new Method
        {
            Name = row.Text("method"),
            PaceGroup = row.OneOf<PaceGroup>("pace_group"),
            MinutesPerUnit = row.Number("minutes_per_unit"),
            LowMinutes = row.Number("low90_minutes"),
            HighMinutes = row.Number("high90_minutes"),
            Slopes =
            [
                .. SlopeIn(row, Covariate.Thickness, "ref_thickness_in", "exp_thickness"),
                .. SlopeIn(row, Covariate.Hardness, "ref_hardness_lbf", "exp_hardness"),
                .. SlopeIn(row, Covariate.Depth, "ref_depth_in", "exp_depth"),
                .. SlopeIn(row, Covariate.Width, "ref_width_in", "exp_width"),
            ],
            Setup = WorkTime.FromMinutes(row.Number("setup_minutes")),
            SetupPer = row.Text("setup_per"),
            WorkClass = row.OneOf<WorkClass>("work_class"),
            Rest = row.Number("rest_pct") / 100,
            IsNoisy = row.YesNo("noisy"),
            IsSplittable = row.YesNo("splittable"),
            LeastUseful = WorkTime.FromMinutes(row.NumberOrNone("least_useful_minutes") ?? 0),
            Crew = (int)row.Number("crew"),
            LearningRate = row.Number("learning_rate"),
            SpoilChance = row.Number("spoil_pct") / 100,
            SpoilSource = row.Number("spoil_pct") > 0 ? row.Text("spoil_source") : "",
            Source = row.Text("source"),
        },
        row.List("cautions"),
        row.ListOf<Holding>("holds"));

    private static IEnumerable<Slope> SlopeIn(BuiltInRow row, Covariate covariate, string reference, string exponent)
    {
        if (row.NumberOrNone(exponent) is { } power)
        {
            yield return new Slope(covariate, row.Number(reference), power);
        }
    }
}
