namespace ShopDays.Times;

/// <summary>
/// Drawn times of a job's tasks: each trial is one possible course of the job, with one pace for all its tasks, so
/// that the tasks' errors go together as they do in life.
/// </summary>
/// <param name="Minutes">Minutes by trial, then by task id: <c>Minutes[trial][task]</c>.</param>
/// <param name="Seed">The seed that they were drawn with.</param>
public sealed record TimeDraws(IReadOnlyList<double[]> Minutes, int Seed)
{
    /// <summary>How many trials there are.</summary>
    public int Trials => Minutes.Count;

    /// <summary>The range of one task.</summary>
    public TimeRange Of(int task) => TimeRange.OfSample([.. Minutes.Select(trial => trial[task])]);

    /// <summary>The range of the sum of some tasks.</summary>
    public TimeRange OfSum(IReadOnlyCollection<int> tasks) =>
        TimeRange.OfSample([.. Minutes.Select(trial => tasks.Sum(task => trial[task]))]);

    /// <summary>The range of the sum of all tasks.</summary>
    public TimeRange OfAll() => TimeRange.OfSample([.. Minutes.Select(trial => trial.Sum())]);

    /// <summary>The range of each task, at its id: a plan is made with their medians.</summary>
    public IReadOnlyList<TimeRange> OfEach() =>
        [.. Enumerable.Range(0, Minutes.Count == 0 ? 0 : Minutes[0].Length).Select(Of)];
}
