using CsCheck;
using ShopDays.Plans.Bounds;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class SmallShopTests
{
    private static readonly Gen<ScheduleProblem> Tiny =
        from tasks in Gen.Select(Gen.Int[5, 50], Gen.Int[0, 600], Gen.Int[0, 2]).Array[2, 6]
        from links in Gen.Select(Gen.Int[0, 5], Gen.Int[0, 5], Gen.Int[0, 900]).Array[0, 6]
        from sessions in Gen.Select(Gen.Int[30, 600], Gen.Int[50, 120]).Array[30]
        select new ScheduleProblem(
            [.. tasks.Select(task => new CompiledTask { Minutes = task.Item1, WaitAtEnd = task.Item2, SetupKey = task.Item3 })],
            [.. links.Where(link => link.Item1 < link.Item2 && link.Item2 < tasks.Length).Select(link => new CompiledPrecedence(link.Item1, link.Item2, link.Item3))],
            [Calendar(sessions)],
            [],
            changeover: 4);

    [Fact]
    public void With_a_handful_of_tasks_the_search_finds_the_best_order_there_is() =>
        Tiny.Sample(problem =>
        {
            var search = new ScheduleSearch(problem, 1);
            search.Find(1500);
            var best = BestOfAllOrders(problem, []);
            Assert.Equal(best, search.BestScore.Finish);
            Assert.True(ScheduleBound.Of(problem).Minute <= best);
        }, iter: 200);

    private static CompiledCalendar Calendar((int Gap, int Length)[] sessions)
    {
        var open = new List<OpenStretch>();
        var minute = 0;
        foreach (var (gap, length) in sessions)
        {
            open.Add(new(minute + gap, minute + gap + length, open.Count));
            minute += gap + length;
        }

        return new(open, []);
    }

    /// <summary>One worker does whole tasks one after another, each as soon as it may be: every order, minute by minute.</summary>
    private static int BestOfAllOrders(ScheduleProblem problem, List<int> done)
    {
        if (done.Count == problem.Tasks.Length)
        {
            return Finish(problem, done);
        }

        var best = int.MaxValue;
        for (var task = 0; task < problem.Tasks.Length; task++)
        {
            if (done.Contains(task) || problem.Precedences.Any(one => one.After == task && !done.Contains(one.Before)))
            {
                continue;
            }

            best = Math.Min(best, BestOfAllOrders(problem, [.. done, task]));
        }

        return best;
    }

    private static int Finish(ScheduleProblem problem, List<int> order)
    {
        var ends = new int[order.Count];
        var (minute, lastKey, lastSession) = (0, -1, -1);
        foreach (var task in order)
        {
            var plan = problem.Tasks[task];
            var ready = problem.Precedences.Where(one => one.After == task).Select(one => ends[one.Before] + one.Lag).DefaultIfEmpty().Max();
            for (var start = Math.Max(minute, ready); ; start++)
            {
                var session = problem.Workers[0].SessionEndingAfter(start);
                var turns = session == lastSession && lastKey != plan.SetupKey;
                if (turns && start < minute + problem.Changeover)
                {
                    continue;
                }

                if (start < problem.Workers[0].From[session] || start + plan.Minutes > problem.Workers[0].To[session])
                {
                    continue;
                }

                (minute, lastKey, lastSession) = (start + plan.Minutes, plan.SetupKey, session);
                ends[task] = minute;
                break;
            }
        }

        return order.Max(task => ends[task] + problem.Tasks[task].WaitAtEnd);
    }
}
