using CsCheck;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>The days on which somebody beside the first worker is called in.</summary>
public sealed class HelperVisitTests
{
    private const int Day = 24 * 60;

    [Fact]
    public void Work_for_two_is_gathered_in_one_visit_where_nothing_is_lost_by_it()
    {
        // A wait of two weeks settles the finish; the lifts come after what one saws by oneself.
        var job = new AJob { Limits = new() { Workers = 2 } }.Worker("09:00-11:00").Worker("09:00-11:00", name: "helper", days: [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday])
            .Task("glue", 20).Task("plane", 20).Then("glue", "plane", new Wait(Duration.FromDays(14), "the glue sets"));
        for (var one = 0; one < 4; one++)
        {
            job.Task($"saw {one}", 50).Task($"lift {one}", 5, task => task with { Crew = 2 }).Then($"saw {one}", $"lift {one}");
        }

        var visit = Assert.Single(job.Plan().Visits);
        Assert.Equal(("helper", 20, 4), (visit.Worker, visit.Together.Minutes, visit.Tasks.Count));
    }

    [Fact]
    public void Nobody_is_called_in_for_a_short_coat_that_can_wait_for_the_next_visit()
    {
        // On Tuesday only a lift of five minutes could be done; on Thursday there is more for two, and the wait goes on for long after.
        var job = new AJob { Limits = new() { Workers = 2 } }.Worker("09:00-11:00").Worker("09:00-11:00", name: "helper", days: [IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday])
            .Task("glue", 20).Task("plane", 20).Then("glue", "plane", new Wait(Duration.FromDays(14), "the glue sets"))
            .Task("lift", 5, task => task with { Crew = 2 })
            .Task("saw", 40, task => task with { NotBefore = new(2027, 3, 4) })
            .Task("turn", 5, task => task with { Crew = 2, NotBefore = new(2027, 3, 4) });
        var visit = Assert.Single(job.Plan().Visits);
        Assert.Equal(new(2027, 3, 4), visit.Date);
        Assert.Equal(["lift", "turn"], visit.Tasks.Select(task => task.Name).Order());
    }

    [Fact]
    public void Leaving_visits_out_keeps_every_rule_and_makes_nothing_worse_that_weighs_more() =>
        Gen.Select(RandomShops.Problem, Gen.Int[0, 999]).Sample((problem, seed) =>
        {
            var order = RandomShops.Order(problem, seed);
            var plan = new Schedule(problem.Tasks.Length);
            if (!new ScheduleGenerator(problem).Generate(order, problem.Minutes.AsSpan(), plan))
            {
                return;
            }

            var (fewer, found) = FewerVisits.Of(problem, order, plan);
            Assert.True(found.Score <= plan.Score);
            Assert.True(found.CallDays <= plan.CallDays || found.Score < plan.Score);
            Assert.Empty(ScheduleCheck.Faults(fewer, found));
        }, iter: 200);

    [Fact]
    public void A_visit_says_what_is_done_together_and_what_alone()
    {
        var plan = new AJob { Limits = new() { Workers = 2, Benches = 2 } }.Worker("09:00-11:00").Worker("09:00-11:00", name: "helper")
            .Task("lift", 10, task => task with { Crew = 2 }).Task("plane", 100).Task("saw", 90).Plan();
        var visit = Assert.Single(plan.Visits);
        Assert.Equal((10, "lift"), (visit.Together.Minutes, Assert.Single(visit.Tasks).Name));
        Assert.InRange(visit.Alone.Minutes, 90, 100);
    }

    [Fact]
    public void Two_who_saw_at_once_want_two_saws_and_two_who_plane_have_planes_enough()
    {
        Assert.Contains(Assert.Single(AtOnce("rip", "straighten a live edge")), (string[])["rip", "straighten a live edge"]);
        Assert.Equal(["crosscut"], AtOnce("crosscut", "crosscut"));
        Assert.Empty(AtOnce("rip", "crosscut"));
        Assert.Empty(AtOnce("flatten face one", "flatten face one"));

        static IReadOnlyList<string> AtOnce(string maker, string helper)
        {
            var plan = new AJob { Limits = new() { Workers = 2, Benches = 2 } }.Worker("09:00-11:00").Worker("09:00-11:00", name: "helper")
                .Task("longer", 110, By(maker)).Task("shorter", 90, By(helper)).Plan();
            return Assert.Single(plan.Visits).AtOnce;
        }

        static Func<ShopTask, ShopTask> By(string operation) => task => task with
        {
            Timing = new TaskTiming.ByOperation { Operation = BuiltIn.Operations[operation], Method = BuiltIn.Operations[operation].Methods[0], Quantity = 1, Setups = 0 },
        };
    }

