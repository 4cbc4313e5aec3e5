using System.Diagnostics;
using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>One cause that moved a job's finish, in words.</summary>
/// <param name="Move">The cause.</param>
/// <param name="What">What it was.</param>
internal sealed record MovedRow(FinishMove Move, string What)
{
    private const int MostNamed = 3;

    /// <summary><c>14 days later</c>, <c>1 day sooner</c>, <c>no day</c>.</summary>
    public string Days => Move.Days switch
    {
        0 => "no day",
        > 0 => $"{CountWords.Of(Move.Days, "day")} later",
        < 0 => $"{CountWords.Of(-Move.Days, "day")} sooner",
    };

    /// <summary>All causes, that first which moved it most.</summary>
    /// <param name="moved">The causes.</param>
    /// <param name="progress">The job against its promise.</param>
    /// <param name="marks">The marks of its tasks.</param>
    /// <param name="zone">The zone of the shop's clock.</param>
    public static IReadOnlyList<MovedRow> Of(MovedFinish moved, JobProgress progress, TaskMarks marks, DateTimeZone zone) =>
    [
        .. moved.Moves
            .OrderByDescending(move => Math.Abs(move.Days))
            .ThenBy(move => move.Cause)
            .Select(move => new MovedRow(move, WhatOf(move, progress, marks, zone))),
    ];

    /// <summary>The whole in a sentence: both dates, and how far they are apart.</summary>
    /// <param name="moved">The dates.</param>
    /// <param name="isRecorded">Whether the promise is on record, or would have been one.</param>
    public static string Whole(MovedFinish moved, bool isRecorded = true)
    {
        var what = isRecorded ? moved.IsSafe ? "Promised" : "Planned for" : moved.IsSafe ? "Would have been promised" : "Would have been planned for";
        return moved.Days switch
        {
            0 => $"{what} {DateWords.Of(moved.Promised)}, and still so.",
            > 0 => $"{what} {DateWords.Of(moved.Promised)}, now {DateWords.Of(moved.Now)}: {CountWords.Of(moved.Days, "day")} later.",
            < 0 => $"{what} {DateWords.Of(moved.Promised)}, now {DateWords.Of(moved.Now)}: {CountWords.Of(-moved.Days, "day")} sooner.",
        };
    }

    private static string WhatOf(FinishMove move, JobProgress progress, TaskMarks marks, DateTimeZone zone) => move.Cause switch
    {
        MoveCause.FilesChanged => "the same work in the shop as its files say it now: hours, closed dates, start and limits",
        MoveCause.TasksChanged => $"tasks that came in or went out, {HourWords.Signed(move.Work)}{Greatest(progress.Changes.Where(one => one.Kind != ChangeKind.SameTask), move.Work, marks)}",
        MoveCause.Took when move.Work >= WorkTime.Zero => $"what is done took longer, {HourWords.Signed(move.Work)}{Greatest(Begun(progress), move.Work, marks)}",
        MoveCause.Took => $"what is done went faster, {HourWords.Signed(move.Work)}{Greatest(Begun(progress), move.Work, marks)}",
        MoveCause.ToCome when move.Work >= WorkTime.Zero => $"what is to come is expected to take longer by what was learned, {HourWords.Signed(move.Work)}",
        MoveCause.ToCome => $"what is to come is expected to go faster by what was learned, {HourWords.Signed(move.Work)}",
        MoveCause.Awaited when move.Arrived is { } arrived => Arrival(arrived, move.Days),
        MoveCause.Awaited => $"word, money or goods from others came otherwise than was likely{StillAwaited(progress.Left, zone)}",
        MoveCause.Order => "work in another order than planned, and what the ends of sessions round up or down",
        MoveCause.Sessions when move.Work >= WorkTime.Zero => $"sessions that went by: {HourWords.Of(move.Work)} of the work that was planned by now is not done",
        MoveCause.Sessions => $"work done ahead of its sessions: {HourWords.Of(move.Work * -1)}",
        MoveCause.LateWaits => $"waits that began later than planned{Waits(progress, zone)}",
        MoveCause.Luck when move.Days > 0 => "what is done might have gone faster by luck, and cannot any more",
        MoveCause.Luck => "what is done has no bad luck ahead any more: fewer days are kept for it",
        MoveCause.Certainty when move.Days > 0 => "times to come are less certain than they were: more days are kept for bad luck",
        MoveCause.Certainty => "times to come are more certain than they were: fewer days are kept for bad luck",
        _ => throw new UnreachableException(),
    };

    /// <summary><c>the client's word: client agrees came 9 days later than expected</c>.</summary>
    private static string Arrival(ArrivedOtherwise arrived, int moved)
    {
        var (what, late) = (arrived.One.Decision.What, arrived.DaysLate);
        var counted = arrived.DaysAskedLate == 0 ? "" : ", counted from when it was asked for";
        return late switch
        {
            0 => $"{what} came when it was expected{counted}{(moved < 0 ? ": no days are kept for its being late any more" : "")}",
            < 0 => $"{what} came {CountWords.Of(-late, "day")} sooner than expected{counted}",
            _ => $"{what} came {CountWords.Of(late, "day")} later than expected{counted}{(moved < 0 ? ", and the promise had kept more days for that" : "")}",
        };
    }

    private static string StillAwaited(RemainingWork left, DateTimeZone zone)
    {
        string[] all = [.. left.Graph.Awaited.Select(one => AwaitedWords.WithLateness(one, left.UnderWay.Known ?? left.UnderWay.From, zone))];
        return all.Length == 0 ? "" : $"; still awaited: {string.Join("; ", all.Take(MostNamed))}{(all.Length > MostNamed ? $"; and {CountWords.Number(all.Length - MostNamed)} more" : "")}";
    }

    private static IEnumerable<TaskChange> Begun(JobProgress progress) => progress.Changes.Where(one => one is { Kind: ChangeKind.SameTask, State: not TaskState.ToDo });

    /// <summary>The greatest of those that went the same way as all of them together: a saving explains no longer time.</summary>
    private static string Greatest(IEnumerable<TaskChange> changes, WorkTime inAll, TaskMarks marks)
    {
        var way = inAll >= WorkTime.Zero ? 1 : -1;
        List<TaskChange> all = [.. changes.Where(one => HourWords.WholeMinutes(one.Difference) * way > 0).OrderByDescending(one => Math.Abs(one.Difference.Minutes)).ThenBy(one => one.Task, StringComparer.Ordinal)];
        return all.Count == 0 ? "" : $": {(all.Count == 1 ? "" : "most of all ")}{string.Join(", ", all.Take(MostNamed).Select(one => $"{Marked(one, marks)} {HourWords.Signed(one.Difference)}"))}";
    }

    private static string Marked(TaskChange one, TaskMarks marks) =>
        one.Kind is ChangeKind.SameTask or ChangeKind.CameIn ? $"{marks.Of(one.Task)} {one.Task}" : one.Task;

    private static string Waits(JobProgress progress, DateTimeZone zone)
    {
        var waits = progress.Left.UnderWay.Waits.OrderByDescending(wait => wait.Until).ToList();
        return waits.Count == 0 ? "" : $": {string.Join("; ", waits.Take(2).Select(wait => $"{wait.Reason}, until {DateWords.When(wait.Until.InZone(zone))}"))}";
    }
}
