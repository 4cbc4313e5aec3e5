using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>
/// Brings work with which a wait begins to the front of its day, or else of its session, where that worsens nothing that schedules are compared
/// by: a sketch that a client is to agree to is drawn before the boards are looked through, and glue sets sooner. A search
/// alone leaves it anywhere in the day, since it gains nothing.
/// </summary>
/// <param name="problem">The problem.</param>
/// <param name="bout">The minutes of a bout of heavy work.</param>
internal sealed class WaitsFirst(ScheduleProblem problem, int bout = CompiledCalendar.Never)
{
    private readonly ScheduleGenerator generator = new(problem);
    private readonly UnbrokenHeavy unbroken = new(problem, bout);
    private readonly Schedule plan = new(problem.Tasks.Length, problem.Orders.Length);
    private readonly WorkPiece[] beginnings = new WorkPiece[problem.Tasks.Length];
    private readonly Schedule trial = new(problem.Tasks.Length, problem.Orders.Length);

    /// <summary>The order with such work in front.</summary>
    /// <param name="order">A sound order; left as it is.</param>
    /// <param name="settled">How many of its first blocks keep their places.</param>
    public int[] Of(int[] order, int settled = 0)
    {
        int[] found = [.. order];
        Place(found);
        var brought = new HashSet<int>();
        foreach (var block in order.Skip(settled).Where(StartsAWait).ToList())
        {
            brought.Add(block);
            foreach (var isOfDay in (bool[])[true, false])
            {
                var (from, to) = (Array.IndexOf(found, block), FirstBesideIt(found, block, settled, brought, isOfDay));
                if (to >= from)
                {
                    continue;
                }

                int[] next = [.. found];
                Array.Copy(found, to, next, to + 1, from - to);
                next[to] = block;
                if (IsAsGood(next, block))
                {
                    found = next;
                    Place(found);
                    break;
                }
            }
        }

        return found;
    }

    /// <summary>Somebody's hands are on it, and what follows it waits longer than for its end.</summary>
    private bool StartsAWait(int block)
    {
        foreach (var task in problem.Members(block))
        {
            if (problem.Tasks[task].Crew == 0)
            {
                return false;
            }
        }

        foreach (var task in problem.Members(block))
        {
            foreach (var after in problem.After(task))
            {
                if (after.Lag > 0 || problem.Tasks[after.After].Crew == 0)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>The place of the first block in its day or session that need not come before it and is not itself brought there.</summary>
    private int FirstBesideIt(int[] order, int block, int settled, HashSet<int> brought, bool isOfDay)
    {
        var first = settled;
        foreach (var before in problem.BlocksBefore(block))
        {
            first = Math.Max(first, Array.IndexOf(order, before) + 1);
        }

        var own = StartOf(block);
        for (var place = first; place < order.Length; place++)
        {
            var other = StartOf(order[place]);
            if (order[place] == block || (!brought.Contains(order[place]) && other.Worker == own.Worker && (isOfDay ? other.Day == own.Day : other.Session == own.Session) && other.From < own.From))
            {
                return place;
            }
        }

        return order.Length;
    }

    private WorkPiece StartOf(int block) => beginnings[problem.Members(block)[0]];

    private void Place(int[] order)
    {
        generator.Generate(order, problem.Minutes.AsSpan(), plan);
        Array.Fill(beginnings, new(-1, -1, -1, -1, CompiledCalendar.Never, CompiledCalendar.Never));
        foreach (ref readonly var piece in plan.Pieces)
        {
            beginnings[piece.Task] = piece.From < beginnings[piece.Task].From ? piece : beginnings[piece.Task];
        }
    }

    private bool IsAsGood(int[] other, int block)
    {
        if (!generator.Generate(other, problem.Minutes.AsSpan(), trial) || trial.Score > plan.Score || unbroken.In(trial) > unbroken.In(plan))
        {
            return false;
        }

        for (var order = 0; order < trial.Finishes.Length; order++)
        {
            if (trial.Finishes[order] > plan.Finishes[order])
            {
                return false;
            }
        }

        var task = problem.Members(block)[0];
        return trial.Start[task] < plan.Start[task];
    }
}
