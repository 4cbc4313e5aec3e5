using System.Text;
using ShopDays.Cli.Files;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Cli.Tests.Files;

public sealed class RatesFileTests
{
    [Fact]
    public void What_a_line_leaves_out_keeps_its_built_in_value()
    {
        var before = BuiltIn.Operations["rip"].Methods[0];
        var after = Read("operations:\n  - {operation: rip, minutes: 1.66, setup: 8m, source: forty rips of last winter}\n")["rip"].Methods[0];
        Assert.Equal((1.66, 8, "forty rips of last winter"), (after.MinutesPerUnit, after.Setup.Minutes, after.Source));

        // The spread about the figure is kept as a ratio; a product and a quotient are not exact in binary.
        Assert.Equal(before.HighMinutes / before.MinutesPerUnit, after.HighMinutes / after.MinutesPerUnit, 1e-12);
        Assert.Equal((before.WorkClass, before.Rest, before.LearningRate), (after.WorkClass, after.Rest, after.LearningRate));
        Assert.Equal(before.Slopes, after.Slopes);
        Assert.Equal(BuiltIn.Operations["rip"].Methods.Count, Read("operations:\n  - {operation: rip, setup: 1m}\n")["rip"].Methods.Count);
    }

    [Fact]
    public void A_new_operation_needs_no_code()
    {
        var shell = Read("""
            operations:
              - operation: carve a shell
                unit: shell
                group: other
                class: light
                minutes: {low: 40, likely: 75, high: 180}
                slopes: {hardness: {reference: 1000, exponent: 0.5}}
                rest: 12%
                crew: 1
                learning: 0.92
                noisy: true
                splittable: true
                least: 15m
                cautions: edge tools
            """)["carve a shell"];
        var method = Assert.Single(shell.Methods);
        Assert.Equal(("shell", "hand", 40, 75, 180), (shell.Unit.Name, method.Name, method.LowMinutes, method.MinutesPerUnit, method.HighMinutes));
        Assert.Equal((PaceGroup.Other, WorkClass.Light, 0.12, true, 15), (method.PaceGroup, method.WorkClass, method.Rest, method.IsNoisy, method.LeastUseful.Minutes));
        Assert.Equal([new(Covariate.Hardness, 1000, 0.5)], method.Slopes);
        Assert.Equal(["edge tools"], shell.Cautions);
    }

    [Fact]
    public void Two_methods_of_one_operation_may_be_changed_in_one_file()
    {
        var rip = Read("operations:\n  - {operation: rip, minutes: 1}\n  - {operation: rip, method: band saw, minutes: 0.3}\n  - {operation: rip, method: frame saw, minutes: 0.7}\n")["rip"];
        Assert.Equal([1, 0.3, 0.7], new[] { "hand", "band saw", "frame saw" }.Select(name => rip.Methods.Single(method => method.Name == name).MinutesPerUnit));
    }

    [Fact]
    public void A_chance_of_spoiling_may_be_the_shops_own_and_is_the_tables_otherwise()
    {
        Assert.Equal((0.03, "the shop's own figures"), (Read("operations:\n  - {operation: mortise, spoils: 3%}\n")["mortise"].Methods[0] is var own ? (own.SpoilChance, own.SpoilSource) : default));
        Assert.Equal(BuiltIn.Operations["mortise"].Methods[0].SpoilChance, Read("operations:\n  - {operation: mortise, minutes: 20}\n")["mortise"].Methods[0].SpoilChance);
        Assert.Equal(0, Read("operations:\n  - {operation: carve a shell, unit: shell, group: other, class: light, minutes: 40}\n")["carve a shell"].Methods[0].SpoilChance);
    }

    [Fact]
    public void An_edge_lasts_as_long_as_the_shop_says_in_all_the_work_that_dulls_it()
    {
        var rates = Read("edges:\n  - {edge: plane irons, minutes: 50, at-a-time: 3, honing: 8m}\n");
        Assert.All(["jack a face", "match and shoot a glue joint"], name =>
        {
            var edge = rates[name].Methods[0].Edge!;
            Assert.Equal((150, 3, 8, "the shop's own figures"), (edge.Life, edge.AtATime, edge.HoningEach!.Value.Minutes, edge.Source));
        });
        Assert.Equal(BuiltIn.Operations["mortise"].Methods[0].Edge, rates["mortise"].Methods[0].Edge);
        Assert.True(rates["match and shoot a glue joint"].Methods[0].Edge!.IsForKeenWork);
    }

    [Fact]
    public void Every_built_in_chance_of_spoiling_is_small_and_has_its_source() =>
        Assert.All(BuiltIn.Operations.All.SelectMany(operation => operation.Methods), method =>
        {
            Assert.InRange(method.SpoilChance, 0, 0.05);
            Assert.Equal(method.SpoilChance > 0, method.SpoilSource.Length > 0);
        });

    [Theory]
    [InlineData("")]
    [InlineData("# nothing of our own yet\n")]
    public void An_empty_file_of_rates_adds_nothing_and_is_no_mistake(string text) => Assert.Equal(BuiltIn.Operations.All, Read(text).All);

    private static OperationCatalogue Read(string text)
    {
        var findings = new Findings();
        var read = RatesFile.Read(new("rates.yaml", "rates.yaml", Encoding.UTF8.GetBytes(text)), BuiltIn.Operations, [.. BuiltIn.Cautions.Select(one => one.Kind)], findings);
        Assert.Equal([], findings.InOrder().Select(one => one.ToString()));
        return read;
    }
}
