using CsCheck;
using NodaTime;
using ShopDays.Plans;
using ShopDays.Plans.Scheduling;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Several orders in one shop.</summary>
public sealed class OrdersInHandTests
{
    /// <summary>Some tasks of up to two hours, some of them one after another, a few with a night's wait between.</summary>
    private static readonly Gen<(int[] Minutes, int[] Kinds)> Job = Gen.Select(Gen.Int[5, 100].Array[1, 6], Gen.Int[0, 2].Array[6]);

    [Fact]
    public void Orders_do_not_get_into_each_others_way_and_each_has_a_finish_of_its_own() =>
        Gen.Select(Job, Job, Job).Sample((one, two, three) =>
        {
            OrderInHand[] orders = [Order("one", one), Order("two", two), Order("three", three)];
            var plan = Planned(orders).Plan;
            var work = plan.Sessions.SelectMany(session => session.Work).OrderBy(piece => piece.Start.ToInstant()).ToList();
            Assert.All(work.Zip(work.Skip(1)), pair => Assert.True(pair.First.End.ToInstant() <= pair.Second.Start.ToInstant()));
            foreach (var (place, order) in orders.Index())
            {
                var own = work.Where(piece => piece.Order == order.Name).ToList();
                Assert.Equal(own.Max(piece => piece.End.ToInstant()), plan.Finishes[place].ToInstant());
                Assert.Equal(order.Times.Sum(time => time.Minutes), own.Sum(piece => piece.HandsOn.Minutes));
                Assert.All(order.Graph.Precedences, link => Assert.True(EndOf(link.Before) <= StartOf(link.After)));
                Instant EndOf(int id) => own.Where(piece => piece.Task.Id == id).Max(piece => piece.End.ToInstant());
                Instant StartOf(int id) => own.Where(piece => piece.Task.Id == id).Min(piece => piece.Start.ToInstant());
            }

            Assert.Equal(plan.Finish, plan.Finishes.MaxBy(finish => finish.ToInstant()));
        }, iter: 60);

    [Fact]
    public void What_gives_way_moves_nothing_of_the_others_in_the_plan_or_in_any_trial() =>
        Gen.Select(Job, Job, Job, Gen.Int[1, 1000]).Sample((one, two, three, seed) =>
        {
            OrderInHand[] inHand = [Order("one", one, seed), Order("two", two, seed + 1)];
            var (before, after) = (Planned(inHand), Planned([.. inHand, Order("three", three, seed + 2) with { GivesWay = true }]));
            Assert.Equal(WorkOf(before, "one", "two"), WorkOf(after, "one", "two"));
            Assert.Equal(before.Plan.Finishes, after.Plan.Finishes.Take(2));
            for (var order = 0; order < 2; order++)
            {
                Assert.Equal(before.Forecasts[order].Finishes, after.Forecasts[order].Finishes);
            }
        }, iter: 30);

    [Fact]
    public void An_order_that_gives_way_to_nothing_is_planned_as_any_other() =>
        Job.Sample(
            job =>
            {
                var (one, other) = (Planned([Order("one", job)]), Planned([Order("one", job) with { GivesWay = true }]));
                Assert.Equal(WorkOf(one, "one"), WorkOf(other, "one"));
            },
            iter: 20);

    [Fact]
    public void An_order_that_gives_way_begins_in_the_first_hour_that_is_free()
    {
        // Glue sets from Monday 10:00 on for a day; the hour after it on Monday is nobody's but a changeover.
        var first = new AJob().Task("glue", 60).Task("plane", 30).Then("glue", "plane", new(Duration.FromHours(24), "glue hardens")).Order();
        var second = new AJob().Task("draw", 55).Order() with { Name = "new", GivesWay = true };
        var plan = Planned([first, second]).Plan;
        Assert.Equal("2027-03-01T10:05", Text(plan.Sessions[0].Work[1].Start));
        Assert.Equal("2027-03-02T10:30", Text(plan.Finishes[0]));
    }

    [Fact]
    public void A_date_that_other_work_would_put_in_doubt_is_kept_with_room()
    {
        // As expected both fit into Monday's two hours, the shorter one first; in every other course that one takes twice as long.
        var quick = new AJob().Task("turn pegs", 40).Order([.. Enumerable.Range(0, 10).Select(trial => new double[] { trial % 2 == 0 ? 40 : 80 })]) with { Name = "pegs" };
        var promised = new AJob { Due = AJob.Monday }.Task("fit the lid", 50).Order([.. Enumerable.Repeat<double[]>([50], 10)]) with { Name = "box" };
        var answer = Planned([quick, promised]);
        Assert.Equal(1.0, answer.Forecasts[1].ChanceOfDue);
        Assert.Equal("2027-03-01T09:50", Text(answer.Plan.Finishes[1]));
        Assert.Equal(AJob.Monday, answer.Plan.Finishes[0].Date);
    }

