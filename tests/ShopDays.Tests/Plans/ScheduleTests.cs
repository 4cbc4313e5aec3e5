using CsCheck;
using ShopDays.Plans.Bounds;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class ScheduleTests
{
    [Fact]
    public void Every_rule_is_kept_in_any_order_of_work() =>
        Gen.Select(RandomShops.Problem, Gen.Int[0, 999]).Sample((problem, seed) =>
        {
            var schedule = new Schedule(problem.Tasks.Length);
            if (!new ScheduleGenerator(problem).Generate(RandomShops.Order(problem, seed), problem.Minutes.AsSpan(), schedule))
            {
                return Impossible(problem, schedule);
            }

            Assert.Empty(ScheduleCheck.Faults(problem, schedule));
            return true;
        }, iter: 400);

    [Fact]
    public void No_plan_finishes_before_the_lower_bound() =>
        Gen.Select(RandomShops.Problem, Gen.Int[0, 999]).Sample((problem, seed) =>
        {
            var schedule = new Schedule(problem.Tasks.Length);
            if (!new ScheduleGenerator(problem).Generate(RandomShops.Order(problem, seed), problem.Minutes.AsSpan(), schedule))
            {
                return Impossible(problem, schedule);
            }

            return ScheduleBound.Of(problem).Minute <= schedule.Finish;
        }, iter: 400);

    [Fact]
    public void No_order_finishes_before_its_own_bound() =>
        Gen.Select(RandomShops.WithOrders, Gen.Int[0, 999]).Sample((problem, seed) =>
        {
            var search = new ScheduleSearch(problem, seed);
            int[]?[] orders = [RandomShops.Order(problem, seed), search.Find(60)];
            var bounds = Enumerable.Range(0, problem.Orders.Length).Select(order => ScheduleBound.OfOrder(problem, order).Minute).ToList();
            var schedule = new Schedule(problem.Tasks.Length, problem.Orders.Length);
            foreach (var order in orders.OfType<int[]>().Where(order => new ScheduleGenerator(problem).Generate(order, problem.Minutes.AsSpan(), schedule)))
            {
                Assert.All(bounds.Index(), bound => Assert.True(bound.Item <= schedule.Finishes[bound.Index]));
            }
        }, iter: 150);

    [Fact]
    public void An_order_that_nothing_else_bears_upon_finishes_at_its_own_bound()
    {
        // Two workers; the second order waits for a day before 50 minutes' work, the first has the time until then.
        var always = new CompiledCalendar([new(0, 10_000, 0)], []);
        var problem = new ScheduleProblem(
            [new() { Minutes = 200, WaitAtEnd = 30 }, new() { Minutes = 50, NotBefore = 1440, Order = 1 }],
            [],
            [always, always],
            [],
            orders: [new(), new()]);
        Assert.Equal((230, 1490), (ScheduleBound.OfOrder(problem, 0).Minute, ScheduleBound.OfOrder(problem, 1).Minute));
    }

    [Fact]
    public void A_wait_that_runs_already_ends_an_order_with_work_before_it_or_none_though_nobody_is_there()
    {
        // Work ends in the first session, the wait between that and the next.
        var problem = new ScheduleProblem(
            [new() { Minutes = 50 }],
            [],
            [new([new(0, 100, 0), new(1440, 1540, 1)], [])],
            [],
            orders: [new(FinishedFrom: 700), new(FinishedFrom: 800)]);
        Assert.Equal((700, 800), (ScheduleBound.OfOrder(problem, 0).Minute, ScheduleBound.OfOrder(problem, 1).Minute));
        Assert.Equal(800, ScheduleBound.Of(problem).Minute);
    }

    [Fact]
    public void One_seed_gives_one_plan_and_no_worse_than_the_rules() =>
        Gen.Select(RandomShops.Problem, Gen.Int[0, 999]).Sample((problem, seed) =>
        {
            var (once, again, few) = (new ScheduleSearch(problem, seed), new ScheduleSearch(problem, seed), new ScheduleSearch(problem, seed));
            var (one, other) = (once.Find(60), again.Find(60));
            few.Find(1);
            Assert.Equal(one, other);
            Assert.True(once.BestScore <= few.BestScore);
        }, iter: 50);

    [Fact]
    public void Drawn_times_that_run_over_still_keep_every_other_rule() =>
        Gen.Select(RandomShops.Problem, Gen.Int[0, 999]).Sample((problem, seed) =>
        {
            // Three times as long as planned: many a task no longer fits into a session.
            int[] minutes = [.. problem.Minutes.Select(planned => 3 * planned)];
            var schedule = new Schedule(problem.Tasks.Length);
            if (!new ScheduleGenerator(problem).Generate(RandomShops.Order(problem, seed), minutes, schedule, mayRunOver: true))
            {
                return;
            }

            var faults = ScheduleCheck.Faults(problem, schedule, minutes);
            var ranOver = faults.Where(fault => fault.EndsWith("is broken off", StringComparison.Ordinal) || fault.Contains("begins after the session", StringComparison.Ordinal)).ToList();
            var tooShort = faults.Where(fault => fault.EndsWith("too short to begin", StringComparison.Ordinal)).ToList();
            var missed = faults.Where(fault => fault.EndsWith("begins too late", StringComparison.Ordinal)).ToList();
            Assert.Empty(faults.Except(ranOver).Except(tooShort).Except(missed));
            Assert.True(schedule.Overruns >= missed.Count);
            Assert.True(schedule.Overruns > 0 || (ranOver.Count == 0 && tooShort.Count == 0));
        }, iter: 200);

    [Fact]
    public void After_a_few_runs_nothing_is_allocated() =>
        RandomShops.Problem.Sample(problem =>
        {
            var generator = new ScheduleGenerator(problem);
            var schedule = new Schedule(problem.Tasks.Length);
            var order = RandomShops.Order(problem, 1);

            // Two buffers of pieces change places now and then, and each has to grow once.
            for (var run = 0; run < 8; run++)
            {
                generator.Generate(order, problem.Minutes.AsSpan(), schedule);
            }

            var before = GC.GetAllocatedBytesForCurrentThread();
            for (var run = 0; run < 5; run++)
            {
                generator.Generate(order, problem.Minutes.AsSpan(), schedule);
            }

            Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        }, iter: 20, threads: 1);

    /// <summary>A pair may be too much for any session by its clamps or the cap, and an appointment be missed; nothing else may fail.</summary>
    private static bool Impossible(ScheduleProblem problem, Schedule schedule) =>
        schedule.Unplaced >= 0
        && (problem.Members(problem.BlockOf(schedule.Unplaced)).Length > 1 || problem.Tasks[schedule.Unplaced].StartBy < CompiledCalendar.Never);
}
