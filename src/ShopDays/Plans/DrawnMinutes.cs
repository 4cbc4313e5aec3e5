using NodaTime;
using NodaTime.Text;
using ShopDays.Plans.Scheduling;
using ShopDays.Times;

namespace ShopDays.Plans;

/// <summary>The minutes of every task and every wait for others in each trial, in the numbers of the problem.</summary>
/// <remarks>
/// A wait has a stream of chance of its own, which what is waited for and the start of its job settle: it is drawn alike
/// whatever else is planned beside it, and goes with nobody's pace.
/// </remarks>
internal sealed class DrawnMinutes
{
    private readonly PlanRequest request;
    private readonly int[][][] waits;

    /// <summary>Draws the waits; the tasks are drawn already.</summary>
    public DrawnMinutes(PlanRequest request, OpenHours hours)
    {
        this.request = request;
        waits = [.. request.Orders.Select(order => order.Graph.Awaited.Select(one => Drawn(order, one.Decision.What, new AwaitedTime(order, one, hours))).ToArray())];
    }

    /// <summary>Writes a trial.</summary>
    /// <param name="trial">Its number.</param>
    /// <param name="minutes">Receives the minutes by number.</param>
    public void Write(int trial, int[] minutes)
    {
        var next = 0;
        for (var place = 0; place < waits.Length; place++)
        {
            var draws = request.Orders[place].Draws;
            var first = next;
            foreach (var drawn in draws.Minutes[trial])
            {
                minutes[next++] = ProblemCompiler.MinutesOf(drawn);
            }

            foreach (var rework in draws.Reworks?[trial] ?? [])
            {
                minutes[first + rework.DoneIn] += (int)(rework.Minutes + 0.5);
            }

            foreach (var drawn in waits[place])
            {
                minutes[next++] = drawn[trial];
            }
        }
    }

    /// <summary>
    /// Where a trial differs from the plan in more than minutes: tasks, by number, that go on in pieces though they should
    /// not, since something is done again in them, and how long new timber is then waited for. None for most.
    /// </summary>
    public IReadOnlyList<(int Task, int Wait)> Interrupted(ScheduleProblem problem, int trial)
    {
        List<(int Task, int Wait)>? found = null;
        var first = 0;
        for (var place = 0; place < waits.Length; place++)
        {
            foreach (var rework in request.Orders[place].Draws.Reworks?[trial] ?? [])
            {
                if (rework.Wait > Duration.Zero)
                {
                    (found ??= []).Add((first + rework.Task, ProblemCompiler.MinutesOf(rework.Wait)));
                }

                if (rework.Minutes > 0 && !problem.Tasks[first + rework.DoneIn].IsSplittable)
                {
                    (found ??= []).Add((first + rework.DoneIn, 0));
                }
            }

            first += request.Orders[place].Graph.Tasks.Count + waits[place].Length;
        }

        return found is null ? [] : [.. found.GroupBy(one => one.Task).Select(group => (group.Key, group.Max(one => one.Wait))).Order()];
    }

    /// <summary>The minutes of one task or wait in some trials.</summary>
    /// <param name="place">The order's place.</param>
    /// <param name="id">The task's id, or behind all tasks the place of what is awaited.</param>
    /// <param name="trials">The trials.</param>
    /// <param name="scale">What each minute counts for.</param>
    public double[] Of(int place, int id, int[] trials, double scale)
    {
        var order = request.Orders[place];
        var tasks = order.Graph.Tasks.Count;
        return id < tasks
            ? [.. trials.Select(trial => order.Draws.Minutes[trial][id] * scale)]
            : [.. trials.Select(trial => waits[place][id - tasks][trial] * scale)];
    }

    private static int[] Drawn(OrderInHand order, string what, AwaitedTime time)
    {
        var seed = SeedWords.Mix(order.Draws.Seed, LocalDatePattern.Iso.Format(order.Start) + what);
        return [.. Enumerable.Range(0, order.Draws.Trials).Select(trial => time.Drawn(new ChanceStream(seed, trial).NextNormal()))];
    }
}
