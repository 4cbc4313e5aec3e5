using System.Text.Json;
using NodaTime;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>A tray and a box in one shop: their dates, what another piece would do to them, and what stands against a plan.</summary>
public sealed class OrdersCommandTests
{
    private static readonly string Box = ATrayShop.Job
        .Replace("job: Tray", "job: Box", StringComparison.Ordinal)
        .Replace("due: 2027-04-30", "due: 2027-05-30", StringComparison.Ordinal)
        .Replace("1500 mm x 200 mm", "1600 mm x 220 mm", StringComparison.Ordinal);

    [Fact]
    public void One_order_alone_comes_out_as_its_progress_has_it()
    {
        using var tray = new ATrayUnderWay();
        var progress = tray.Type("progress", "--json").ReadJson().Field("finish");
        var order = Assert.Single(Orders(tray.Folder, tray.Now).ReadJson().List("orders"));
        foreach (var name in (string[])["planned", "p50", "p80", "p90"])
        {
            Assert.Equal(progress.Text(name), order.Field("finish").Text(name));
        }

        tray.Done(6, 1.2).Began(0.5);
        progress = tray.Type("progress", "--json").ReadJson().Field("finish");
        order = Assert.Single(Orders(tray.Folder, tray.Now).ReadJson().List("orders"));
        Assert.True(order.Field("isBegun").GetBoolean());
        Assert.Equal(progress.Text("p80"), order.Field("finish").Text("p80"));
    }

