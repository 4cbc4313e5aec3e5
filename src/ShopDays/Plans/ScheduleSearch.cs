namespace ShopDays.Plans;

/// <summary>
/// Looks for a good order of work: first by rules, then by rules with some chance, then by moving one block at a time,
/// beginning again elsewhere when nothing has helped for a while. One seed gives one answer.
/// </summary>
internal sealed class ScheduleSearch
{
    /// <summary>Moves without gain after which it begins again.</summary>
    private const int Patience = 120;

    /// <summary>Moves by which it leaves the best order at most, when it begins again from there, less one.</summary>
    private const int Kicks = 10;

    /// <summary>How seldom a worse order is taken: one that is 1 % worse about one time in twelve.</summary>
    private const double Steep = 250;

    private readonly ScheduleProblem problem;
    private readonly ScheduleGenerator generator;
    private readonly ScheduleOrders orders;
    private readonly Random draws;
    private readonly int[] place;
    private readonly Schedule trial;
    private int[] order;
    private int[] best;

    /// <summary>A search over a problem.</summary>
    public ScheduleSearch(ScheduleProblem problem, int seed)
    {
        this.problem = problem;
        generator = new(problem);
        orders = new(problem);
        draws = new(seed);
        place = new int[problem.Blocks];
        trial = new(problem.Tasks.Length, problem.Orders.Length);
        order = new int[problem.Blocks];
        best = new int[problem.Blocks];
    }

    /// <summary>How many schedules were made.</summary>
    public int Tried { get; private set; }

    /// <summary>The best so far; none before anything was placed.</summary>
    public ScheduleScore BestScore { get; private set; } = ScheduleScore.None;

    /// <summary>Searches.</summary>
    /// <param name="budget">Schedules to make, at least the few that the rules give.</param>
    /// <returns>The best order; null when no order fits before the calendars end.</returns>
    public int[]? Find(int budget)
    {
        foreach (var likeness in (ReadOnlySpan<double>)[0, 0.03, 0.1, 0.3, 1])
        {
            orders.Write(order, likeness, 0, draws);
            Score();
        }

        if (BestScore == ScheduleScore.None)
        {
            return null;
        }

        if (problem.Blocks < 2)
        {
            return best;
        }

        for (var sample = 0; Tried < budget / 5; sample++)
        {
            orders.Write(order, 0.2 * (sample % 4 == 0 ? 0 : draws.NextDouble()), 0.02 + (0.3 * draws.NextDouble()), draws);
            Score();
        }

        while (Tried < budget)
        {
            Climb(budget);
        }

        return best;
    }

    /// <summary>Moves blocks from the best order, or from a chance one, for as long as that helps now and then.</summary>
    private void Climb(int budget)
    {
        if (draws.Next(4) == 0)
        {
            orders.Write(order, 0.1 * draws.NextDouble(), 0.2 * draws.NextDouble(), draws);
        }
        else
        {
            best.CopyTo(order, 0);
            for (var kick = draws.Next(2, 2 + Kicks); kick > 0; kick--)
            {
                var (from, to) = DrawMove();
                Move(from, to);
            }
        }

        var score = Score();
        for (var idle = 0; idle < Patience && Tried < budget; idle++)
        {
            var (from, to) = DrawMove();
            if (from == to)
            {
                continue;
            }

            Move(from, to);
            var moved = Score();
            if (moved < score)
            {
                idle = 0;
            }

            // Now and then a little worse, to get out of a corner; the best order is kept aside.
            if (moved <= score || (moved < ScheduleScore.None && draws.NextDouble() < Math.Exp(-Steep * (moved.Finish - score.Finish) / score.Finish)))
            {
                score = moved;
            }
            else
            {
                Move(to, from);
            }
        }
    }

    /// <summary>A block's place and another that it may go to; every third move is next to a block of like work.</summary>
    private (int From, int To) DrawMove()
    {
        for (var index = 0; index < order.Length; index++)
        {
            place[order[index]] = index;
        }

        var from = draws.Next(order.Length);
        var block = order[from];
        var (first, last) = (0, order.Length - 1);
        foreach (var before in problem.BlocksBefore(block))
        {
            first = Math.Max(first, place[before] + 1);
        }

        foreach (var after in problem.BlocksAfter(block))
        {
            last = Math.Min(last, place[after] - 1);
        }

        if (draws.Next(3) != 0)
        {
            return (from, draws.Next(first, last + 1));
        }

        for (var tries = 0; tries < 8; tries++)
        {
            var to = draws.Next(first, last + 1);
            if (to != from && orders.KeyOf(order[to]) == orders.KeyOf(block))
            {
                return (from, to);
            }
        }

        return (from, draws.Next(first, last + 1));
    }

    private void Move(int from, int to)
    {
        var block = order[from];
        if (from < to)
        {
            Array.Copy(order, from + 1, order, from, to - from);
        }
        else
        {
            Array.Copy(order, to, order, to + 1, from - to);
        }

        order[to] = block;
    }

    private ScheduleScore Score()
    {
        Tried++;
        if (!generator.Generate(order, problem.Minutes.AsSpan(), trial))
        {
            return ScheduleScore.None;
        }

        if (trial.Score < BestScore)
        {
            BestScore = trial.Score;
            order.CopyTo(best, 0);
        }

        return trial.Score;
    }
}