    [Fact]
    public void Of_two_promises_that_cannot_both_be_kept_the_weightier_one_is()
    {
        foreach (var (one, other) in ((int, int)[])[(1, 5), (5, 1)])
        {
            var plan = Planned([Due("one", one), Due("other", other)]).Plan;
            Assert.Equal(one > other ? [AJob.Monday, AJob.Monday.PlusDays(1)] : [AJob.Monday.PlusDays(1), AJob.Monday], plan.Finishes.Select(finish => finish.Date));
        }

        // Two hours a day: one of them is done on Monday, the other on Tuesday.
        static OrderInHand Due(string name, int priority) => new AJob { Due = AJob.Monday }.Task("work for " + name, 100).Order() with { Name = name, Priority = priority };
    }

    [Fact]
    public void Two_promises_broken_by_little_are_worse_than_one_broken_by_much_and_weight_counts_first()
    {
        const int FiveYears = 5 * 366 * 24 * 60;
        Assert.True(ScheduleScore.LateOf(1, 1) + ScheduleScore.LateOf(1, 1) > ScheduleScore.LateOf(1, FiveYears));
        Assert.True(ScheduleScore.LateOf(3, 1) > ScheduleScore.LateOf(1, FiveYears) + ScheduleScore.LateOf(1, FiveYears));
        Assert.True(ScheduleScore.LateOf(1, 2) > ScheduleScore.LateOf(1, 1));
        Assert.Equal(0, ScheduleScore.LateOf(9, 0));
    }

    [Fact]
    public void A_promise_goes_before_an_earlier_finish_of_all_the_rest()
    {
        // The short order would finish first and lower the sum; the long one has a date, and 120 minutes only today.
        var shorter = new AJob().Task("a short one", 30).Order() with { Name = "short" };
        var promised = new AJob { Due = AJob.Monday }.Task("a long one", 120).Order() with { Name = "promised" };
        var plan = Planned([shorter, promised]).Plan;
        Assert.Equal([AJob.Monday.PlusDays(1), AJob.Monday], plan.Finishes.Select(finish => finish.Date));
    }

    [Fact]
    public void Like_work_of_two_orders_is_done_in_one_go_where_that_saves_a_turn()
    {
        // 30 + 30 + 50 minutes and one turn of 5 fill Monday's two hours to 115; with two turns all would still fit, so the turn alone decides.
        var one = new AJob().Task("rip", 30).Task("bore", 50).Order() with { Name = "one" };
        var other = new AJob().Task("rip", 30).Order() with { Name = "other" };
        var plan = Planned([one, other]).Plan;
        Assert.Equal(1, plan.Changeovers);
        Assert.Single(plan.Sessions);
    }

    [Fact]
    public void The_chance_of_a_date_counts_the_courses_of_the_whole_shop()
    {
        // Monday has 120 minutes. The first order takes 60 in seven courses of ten and 75 in three; with a turn of 5 and the
        // 50 of the second, these three run into Tuesday: a chance of 7 in 10 for the second, of 1 for the first.
        var first = new AJob { Due = AJob.Monday }.Task("saw", 60).Order([.. Enumerable.Range(0, 10).Select(trial => new double[] { trial < 7 ? 60 : 75 })]) with { Name = "first" };
        var second = new AJob { Due = AJob.Monday }.Task("fit", 50).Order([.. Enumerable.Repeat<double[]>([50], 10)]) with { Name = "second", GivesWay = true };
        var forecasts = Planned([first, second]).Forecasts;
        Assert.Equal([1, 0.7], forecasts.Select(forecast => forecast.ChanceOfDue));
        var deciding = Assert.Single(forecasts[1].Deciding);
        Assert.Equal(("first", "saw", 1.0), (deciding.Order, deciding.Task.Name, deciding.Share));
    }

    [Fact]
    public void What_is_done_after_an_order_is_finished_does_not_decide_it()
    {
        // Both take longer in the same courses, as they do when one maker is slow; the second is not begun before the first is done.
        var trials = Enumerable.Range(0, 10).Select(trial => new double[] { 50 + trial }).ToList();
        var first = new AJob { Due = AJob.Monday }.Task("saw", 55).Order(trials) with { Name = "first" };
        var second = new AJob().Task("fit", 55).Order(trials) with { Name = "second", GivesWay = true };
        Assert.Equal("first", Assert.Single(Planned([first, second]).Forecasts[0].Deciding).Order);
    }