    [Fact]
    public void Two_orders_share_the_sessions_and_each_has_its_dates()
    {
        using var folder = Two();
        var answer = Orders(folder).ReadJson();
        Assert.Equal(["tray", "box"], answer.List("orders").Select(order => order.Text("job")));
        Assert.All(answer.List("orders"), order => Assert.InRange(order.Field("finish").Number("chanceOfDate"), 0, 1));
        var work = answer.Field("plan").List("sessions").SelectMany(session => session.List("tasks")).OrderBy(task => task.Instant("start")).ToList();
        Assert.All(work.Zip(work.Skip(1)), pair => Assert.True(pair.First.Instant("end") <= pair.Second.Instant("start")));
        foreach (var order in answer.List("orders"))
        {
            // The last coat hardens after the last stroke.
            Assert.True(work.Where(task => task.Text("order") == order.Text("name")).Max(task => task.Instant("end")) <= order.Field("finish").Instant("planned"));
        }

        var printed = Orders(folder, null, asJson: false);
        Assert.Equal((0, ""), (printed.ExitCode, printed.Error));
        Assert.Contains("Tray: due Fri 30 Apr 2027; begins Mon 1 Mar 2027.", printed.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.All(printed.Out.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void The_same_seed_gives_the_same_orders()
    {
        using var folder = Two();
        Assert.Equal(Orders(folder).Out, Orders(folder).Out);
    }

    [Fact]
    public void A_promise_on_record_goes_before_the_date_in_the_file()
    {
        using var folder = Two();
        Typed.At(Start, "plan", folder.File("jobs", "tray.yaml"), "--promise", "-q", "--effort", "quick");
        var tray = Orders(folder).ReadJson().List("orders").Single(order => order.Text("job") == "tray");
        using var log = ShopLog.OpenToRead(new(folder.Path));
        var promised = log!.Promises.Of("tray")[0].P80!.Value.InZone(DateTimeZoneProviders.Tzdb["Europe/London"]).Date;
        Assert.True(tray.Field("isPromised").GetBoolean());
        Assert.Equal(promised.ToString("uuuu-MM-dd", System.Globalization.CultureInfo.InvariantCulture), tray.Text("date"));
    }

    [Fact]
    public void Jobs_that_are_not_in_hand_are_named_and_take_no_hours()
    {
        using var folder = Two();
        var alone = Sessions(Orders(folder.WithJob("box", Box.Replace("due:", "status: asked\ndue:", StringComparison.Ordinal))));
        foreach (var (status, words) in ((string, string)[])[("set aside", "set aside"), ("delivered", "delivered")])
        {
            folder.WithJob("box", Box.Replace("due:", $"status: {status}\ndue:", StringComparison.Ordinal));
            Assert.Equal(alone, Sessions(Orders(folder)));
            Assert.Contains($"Not planned, {words}: Box.", Orders(folder, null, asJson: false).Out, StringComparison.Ordinal);
        }

        static string Sessions(Typed answer) => answer.ReadJson().Field("plan").GetRawText();
    }

    [Fact]
    public void A_job_whose_tasks_are_all_done_is_left_out_by_itself()
    {
        using var tray = new ATrayUnderWay();
        tray.Done(tray.InOrder.Count, 1);
        var answer = Orders(tray.Folder, tray.Now + Duration.FromDays(60)).ReadJson();
        Assert.Empty(answer.List("orders"));
        Assert.Equal("done", Assert.Single(answer.List("notPlanned")).Text("why"));
        Assert.Contains("None is in hand.", Orders(tray.Folder, tray.Now + Duration.FromDays(60), asJson: false).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_new_piece_takes_what_time_is_left_and_moves_no_promise()
    {
        using var folder = Two();
        var answer = Orders(folder, null, true, "--like", "tray").ReadJson();
        var another = answer.Field("newOrder");
        Assert.Equal("Tray (new)", another.Text("name"));
        Assert.All(another.List("others"), other => Assert.Equal(other.Field("now").GetRawText(), other.Field("behind").GetRawText()));
        Assert.Equal(another.Field("finish").Text("p80")[..10], another.Text("promise"));

        Assert.InRange(another.Field("amongTheOthers").Number("trials"), 1, double.MaxValue);
        var printed = Orders(folder, null, false, "--like", "tray");
        Assert.StartsWith("A new tray, begun on Mon 1 Mar 2027, could be promised for ", printed.Out, StringComparison.Ordinal);
        Assert.All(printed.Out.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void The_orders_in_hand_have_one_plan_and_one_chance_whether_another_is_asked_for_or_not()
    {
        using var folder = Two();
        var finishes = Orders(folder).ReadJson().List("orders").Select(order => Finish(order.Field("finish")));
        Assert.Equal(finishes, Orders(folder, null, true, "--like", "tray").ReadJson().Field("newOrder").List("others").Select(other => Finish(other.Field("now"))));

        static (string, string, string, string, double) Finish(JsonElement one) => (one.Text("planned"), one.Text("p50"), one.Text("p80"), one.Text("p90"), one.Number("chanceOfDate"));
    }

    [Fact]
    public void A_new_piece_begins_on_the_date_that_is_asked_for()
    {
        using var folder = new FreshFolder().WithATray();
        var later = Orders(folder, null, true, "--like", "tray", "--start", "2027-06-07").ReadJson().Field("newOrder");
        Assert.True(string.CompareOrdinal(later.Field("finish").Text("planned"), "2027-06-14") > 0);
        var past = Orders(folder, null, true, "--like", "tray", "--start", "2027-02-07");
        Assert.Equal((2, "--start: Sun 7 Feb 2027 is past; today is Mon 1 Mar 2027\n"), (past.ExitCode, past.Error));
        Assert.Equal(2, Orders(folder, null, true, "--start", "2027-06-07").ExitCode);
        Assert.Equal(3, Orders(folder, null, true, "--like", "trap").ExitCode);
    }

    [Fact]
    public void One_broken_file_and_nothing_is_planned()
    {
        using var folder = Two().WithJob("box", Box.Replace("due:", "priority: 0\ndue:", StringComparison.Ordinal));
        var refused = Orders(folder, null, asJson: false);
        Assert.Equal((1, ""), (refused.ExitCode, refused.Out));
        Assert.Contains("jobs/box.yaml:3:11: '0' cannot be a priority; expected a whole number from 1 to 9", refused.Error, StringComparison.Ordinal);
        Assert.Equal("jobs/box.yaml", Assert.Single(Mistakes(Orders(folder))).Text("file"));

        static IReadOnlyList<JsonElement> Mistakes(Typed answer)
        {
            using var document = JsonDocument.Parse(answer.Out);
            return document.RootElement.Clone().List("mistakes");
        }
    }

    [Fact]
    public void What_cannot_be_planned_names_the_order_and_its_task()
    {
        // Of three quarters of an hour, opening up and sweeping up leave 20 minutes: too short to spread glue and clamp.
        using var folder = Two().WithShop(ATrayShop.Shop.Replace("[\"09:00-12:30\", \"13:15-17:00\"]", "[\"09:00-09:45\"]", StringComparison.Ordinal).Replace("[\"09:00-12:30\"]", "[\"09:00-09:45\"]", StringComparison.Ordinal).Replace("limits:", "least-session: 10m\nlimits:", StringComparison.Ordinal));
        var refused = Orders(folder, null, asJson: false);
        Assert.Equal(1, refused.ExitCode);
        Assert.StartsWith("The orders cannot be planned:\n- Tray: ", refused.Error, StringComparison.Ordinal);
        Assert.Contains("\n- Box: ", refused.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Stock_that_does_not_yield_every_part_names_the_order()
    {
        using var folder = Two().WithJob("box", Box.Replace("part: side, count: 2", "part: side, count: 30", StringComparison.Ordinal));
        var refused = Orders(folder, null, asJson: false);
        Assert.Equal(1, refused.ExitCode);
        Assert.StartsWith("Box:\n", refused.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Boards_that_two_jobs_count_on_are_remarked()
    {
        using var folder = new FreshFolder().WithATray().WithJob("other", ATrayShop.Job.Replace("job: Tray", "job: Other", StringComparison.Ordinal));
        Assert.Contains("Other and Tray both count on board A of the same timber and size", Orders(folder, null, asJson: false).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        using var apart = Two();
        Assert.DoesNotContain("count on board", Orders(apart, null, asJson: false).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void The_sheet_to_pin_up_has_the_orders_and_two_weeks()
    {
        using var folder = Two();
        Assert.Equal(0, Orders(folder, null, false, "--pdf", folder.File("orders.pdf")).ExitCode);
        var text = TextOf(folder.File("orders.pdf"));
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(folder.File("orders.pdf"));
        Assert.InRange(pdf.NumberOfPages, 1, 2);
        Assert.Contains("Orders in hand", text, StringComparison.Ordinal);
        Assert.Contains("Monday 8 March 2027", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Monday 15 March 2027", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_sessions_in_which_orders_slip_most_are_told_with_the_order_as_a_plan_tells_them()
    {
        using var folder = Two();
        var risks = Orders(folder).ReadJson().List("orders").SelectMany(order => order.List("sessionsAtRisk"), (order, risk) => (Order: order.Text("name"), Risk: risk)).OrderByDescending(one => one.Risk.Number("slips")).ToList();
        Assert.NotEmpty(risks);
        Assert.All(risks, one => Assert.InRange(one.Risk.Number("slips"), double.Epsilon, one.Risk.Number("notDone")));
        var printed = Orders(folder, null, false, "--pdf", folder.File("orders.pdf")).Out.ReplaceLineEndings(" ");
        Assert.Contains($"Where the plan slips most easily, all being on time before - {DateOf(risks[0].Risk)}, {risks[0].Order}: {risks[0].Risk.List("tasks")[0].GetString()}", printed, StringComparison.Ordinal);
        Assert.Contains(ReadPaper.Squeezed($"Where it slips most easily, and by what • {DateOf(risks[0].Risk)}, {risks[0].Order}, in "), ReadPaper.Squeezed(TextOf(folder.File("orders.pdf"))), StringComparison.Ordinal);

        static string DateOf(JsonElement risk) => risk.Time("start").ToString("ddd d MMM, HH:mm", System.Globalization.CultureInfo.InvariantCulture);
    }

    [Fact]
    public void How_dates_are_weighed_is_said_everywhere_and_only_where_there_is_something_to_weigh()
    {
        using var folder = Two();
        var said = Orders(folder).ReadJson().Text("roomForDates");
        Assert.StartsWith("Dates are to be kept with room", said, StringComparison.Ordinal);
        Assert.Contains(said, Orders(folder, null, false, "--pdf", folder.File("orders.pdf")).Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.Contains(ReadPaper.Squeezed(said), ReadPaper.Squeezed(TextOf(folder.File("orders.pdf"))), StringComparison.Ordinal);
        using var alone = new FreshFolder().WithATray();
        Assert.Equal(JsonValueKind.Null, Orders(alone).ReadJson().Field("roomForDates").ValueKind);
    }

    [Fact]
    public void The_sheet_says_when_another_piece_could_be_promised_where_that_was_asked()
    {
        using var folder = Two();
        var printed = Orders(folder, null, false, "--like", "tray", "--pdf", folder.File("orders.pdf"));
        var text = ReadPaper.Squeezed(TextOf(folder.File("orders.pdf")));
        var answer = printed.Out[..printed.Out.IndexOf("\n ", StringComparison.Ordinal)];
        Assert.StartsWith("A new tray, begun on", answer, StringComparison.Ordinal);
        Assert.Contains(ReadPaper.Squeezed(answer), text, StringComparison.Ordinal);
        Assert.Contains("Withitamong", text, StringComparison.Ordinal);
        Assert.Contains("Monday8March2027", text, StringComparison.Ordinal);

        using var none = new FreshFolder().WithJob("tray", ATrayShop.Job.Replace("due:", "status: asked\ndue:", StringComparison.Ordinal)).WithShop(ATrayShop.Shop);
        Assert.Equal(0, Orders(none, null, false, "--like", "tray", "--pdf", none.File("orders.pdf")).ExitCode);
        Assert.Contains("couldbepromisedfor", ReadPaper.Squeezed(TextOf(none.File("orders.pdf"))), StringComparison.Ordinal);
    }

    private static string TextOf(string file)
    {
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(file);
        return string.Join(' ', pdf.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
    }

    private static Instant Start => Instant.FromUtc(2027, 3, 1, 0, 0);

    private static FreshFolder Two() => new FreshFolder().WithATray().WithJob("box", Box);

    private static Typed Orders(FreshFolder folder, Instant? now = null, bool asJson = true, params string[] options) =>
        Typed.At(now ?? Start, ["orders", "--shop", folder.Path, "--effort", "quick", "--schedules", "400", .. asJson ? (string[])["--json"] : [], .. options]);
}
