using NodaTime;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>A tray that waits for a client's word and for a delivery, from Monday 1 March 2027 on.</summary>
public sealed class AwaitedCommandTests
{
    private const string Decisions = """
        decisions:
          - {decision: client agrees, from: client, asked: 2027-03-01, before: layout, wait: {low: 3d, likely: 5d, high: 12d}}
          - {decision: varnish, from: the dealer, ordered: 2027-03-02, before: finish, wait: 5d}

        """;

    private static readonly Instant Start = Instant.FromUtc(2027, 3, 1, 7, 0);

    [Fact]
    public void A_plan_says_who_is_waited_for_since_when_and_how_long()
    {
        using var folder = Tray();
        var waits = Plan(folder, Start).ReadJson().List("waits").Where(wait => wait.Field("awaited").ValueKind == System.Text.Json.JsonValueKind.Object).ToList();
        Assert.Equal(["the client's word: client agrees", "the dealer's delivery: varnish"], waits.Select(wait => wait.Text("reason")));
        Assert.Equal(["client", "the dealer"], waits.Select(wait => wait.Field("awaited").Text("from")));
        Assert.Equal(["2027-03-01T00:00:00Z", "2027-03-06T00:00:00Z"], [waits[0].Text("start"), waits[0].Text("end")]);
        Assert.Equal(["2027-03-04T00:00:00Z", "2027-03-13T00:00:00Z"], [waits[0].Field("awaited").Text("early"), waits[0].Field("awaited").Text("late")]);
        Assert.Contains(
            "the client's word: client agrees (asked Mon 1 Mar; 3 d to 12 d in eight cases of ten, so Thu 4 Mar to Sat 13 Mar)",
            OnOneLine(Plan(folder, Start, asJson: false).Out),
            StringComparison.Ordinal);
    }

    [Fact]
    public void It_decides_the_finish_and_is_named_for_it()
    {
        using var folder = Tray();
        var first = Plan(folder, Start).ReadJson().List("deciding")[0];
        Assert.Equal(("the client's word: client agrees", true), (first.Text("task"), first.YesOrNo("awaited")));
    }

