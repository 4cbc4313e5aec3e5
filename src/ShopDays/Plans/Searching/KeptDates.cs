using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Searching;

/// <summary>
/// How well the orders of a plan keep their dates when it is done again with drawn times. Eight courses of ten are asked
/// for: a plan that ends just by the date when all goes as expected keeps it in hardly more than every other.
/// </summary>
internal sealed class KeptDates : IComparable<KeptDates>
{
    private const double Asked = 0.8;

    /// <summary>
    /// What it counts, in chances, that a date would be kept if all goes as expected: nobody likes to see it given up for a
    /// little more chance of another.
    /// </summary>
    private const double AsExpected = Asked / 2;

    private readonly int[] room;
    private readonly ScheduleScore planned;

    /// <summary>Does a plan again in each drawn course.</summary>
    /// <param name="request">What was asked for.</param>
    /// <param name="drawn">Its drawn times.</param>
    /// <param name="problem">The problem of all its orders.</param>
    /// <param name="blocks">An order of work, which can be done.</param>
    /// <param name="most">How many courses are enough to look at, 1 or more.</param>
    public KeptDates(PlanRequest request, DrawnMinutes drawn, ScheduleProblem problem, int[] blocks, int most = int.MaxValue)
    {
        var trials = Math.Min(most, request.Orders[0].Draws.Trials);
        var finishes = request.Orders.Select(_ => new int[trials]).ToArray();
        TrialRuns.Run(problem, blocks, [.. Enumerable.Range(0, trials)], drawn.Write, See);
        var plan = new Schedule(problem.Tasks.Length, problem.Orders.Length);
        new ScheduleGenerator(problem).Generate(blocks, problem.Minutes.AsSpan(), plan);
        planned = plan.Score;
        room = new int[finishes.Length];
        for (var order = 0; order < room.Length; order++)
        {
            var (due, weight) = (problem.Orders[order].DueBy, problem.Orders[order].Weight);
            if (due >= CompiledCalendar.Never)
            {
                continue;
            }

            Array.Sort(finishes[order]);
            var chance = (double)finishes[order].Count(finish => finish <= due) / trials;
            var asked = finishes[order][(int)Math.Ceiling(Asked * trials) - 1];
            Chances += weight * chance;
            Missing += weight * Math.Max(0, Asked - chance);
            room[order] = asked >= CompiledCalendar.Never ? 0 : Math.Max(0, asked - plan.Finishes[order]);
        }

        void See(int trial, Schedule schedule, bool isPlaced)
        {
            for (var order = 0; order < finishes.Length; order++)
            {
                finishes[order][trial] = isPlaced ? schedule.Finishes[order] : CompiledCalendar.Never;
            }
        }
    }

    /// <summary>The chances of the dates, each times its order's weight, all together.</summary>
    public double Chances { get; }

    /// <summary>What the chances of the dates lack of what is asked for, each times the order's weight, all together; 0 when nothing.</summary>
    public double Missing { get; }

    /// <summary>The same with what it counts that dates would be broken if all goes as expected.</summary>
    public double Lack => Missing + (AsExpected * planned.BrokenDates);

    /// <summary>Compares by what is lacking, and where that is the same, as where a date is lost anyhow, by the schedules.</summary>
    /// <param name="other">Another plan's.</param>
    /// <returns>Below 0 when dates are kept better than there.</returns>
    public int CompareTo(KeptDates? other) => other is null ? -1
        : Lack != other.Lack ? Lack.CompareTo(other.Lack)
        : planned.CompareTo(other.planned);

    /// <summary>The problem with each date moved up by what lies between the order's planned finish and the one that eight courses of ten keep.</summary>
    public ScheduleProblem WithRoom(ScheduleProblem problem) => Changed.Orders(problem, (order, place) => order with { DueBy = order.DueBy - room[place] });
}
