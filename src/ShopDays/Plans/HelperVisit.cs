using NodaTime;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>A day on which somebody beside the first worker is needed, and for what.</summary>
/// <param name="Date">The day.</param>
/// <param name="Worker">Who.</param>
/// <param name="Together">Their time at work for two or more.</param>
/// <param name="Alone">Their time at work that they do by themselves.</param>
/// <param name="Tasks">The work for two or more, in its order.</param>
public sealed record HelperVisit(LocalDate Date, string Worker, WorkTime Together, WorkTime Alone, IReadOnlyList<ShopTask> Tasks)
{
    /// <summary>
    /// Their own work that somebody else does, or does with the same edge, at the same time: where the shop has one saw or one
    /// chisel for it, it takes another. In their order; of planes and other edges of which there are several none is told.
    /// </summary>
    public IReadOnlyList<string> AtOnce { get; init; } = [];

    /// <summary>The visits of a plan, in their order.</summary>
    /// <param name="sessions">Its sessions.</param>
    /// <param name="first">The first worker, who is there anyway.</param>
    public static IReadOnlyList<HelperVisit> In(IReadOnlyList<PlannedSession> sessions, string first) =>
    [
        .. from session in sessions
           where session.Session.Worker != first
           group session by (session.Session.Date, session.Session.Worker) into day
           let work = day.SelectMany(session => session.Work).ToList()
           select new HelperVisit(
               day.Key.Date,
               day.Key.Worker,
               Sum(work.Where(one => one.Task.Crew > 1)),
               Sum(work.Where(one => one.Task.Crew == 1)),
               [.. work.Where(one => one.Task.Crew > 1).Select(one => one.Task).Distinct()])
           {
               AtOnce =
               [
                   .. work.Where(one => ToolOf(one) is { } tool && sessions.Where(other => other.Session.Worker != day.Key.Worker).SelectMany(other => other.Work).Any(other => ToolOf(other) == tool && Overlap(one, other)))
                       .Select(one => ((TaskTiming.ByOperation)one.Task.Timing).Operation.Name)
                       .Distinct(StringComparer.Ordinal),
               ],
           },
    ];

    /// <summary>The tool of which a shop is taken to have one: that of an edge that is alone, or the saw of a kind of sawing; null for all others.</summary>
    private static string? ToolOf(PlannedWork work) => work.Task is { Crew: 1, Timing: TaskTiming.ByOperation by }
        ? by.Method.Edge is { AtATime: 1 } edge ? edge.Name : by.Method is { Edge: null, PaceGroup: PaceGroup.Sawing } ? work.Task.SetupKey : null
        : null;

    private static bool Overlap(PlannedWork one, PlannedWork other) => one.Start.ToInstant() < other.End.ToInstant() && other.Start.ToInstant() < one.End.ToInstant();

    private static WorkTime Sum(IEnumerable<PlannedWork> work) => work.Aggregate(WorkTime.Zero, (sum, one) => sum + one.HandsOn);
}
