using System.Text.Json;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>What <c>estimate --json</c> promises to other programs, on the samples.</summary>
public sealed class EstimateAnswerTests
{
    public static TheoryData<string> Shops => Sample.Shops;

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_hands_on_time_is_a_range_in_order(string shop)
    {
        var minutes = (await Estimate(shop)).Field("handsOnMinutes");
        double[] range = [0, minutes.Number("p10"), minutes.Number("p50"), minutes.Number("p80"), minutes.Number("p90")];
        Assert.All(range.Zip(range[1..]), pair => Assert.True(pair.First < pair.Second, $"{pair}"));
        Assert.InRange(minutes.Number("mean"), minutes.Number("p10"), minutes.Number("p90"));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Every_operation_says_how_much_of_what_in_which_time(string shop)
    {
        var estimate = await Estimate(shop);
        Assert.All(estimate.List("operations"), one =>
        {
            Assert.NotEmpty(one.Text("operation"));
            Assert.NotEmpty(one.Text("method"));
            Assert.NotEmpty(one.Text("unit"));
            Assert.True(one.Number("quantity") > 0);
            Assert.True(one.Number("tasks") >= 1);
            Assert.InRange(one.Number("p50"), 0.01, one.Number("p80"));
        });
        Assert.Equal(estimate.Number("tasks"), estimate.List("operations").Sum(one => one.Number("tasks")));
        var names = estimate.List("operations").Select(one => (one.Text("operation"), one.Text("method"))).ToList();
        Assert.Equal(names.Distinct(), names);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_seed_the_draws_and_the_waits_are_told(string shop)
    {
        var estimate = await Estimate(shop);
        Assert.Equal(1, estimate.Number("seed"));
        Assert.True(estimate.Number("draws") >= 1000);
        Assert.True(estimate.Number("waitMinutes") > 0);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_feet_ripped_are_those_of_the_layout(string shop)
    {
        var operations = (await Estimate(shop)).List("operations");
        var layout = (await Sample.Of(shop).Run("layout --json")).ReadJson();
        var ripped = operations.Where(one => one.Text("operation") is "rip" or "straighten a live edge").Sum(one => one.Number("quantity"));

        // Each quantity is rounded to a thousandth of a foot.
        Assert.Equal(layout.Number("ripFeet"), ripped, 0.002);
    }

    [Theory]
    [InlineData("elm-workbench", "top half under scrub, shelf board under rough")]
    [InlineData("tidewater-commission", "top under jack, long apron inside jack, short apron inside jack")]
    public async Task Faces_left_rougher_are_named_with_what_they_save(string shop, string written)
    {
        var faces = (await Estimate(shop)).Field("hiddenFaces");
        Assert.Equal(written, string.Join(", ", faces.List("written").Select(face => $"{face.Text("part")} {face.Text("surface")} {face.Text("standard")}")));
        Assert.True(faces.Number("savedMinutes") > 20);
        Assert.Equal(["jack", "scrub"], faces.List("further").Select(one => one.Text("standard")));
        Assert.All(faces.List("further"), one => Assert.True(one.Number("savedMinutes") > 0 && one.List("faces").Any()));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task What_rougher_hidden_faces_save_is_told_below_the_times(string shop)
    {
        var answer = await Estimate(shop);
        var told = (await Sample.Of(shop).Run("estimate")).Out.ReplaceLineEndings(" ");
        var saved = answer.Field("hiddenFaces").List("further").Select(one => one.Number("savedMinutes"));
        Assert.All(saved, minutes => Assert.Contains($"would save about {Measures.WorkTimeText.Write(Measures.WorkTime.FromMinutes(minutes))}", told, StringComparison.Ordinal));
    }

    private static async Task<JsonElement> Estimate(string shop) => (await Sample.Of(shop).Run("estimate --json")).ReadJson();
}
