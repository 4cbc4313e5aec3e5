using NodaTime;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans;

/// <summary>Does a plan's order of work again with the drawn times of each trial.</summary>
internal static class ForecastTrials
{
    private const int MostDeciding = 5;

    /// <summary>Standard errors by which the length of a wait for others must go with the finish; a wait that ends in time does so by chance alone.</summary>
    private const double LeastEffect = 3;

    /// <summary>Runs all trials; those that go beyond the calendars are run again with longer ones, up to five years.</summary>
    /// <param name="request">What was asked for.</param>
    /// <param name="hours">The hours that it was planned in.</param>
    /// <param name="problem">The problem.</param>
    /// <param name="order">The order of work.</param>
    /// <param name="plan">The plan, as a schedule.</param>
    /// <returns>The forecast of each order.</returns>
    public static IReadOnlyList<FinishForecast> Run(PlanRequest request, OpenHours hours, ScheduleProblem problem, int[] order, Schedule plan)
    {
        var risks = request.Orders.Select((_, place) => new SessionRisk(problem, plan, place)).ToArray();
        var trials = request.Orders[0].Draws.Trials;
        var finishes = request.Orders.Select(_ => new int[trials]).ToArray();
        var ranOver = new bool[trials];
        var drawn = new DrawnMinutes(request, hours);
        var left = Enumerable.Range(0, trials).ToList();
        while (true)
        {
            left = RunOnce(problem, order, drawn, left, finishes, ranOver, risks);
            if (left.Count == 0 || hours.Longer(request) is not { } longer)
            {
                break;
            }

            hours = longer;
            problem = ProblemCompiler.Compile(request, hours);
        }

        var work = new WorkInHand(request.Orders);
        return [.. request.Orders.Select((_, place) => Forecast(request, hours, place, finishes[place], ranOver, plan, drawn) with { SessionsAtRisk = risks[place].Greatest(hours, work) })];
    }

    private static FinishForecast Forecast(PlanRequest request, OpenHours hours, int place, int[] finish, bool[] ranOver, Schedule plan, DrawnMinutes drawn)
    {
        var order = request.Orders[place];
        var sorted = finish.Order().ToArray();
        var finished = sorted.Count(minute => minute < CompiledCalendar.Never);
        return new()
        {
            P50 = Quantile(0.5),
            P80 = Quantile(0.8),
            P90 = Quantile(0.9),
            ChanceOfDue = order.Due is { } due ? (double)sorted.Count(minute => minute <= hours.MinuteAtEndOf(due)) / sorted.Length : null,
            Deciding = Deciding(request, place, finish, plan, drawn),
            Finishes = [.. sorted.Take(finished).Select(hours.InstantAt)],
            Trials = sorted.Length,
            Unfinished = sorted.Length - finished,
            Overruns = ranOver.Count(over => over),
            Seed = order.Draws.Seed,
        };

        // The first moment by which at least that share is finished: between two dates there is nothing to promise.
        ZonedDateTime? Quantile(double share)
        {
            var minute = sorted[(int)Math.Ceiling(share * sorted.Length) - 1];
            return minute < CompiledCalendar.Never ? hours.At(minute) : null;
        }
    }

    private static List<int> RunOnce(ScheduleProblem problem, int[] order, DrawnMinutes drawn, List<int> trials, int[][] finishes, bool[] ranOver, SessionRisk[] risks)
    {
        var left = new List<int>();
        foreach (var alike in trials.Select(trial => (Trial: trial, Interrupted: drawn.Interrupted(problem, trial))).GroupBy(one => string.Join(' ', one.Interrupted)))
        {
            var interrupted = alike.First().Interrupted;
            TrialRuns.Run(interrupted.Count == 0 ? problem : problem.Interrupted(interrupted), order, [.. alike.Select(one => one.Trial)], drawn.Write, See);
        }

        left.Sort();
        return left;

        void See(int trial, Schedule schedule, bool placed)
        {
            if (!placed)
            {
                left.Add(trial);
            }
            else
            {
                foreach (var risk in risks)
                {
                    risk.Count(schedule.End);
                }
            }

            for (var place = 0; place < finishes.Length; place++)
            {
                finishes[place][trial] = schedule.Finishes[place];
            }

            ranOver[trial] = schedule.Overruns > 0;
        }
    }

    /// <summary>
    /// A task's share is its covariance with the finish out of all that are above zero. Were the finish the sum of
    /// some of the times, the shares would be those of its variance. Of another order only what is begun before the
    /// finish can decide it, and of that only what does not merely go with it by the maker's pace. What is awaited counts by
    /// the work that goes by in its time, or its days would outweigh all minutes at the bench.
    /// </summary>
    private static IReadOnlyList<DecidingTask> Deciding(PlanRequest request, int place, int[] finish, Schedule plan, DrawnMinutes drawn)
    {
        var trials = Enumerable.Range(0, finish.Length).Where(trial => finish[trial] < CompiledCalendar.Never).ToArray();
        var finishes = trials.Select(trial => (double)finish[trial]).ToArray();
        var spread = SharedPace.Covariance(finishes, finishes);
        if (trials.Length < 2 || spread == 0)
        {
            return [];
        }

        var work = new WorkInHand(request.Orders);
        var pace = new SharedPace(request.Orders[place], trials);
        var worked = WorkPerClock(plan);
        var together = work.Tasks
            .Select((one, number) => (one.Order, one.Task, one.Awaited, Start: plan.Start[number]))
            .Where(one => one.Order == place || one.Start < plan.Finishes[place])
            .Select(one => (one.Order, one.Task, one.Awaited, Times: drawn.Of(one.Order, one.Task.Id, trials, one.Awaited is null ? 1 : worked)))
            .Where(one => one.Order == place || pace.StillMoves(one.Times, finishes))
            .Select(one => (one.Order, one.Task, one.Awaited, Covariance: SharedPace.Covariance(one.Times, finishes), Spread: SharedPace.Covariance(one.Times, one.Times)))
            .Where(one => one.Covariance > 0 && (one.Awaited is null || one.Covariance / Math.Sqrt(one.Spread * spread) >= LeastEffect / Math.Sqrt(trials.Length)))
            .OrderByDescending(one => one.Covariance)
            .ToList();
        var all = together.Sum(one => one.Covariance);
        return
        [
            .. together.Take(MostDeciding).Select(one => new DecidingTask(
                request.Orders[one.Order].Name,
                one.Task,
                one.Covariance / all,
                Math.Min(1, one.Covariance / Math.Sqrt(one.Spread * spread))) { Awaited = one.Awaited }),
        ];
    }

    /// <summary>Minutes of work that a plan has for each minute of the clock.</summary>
    private static double WorkPerClock(Schedule plan)
    {
        var (work, first) = (0L, plan.Finish);
        foreach (ref readonly var piece in plan.Pieces)
        {
            work += piece.To - piece.From;
            first = Math.Min(first, piece.From);
        }

        return plan.Finish > first ? (double)work / (plan.Finish - first) : 1;
    }
}
