using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>Makes drafts of an order of blocks, forwards in the shop or backwards in its mirror, counts them and keeps the best.</summary>
internal sealed class BothWays
{
    /// <summary>Schedules that are longer than the first by a quarter, in a calendar by two weeks as well, are not turned as they are.</summary>
    private const int MinutesMore = 14 * 24 * 60;

    private readonly ScheduleProblem problem;
    private readonly ScheduleMirror mirror;
    private readonly ScheduleGenerator forwards;
    private readonly ScheduleGenerator backwards;
    private readonly Schedule schedule;
    private readonly int[] begins;
    private readonly int[] best;

    /// <summary>Prepares both directions.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="first">An order of its blocks, placed to see how long the work is about.</param>
    public BothWays(ScheduleProblem problem, ReadOnlySpan<int> first)
    {
        this.problem = problem;
        forwards = new(problem);
        schedule = new(problem.Tasks.Length, problem.Orders.Length);
        Tried = 1;
        mirror = new(problem, forwards.Generate(first, problem.Minutes.AsSpan(), schedule) ? schedule.Finish + (schedule.Finish / 4) + (problem.Workers.IsEmpty ? 0 : MinutesMore) : LastMinute(problem));
        backwards = new(mirror.Problem);
        begins = new int[problem.Orders.Length];
        best = new int[problem.Blocks];
    }

    /// <summary>Passes that were made, forwards and backwards.</summary>
    public int Tried { get; private set; }

    /// <summary>What the best schedule forwards is worth.</summary>
    public ScheduleScore BestScore { get; private set; } = ScheduleScore.None;

    /// <summary>Its order of blocks.</summary>
    public ReadOnlySpan<int> Best => best;

    /// <summary>The problem that is placed in a direction.</summary>
    public ScheduleProblem ProblemOf(bool isForwards) => isForwards ? problem : mirror.Problem;

    /// <summary>Places an order of the problem's blocks.</summary>
    /// <returns>Whether all of it could be placed.</returns>
    public bool Forwards(ReadOnlySpan<int> order, Draft into)
    {
        Tried++;
        if (!forwards.Generate(order, problem.Minutes.AsSpan(), schedule))
        {
            into.Score = ScheduleScore.None;
            return false;
        }

        Write(problem, mirror.ToMirror, into);
        into.Score = schedule.Score;
        if (schedule.Score < BestScore)
        {
            BestScore = schedule.Score;
            order.CopyTo(best);
        }

        return true;
    }

    /// <summary>Places an order of the mirrored problem's blocks, each order of the shop from its end in a schedule on.</summary>
    /// <returns>Whether all of it could be placed.</returns>
    public bool Backwards(ReadOnlySpan<int> order, Draft from, Draft into)
    {
        Tried++;
        for (var one = 0; one < begins.Length; one++)
        {
            begins[one] = mirror.Turned(Math.Min(mirror.Turned(0), from.Finishes[one]));
        }

        if (!backwards.Generate(order, problem.Minutes.AsSpan(), schedule, begins: begins))
        {
            into.Score = ScheduleScore.None;
            return false;
        }

        Write(mirror.Problem, mirror.FromMirror, into);
        into.Score = Likely();
        return true;
    }

    /// <summary>Pushed back to its beginning, an order is likely to take as long as it does in the mirror.</summary>
    private ScheduleScore Likely()
    {
        var (late, weighted) = (0L, 0L);
        for (var one = 0; one < begins.Length; one++)
        {
            var plan = problem.Orders[one];
            var takes = Math.Max(plan.FinishedFrom, schedule.Finishes[one] - begins[one]);
            late += ScheduleScore.LateOf(plan.Weight, takes - plan.DueBy);
            weighted += (long)plan.Weight * takes;
        }

        return new(late, weighted, schedule.ShopDays, schedule.CallDays, schedule.Changeovers);
    }

    private static int LastMinute(ScheduleProblem problem) => problem.Workers.Where(worker => worker.Count > 0).Select(worker => worker.To[^1]).Append(problem.Minutes.Sum()).Max();

    private void Write(ScheduleProblem placed, int[] numbers, Draft into)
    {
        schedule.Finishes.CopyTo(into.Finishes);
        var end = schedule.End;
        var finish = schedule.Finish;
        for (var block = 0; block < numbers.Length; block++)
        {
            var last = 0;
            foreach (var task in placed.Members(block))
            {
                last = Math.Max(last, end[task]);
            }

            into.Keys[numbers[block]] = finish - last;
        }
    }
}
