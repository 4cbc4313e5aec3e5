using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>Rates of the shop's own, methods by machine, and parts lists from a table.</summary>
public sealed class OwnRatesTests
{
    [Fact]
    public async Task An_operation_of_the_shops_own_is_timed_and_its_cautions_go_with_the_plan()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop)
            .WithJob("tray", ATrayShop.Job + "work:\n  - {task: shells on the ends, operation: carve a shell, quantity: 4, after: frame, before: finish}\n")
            .With("rates.yaml", """
                operations:
                  - {operation: carve a shell, unit: shell, group: other, class: light, minutes: {low: 20, likely: 30, high: 45}, cautions: noise}

                """);
        var shells = Assert.Single((await Ran.In(folder.Path, "estimate", "tray", "--json")).WentWell().ReadJson().List("operations"), one => one.Text("operation") == "carve a shell");
        Assert.Equal((4, "shell"), (shells.Number("quantity"), shells.Text("unit")));

        // Four at thirty minutes; what a shop's pace may do to it is well inside the range it was given.
        Assert.InRange(shells.Number("p50"), 4 * 20, 4 * 45);

        var plan = (await Ran.In(folder.Path, "plan", "tray", "--json")).WentWell().ReadJson();
        Assert.Contains(plan.List("sessions").SelectMany(session => session.List("tasks")), work => work.Text("task") == "shells on the ends");
        Assert.Contains(plan.List("cautions"), caution => caution.Text("kind") == "noise");
    }

    [Fact]
    public async Task A_changed_rate_changes_its_operation_and_no_other()
    {
        using var folder = new FreshFolder().WithATray();
        var before = await Operations(folder);
        folder.With("rates.yaml", "operations:\n  - {operation: square ends, minutes: 9, source: forty ends of last winter}\n");
        var after = await Operations(folder);

        // The built-in figure is half of it. Draws of one seed differ by the figure alone; what is set up keeps its time.
        Assert.InRange(after["square ends"] / before["square ends"], 1.6, 2.0001);
        Assert.All(before.Keys.Where(name => name != "square ends"), name => Assert.Equal(before[name], after[name]));
    }

    [Fact]
    public async Task A_machine_is_quicker_and_brings_its_cautions()
    {
        using var folder = new FreshFolder().WithATray()
            .WithJob("by-machine", ATrayShop.Job + "methods: {rip: band saw, gauge and thickness face two: thickness planer}\n");
        var byHand = await Operations(folder);
        var estimate = (await Ran.In(folder.Path, "estimate", "by-machine", "--json")).WentWell().ReadJson();
        var planing = Assert.Single(estimate.List("operations"), one => one.Text("operation") == "gauge and thickness face two");
        Assert.Equal("thickness planer", planing.Text("method"));
        Assert.True(planing.Number("p50") < byHand["gauge and thickness face two"] / 2);

        var cautions = (await Ran.In(folder.Path, "plan", "by-machine", "--json")).WentWell().ReadJson().List("cautions").Select(caution => caution.Text("kind")).ToList();
        Assert.Contains("machines", cautions);
        Assert.Contains("noise", cautions);
        Assert.Contains("dust", cautions);
    }

    [Fact]
    public async Task Parts_from_a_table_are_laid_out_like_parts_that_were_typed()
    {
        var typed = """
            parts:
              - {part: side, count: 2, size: 420 mm x 60 mm x 18 mm, show: [face]}
              - {part: end, count: 2, size: 280 mm x 60 mm x 18 mm, show: [face]}
            """;
        using var folder = new FreshFolder().WithATray()
            .WithJob("listed", ATrayShop.Job.Replace(typed, "parts-from: lists/tray.csv", StringComparison.Ordinal))
            .With("jobs/lists/tray.csv", "Thickness,species,Name,Width,Length,count\n18 mm,black cherry,side,6 cm,420,2\n1.8 cm,,end,60 mm,0.28 m,2\n");
        var layout = (await Ran.In(folder.Path, "layout", "listed", "--json")).WentWell();
        Assert.Equal((await Ran.In(folder.Path, "layout", "tray", "--json")).WentWell().Out, layout.Out);
    }

    private static async Task<Dictionary<string, double>> Operations(FreshFolder folder) =>
        (await Ran.In(folder.Path, "estimate", "tray", "--json")).WentWell().ReadJson().List("operations").ToDictionary(one => one.Text("operation"), one => one.Number("p50"), StringComparer.Ordinal);
}