    [Fact]
    public void Who_works_alone_has_no_visits() => Assert.Empty(new AJob().Task("plane", 100).Plan().Visits);

    [Fact]
    public void Days_on_which_somebody_is_called_in_weigh_less_than_shop_days_and_more_than_turns()
    {
        ScheduleScore[] fromBestToWorst = [new(0, 9, 2, 2, 9), new(0, 9, 2, 3, 1), new(0, 9, 3, 0, 0), new(0, 10, 1, 0, 0), new(1, 1, 1, 0, 0)];
        Assert.Equal(fromBestToWorst, fromBestToWorst.Reverse().Order());
    }

    [Fact]
    public void Moves_for_the_sake_of_visits_and_of_heavy_work_in_a_row_make_nothing_worse_that_weighs_more() =>
        Gen.Select(RandomShops.WithOrders, Gen.Int[0, 999], Gen.Int[5, 40]).Sample((problem, seed, bout) =>
        {
            var given = RandomShops.Order(problem, seed);
            var schedule = new Schedule(problem.Tasks.Length, problem.Orders.Length);
            if (!new ScheduleGenerator(problem).Generate(given, problem.Minutes.AsSpan(), schedule))
            {
                return;
            }

            var unbroken = new UnbrokenHeavy(problem, bout);
            var (before, inARow) = (schedule.Score, unbroken.In(schedule));
            var moves = new BlockMoves(problem, [], given, seed, bout);
            var found = moves.Find(60)!;
            Assert.True(new ScheduleGenerator(problem).Generate(found, problem.Minutes.AsSpan(), schedule));
            Assert.Equal((moves.Best, moves.HeavyInARow), (schedule.Score, unbroken.In(schedule)));
            Assert.True(moves.Best <= before);
            Assert.True(moves.Best < before || moves.HeavyInARow <= inARow);
        }, iter: 200);

    [Fact]
    public void Light_work_goes_between_heavy_where_that_costs_no_turn()
    {
        CompiledTask[] tasks = [Work(0, heavy: true), Work(1, heavy: true), Work(2, heavy: false), Work(3, heavy: true)];
        var problem = new ScheduleProblem(tasks, [], [new([.. Enumerable.Range(0, 5).Select(day => new OpenStretch(day * Day, (day * Day) + 120, day))], [])], []);
        var moves = new BlockMoves(problem, [], [0, 1, 3, 2], seed: 1, bout: 25);
        Assert.NotNull(moves.Find(200));

        // Two of the three in a row are 40 minutes, 15 more than a bout; all three would be 35 more.
        Assert.Equal((3, 15), (moves.Best.Changeovers, moves.HeavyInARow));

        static CompiledTask Work(int key, bool heavy) => new() { Minutes = 20, SetupKey = key, IsHeavy = heavy };
    }

    [Fact]
    public void Heavy_work_in_a_row_is_what_of_each_run_goes_beyond_a_bout() =>
        Gen.Select(RandomShops.Problem, Gen.Int[0, 999], Gen.Int[1, 60]).Sample((problem, seed, bout) =>
        {
            var schedule = new Schedule(problem.Tasks.Length);
            if (!new ScheduleGenerator(problem).Generate(RandomShops.Order(problem, seed), problem.Minutes.AsSpan(), schedule))
            {
                return;
            }

            // Minute by minute: whether each is heavy, and how long ago something else was done or ten minutes of nothing.
            var sum = 0;
            foreach (var session in schedule.Pieces.ToArray().GroupBy(piece => (piece.Worker, piece.Session)))
            {
                var heavy = session.SelectMany(piece => Enumerable.Range(piece.From, piece.To - piece.From).Select(minute => (minute, problem.Tasks[piece.Task].IsHeavy))).ToDictionary(one => one.minute, one => one.IsHeavy);
                var (run, idle) = (0, 0);
                for (var minute = heavy.Keys.Min(); minute <= heavy.Keys.Max(); minute++)
                {
                    idle = heavy.ContainsKey(minute) ? 0 : idle + 1;
                    run = (heavy.TryGetValue(minute, out var isHeavy) && !isHeavy) || idle >= 10 ? 0 : run + (isHeavy ? 1 : 0);
                    sum += isHeavy && run > bout ? 1 : 0;
                }
            }

            Assert.Equal(sum, new UnbrokenHeavy(problem, bout).In(schedule));
        }, iter: 200);
}
