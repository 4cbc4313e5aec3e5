using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Times.Trials;

/// <summary>A trial with what it is worth to a job.</summary>
/// <param name="Trial">The trial.</param>
/// <param name="Alone">How wide the job's 80 % range is expected to be after it alone.</param>
/// <param name="Together">How wide it is expected to be after it and all that stand before it.</param>
public sealed record RankedTrial(TimedTrial Trial, WorkTime Alone, WorkTime Together);

/// <summary>Which short timed trials would narrow a job's estimate the most.</summary>
public sealed record TrialAdvice
{
    /// <summary>A trial that takes less than this share off the range is not worth the walk to the bench.</summary>
    public const double LeastGain = 0.01;

    private TrialAdvice(WorkTime low, WorkTime high, IReadOnlyList<RankedTrial> trials) => (Low, High, Trials) = (low, high, trials);

    /// <summary>The job's hands-on time that one course in ten stays below, in closed form.</summary>
    public WorkTime Low { get; }

    /// <summary>The job's hands-on time that one course in ten passes, in closed form.</summary>
    public WorkTime High { get; }

    /// <summary>How wide the 80 % range is now.</summary>
    public WorkTime Width => High - Low;

    /// <summary>The trials: the best first, then the best once that is made, and so on.</summary>
    public IReadOnlyList<RankedTrial> Trials { get; }

    /// <summary>Weighs the trials of a job.</summary>
    /// <param name="model">What is known of the rates.</param>
    /// <param name="tasks">The job's tasks.</param>
    /// <param name="canBeTried">Whether an operation can be tried on an offcut.</param>
    /// <param name="most">How many trials at most, 0 or more.</param>
    public static TrialAdvice For(RateModel model, IReadOnlyList<ShopTask> tasks, Func<Operation, bool> canBeTried, int most)
    {
        List<TimedTrial> trials =
        [
            .. tasks
                .Where(task => task.Timing is TaskTiming.ByOperation by && by.Method.Crew == 1 && canBeTried(by.Operation))
                .GroupBy(task => task.SetupKey, StringComparer.Ordinal)
                .Select(group => TimedTrial.Of(model, [.. group])),
        ];
        if (tasks.Count == 0)
        {
            return new(WorkTime.Zero, WorkTime.Zero, []);
        }

        var now = JobSpread.Of(model, tasks, [.. trials.Select(trial => trial.Timing)]);
        var (low, high) = now.Total.Range80;
        return new(low, high, Rank(now, trials, most));
    }

    private static List<RankedTrial> Rank(JobSpread before, List<TimedTrial> trials, int most)
    {
        var ranked = new List<RankedTrial>();
        var left = Enumerable.Range(0, trials.Count).ToHashSet();
        var known = before;
        while (ranked.Count < most && left.Count > 0)
        {
            var (best, after) = left.Order().Select(trial => (Trial: trial, After: known.After(trial))).MinBy(one => one.After.Total.VarianceMinutes);
            if (known.Total.Width - after.Total.Width < before.Total.Width * LeastGain)
            {
                break;
            }

            ranked.Add(new(trials[best], before.After(best).Total.Width, after.Total.Width));
            left.Remove(best);
            known = after;
        }

        return ranked;
    }
}
