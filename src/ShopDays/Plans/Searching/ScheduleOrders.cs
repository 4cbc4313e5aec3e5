using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>Makes orders of work by rule: the longest tail first, like work together where that does not cost much.</summary>
internal sealed class ScheduleOrders
{
    private readonly ScheduleProblem problem;
    /// <summary>How many of the longest tails what leads to an appointment is worth more: no likeness and no chance outweighs it.</summary>
    private const double Appointed = 3;

    private readonly double[] tail;
    private readonly double longest;
    private readonly int[] key;
    private readonly int[] waitsFor;
    private readonly List<int> ready = [];

    /// <summary>Works out the tails.</summary>
    public ScheduleOrders(ScheduleProblem problem)
    {
        this.problem = problem;
        tail = new double[problem.Blocks];
        key = new int[problem.Blocks];
        waitsFor = new int[problem.Blocks];
        var tails = TailLengths.Of(problem, TailLengths.ClockPerWork(problem));
        for (var block = 0; block < tail.Length; block++)
        {
            foreach (var task in problem.Members(block))
            {
                tail[block] = Math.Max(tail[block], tails[task]);
            }

            key[block] = problem.Tasks[problem.Members(block)[0]].SetupKey;
        }

        longest = tail.DefaultIfEmpty().Max();
        PutAppointmentsFirst();
    }

    /// <summary>Writes an order.</summary>
    /// <param name="order">Receives every block once.</param>
    /// <param name="likeness">How much of the longest tail like work may jump ahead, 0 to 1: 0 looks at tails only.</param>
    /// <param name="noise">How much of the longest tail chance may add, 0 to 1.</param>
    /// <param name="draws">Where chance comes from.</param>
    public void Write(Span<int> order, double likeness, double noise, Random draws)
    {
        MakeReady();
        var last = -1;
        for (var place = 0; place < order.Length; place++)
        {
            TakeReady(order, place, Pick(last, likeness, noise, draws));
            last = key[order[place]];
        }
    }

    /// <summary>Draws an order: of what is ready, what has the longer tail is the likelier to be next.</summary>
    /// <param name="order">Receives every block once.</param>
    /// <param name="isEven">Whether everything that is ready is as likely.</param>
    /// <param name="draws">Where chance comes from.</param>
    /// <remarks>Regret-based sampling, A. Drexl (1991, from memory).</remarks>
    public void Draw(Span<int> order, bool isEven, Random draws)
    {
        MakeReady();
        for (var place = 0; place < order.Length; place++)
        {
            TakeReady(order, place, isEven ? draws.Next(ready.Count) : PickByTail(draws));
        }
    }

    private int PickByTail(Random draws)
    {
        var least = double.PositiveInfinity;
        var sum = 0.0;
        foreach (var block in ready)
        {
            least = Math.Min(least, tail[block]);
            sum += tail[block];
        }

        var left = draws.NextDouble() * (sum - (ready.Count * (least - 1)));
        for (var index = 0; index < ready.Count; index++)
        {
            left -= tail[ready[index]] - least + 1;
            if (left < 0)
            {
                return index;
            }
        }

        return ready.Count - 1;
    }

    private void MakeReady()
    {
        ready.Clear();
        for (var block = 0; block < waitsFor.Length; block++)
        {
            waitsFor[block] = problem.BlocksBefore(block).Length;
            if (waitsFor[block] == 0)
            {
                ready.Add(block);
            }
        }
    }

    private void TakeReady(Span<int> order, int place, int pick)
    {
        order[place] = ready[pick];
        ready.RemoveAt(pick);
        foreach (var block in problem.BlocksAfter(order[place]))
        {
            if (--waitsFor[block] == 0)
            {
                ready.Add(block);
            }
        }
    }

    /// <summary>What is fixed for a time is placed before its time is taken by other work, and with it all that comes before it.</summary>
    private void PutAppointmentsFirst()
    {
        var leads = new bool[problem.Blocks];
        for (var block = problem.Blocks - 1; block >= 0; block--)
        {
            foreach (var task in problem.Members(block))
            {
                leads[block] |= problem.Tasks[task].StartBy < CompiledCalendar.Never;
            }

            foreach (var after in problem.BlocksAfter(block))
            {
                leads[block] |= leads[after];
            }

            tail[block] += leads[block] ? Appointed * longest : 0;
        }
    }

    private int Pick(int last, double likeness, double noise, Random draws)
    {
        var pick = 0;
        var most = double.NegativeInfinity;
        for (var index = 0; index < ready.Count; index++)
        {
            var worth = tail[ready[index]];
            if (last >= 0 && key[ready[index]] == last)
            {
                worth += likeness * longest;
            }

            if (noise > 0)
            {
                worth += noise * longest * draws.NextDouble();
            }

            if (worth > most || (worth == most && ready[index] < ready[pick]))
            {
                (pick, most) = (index, worth);
            }
        }

        return pick;
    }
}
