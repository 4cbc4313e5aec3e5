using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class HeavyCapsTests
{
    /// <summary>A maker and a niece who does half an hour of heavy work a day where others do an hour.</summary>
    private static readonly ShopLimits Limits = new()
    {
        Workers = 2,
        HeavyPerDay = WorkTime.FromHours(1),
        HeavyOf = new Dictionary<string, WorkTime> { ["niece"] = WorkTime.FromMinutes(30) },
    };

    [Fact]
    public void Each_worker_keeps_to_a_cap_of_their_own()
    {
        var plan = Shop().Task("rip the legs", 60, Heavy).Task("rip the rails", 25, Heavy).Task("rip the slats", 30, Heavy).Plan();
        var work = plan.Sessions.SelectMany(session => session.Work).ToList();

        // An hour for the maker, of the other two tasks only one for the niece: the last one has to wait for another day.
        Assert.Equal(2, plan.ShopDays);
        Assert.Equal("maker", work.Single(one => one.Task.Name == "rip the legs").Worker);
        Assert.All(
            work.GroupBy(one => (one.Worker, one.Start.Date)),
            day => Assert.InRange(day.Sum(one => one.HandsOn.Minutes), 1, day.Key.Worker == "niece" ? 30 : 60));
    }

    [Fact]
    public void Two_people_together_stop_at_the_lesser_cap()
    {
        var plan = Shop().Task("turn the slab", 60, task => Heavy(task) with { Crew = 2, IsSplittable = true }).Plan();
        Assert.Equal(2, plan.ShopDays);
        Assert.All(plan.Sessions, session => Assert.Equal(30, session.Work.Sum(work => work.HandsOn.Minutes)));
        Assert.Equal(plan.Finish, plan.LowerBound.At);
    }

    [Fact]
    public void What_binds_names_both_caps()
    {
        var plan = Shop().Task("rip", 60, Heavy).Task("resaw", 60, Heavy).Task("adze", 60, Heavy).Plan();
        Assert.StartsWith("heavy work", plan.LowerBound.Reason, StringComparison.Ordinal);
        Assert.Contains("at 1 h and 30 min a day", plan.LowerBound.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_too_heavy_that_one_of_them_may_do_in_a_day() =>
        Assert.Equal(1, Shop().Task("rip", 55, Heavy).Plan().ShopDays);

    [Theory]
    [InlineData(1, 70, "'heavy-per-day' under 'limits' allows 1 h a day", "1 h 10 min as 'heavy-per-day' under 'limits'")]
    [InlineData(2, 45, "'heavy-per-day' of niece under 'workers' allows 30 min a day", "45 min as 'heavy-per-day' of niece under 'workers'")]
    [InlineData(2, 75, "'heavy-per-day' under 'limits' allows 1 h a day and 'heavy-per-day' of niece under 'workers' allows 30 min a day", "1 h 15 min as 'heavy-per-day' under 'limits' and as 'heavy-per-day' of niece under 'workers'")]
    public void What_is_too_heavy_is_told_with_the_cap_of_those_who_would_do_it(int crew, double minutes, string limit, string cure)
    {
        var reason = Assert.Single(Shop().Task("rip", minutes, task => Heavy(task) with { Crew = crew }).Reasons());
        Assert.Equal(UnplannableKind.TooHeavyForADay, reason.Kind);
        Assert.Contains(limit, reason.Limit, StringComparison.Ordinal);
        Assert.Contains(cure, reason.Cure, StringComparison.Ordinal);
    }

    [Fact]
    public void Whoever_may_do_more_and_is_not_there_for_so_long_does_not_count()
    {
        var job = new AJob { Limits = Limits }.Worker("09:00-09:35").Worker("09:00-12:00", name: "niece").Task("rip", 50, Heavy);
        var reason = Assert.Single(job.Reasons());
        Assert.Equal(UnplannableKind.TooHeavyForADay, reason.Kind);
        Assert.Contains("50 min as 'heavy-per-day' of niece under 'workers'", reason.Cure, StringComparison.Ordinal);

        var cured = new AJob { Limits = Limits with { HeavyOf = new Dictionary<string, WorkTime> { ["niece"] = WorkTime.FromMinutes(50) } } };
        Assert.Equal("niece", Assert.Single(cured.Worker("09:00-09:35").Worker("09:00-12:00", name: "niece").Task("rip", 50, Heavy).Plan().Sessions).Work[0].Worker);
    }

    [Fact]
    public void Runs_of_heavy_work_are_as_long_as_whoever_does_most_may_work()
    {
        Assert.Equal(60, Limits.MostHeavyPerDay.Minutes);
        Assert.Equal(30, (Limits with { Workers = 1 }).MostHeavyPerDay.Minutes);
    }

    private static ShopTask Heavy(ShopTask task) => task with { WorkClass = WorkClass.Heavy };

    private static AJob Shop() => new AJob { Limits = Limits }.Worker("09:00-12:00").Worker("09:00-12:00", name: "niece");
}
