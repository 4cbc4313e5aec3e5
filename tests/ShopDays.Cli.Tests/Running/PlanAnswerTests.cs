using System.Text.Json;
using NodaTime;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>What <c>plan --json</c> promises to other programs, on the samples.</summary>
public sealed class PlanAnswerTests
{
    public static TheoryData<string> Shops => Sample.Shops;

    public static TheoryData<string, string> Zones => new()
    {
        { "elm-workbench", "Europe/London" },
        { "evening-cupboard", "Pacific/Auckland" },
        { "tidewater-commission", "America/New_York" },
    };

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_finish_has_its_dates_in_order_and_none_before_the_lower_bound(string shop)
    {
        var plan = await Plan(shop);
        var finish = plan.Field("finish");
        Assert.True(plan.Instant("lowerBound") <= finish.Instant("planned"));
        Assert.True(finish.Instant("p50") <= finish.Instant("p80"));
        Assert.True(finish.Instant("p80") <= finish.Instant("p90"));
        Assert.InRange(plan.Number("gap"), 0, 10);
        Assert.All(Work(plan), work => Assert.True(work.Instant("end") <= finish.Instant("planned")));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task What_keeps_any_plan_from_an_earlier_finish_is_named_with_its_tasks_and_hours(string shop)
    {
        var plan = await Plan(shop);
        var bound = plan.Field("bound");
        Assert.Equal(plan.Instant("lowerBound"), bound.Instant("at"));
        Assert.Contains(bound.Text("kind"), plan.Text("lowerBoundReason"), StringComparison.Ordinal);
        var planned = Work(plan).Select(work => work.Text("task")).ToHashSet(StringComparer.Ordinal);
        Assert.All(bound.List("tasks"), task => Assert.Contains(task.Text("task"), planned));
        Assert.True(bound.Instant("from") <= bound.Instant("by"));
        Assert.True(bound.Number("neededMinutes") >= bound.Number("thereMinutes"));
    }

    [Theory]
    [InlineData("elm-workbench", null)]
    [InlineData("evening-cupboard", "2027-05-30")]
    [InlineData("tidewater-commission", "2027-07-24")]
    public async Task The_day_promised_comes_with_its_chance(string shop, string? due)
    {
        var finish = (await Plan(shop)).Field("finish");
        if (due is null)
        {
            Assert.Equal(JsonValueKind.Null, finish.Field("due").ValueKind);
            Assert.Equal(JsonValueKind.Null, finish.Field("chanceOfDue").ValueKind);
        }
        else
        {
            Assert.Equal(due, finish.Text("due"));
            Assert.InRange(finish.Number("chanceOfDue"), 0, 1);
        }
    }

    [Theory]
    [MemberData(nameof(Zones))]
    public async Task Times_have_the_offset_that_the_shops_clock_has_then(string shop, string zone)
    {
        var plan = await Plan(shop);
        var times = plan.List("sessions").Concat(Work(plan)).Concat(plan.List("waits")).SelectMany(one => new[] { one.Time("start"), one.Time("end") });
        Assert.All(times, time => Assert.Equal(DateTimeZoneProviders.Tzdb[zone].GetUtcOffset(time.ToInstant()), time.Offset));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Sessions_come_in_order_and_nobody_is_in_two_at_once(string shop)
    {
        var sessions = (await Plan(shop)).List("sessions");
        Assert.All(sessions, session => Assert.True(session.Instant("start") < session.Instant("end")));
        Assert.All(sessions.Zip(sessions.Skip(1)), pair => Assert.True(pair.First.Instant("start") <= pair.Second.Instant("start")));
        Assert.All(sessions.GroupBy(session => session.Text("worker")), worker =>
            Assert.All(worker.Zip(worker.Skip(1)), pair => Assert.True(pair.First.Instant("end") <= pair.Second.Instant("start"))));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Work_lies_inside_its_session_one_after_the_other(string shop)
    {
        foreach (var session in (await Plan(shop)).List("sessions"))
        {
            var tasks = session.List("tasks");
            Assert.NotEmpty(tasks);
            Assert.True(session.Instant("start") <= tasks[0].Instant("start"));
            Assert.True(tasks[^1].Instant("end") <= session.Instant("end"));
            Assert.All(tasks.Zip(tasks.Skip(1)), pair => Assert.True(pair.First.Instant("end") <= pair.Second.Instant("start")));
            Assert.All(tasks, work =>
            {
                Assert.NotEmpty(work.Text("task"));
                Assert.True(work.Field("operation").ValueKind is JsonValueKind.String or JsonValueKind.Null);
                Assert.True(work.Field("part").ValueKind is JsonValueKind.String or JsonValueKind.Null);

                // Written to a hundredth of a minute.
                Assert.Equal((work.Instant("end") - work.Instant("start")).TotalMinutes, work.Number("minutes"), 0.011);
            });
        }
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Every_task_of_the_job_is_finished_once(string shop)
    {
        // Work for two is in the sessions of both, at the same time.
        var finished = Work(await Plan(shop)).Where(work => work.YesOrNo("done")).Select(work => (Task: work.Text("task"), End: work.Text("end"))).Distinct().ToList();
        Assert.Equal(finished.DistinctBy(work => work.Task), finished);
        Assert.Equal((await Sample.Of(shop).Run("estimate --json")).ReadJson().Number("tasks"), finished.Count);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Work_that_was_begun_is_finished_and_not_gone_on_with_afterwards(string shop)
    {
        Assert.All(Work(await Plan(shop)).GroupBy(work => work.Text("task")), task =>
        {
            var end = task.Max(work => work.Instant("end"));
            Assert.All(task, work => Assert.Equal(work.Instant("end") == end, work.YesOrNo("done")));
        });
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Waits_take_time_and_say_after_what_and_why(string shop)
    {
        var plan = await Plan(shop);
        var tasks = Work(plan).Select(work => work.Text("task")).ToHashSet();
        Assert.NotEmpty(plan.List("waits"));
        Assert.All(plan.List("waits"), wait =>
        {
            Assert.True(wait.Instant("start") < wait.Instant("end"));
            Assert.NotEmpty(wait.Text("reason"));
            if (wait.Field("after").ValueKind != JsonValueKind.Null)
            {
                Assert.Contains(wait.Text("after"), tasks);
            }
        });
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Shop_days_are_the_days_with_work(string shop)
    {
        var plan = await Plan(shop);
        Assert.Equal(plan.List("sessions").Select(session => session.Time("start").Date).Distinct().Count(), plan.Number("shopDays"));
    }

    [Theory]
    [InlineData("elm-workbench", "edge tools", "heavy lifts", "heavy work", "oily rags", "solvents and finishes")]
    [InlineData("evening-cupboard", "edge tools", "adhesives", "oily rags")]
    [InlineData("tidewater-commission", "edge tools", "adhesives", "dust", "sharpening", "oily rags", "solvents and finishes")]
    public async Task The_kinds_of_work_have_their_cautions_and_one_goes_always(string shop, params string[] kinds)
    {
        var cautions = (await Plan(shop)).List("cautions");
        Assert.All(kinds.Append("always"), kind => Assert.Single(cautions, caution => caution.Text("kind") == kind));
        Assert.All(cautions, caution => Assert.NotEmpty(caution.Text("text")));
        Assert.All(cautions, caution => Assert.NotEmpty(caution.Text("saidBy")));
        Assert.DoesNotContain(cautions, caution => caution.Text("kind") == "machines");
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Field_names_are_in_camel_case(string shop)
    {
        Assert.All(Names(await Plan(shop)), name => Assert.Matches("^[a-z][a-zA-Z0-9]*$", name));
        Assert.All(Names((await Sample.Of(shop).Run("layout --json")).ReadJson()), name => Assert.Matches("^[a-z][a-zA-Z0-9]*$", name));
        Assert.All(Names((await Sample.Of(shop).Run("estimate --json")).ReadJson()), name => Assert.Matches("^[a-z][a-zA-Z0-9]*$", name));
    }

    private static IEnumerable<string> Names(JsonElement answer) => answer.ValueKind switch
    {
        JsonValueKind.Object => answer.EnumerateObject().SelectMany(field => Names(field.Value).Prepend(field.Name)),
        JsonValueKind.Array => answer.EnumerateArray().SelectMany(Names),
        _ => [],
    };

    private static IEnumerable<JsonElement> Work(JsonElement plan) => plan.List("sessions").SelectMany(session => session.List("tasks"));

    private static async Task<JsonElement> Plan(string shop) => (await Sample.Of(shop).Plan()).ReadJson();
}
