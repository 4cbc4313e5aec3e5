using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Times.Trials;

/// <summary>A short piece of work with a watch beside it, on an offcut, before the job is begun.</summary>
public sealed record TimedTrial
{
    /// <summary>About how long a trial should take: long enough to find the pace, short enough to be done.</summary>
    private static readonly WorkTime Wanted = WorkTime.FromMinutes(15);

    private TimedTrial(TaskTiming.ByOperation timing, ShopTask like, TimeRange cost) => (Timing, Like, Cost) = (timing, like, cost);

    /// <summary>What to do, and how much.</summary>
    public TaskTiming.ByOperation Timing { get; }

    /// <summary>The task of the job whose timber and sizes it takes: the one with most work in it.</summary>
    public ShopTask Like { get; }

    /// <summary>What it takes at the bench.</summary>
    public TimeRange Cost { get; }

    /// <summary>
    /// The trial for the work of a job by one operation and method. It takes the properties of the task with most of that
    /// work in it, a round quantity for about a quarter of an hour, and no set-up: the watch starts with the first stroke.
    /// </summary>
    /// <param name="model">The model.</param>
    /// <param name="tasks">The job's tasks of that operation and method; at least one.</param>
    public static TimedTrial Of(RateModel model, IReadOnlyList<ShopTask> tasks)
    {
        var like = tasks
            .GroupBy(task => ((TaskTiming.ByOperation)task.Timing).Covariates, new SameProperties())
            .Select(group => (Task: group.First(), Minutes: group.Sum(task => model.LikelyTime(task).Minutes)))
            .MaxBy(one => one.Minutes)
            .Task;
        var timing = (TaskTiming.ByOperation)like.Timing with { Quantity = 1, Setups = 0, Besides = WorkTime.Zero, Run = 1, Batch = 1, Factor = 1 };
        var quantity = Round(Wanted / model.BeliefOf(timing).Median, timing.Operation.Unit.Kind);
        var whole = timing with { Quantity = quantity };
        return new(whole, like, model.TimeFor(whole));
    }

    /// <summary>Whole pieces, at least one; of lengths and areas a round figure: 1, 1.5, 2, 3, 4, 5, 6, 8 and their tenfolds.</summary>
    private static double Round(double quantity, UnitKind kind)
    {
        if (kind == UnitKind.Count)
        {
            return Math.Max(1, Math.Round(quantity, MidpointRounding.AwayFromZero));
        }

        var tenfold = Math.Pow(10, Math.Floor(Math.Log10(quantity)));
        return ((double[])[1, 1.5, 2, 3, 4, 5, 6, 8, 10]).MinBy(figure => Math.Abs(Math.Log(figure * tenfold / quantity))) * tenfold;
    }

    private sealed class SameProperties : IEqualityComparer<IReadOnlyDictionary<Covariate, double>>
    {
        public bool Equals(IReadOnlyDictionary<Covariate, double>? x, IReadOnlyDictionary<Covariate, double>? y) =>
            x!.Count == y!.Count && x.All(one => y.TryGetValue(one.Key, out var value) && value.Equals(one.Value));

        public int GetHashCode(IReadOnlyDictionary<Covariate, double> obj) => HashCode.Combine(obj.Count, obj.Values.Sum());
    }
}
