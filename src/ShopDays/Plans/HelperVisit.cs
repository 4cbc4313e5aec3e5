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
               [.. work.Where(one => one.Task.Crew > 1).Select(one => one.Task).Distinct()]),
    ];

    private static WorkTime Sum(IEnumerable<PlannedWork> work) => work.Aggregate(WorkTime.Zero, (sum, one) => sum + one.HandsOn);
}
