using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>How much is known of the times with which a promised job is planned again.</summary>
internal enum Known
{
    /// <summary>As much as then: each time may turn out as much quicker or slower as it might then.</summary>
    AsThen,

    /// <summary>What is done took what it took.</summary>
    WhatIsDone,

    /// <summary>That, and what is to come has the ranges of now.</summary>
    AllAsNow,
}

/// <summary>
/// The tasks of a promised job with their times, as they were promised and with one thing more as it came about: those that
/// were left then, and behind them those that it did not have.
/// </summary>
internal sealed class TimesOtherwise
{
    private readonly PromisedJob then;
    private readonly TimeDraws now;
    private readonly Dictionary<string, int> placesNow;
    private readonly Dictionary<string, TaskChange> changes;
    private readonly IReadOnlyList<TaskChange> extras;
    private readonly List<WorkTime> timesNow;

    /// <summary>Gathers them.</summary>
    /// <param name="progress">Where the job stands.</param>
    /// <param name="then">The job as it was promised.</param>
    /// <param name="ahead">What is left of it, to be planned.</param>
    public TimesOtherwise(JobProgress progress, PromisedJob then, OrderInHand ahead)
    {
        (this.then, now) = (then, ahead.Draws);
        placesNow = ahead.Graph.Tasks.ToDictionary(task => task.Name, task => task.Id, StringComparer.Ordinal);
        changes = progress.Changes.ToDictionary(one => one.Task, StringComparer.Ordinal);
        var known = then.Graph.Tasks.Select(task => task.Name).ToHashSet(StringComparer.Ordinal);
        extras = [.. progress.Changes.Where(one => !known.Contains(one.Task))];
        Names = [.. then.Left.Graph.Tasks.Select(task => task.Name), .. extras.Select(one => one.Task)];
        Promised = TimesBy(one => one.Kind is ChangeKind.SameTask or ChangeKind.WentOut or ChangeKind.SawnUnlogged ? one.Promised : WorkTime.Zero);
        timesNow = TimesBy(one => one.Now);
    }

    /// <summary>Their names.</summary>
    public IReadOnlyList<string> Names { get; }

    /// <summary>What each was to take, without what was spent before the promise; zero for one that was not in it.</summary>
    public IReadOnlyList<WorkTime> Promised { get; }

    /// <summary>What made a task's time another one.</summary>
    public static MoveCause CauseOf(TaskChange one) => (one.Kind, one.State) switch
    {
        (ChangeKind.CameIn or ChangeKind.OnlyLogged, _) => MoveCause.TasksChanged,
        (ChangeKind.WentOut, _) when one.Spent == WorkTime.Zero => MoveCause.TasksChanged,
        (ChangeKind.SameTask, TaskState.ToDo) => MoveCause.ToCome,
        _ => MoveCause.Took,
    };

    /// <summary>The change of a task; null for one that is neither promised nor in the job.</summary>
    public TaskChange? ChangeOf(string name) => changes.GetValueOrDefault(name);

    /// <summary>What was spent on a task before the promise.</summary>
    public WorkTime SpentThen(string name) => then.Standing.Tasks.FirstOrDefault(one => string.Equals(one.Task.Name, name, StringComparison.Ordinal))?.Spent ?? WorkTime.Zero;

    /// <summary>Times in which those that have changed for one cause are as they are now.</summary>
    public IReadOnlyList<WorkTime> With(MoveCause cause, IReadOnlyList<WorkTime> times) =>
        [.. times.Select((time, place) => ChangeOf(Names[place]) is { } change && CauseOf(change) == cause ? timesNow[place] : time)];

    /// <summary>
    /// Drawn courses around some times. What took longer is later by so much in each course; what is expected to take
    /// longer is slower in each course by the same share.
    /// </summary>
    /// <param name="times">The times.</param>
    /// <param name="known">How much is known of them.</param>
    public TimeDraws Drawn(IReadOnlyList<WorkTime> times, Known known)
    {
        var each = times.Select((time, place) => DrawnOf(place, time.Minutes, known)).ToList();
        return new([.. Enumerable.Range(0, then.Draws.Trials).Select(trial => each.Select(drawn => drawn(trial)).ToArray())], then.Draws.Seed)
        {
            Reworks = known == Known.AllAsNow ? ReworksNow() : ReworksThen(known),
        };
    }

    /// <summary>A task of which only the time is known, as one that the promised job did not have: it may be done at any time.</summary>
    public ShopTask TaskOf(int place, int id) => new()
    {
        Id = id,
        Name = Names[place],
        Stage = Stage.Sawing,
        Timing = new TaskTiming.ByGuess(new(timesNow[place], timesNow[place], timesNow[place])),
        WorkClass = WorkClass.Light,
        IsSplittable = true,
    };

    private Func<int, double> DrawnOf(int place, double time, Known known)
    {
        if (time <= 0 || ChangeOf(Names[place]) is not { } change)
        {
            return _ => 0;
        }

        var promised = place < then.Left.Graph.Tasks.Count ? Promised[place].Minutes : 0;
        var spent = Math.Max(0, (change.Spent - SpentThen(change.Task)).Minutes);
        var isLeft = placesNow.TryGetValue(change.Task, out var placeNow);
        var asNow = (int trial) => spent + (isLeft ? now.Minutes[trial % now.Trials][placeNow] : 0);
        return CauseOf(change) switch
        {
            _ when promised == 0 => isLeft ? asNow : _ => time,
            MoveCause.Took when known >= Known.WhatIsDone => isLeft ? asNow : _ => time,
            MoveCause.Took => trial => Math.Max(0, then.Draws.Minutes[trial][place] + time - promised),
            MoveCause.ToCome when known == Known.AllAsNow => asNow,
            _ => trial => then.Draws.Minutes[trial][place] * (time / promised),
        };
    }

    /// <summary>What is done is not spoiled any more: what it took is known.</summary>
    private IReadOnlyList<Rework[]>? ReworksThen(Known known) => known == Known.AsThen || then.Draws.Reworks is null
        ? then.Draws.Reworks
        : [.. then.Draws.Reworks.Select(trial => trial.Where(one => ChangeOf(Names[one.Task]) is not { } change || CauseOf(change) != MoveCause.Took).ToArray())];

    private IReadOnlyList<Rework[]>? ReworksNow()
    {
        var places = Names.Index().ToDictionary(one => one.Item, one => one.Index, StringComparer.Ordinal);
        var placeOf = placesNow.Where(one => places.ContainsKey(one.Key)).ToDictionary(one => one.Value, one => places[one.Key]);
        return now.Reworks is not { } reworks
            ? null
            : [.. Enumerable.Range(0, then.Draws.Trials).Select(trial => Rework.Renumbered(reworks[trial % now.Trials], placeOf))];
    }

    private List<WorkTime> TimesBy(Func<TaskChange, WorkTime> account) =>
    [
        .. then.Left.Graph.Tasks.Select(task => TimeOf(task, account)),
        .. extras.Select(account),
    ];

    /// <summary>A task is planned with what is accounted for, but for what was spent before the promise.</summary>
    private WorkTime TimeOf(ShopTask task, Func<TaskChange, WorkTime> account)
    {
        if (ChangeOf(task.Name) is not { } change)
        {
            return WorkTime.Zero;
        }

        var time = account(change) - SpentThen(task.Name);
        return time > WorkTime.Zero ? time : WorkTime.Zero;
    }
}
