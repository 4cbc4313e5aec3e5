using CsCheck;
using ShopDays.Plans;
using ShopDays.Plans.Bounds;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class ColdNightsScheduleTests
{
    private static readonly Gen<(int[] Begins, double[] Factors)> Spells =
        from spells in Gen.Select(Gen.Int[1, 300], Gen.Double[0.5, 5]).Array[1, 6]
        select ((int[])[.. spells.Select((_, spell) => spells.Take(spell).Sum(one => one.Item1))], (double[])[.. spells.Select(one => one.Item2)]);

    [Fact]
    public void Every_rule_is_kept_and_no_schedule_beats_the_bound() =>
        Gen.Select(RandomShops.WithNights, Gen.Int[0, 999]).Sample((problem, seed) =>
        {
            var bound = ScheduleBound.Of(problem).Minute;
            var search = new ScheduleSearch(problem, seed);
            var schedule = new Schedule(problem.Tasks.Length);
            int[]?[] orders = [RandomShops.Order(problem, seed), search.Find(60)];
            foreach (var order in orders.OfType<int[]>().Where(order => new ScheduleGenerator(problem).Generate(order, problem.Minutes.AsSpan(), schedule)))
            {
                Assert.Empty(ScheduleCheck.Faults(problem, schedule));
                Assert.True(bound <= schedule.Finish);
            }
        }, iter: 200);

    [Fact]
    public void What_sets_is_done_when_its_minutes_each_at_its_own_pace_add_up() =>
        Gen.Select(Spells, Gen.Int[0, 400], Gen.Int[0, 1500]).Sample((spells, minutes, start) =>
        {
            var (done, minute) = (0.0, start);
            for (; done < minutes - 1e-6; minute++)
            {
                done += 1 / spells.Factors[Math.Max(0, Array.FindLastIndex(spells.Begins, begin => begin <= minute))];
            }

            Assert.Equal(minute, new CompiledSetting(spells.Begins, spells.Factors, minutes).EndFrom(start));
        }, iter: 2000);

    [Fact]
    public void What_begins_to_set_later_is_never_done_sooner_and_takes_no_less_and_no_more_than_it_can() =>
        Gen.Select(Spells, Gen.Int[0, 400], Gen.Int[0, 1500], Gen.Int[0, 200]).Sample((spells, minutes, start, later) =>
        {
            var setting = new CompiledSetting(spells.Begins, spells.Factors, minutes);
            Assert.True(setting.EndFrom(start) <= setting.EndFrom(start + later));
            Assert.InRange(setting.EndFrom(start) - start, setting.Least, setting.Most);
        }, iter: 2000);

    [Fact]
    public void The_last_minute_from_which_something_has_set_by_another_is_the_last() =>
        Gen.Select(Spells, Gen.Int[0, 400], Gen.Int[0, 1500]).Sample((spells, minutes, by) =>
        {
            var setting = new CompiledSetting(spells.Begins, spells.Factors, minutes);
            var last = setting.LatestFor(by);
            Assert.True(setting.EndFrom(last) <= by);
            Assert.True(last == by || setting.EndFrom(last + 1) > by);
        }, iter: 2000);

    [Fact]
    public void After_a_wait_it_sets_as_from_a_later_minute() =>
        Gen.Select(Spells, Gen.Int[0, 400], Gen.Int[0, 1500], Gen.Int[0, 300]).Sample((spells, minutes, start, wait) =>
        {
            var setting = new CompiledSetting(spells.Begins, spells.Factors, minutes);
            var later = setting.After(wait);
            Assert.Equal(setting.EndFrom(start + wait), later.EndFrom(start));
            Assert.InRange(later.EndFrom(start) - start, later.Least, later.Most);
        }, iter: 2000);

    [Fact]
    public void Without_cold_nothing_takes_longer_and_no_schedule_of_the_cold_beats_the_bound() =>
        Gen.Select(RandomShops.WithNights, Gen.Int[0, 999]).Sample((problem, seed) =>
        {
            var mild = Changed.WithoutCold(problem);
            Assert.False(mild.Nights.AreCold);
            Assert.All(problem.Precedences.Zip(mild.Precedences), pair => Assert.True(pair.Second.Lag <= pair.First.Lag));
            var schedule = new Schedule(problem.Tasks.Length);
            Assert.True(!new ScheduleGenerator(problem).Generate(RandomShops.Order(problem, seed), problem.Minutes.AsSpan(), schedule) || ScheduleBound.Of(mild).Minute <= schedule.Finish);
        }, iter: 200);

    [Fact]
    public void What_is_glued_again_begins_to_set_when_it_is_and_not_before()
    {
        // Twice as slow from minute 100 on: 40 minutes from minute 90 on are ten, and then sixty.
        var nights = new CompiledNights([new([0, 100], [1.0, 2.0], 40)], []);
        var problem = new ScheduleProblem(
            [new() { Minutes = 10, Crew = 0 }, new() { Minutes = 10, Crew = 0 }],
            [new(0, 1, 40, Sets: 1)],
            [],
            [],
            nights: nights);
        Assert.Equal(60, FinishOf(problem));
        Assert.Equal(10 + 80 + 10 + 60 + 10, FinishOf(problem.Interrupted([(0, 80)])));
    }

    private static int FinishOf(ScheduleProblem problem)
    {
        var schedule = new Schedule(problem.Tasks.Length);
        Assert.True(new ScheduleGenerator(problem).Generate([.. Enumerable.Range(0, problem.Blocks)], problem.Minutes.AsSpan(), schedule));
        return schedule.Finish;
    }
}
