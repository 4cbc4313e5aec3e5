using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>
/// Makes an order of work better by moving its blocks one at a time; a move that makes nothing worse is kept. Of orders
/// that are alike in all that schedules are compared by, one with less heavy work in a row is the better. What is settled
/// stays in front: it is placed first, and the rest takes the time that it leaves. One seed gives one answer.
/// </summary>
internal sealed class BlockMoves
{
    /// <summary>Moves between two orders that are remembered as equally good, and how many are.</summary>
    private const int MovesApart = 100;
    private const int MostAlike = 8;

    private readonly ScheduleProblem problem;
    private readonly ScheduleGenerator generator;
    private readonly Schedule trial;
    private readonly Random draws;
    private readonly int[] order;
    private readonly int[] place;
    private readonly int settled;
    private readonly UnbrokenHeavy unbroken;
    private readonly List<int[]> alike = [];

    /// <summary>A search.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="settled">Blocks that keep their order, and come before all others.</param>
    /// <param name="behind">The others, in an order to begin with.</param>
    /// <param name="seed">Where chance comes from.</param>
    /// <param name="bout">The minutes of a bout of heavy work.</param>
    public BlockMoves(ScheduleProblem problem, IReadOnlyList<int> settled, IReadOnlyList<int> behind, int seed, int bout = CompiledCalendar.Never)
    {
        unbroken = new(problem, bout);
        this.problem = problem;
        this.settled = settled.Count;
        generator = new(problem);
        trial = new(problem.Tasks.Length, problem.Orders.Length);
        draws = new(seed);
        order = [.. settled, .. behind];
        place = new int[problem.Blocks];
    }

    /// <summary>The score of the order that was found.</summary>
    public ScheduleScore Best { get; private set; } = ScheduleScore.None;

    /// <summary>Minutes of heavy work in a row beyond a bout, in the order that was found.</summary>
    public int HeavyInARow { get; private set; }

    /// <summary>Orders that were come by on the way and are as good as the one that was found, itself not among them; a few at the most.</summary>
    public IReadOnlyList<int[]> Alike => alike;

    /// <summary>How many schedules were made.</summary>
    public int Tried { get; private set; }

    /// <summary>Searches.</summary>
    /// <param name="budget">Schedules to make, 1 or more.</param>
    /// <param name="patience">After how many moves that gain nothing it is enough.</param>
    /// <returns>The best order; null when the calendars end before the work.</returns>
    public int[]? Find(int budget, int patience = int.MaxValue)
    {
        Best = Score();
        if (Best == ScheduleScore.None)
        {
            return null;
        }

        HeavyInARow = unbroken.In(trial);
        if (order.Length - settled < 2)
        {
            return order;
        }

        var inVain = 0;
        while (Tried < budget && inVain < patience)
        {
            var (from, to) = DrawMove();
            Move(from, to);
            var moved = Score();
            var inARow = moved <= Best ? unbroken.In(trial) : 0;
            var isBetter = moved < Best || (moved == Best && inARow < HeavyInARow);
            inVain = isBetter ? 0 : inVain + 1;
            if (isBetter || (moved == Best && inARow == HeavyInARow))
            {
                (Best, HeavyInARow) = (moved, inARow);
            }
            else
            {
                Move(to, from);
            }

            if (isBetter)
            {
                alike.Clear();
            }
            else if (inVain % MovesApart == 0 && alike.Count < MostAlike)
            {
                alike.Add([.. order]);
            }
        }

        return order;
    }

    /// <summary>A block's place and another that it may go to.</summary>
    private (int From, int To) DrawMove()
    {
        for (var index = 0; index < order.Length; index++)
        {
            place[order[index]] = index;
        }

        var from = draws.Next(settled, order.Length);
        var (first, last) = (settled, order.Length - 1);
        foreach (var before in problem.BlocksBefore(order[from]))
        {
            first = Math.Max(first, place[before] + 1);
        }

        foreach (var after in problem.BlocksAfter(order[from]))
        {
            last = Math.Min(last, place[after] - 1);
        }

        if (draws.Next(2) == 0)
        {
            return (from, draws.Next(first, last + 1));
        }

        // Every other move is to like work, if a few draws find any.
        var to = from;
        for (var tries = 0; tries < 8 && (to == from || SetupOf(order[to]) != SetupOf(order[from])); tries++)
        {
            to = draws.Next(first, last + 1);
        }

        return (from, to);
    }

    private int SetupOf(int block) => problem.Tasks[problem.Members(block)[0]].SetupKey;

    private void Move(int from, int to)
    {
        var block = order[from];
        Array.Copy(order, Math.Min(from + 1, to), order, Math.Min(from, to + 1), Math.Abs(to - from));
        order[to] = block;
    }

    private ScheduleScore Score()
    {
        Tried++;
        return generator.Generate(order, problem.Minutes.AsSpan(), trial) ? trial.Score : ScheduleScore.None;
    }
}
