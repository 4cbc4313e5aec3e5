using NodaTime.Text;
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
            foreach (var drawn in request.Orders[place].Draws.Minutes[trial])
            {
                minutes[next++] = ProblemCompiler.MinutesOf(drawn);
            }

            foreach (var drawn in waits[place])
            {
                minutes[next++] = drawn[trial];
            }
        }
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
        var seed = SeedOf(order, what);
        return [.. Enumerable.Range(0, order.Draws.Trials).Select(trial => time.Drawn(new ChanceStream(seed, trial).NextNormal()))];
    }

    /// <summary>The seed of the draws, mixed with the words by the steps of FNV-1a (G. Fowler, L. C. Noll and P. Vo, from memory).</summary>
    private static int SeedOf(OrderInHand order, string what)
    {
        unchecked
        {
            var hash = 2166136261u ^ (uint)order.Draws.Seed;
            foreach (var letter in LocalDatePattern.Iso.Format(order.Start) + what)
            {
                hash = (hash ^ letter) * 16777619u;
            }

            return (int)hash;
        }
    }
}
