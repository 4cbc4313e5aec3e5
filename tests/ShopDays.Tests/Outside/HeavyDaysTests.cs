using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Tests.Plans;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Outside;

/// <summary>What an arm stands, by the shop's limits where nothing else is said.</summary>
[Trait("Source", "Common practice, no source: two hours and a half of heavy work a day in bouts of 20 to 30 minutes, less on the day after, so that six days of sawing are not six full ones")]
public sealed class HeavyDaysTests
{
    [Fact]
    public void Two_full_days_of_sawing_never_follow_each_other_and_a_week_holds_about_four_fifths_of_its_caps()
    {
        var plan = new AJob().Worker("08:00-16:00", days: [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday, IsoDayOfWeek.Saturday])
            .Task("rip the slabs", 720, task => task with { WorkClass = WorkClass.Heavy, IsSplittable = true })
            .Plan();
        double[] days = [.. plan.Sessions.GroupBy(session => session.Session.Date).Select(day => day.Sum(session => session.Work.Sum(work => work.HandsOn.Minutes)))];
        Assert.Equal(6, days.Length);
        Assert.All(days.Zip(days.Skip(1)), two => Assert.True(two.First < 150 || two.Second < 150));
        Assert.InRange(days.Sum() / (6 * 150), 0.75, 0.85);
    }

    [Fact]
    public void Any_longer_stretch_is_taken_in_bouts_of_twenty_to_thirty_minutes()
    {
        for (var minutes = 40; minutes <= 240; minutes++)
        {
            Assert.InRange(WorkBouts.Of(WorkTime.FromMinutes(minutes), new ShopLimits().Bout, () => null)!.Each.Minutes, 20, 30);
        }
    }
}
