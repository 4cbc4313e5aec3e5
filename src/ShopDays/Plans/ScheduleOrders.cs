namespace ShopDays.Plans;

/// <summary>Makes orders of work by rule: the longest tail first, like work together where that does not cost much.</summary>
internal sealed class ScheduleOrders
{
    private readonly ScheduleProblem problem;
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
    }

    /// <summary>The set-up of a block's first task; below 0 none.</summary>
    public int KeyOf(int block) => key[block];

    /// <summary>Writes an order.</summary>
    /// <param name="order">Receives every block once.</param>
    /// <param name="likeness">How much of the longest tail like work may jump ahead, 0 to 1: 0 looks at tails only.</param>
    /// <param name="noise">How much of the longest tail chance may add, 0 to 1.</param>
    /// <param name="draws">Where chance comes from.</param>
    public void Write(Span<int> order, double likeness, double noise, Random draws)
    {
        ready.Clear();
        for (var block = 0; block < order.Length; block++)
        {
            waitsFor[block] = problem.BlocksBefore(block).Length;
            if (waitsFor[block] == 0)
            {
                ready.Add(block);
            }
        }

        var last = -1;
        for (var place = 0; place < order.Length; place++)
        {
            var pick = Pick(last, likeness, noise, draws);
            order[place] = ready[pick];
            last = key[order[place]];
            ready.RemoveAt(pick);
            foreach (var block in problem.BlocksAfter(order[place]))
            {
                if (--waitsFor[block] == 0)
                {
                    ready.Add(block);
                }
            }
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
