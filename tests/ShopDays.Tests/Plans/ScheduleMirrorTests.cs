using CsCheck;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class ScheduleMirrorTests
{
    /// <summary>Two resources, tasks by the clock: here a schedule turned twice can only become shorter.</summary>
    private static readonly Gen<ScheduleProblem> ByTheClock =
        from tasks in Gen.Select(Gen.Int[0, 9], Gen.Int[0, 3], Gen.Int[0, 4]).Array[1, 14]
        from links in Gen.Select(Gen.Int[0, 13], Gen.Int[0, 13], Gen.Int[0, 3]).Array[0, 14]
        select new ScheduleProblem(
            [.. tasks.Select(task => new CompiledTask { Minutes = task.Item1, Crew = 0, Holds = [new(0, 0, task.Item2), new(1, 1, task.Item3)] })],
            [.. links.Where(link => link.Item1 < link.Item2 && link.Item2 < tasks.Length).Select(link => new CompiledPrecedence(link.Item1, link.Item2, link.Item3))],
            [],
            [3, 4]);

    [Fact]
    public void A_mirrored_schedule_is_sound_in_its_own_shop_and_gives_orders_of_work_both_ways() =>
        Gen.Select(RandomShops.Problem, Gen.Int[0, 999]).Sample((problem, seed) =>
        {
            var order = RandomShops.Order(problem, seed);
            var schedule = new Schedule(problem.Tasks.Length);
            if (!new ScheduleGenerator(problem).Generate(order, problem.Minutes.AsSpan(), schedule))
            {
                return;
            }

            var mirror = new ScheduleMirror(problem, schedule.Finish + 2000);
            var back = OrderOf(mirror.Problem, schedule);
            AssertIsAnOrder(mirror.Problem, back);
            int[] begins = [mirror.Turned(schedule.Finish)];
            var mirrored = new Schedule(problem.Tasks.Length);
            if (!new ScheduleGenerator(mirror.Problem).Generate(back, problem.Minutes.AsSpan(), mirrored, begins: begins))
            {
                return;
            }

            Assert.Empty(ScheduleCheck.Faults(mirror.Problem, mirrored));
            for (var task = 0; task < problem.Tasks.Length; task++)
            {
                Assert.True(mirror.Turned(mirrored.Start[task]) + problem.Tasks[task].WaitAtEnd <= schedule.Finish);
            }

            AssertIsAnOrder(problem, OrderOf(problem, mirrored));
        }, iter: 300);

    [Fact]
    public void By_the_clock_a_schedule_turned_twice_never_ends_later() =>
        Gen.Select(ByTheClock, Gen.Int[0, 999]).Sample((problem, seed) =>
        {
            var order = RandomShops.Order(problem, seed);
            var (schedule, mirrored) = (new Schedule(problem.Tasks.Length), new Schedule(problem.Tasks.Length));
            var generator = new ScheduleGenerator(problem);
            Assert.True(generator.Generate(order, problem.Minutes.AsSpan(), schedule));
            Assert.Empty(ScheduleCheck.Faults(problem, schedule));
            var finish = schedule.Finish;
            var mirror = new ScheduleMirror(problem, 1000);
            var back = OrderOf(mirror.Problem, schedule);
            int[] begins = [mirror.Turned(schedule.Finish)];
            Assert.True(new ScheduleGenerator(mirror.Problem).Generate(back, problem.Minutes.AsSpan(), mirrored, begins: begins));
            Assert.True(mirrored.Finish <= 1000);
            var again = OrderOf(problem, mirrored);
            Assert.True(generator.Generate(again, problem.Minutes.AsSpan(), schedule));
            Assert.Empty(ScheduleCheck.Faults(problem, schedule));
            Assert.True(schedule.Finish <= finish);
        }, iter: 500);

    /// <summary>The order of work in one shop that a schedule in its mirror gives: what ends last in the one is first in the other.</summary>
    /// <param name="problem">The problem whose blocks are put in order.</param>
    /// <param name="other">A schedule of the other.</param>
    private static int[] OrderOf(ScheduleProblem problem, Schedule other)
    {
        var ends = Enumerable.Range(0, problem.Blocks).Select(block => problem.Members(block).ToArray().Max(task => other.End[task])).ToArray();
        var order = new int[problem.Blocks];
        new KeyedOrder(problem).Write([.. ends.Select(end => (long)ends.Max() - end)], order);
        return order;
    }

    private static void AssertIsAnOrder(ScheduleProblem problem, int[] order)
    {
        var placeOf = new int[order.Length];
        Assert.Equal(Enumerable.Range(0, order.Length), order.Order());
        foreach (var (place, block) in order.Index())
        {
            placeOf[block] = place;
        }

        foreach (var block in order)
        {
            foreach (var before in problem.BlocksBefore(block))
            {
                Assert.True(placeOf[before] < placeOf[block]);
            }
        }
    }
}
