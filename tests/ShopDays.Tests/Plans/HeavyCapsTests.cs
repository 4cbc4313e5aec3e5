using NodaTime;
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
        Assert.Equal([30, 18, 12], plan.Sessions.GroupBy(session => session.Session.Date).Select(day => day.First().Work.Sum(work => work.HandsOn.Minutes)));
        Assert.Equal(plan.Finish, plan.LowerBound.At);
    }

    [Fact]
    public void What_binds_names_both_caps()
    {
        var plan = Shop().Task("rip", 60, Heavy).Task("resaw", 60, Heavy).Task("adze", 60, Heavy).Plan();
        Assert.StartsWith("heavy work", plan.LowerBound.Reason, StringComparison.Ordinal);
        Assert.Contains("at 1 h and 30 min a day and 1 h 36 min and 48 min in two days running", plan.LowerBound.Reason, StringComparison.Ordinal);
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

    [Fact]
    public void The_day_after_a_full_heavy_one_holds_six_tenths_and_a_day_later_all_of_it()
    {
        var plan = new AJob { Limits = new() }.Worker("09:00-13:00").Task("rip", 500, Split).Plan();
        Assert.Equal([150, 90, 150, 90, 20], plan.Sessions.Select(session => session.Work.Sum(work => work.HandsOn.Minutes)));
        Assert.Equal(plan.Finish, plan.LowerBound.At);
    }

    [Fact]
    public void A_day_between_is_enough_to_do_as_much_again()
    {
        var plan = new AJob { Limits = new() }.Worker("09:00-13:00", days: [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Saturday]).Task("rip", 450, Split).Plan();
        Assert.Equal([150, 150, 150], plan.Sessions.Select(session => session.Work.Sum(work => work.HandsOn.Minutes)));
        Assert.DoesNotContain("two days running", plan.LowerBound.Reason, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(150, new double[] { 150, 150 })]
    [InlineData(0, new double[] { 150, 0, 150 })]
    [InlineData(30, new double[] { 150, 30, 120 })]
    public void A_shop_may_say_what_two_days_running_hold(double more, double[] days)
    {
        var plan = new AJob { Limits = new() { HeavyInTwoDays = WorkTime.FromMinutes(150 + more) } }.Worker("09:00-13:00").Task("rip", 300, Split).Plan();
        Assert.Equal(days.Where(minutes => minutes > 0), plan.Sessions.Select(session => session.Work.Sum(work => work.HandsOn.Minutes)));
        Assert.Equal(days.Length - 1, Period.DaysBetween(plan.Sessions[0].Session.Date, plan.Sessions[^1].Session.Date));
    }

    [Fact]
    public void One_with_a_cap_of_a_day_of_their_own_has_what_follows_from_it_unless_they_say()
    {
        var limits = Limits with { HeavyInTwoDays = WorkTime.FromHours(2) };
        Assert.Equal(120, limits.HeavyInTwoDaysOf("maker")!.Value.Minutes);
        Assert.Null(limits.HeavyInTwoDaysOf("niece"));
        Assert.Equal(35, (limits with { HeavyInTwoDaysFor = new Dictionary<string, WorkTime> { ["niece"] = WorkTime.FromMinutes(35) } }).HeavyInTwoDaysOf("niece")!.Value.Minutes);
    }

    [Fact]
    public void A_cap_of_two_days_that_would_be_too_low_is_raised_with_that_of_a_day()
    {
        var reason = Assert.Single(new AJob { Limits = new() { HeavyPerDay = WorkTime.FromMinutes(60), HeavyInTwoDays = WorkTime.FromMinutes(70) } }.Task("rip", 90, Heavy).Reasons());
        Assert.Equal("1 h 30 min as 'heavy-per-day' under 'limits' and as 'heavy-in-two-days' under 'limits'", reason.Cure);
        Assert.Equal(1, new AJob { Limits = new() { HeavyPerDay = WorkTime.FromMinutes(90), HeavyInTwoDays = WorkTime.FromMinutes(90) } }.Task("rip", 90, Heavy).Plan().ShopDays);
    }

    private static ShopTask Split(ShopTask task) => Heavy(task) with { IsSplittable = true };

    private static ShopTask Heavy(ShopTask task) => task with { WorkClass = WorkClass.Heavy };

    private static AJob Shop() => new AJob { Limits = Limits }.Worker("09:00-12:00").Worker("09:00-12:00", name: "niece");
}
