using System.Text.Json;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>A tray glued with PVA and varnished, from 1 March 2027 on, in a shop that is not heated at night.</summary>
public sealed class ColdShopTests
{
    [Fact]
    public void Check_says_which_glue_ups_and_finishes_are_barred_in_which_months_and_what_would_help()
    {
        using var folder = WithNights("nights: {temperature: 14 C, months: {february: 3 C, march: 6 C, april: 11 C}}");
        var check = Typed.Run("check", folder.File("jobs", "tray.yaml"));
        var said = string.Join(' ', check.Out.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal((ExitCode.Done, ""), (check.ExitCode, check.Error));
        Assert.Contains("- frame: too cold for PVA, slow-set in February to March: it needs 10 °C until it has set, and the nights have 3 °C at the coldest", said, StringComparison.Ordinal);
        Assert.Contains("a warm room with 10 °C or more for the nights, or work that comes to it in April.", said, StringComparison.Ordinal);
        Assert.Contains("- frame: too cold for wiping varnish (thinned) in February to April: it needs 13 °C", said, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_and_plan_name_the_same_glue_ups_those_of_panels_among_them()
    {
        using var folder = WithNights("nights: {temperature: 14 C, months: {march: 6 C}}", ATrayShop.Job
            .Replace("  - {part: end,", "  - {part: lid, count: 1, size: 420 mm x 260 mm x 18 mm, panel: true, show: [face]}\n  - {part: end,", StringComparison.Ordinal));
        var check = Typed.Run("check", folder.File("jobs", "tray.yaml"), "--json").ReadJson().Field("nights").List("remarks").Select(remark => remark.Text("text")).ToList();
        var plan = Typed.Run("plan", folder.File("jobs", "tray.yaml"), "--json", "--schedules", "100").ReadJson().List("remarks").Where(remark => remark.Text("kind") == "nights").Select(remark => remark.Text("text")).ToList();
        Assert.Equal(check, plan);
        Assert.Contains(plan, text => text.StartsWith("lid, frame: too cold for PVA, slow-set in March", StringComparison.Ordinal));
    }

    [Fact]
    public void The_plan_leaves_the_cold_months_out_and_says_what_waits_for_warmer_nights()
    {
        using var folder = WithNights("nights: {temperature: 14 C, months: {march: 6 C, april: 11 C}}");
        var plan = JsonDocument.Parse(Typed.Run("plan", folder.File("jobs", "tray.yaml"), "--json", "--schedules", "100").Out).RootElement;
        var work = plan.GetProperty("sessions").EnumerateArray().SelectMany(session => session.GetProperty("tasks").EnumerateArray()).ToList();
        Assert.StartsWith("2027-04", Start("glue up: frame"), StringComparison.Ordinal);
        Assert.StartsWith("2027-05", Start("wiping varnish (thinned), coat 1: frame"), StringComparison.Ordinal);
        Assert.Contains(plan.GetProperty("waits").EnumerateArray(), wait => wait.GetProperty("reason").GetString() == "glue up: frame: too cold at night for PVA, slow-set, which needs 10 °C");
        var glue = plan.GetProperty("waits").EnumerateArray().First(wait => wait.GetProperty("after").GetString() == "glue up: frame");
        Assert.Equal(11, glue.GetProperty("nights").GetProperty("celsius").GetDouble());
        Assert.EndsWith("(x 1.9 at 11 °C at night)", glue.GetProperty("reason").GetString(), StringComparison.Ordinal);

        string Start(string task) => work.First(one => one.GetProperty("task").GetString() == task).GetProperty("start").GetString()!;
    }

    [Fact]
    public void Where_it_is_never_warm_enough_there_is_no_plan_and_the_cure_is_told()
    {
        using var folder = WithNights("nights: {temperature: 5 C}");
        var plan = JsonDocument.Parse(Typed.Run("plan", folder.File("jobs", "tray.yaml"), "--json").Out).RootElement;
        var reason = plan.GetProperty("cannotBePlanned")[0];
        Assert.Equal(("tooCold", "glue up: frame"), (reason.GetProperty("kind").GetString(), reason.GetProperty("task").GetString()));
        Assert.Equal("a warm room with 10 °C or more for the nights, or 'casein', which sets at 5 °C too", reason.GetProperty("cure").GetString());
    }

    private static FreshFolder WithNights(string nights, string job = ATrayShop.Job) => new FreshFolder().WithShop(ATrayShop.Shop + nights + "\n").WithJob("tray", job);
}
