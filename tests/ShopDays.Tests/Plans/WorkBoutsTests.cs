using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Heavy work in bouts.</summary>
public sealed class WorkBoutsTests
{
    [Theory]
    [InlineData(12, 1, 0)]
    [InlineData(30, 1, 0)]
    [InlineData(31, 2, 15.5)]
    [InlineData(60, 2, 30)]
    [InlineData(95, 4, 23.75)]
    [InlineData(150, 5, 30)]
    public void Heavy_work_is_taken_in_bouts_of_twenty_to_thirty_minutes_about(double minutes, int bouts, double each)
    {
        var found = WorkBouts.Of(WorkTime.FromMinutes(minutes), new ShopLimits().Bout, () => null);
        Assert.Equal((bouts, each), (found?.Count ?? 1, found?.Each.Minutes ?? 0));
    }

    [Fact]
    public void Light_work_of_the_session_fills_the_rests_unless_one_waits_for_the_other()
    {
        var plan = Job().Plan();
        var bouts = Assert.Single(plan.Sessions).Work.Single(work => work.Task.Name == "rip").Bouts!;
        Assert.Equal((4, "mark out"), (bouts.Count, bouts.Between?.Name));
        Assert.Null(Assert.Single(Job().Then("mark out", "rip").Plan().Sessions).Work.Single(work => work.Task.Name == "rip").Bouts!.Between);
        Assert.All(plan.Sessions[0].Work.Where(work => work.Task.WorkClass != WorkClass.Heavy), work => Assert.Null(work.Bouts));
    }

    [Theory]
    [InlineData(false, "mark out")]
    [InlineData(true, null)]
    public void Nothing_is_to_be_done_in_the_rests_that_waits_for_work_which_comes_after_them(bool waits, string? between)
    {
        var job = Job(60).Task("plane to width", 10, task => task with { WorkClass = WorkClass.Medium });
        var rip = Assert.Single((waits ? job.Then("rip", "plane to width").Then("plane to width", "mark out") : job.Then("rip", "plane to width")).Plan().Sessions).Work.Single(work => work.Task.Name == "rip");
        Assert.Equal(between, rip.Bouts!.Between?.Name);
    }

    [Fact]
    public void Nothing_is_to_be_done_in_the_rests_that_work_before_them_has_used_already()
    {
        var session = Assert.Single(Job(60).Task("bore", 15, task => task with { IsSplittable = false }).Then("mark out", "bore").Then("bore", "rip").Plan().Sessions);
        Assert.Null(session.Work.Single(work => work.Task.Name == "rip").Bouts!.Between);
    }

    private static AJob Job(double rip = 95) => new AJob()
        .Task("rip", rip, task => task with { WorkClass = WorkClass.Heavy, IsSplittable = true })
        .Task("mark out", 20, task => task with { IsSplittable = true });
}
