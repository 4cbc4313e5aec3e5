using ShopDays.Plans.Bounds;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using ShopDays.Tests.Plans;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "R. Kolisch and A. Sprecher, PSPLIB, European Journal of Operational Research 96 (1996) 205-216, sets J30, J60 and J120; bounds as collected in 2020")]
public sealed class PsplibTests
{
    [Theory]
    [InlineData("j301_1")]
    [InlineData("j305_3")]
    [InlineData("j309_1")]
    [InlineData("j3013_1")]
    [InlineData("j3029_2")]
    public void A_published_problem_is_solved_near_its_optimum_and_never_below(string name)
    {
        var instance = PsplibSet.One(name);
        var problem = instance.Problem;
        var search = new ScheduleSearch(problem, 1);
        var order = search.Find(3000)!;
        var schedule = new Schedule(problem.Tasks.Length);
        Assert.True(new ScheduleGenerator(problem).Generate(order, problem.Minutes.AsSpan(), schedule));
        Assert.Empty(ScheduleCheck.Faults(problem, schedule));
        Assert.Empty(instance.Faults(schedule.Start.ToArray(), schedule.Finish));

        // A proven optimum cannot be beaten. 8 %: measured, 3,000 schedules miss 6.6 % on the hardest of these and
        // nothing or nearly so on most; the seed is fixed.
        Assert.InRange(schedule.Finish, instance.BestUpper, (int)(1.08 * instance.BestUpper));
    }

    [Theory]
    [InlineData("j30", 480, 30)]
    [InlineData("j60", 240, 60)]
    [InlineData("j120", 300, 120)]
    public void The_archives_hold_the_published_problems(string name, int count, int activities)
    {
        var set = PsplibSet.Read(name);
        Assert.Equal(count, set.Instances.Length);
        Assert.All(set.Instances, instance => Assert.Equal(4, instance.Capacities.Length));
        Assert.All(set.Instances, instance => Assert.InRange(instance.BestUpper, instance.BestLower, int.MaxValue));
        Assert.All(set.Instances, instance => Assert.InRange(instance.BestLower, instance.CriticalPath, int.MaxValue));
        Assert.All(set.Instances, instance => Assert.Equal(activities + 2, instance.Durations.Length));
    }

    [Theory]
    [InlineData("j30", 12)]
    [InlineData("j60", 24)]
    [InlineData("j120", 60)]
    public void The_bound_lies_between_the_published_critical_path_and_the_best_known_length(string name, int every)
    {
        foreach (var instance in PsplibSet.Read(name, every).Instances)
        {
            var problem = instance.Problem;

            // With everything shared left out the published critical path is found, exactly.
            Assert.Equal(instance.CriticalPath, new BoundHeads(problem, []).End[^1]);
            Assert.InRange(ScheduleBound.Of(problem).Minute, instance.CriticalPath, instance.BestUpper);
        }
    }

    [Fact]
    public void A_wrong_schedule_is_seen_as_wrong()
    {
        var instance = PsplibSet.One("j301_1");
        var allAtOnce = new int[instance.Durations.Length];
        var faults = instance.Faults(allAtOnce, instance.Durations.Max()).ToList();
        Assert.Contains(faults, fault => fault.Contains("begins before", StringComparison.Ordinal));
        Assert.Contains(faults, fault => fault.Contains("too much of resource", StringComparison.Ordinal));
    }
}
