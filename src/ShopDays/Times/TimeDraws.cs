using NodaTime;

namespace ShopDays.Times;

/// <summary>
/// Drawn times of a job's tasks: each trial is one possible course of the job, with one pace for all its tasks, so
/// that the tasks' errors go together as they do in life.
/// </summary>
/// <param name="Minutes">Minutes by trial, then by task id: <c>Minutes[trial][task]</c>.</param>
/// <param name="Seed">The seed that they were drawn with.</param>
public sealed record TimeDraws(IReadOnlyList<double[]> Minutes, int Seed)
{
    /// <summary>What is spoiled in each trial and done again, by trial; none where nothing ever is. It is not in <see cref="Minutes"/>: a plan is made as if nothing were spoiled.</summary>
    public IReadOnlyList<Rework[]>? Reworks { get; init; }

    /// <summary>How many trials there are.</summary>
    public int Trials => Minutes.Count;

    /// <summary>The range of one task.</summary>
    public TimeRange Of(int task) => TimeRange.OfSample([.. Minutes.Select(trial => trial[task])]);

    /// <summary>The range of the sum of some tasks.</summary>
    public TimeRange OfSum(IReadOnlyCollection<int> tasks) =>
        TimeRange.OfSample([.. Minutes.Select(trial => tasks.Sum(task => trial[task]))]);

    /// <summary>The range of the sum of all tasks, with what is done again.</summary>
    public TimeRange OfAll() => TimeRange.OfSample([.. Minutes.Select((trial, number) => trial.Sum() + (Reworks?[number].Sum(one => one.Minutes) ?? 0))]);

    /// <summary>The same courses of some of the tasks, numbered anew in the order given.</summary>
    public TimeDraws Only(IReadOnlyList<int> tasks)
    {
        var places = tasks.Index().ToDictionary(one => one.Item, one => one.Index);
        return new([.. Minutes.Select(trial => tasks.Select(task => trial[task]).ToArray())], Seed)
        {
            Reworks = Reworks is null ? null : [.. Reworks.Select(trial => Rework.Renumbered(trial, places))],
        };
    }

    /// <summary>The range of each task, at its id: a plan is made with their medians.</summary>
    public IReadOnlyList<TimeRange> OfEach() =>
        [.. Enumerable.Range(0, Minutes.Count == 0 ? 0 : Minutes[0].Length).Select(Of)];
}

/// <summary>A piece, a glue-up or a coat that is spoiled in one course of a job.</summary>
/// <param name="Task">The task in which it is spoiled.</param>
/// <param name="DoneIn">
/// The task whose time to come as far again is added to: one before it on the same part that may go on in another session,
/// since nobody planes a new leg within the session in which its mortises should be cut; the same where there is none.
/// </param>
/// <param name="Part">The part that it is a piece of; null where none is lost, or it cannot be told.</param>
/// <param name="Minutes">Hands-on time to come as far again, 0 or more.</param>
/// <param name="Wait">How long new timber for it is waited for, zero where there is some; without a part how long glue or a coat sets once more.</param>
public readonly record struct Rework(int Task, int DoneIn, string? Part, double Minutes, Duration Wait)
{
    /// <summary>Whether new timber is waited for.</summary>
    public bool IsForTimber => Part is not null && Wait > Duration.Zero;

    /// <summary>Those in tasks that have a new number, with it.</summary>
    internal static Rework[] Renumbered(IEnumerable<Rework> reworks, IReadOnlyDictionary<int, int> numbers) =>
    [
        .. reworks
            .Where(one => numbers.ContainsKey(one.Task))
            .Select(one => one with { Task = numbers[one.Task], DoneIn = numbers.TryGetValue(one.DoneIn, out var doneIn) ? doneIn : numbers[one.Task] }),
    ];
}
