using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>Spoiled pieces, from the log to the promise.</summary>
public sealed class SpoilingTests
{
    [Fact]
    public async Task A_spoiled_piece_in_the_log_raises_the_chance_of_its_operation_alone()
    {
        using var folder = new FreshFolder().WithATray();
        (await Ran.In(folder.Path, "log", "add", "--timed", "rip", "12", "ft", "20m", "--setback", "spoiled")).WentWell();
        var chances = (await Ran.In(folder.Path, "rates", "--json")).WentWell().ReadJson().List("spoiling");
        var rip = Assert.Single(chances, one => one.Text("operation") == "rip" && one.Text("method") == "hand");
        Assert.Equal((1, 1), (rip.Number("pieces"), rip.Number("spoiled")));

        // The tables' 0.2 % of fifty pieces, and one of one; written with five decimals.
        Assert.Equal((0.1 + 1) / 51, rip.Number("learned"), 0.000005);
        Assert.InRange(rip.Number("high80"), rip.Number("learned"), 0.2);
        Assert.All(chances.Where(one => one.Text("operation") != "rip"), one => Assert.Equal(one.Number("prior"), one.Number("learned")));
        Assert.Contains("chance of spoiling a piece", (await Ran.In(folder.Path, "rates")).WentWell().Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_estimate_says_what_spoiling_adds_and_the_shops_own_chances_change_it()
    {
        using var folder = new FreshFolder().WithATray();
        var usual = (await Ran.In(folder.Path, "estimate", "tray", "--json")).WentWell().ReadJson();
        Assert.InRange(usual.Field("spoiling").Number("pieces"), 0.001, 1);
        Assert.Contains("Spoiling is in it", (await Ran.In(folder.Path, "estimate", "tray")).WentWell().Out, StringComparison.Ordinal);

        folder.With("rates.yaml", "operations:\n  - {operation: square ends, spoils: 40%}\n");
        var clumsy = (await Ran.In(folder.Path, "estimate", "tray", "--json")).WentWell().ReadJson();
        Assert.True(clumsy.Field("spoiling").Number("pieces") > usual.Field("spoiling").Number("pieces") + 1);
        Assert.True(clumsy.Field("spoiling").Number("addsToP80Minutes") > usual.Field("spoiling").Number("addsToP80Minutes"));
        Assert.True(clumsy.Field("handsOnMinutes").Number("p80") > usual.Field("handsOnMinutes").Number("p80"));
    }

    [Fact]
    public async Task A_plan_says_what_of_its_promise_is_for_spoiled_pieces_and_counts_the_spares_asked_for()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop)
            .WithJob("tray", ATrayShop.Job.Replace("size: 420 mm x 60 mm x 18 mm,", "spare: 1, size: 420 mm x 60 mm x 18 mm,", StringComparison.Ordinal))
            .With("rates.yaml", "operations:\n  - {operation: square ends, spoils: 40%}\n");
        var plan = (await Ran.In(folder.Path, "plan", "tray", "--json")).WentWell().ReadJson();
        var spoiling = plan.Field("spoiling");
        Assert.True(spoiling.Number("daysInPromise") >= 0);
        Assert.True(spoiling.Instant("p80Without") <= plan.Field("finish").Instant("p80"));
        Assert.Equal(1, Assert.Single(spoiling.List("asked")).Number("spares"));
        Assert.Contains("Spare blanks are laid out", (await Ran.In(folder.Path, "plan", "tray")).WentWell().Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }
}
