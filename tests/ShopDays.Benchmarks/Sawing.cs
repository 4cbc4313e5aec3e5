using System.Globalization;
using ShopDays.Cli.Files;
using ShopDays.Layouts;
using ShopDays.Layouts.Search;
using ShopDays.Times;

namespace ShopDays.Benchmarks;

/// <summary>
/// What it saves to count sawing when a layout is chosen: the samples laid out as if work cost nothing, to spare timber, as
/// priced, and to spare sawing, each told at its full price.
/// </summary>
internal static class Sawing
{
    private static readonly (string Shop, string Job)[] Samples =
        [("tidewater-commission", "writing-table"), ("elm-workbench", "bench"), ("evening-cupboard", "wall-cupboard")];

    /// <summary>Prints the table.</summary>
    public static int Print(LayoutEffort effort)
    {
        Row("sample", "preferred", "boards", "timber", "less offcuts", "work", "in all", "sawing min", "rip ft", "crosscut ft");
        foreach (var (shop, job) in Samples)
        {
            var read = ShopAndJob.Read(Path.Combine("sample-projects", shop, "jobs", job + ".yaml"), Directory.GetCurrentDirectory()).Read
                ?? throw new InvalidOperationException($"{job} has mistakes");
            var model = RateModel.FromPrior(read.Operations);
            var rates = ShopRates.ForLayout(model, operation => operation.MethodIn(read.Job), read.Shop.Money?.Hour);
            var request = LayoutRequest.For(read.Job, rates) with { Effort = effort };
            (string, LayoutRequest)[] ways =
            [
                ("timber alone", request with { Worth = Worth.Of(request) with { WeightOfWork = 0 } }),
                ("timber", request with { Preference = LayoutPreference.Timber }),
                ("as priced", request),
                ("sawing", request with { Preference = LayoutPreference.Sawing }),
            ];
            foreach (var (way, asked) in ways)
            {
                var layout = LayoutSearch.LayOut(asked);
                var cost = layout.Cost;
                Row(
                    job,
                    way,
                    Figure(layout.Boards.Count, "0"),
                    cost.Timber.ToString(),
                    Figure((double)cost.Offcuts.Amount, "0.00"),
                    Figure((double)cost.Work.Amount, "0.00"),
                    Figure((double)cost.Total.Amount, "0.00"),
                    Figure(layout.SawingTime.Minutes, "0"),
                    Figure(layout.RipLength.Feet, "0.0"),
                    Figure(layout.CrosscutLength.Feet, "0.0"));
            }
        }

        return 0;
    }

    private static string Figure(double figure, string digits) => figure.ToString(digits, CultureInfo.InvariantCulture);

    private static void Row(params string[] cells) =>
        Console.WriteLine("| " + string.Join(" | ", cells.Select((cell, place) => place < 2 ? cell.PadRight(14) : cell.PadLeft(12))) + " |");
}