    [Fact]
    public void Check_says_what_is_still_awaited()
    {
        using var folder = Tray();
        var checkedNow = OnOneLine(Typed.At(Start, "check", folder.File("jobs", "tray.yaml")).Out);
        Assert.Contains("Still awaited: - the client's word: client agrees (asked Mon 1 Mar 2027; 3 d to 12 d in eight cases of ten) - the dealer's delivery: varnish (ordered Tue 2 Mar 2027;", checkedNow, StringComparison.Ordinal);
        Assert.DoesNotContain("late", checkedNow, StringComparison.Ordinal);
        Assert.Contains("the client's word is 7 days late (client agrees)", OnOneLine(Typed.At(Instant.FromUtc(2027, 3, 20, 12, 0), "check", folder.File("jobs", "tray.yaml")).Out), StringComparison.Ordinal);

        using var both = Tray(Decisions.Replace("2027-03-01,", "2027-03-01, arrived: 2027-03-08,", StringComparison.Ordinal).Replace("2027-03-02,", "2027-03-02, arrived: 2027-03-09,", StringComparison.Ordinal));
        Assert.DoesNotContain("awaited", Typed.At(Instant.FromUtc(2027, 3, 9, 12, 0), "check", both.File("jobs", "tray.yaml")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_came_tomorrow_is_refused_at_its_place()
    {
        using var folder = Tray(Decisions.Replace("2027-03-02,", "2027-03-02, arrived: 2027-03-09,", StringComparison.Ordinal));
        var refused = Plan(folder, Instant.FromUtc(2027, 3, 8, 12, 0), asJson: false);
        Assert.Equal(1, refused.ExitCode);
        Assert.Contains("tray.yaml:17:73: 'varnish' came on 2027-03-09, and today is 2027-03-08", refused.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_word_that_is_late_moves_the_plan_and_is_named()
    {
        using var folder = Tray();
        var late = Instant.FromUtc(2027, 3, 16, 7, 0);
        var plan = Plan(folder, late).ReadJson();
        Assert.All(plan.List("sessions"), session => Assert.True(session.Instant("start") > late));
        Assert.Equal(3, plan.List("waits")[0].Field("awaited").Number("daysLate"));
        Assert.Contains("The client's word is 3 days late (client agrees): nine in ten would have come by Sat 13 Mar 2027.", OnOneLine(Plan(folder, late, asJson: false).Out), StringComparison.Ordinal);
    }

    [Fact]
    public void What_moved_the_finish_names_the_word_and_by_how_much_it_is_late()
    {
        using var folder = Tray();
        var progress = OnOneLine(Typed.At(Instant.FromUtc(2027, 3, 16, 7, 0), "progress", folder.File("jobs", "tray.yaml"), "--effort", "quick", "--schedules", "300").Out);
        Assert.Contains("days later word, money or goods from others came otherwise than was likely; still awaited: the client's word: client agrees, 3 days late; the dealer's delivery: varnish, 4 days late", progress, StringComparison.Ordinal);
    }

    [Fact]
    public void What_moved_the_finish_names_a_word_that_came_late_and_by_how_much()
    {
        using var folder = Tray();
        var typed = (string[])["--effort", "quick", "--schedules", "300"];
        Assert.Equal(0, Typed.At(Start, ["plan", folder.File("jobs", "tray.yaml"), "--promise", .. typed]).ExitCode);
        folder.WithJob("tray", ATrayShop.Job + Decisions.Replace("2027-03-01,", "2027-03-01, arrived: 2027-03-15,", StringComparison.Ordinal));
        var now = Instant.FromUtc(2027, 3, 16, 7, 0);
        Assert.Contains("the client's word: client agrees came 9 days later than expected", OnOneLine(Typed.At(now, ["progress", folder.File("jobs", "tray.yaml"), .. typed]).Out), StringComparison.Ordinal);
        var causes = Typed.At(now, ["progress", folder.File("jobs", "tray.yaml"), "--json", .. typed]).ReadJson().Field("moved").List("causes");
        Assert.Equal(9, Assert.Single(causes, cause => cause.Text("cause") == "awaited" && cause.Field("awaited").ValueKind == System.Text.Json.JsonValueKind.String).Number("daysLate"));
    }

    [Fact]
    public void A_word_that_is_late_before_the_job_begins_is_named_too()
    {
        using var folder = Tray(Decisions.Replace("asked: 2027-03-01", "asked: 2027-02-01", StringComparison.Ordinal));
        var early = Instant.FromUtc(2027, 2, 16, 7, 0);
        var wait = Plan(folder, early).ReadJson().List("waits")[0];
        Assert.Equal((3, true), (wait.Field("awaited").Number("daysLate"), wait.Instant("end") > early));

        // The whole as it was at its start knows nothing of that.
        Assert.Equal(0, Typed.At(early, "plan", folder.File("jobs", "tray.yaml"), "--whole", "--effort", "quick", "--schedules", "300", "--json").ReadJson().List("waits")[0].Field("awaited").Number("daysLate"));
    }

    [Fact]
    public void One_order_alone_has_the_dates_that_its_plan_has()
    {
        using var folder = Tray();
        var plan = Plan(folder, Start).ReadJson().Field("finish");
        var order = Typed.At(Start, "orders", "--shop", folder.Path, "--effort", "quick", "--schedules", "300", "--json").ReadJson().List("orders")[0].Field("finish");
        Assert.All((string[])["planned", "p50", "p80", "p90"], name => Assert.Equal(plan.Text(name), order.Text(name)));
    }

    [Fact]
    public void Orders_say_what_each_waits_for_and_another_like_it_is_asked_for_anew()
    {
        using var folder = Tray();
        var orders = Typed.At(Instant.FromUtc(2027, 3, 2, 7, 0), "orders", "--shop", folder.Path, "--effort", "quick", "--schedules", "300");
        Assert.Contains("It waits for the client's word: client agrees, since Mon 1 Mar, likely until Sat 6 Mar; for the dealer's delivery: varnish, since Tue 2 Mar, likely until Sun 7 Mar.", OnOneLine(orders.Out), StringComparison.Ordinal);
        Assert.All(orders.Out.Split('\n'), line => Assert.InRange(line.Length, 0, 80));

        var another = Typed.At(Instant.FromUtc(2027, 5, 3, 7, 0), "orders", "--shop", folder.Path, "--like", "tray", "--effort", "quick", "--schedules", "300", "--json").ReadJson();
        var its = another.Field("newOrder").Field("plan").List("waits").Where(wait => wait.Text("order") == "Tray (new)" && wait.Field("awaited").ValueKind == System.Text.Json.JsonValueKind.Object).ToList();
        Assert.Equal(["2027-05-03T00:00:00+01:00", "2027-05-03T00:00:00+01:00"], its.Select(wait => wait.Text("start")));
    }

    private static FreshFolder Tray(string decisions = Decisions) => new FreshFolder().WithShop(ATrayShop.Shop).WithJob("tray", ATrayShop.Job + decisions);

    private static Typed Plan(FreshFolder folder, Instant now, bool asJson = true) =>
        Typed.At(now, ["plan", folder.File("jobs", "tray.yaml"), "--effort", "quick", "--schedules", "300", .. asJson ? (string[])["--json"] : []]);

    private static string OnOneLine(string text) => string.Join(' ', text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}
