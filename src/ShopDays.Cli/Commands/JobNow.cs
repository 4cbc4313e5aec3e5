using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>A job as it stands now by its log: how far its tasks have come, what is left, and when that is finished.</summary>
internal sealed class JobNow
{
    /// <summary>Reads the log of a job.</summary>
    /// <param name="workings">The job.</param>
    /// <param name="graph">Its order of work.</param>
    /// <param name="running">Work of it that goes on now.</param>
    /// <param name="now">The moment.</param>
    public JobNow(Workings workings, TaskGraph graph, IEnumerable<RunningWork> running, Instant now)
    {
        var heavy = HeavyWork(workings, graph, now.InZone(workings.Read.Shop.Place.Zone).Date);
        Standing = JobStanding.Of(graph, workings.Rates.EntriesOf(workings.Read), running);
        Left = RemainingWork.Of(graph, Standing, workings.Calendars, workings.Read.Job.Start, now, heavy);
        SessionsGone = Gone(workings, now);
        Draws = workings.DrawsOf(Left);
        Ahead = workings.PlanOf(Left, Draws);
    }

    /// <summary>How far its tasks have come.</summary>
    public JobStanding Standing { get; }

    /// <summary>What is left.</summary>
    public RemainingWork Left { get; }

    /// <summary>Working time of all sessions from the job's start until now, whoever's.</summary>
    public WorkTime SessionsGone { get; }

    /// <summary>Drawn courses of what is left.</summary>
    public TimeDraws Draws { get; }

    /// <summary>A plan of what is left, or what stands against it.</summary>
    public PlanAnswer Ahead { get; }

    private static WorkTime Gone(Workings workings, Instant now)
    {
        var (start, today) = (workings.Read.Job.Start, now.InZone(workings.Read.Shop.Place.Zone).Date);
        return today < start
            ? WorkTime.Zero
            : workings.Calendars
                .SelectMany(calendar => calendar.Between(start, today).Sessions)
                .Where(session => session.Work.Start < now)
                .Aggregate(WorkTime.Zero, (sum, session) => sum + WorkTime.FromMinutes((Instant.Min(now, session.Work.End) - session.Work.Start).TotalMinutes));
    }

    /// <summary>Heavy work of a date by worker, in whatever job it was.</summary>
    private static Dictionary<string, WorkTime> HeavyWork(Workings workings, TaskGraph graph, LocalDate date)
    {
        var heavyTasks = graph.Tasks.Where(task => task.WorkClass == WorkClass.Heavy).Select(task => task.Name).ToHashSet(StringComparer.Ordinal);
        return workings.Rates.Entries
            .Where(entry => entry.On.Date == date && IsHeavy(entry))
            .GroupBy(entry => entry.Worker, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Aggregate(WorkTime.Zero, (sum, entry) => sum + entry.Took), StringComparer.Ordinal);

        bool IsHeavy(LogEntry entry) => entry.Work?.In(workings.Read.Operations) is { } timing
            ? timing.Method.WorkClass == WorkClass.Heavy
            : string.Equals(entry.Job, workings.Read.LogName, StringComparison.Ordinal) && heavyTasks.Contains(entry.Task);
    }
}