    [Fact]
    public void Another_orders_tasks_that_only_share_the_makers_pace_do_not_decide()
    {
        // One pace for all in each course. Paper work of the second fits into the first's wait and never holds it up;
        // sawing of the third stands in front of it, and its own luck moves it.
        var draws = new Random(11);
        var courses = Enumerable.Range(0, 400).Select(_ => (Pace: 0.7 + (0.6 * draws.NextDouble()), One: draws.NextDouble(), Two: draws.NextDouble(), Three: draws.NextDouble())).ToList();
        var third = new AJob().Task("saw", 70).Order([.. courses.Select(one => new[] { (40 * one.Pace) + (60 * one.Three) })]) with { Name = "third" };
        var first = new AJob().Worker("09:00-17:00").Task("glue", 60).Task("plane", 60).Then("glue", "plane", new(Duration.FromHours(3), "glue hardens"));
        var order = first.Order([.. courses.Select(one => new[] { 50 * one.Pace, (50 * one.Pace) + (10 * one.One) })]) with { Name = "first", GivesWay = true };
        var second = new AJob().Task("draw", 40).Order([.. courses.Select(one => new[] { (30 * one.Pace) + (10 * one.Two) })]) with { Name = "second", GivesWay = true };
        var planned = Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(first.Request() with { Orders = [third, order, second], Budget = 100 }));
        var names = planned.Forecasts[1].Deciding.Select(one => one.Task.Name).ToHashSet();
        Assert.Equal(["glue", "plane", "saw"], names.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_near_date_is_not_lost_among_the_tasks_of_a_large_order()
    {
        // Three tasks with a night between each, due on the third day: there is no day to lose beside forty others.
        var large = new AJob();
        for (var task = 0; task < 40; task++)
        {
            large.Task($"large {task}", 55);
            if (task % 8 > 0)
            {
                large.Then($"large {task - 1}", $"large {task}");
            }
        }

        var night = new Wait(Duration.FromHours(12), "it dries");
        var small = new AJob { Due = AJob.Monday.PlusDays(2) }.Task("one", 50).Task("two", 50).Task("three", 50).Then("one", "two", night).Then("two", "three", night);
        var plan = Planned([large.Order() with { Name = "large" }, small.Order() with { Name = "small" }]).Plan;
        Assert.Equal(AJob.Monday.PlusDays(2), plan.Finishes[1].Date);
    }

    [Fact]
    public void What_cannot_be_planned_names_its_order()
    {
        var one = new AJob().Task("saw", 60).Order() with { Name = "one" };
        var other = new AJob().Task("glue", 180).Order() with { Name = "other" };
        var reason = Assert.Single(Assert.IsType<PlanAnswer.CannotBePlanned>(PlanMaker.Plan(Request([one, other]))).Reasons);
        Assert.Equal(("other", "glue"), (reason.Order, reason.Task!.Name));
    }

    private static PlanRequest Request(IReadOnlyList<OrderInHand> orders) => new AJob().Request() with { Orders = orders, Budget = 200 };

    private static PlanAnswer.Planned Planned(IReadOnlyList<OrderInHand> orders) => Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(Request(orders)));

    private static OrderInHand Order(string name, (int[] Minutes, int[] Kinds) job, int seed = 1)
    {
        var made = new AJob();
        foreach (var (at, minutes) in job.Minutes.Index())
        {
            made.Task($"{name} {at}", minutes, task => task with { IsSplittable = job.Kinds[at] == 2 });
            if (at > 0 && job.Kinds[at] > 0)
            {
                made.Then($"{name} {at - 1}", $"{name} {at}", job.Kinds[at] == 1 ? null : new(Duration.FromHours(10), "it dries"));
            }
        }

        var draws = new Random(seed);
        return made.Order([.. Enumerable.Range(0, 20).Select(_ => job.Minutes.Select(minutes => minutes * (0.7 + (0.6 * draws.NextDouble()))).ToArray())]) with { Name = name };
    }

    private static IEnumerable<(string, string, string)> WorkOf(PlanAnswer.Planned planned, params string[] orders) => planned.Plan.Sessions
        .SelectMany(session => session.Work)
        .Where(work => orders.Contains(work.Order))
        .Select(work => (work.Task.Name, Text(work.Start), Text(work.End)))
        .Order();

    private static string Text(ZonedDateTime time) => time.ToString("yyyy-MM-dd'T'HH:mm", System.Globalization.CultureInfo.InvariantCulture);
}
