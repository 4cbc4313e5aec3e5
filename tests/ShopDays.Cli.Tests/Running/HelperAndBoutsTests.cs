using System.Globalization;
using System.Text.Json;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>On which days a helper is needed, in which bouts heavy work is taken, and how work is broken off, on the samples.</summary>
public sealed class HelperAndBoutsTests
{
    private const string Helped = "elm-workbench";

    public static TheoryData<string> Shops => Sample.Shops;

    [Fact]
    public async Task A_helper_is_needed_on_the_days_of_their_sessions_and_for_as_long_as_these_say()
    {
        var plan = await Plan(Helped);
        var visits = plan.List("visits").Select(visit => (visit.Text("date"), visit.Number("togetherMinutes"), visit.Number("aloneMinutes"))).ToList();
        var sessions = plan.List("sessions").Where(session => session.Text("worker") == "helper")
            .GroupBy(session => session.Text("start")[..10])
            .Select(day => (day.Key, Minutes(day, crew => crew > 1), Minutes(day, crew => crew == 1)));
        Assert.NotEmpty(visits);
        Assert.Equal(sessions, visits);

        static double Minutes(IEnumerable<JsonElement> day, Func<double, bool> crew) =>
            day.SelectMany(session => session.List("tasks")).Where(work => crew(work.Number("crew"))).Sum(work => work.Number("minutes"));
    }

    [Fact]
    public async Task Slabs_are_lifted_to_the_saw_in_the_helpers_visits_and_the_terminal_and_the_first_page_say_when()
    {
        var plan = await Plan(Helped);
        var lifts = plan.List("sessions").SelectMany(session => session.List("tasks").Where(work => work.Text("task").StartsWith("lift ", StringComparison.Ordinal)).Select(work => (Who: session.Text("worker"), Task: work.Text("task"))));
        Assert.All(lifts.GroupBy(one => one.Task), lift => Assert.Equal(["helper", "maker"], lift.Select(one => one.Who).Order()));
        Assert.Contains(lifts, one => one.Task == "lift S1 onto the trestles");

        var first = plan.List("visits")[0];
        var when = DateOnly.ParseExact(first.Text("date"), "yyyy-MM-dd", CultureInfo.InvariantCulture).ToString("ddd d MMM", CultureInfo.InvariantCulture);
        var together = ReadPaper.Squeezed($"{first.Number("togetherMinutes")} min for two");
        Assert.Contains(ReadPaper.Squeezed("When somebody else is needed - helper, " + when + ":") + together, ReadPaper.Squeezed((await Sample.Of(Helped).Run("plan")).Out), StringComparison.Ordinal);
        Assert.Contains(ReadPaper.Squeezed("Helper: " + when + ",") + together, (await ReadPaper.Of(Helped)).Pages[0].Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("evening-cupboard")]
    [InlineData("tidewater-commission")]
    public async Task Who_works_alone_hears_nothing_of_a_helper(string shop)
    {
        Assert.Empty((await Plan(shop)).List("visits"));
        Assert.DoesNotContain("somebody", (await Sample.Of(shop).Run("plan")).Out, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Heavy_work_of_more_than_half_an_hour_stands_on_its_sheet_with_its_bouts(string shop)
    {
        var paper = await ReadPaper.Of(shop);
        var taken = (await Plan(shop)).List("sessions").SelectMany(session => session.List("tasks")).Where(work => work.Field("bouts").ValueKind == JsonValueKind.Object).ToList();
        Assert.All(taken, work =>
        {
            var bouts = work.Field("bouts");
            Assert.InRange(bouts.Number("count"), 2, 10);
            Assert.InRange(bouts.Number("count") * bouts.Number("minutes"), work.Number("minutes") - 1, work.Number("minutes") + 1);
            Assert.InRange(bouts.Number("minutes"), 15, 30);
            Assert.Contains(ReadPaper.Squeezed(string.Create(CultureInfo.InvariantCulture, $"in {bouts.Number("count")} bouts of about")), paper.Text, StringComparison.Ordinal);
        });
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task What_is_broken_off_is_begun_and_ended_with_five_minutes_at_least(string shop)
    {
        var pieces = (await Plan(shop)).List("sessions").SelectMany(session => session.List("tasks").Select(work => (Who: session.Text("worker"), Work: work)));
        Assert.All(pieces.GroupBy(one => (one.Who, Mark: one.Work.Text("mark"))).Where(own => own.Count() > 1).SelectMany(own => own), one => Assert.True(one.Work.Number("minutes") >= 5, one.Work.Text("task")));
    }

    private static async Task<JsonElement> Plan(string shop) => (await Sample.Of(shop).Plan()).ReadJson();
}
