using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>A job as it stands now by its log: how far its tasks have come, what is left, and when that is finished.</summary>
internal sealed class JobNow
{
    private readonly Workings workings;
    private readonly TaskGraph whole;

    /// <summary>Reads the log of a job.</summary>
    /// <param name="workings">The job.</param>
    /// <param name="graph">Its order of work.</param>
    /// <param name="record">What else is on record of it.</param>
    /// <param name="now">The moment.</param>
    public JobNow(Workings workings, TaskGraph graph, OnRecord record, Instant now)
    {
        (this.workings, whole) = (workings, graph);
        (Record, At) = (record, now);
        var today = now.InZone(workings.Read.Shop.Place.Zone).Date;
        var heavy = HeavyWork.By(workings.Rates.Entries, workings.Read, graph, today);
        var heavyBefore = HeavyWork.By(workings.Rates.Entries, workings.Read, graph, today.PlusDays(-1));
        Standing = JobStanding.Of(graph, workings.Rates.EntriesOf(workings.Read), record.Running);
        Left = RemainingWork.Of(graph, Standing, workings.Calendars, workings.Read.Job.Start, now, heavy, heavyBefore);
        Stopped = Left.Graph.Tasks.Count > 0 && StoppedNote.Of(workings.Rates.EntriesOf(workings.Read), record.Running) is [var newest, ..] ? newest : null;
        SessionsGone = Gone(workings, now);
    }

    /// <summary>What is on record of it beside its entries.</summary>
    public OnRecord Record { get; }

    /// <summary>The moment.</summary>
    public Instant At { get; }

    /// <summary>How far its tasks have come.</summary>
    public JobStanding Standing { get; }

    /// <summary>What is left.</summary>
    public RemainingWork Left { get; }

    /// <summary>Where the maker stopped last; null where nothing is noted that still holds, and when nothing is left to do.</summary>
    public StoppedNote? Stopped { get; }

    /// <summary>Working time of all sessions from the job's start until now, whoever's.</summary>
    public WorkTime SessionsGone { get; }

    /// <summary>Drawn courses of what is left.</summary>
    public TimeDraws Draws => field ??= workings.DrawsOf(whole, Left);

    /// <summary>What is left, as it is asked to be planned.</summary>
    public PlanRequest Request => field ??= workings.RequestOf(whole, Left, Draws);

    /// <summary>A plan of what is left, or what stands against it.</summary>
    public PlanAnswer Ahead => field ??= workings.Planned(Request);

    /// <summary>Where it stands against a promise.</summary>
    public JobProgress Against(Promise promise, Workings workings) =>
        JobProgress.Of(promise, Standing, Left, workings.Rates.Model, Draws, workings.Read.SawnBoards.Select(board => board.Board.Name).ToHashSet(StringComparer.Ordinal));

    /// <summary>What a plan of the rest says beside its dates: against the first promise on record, if there is one.</summary>
    public ToldRest Told(Workings workings, TaskGraph graph)
    {
        var zone = workings.Read.Shop.Place.Zone;
        var told = new ToldRest { From = Left.UnderWay.From.InZone(zone), Standing = Standing, Left = Left, Start = workings.Read.Job.Start, Stopped = Stopped };
        if (Record.Promises.Count == 0 || told.IsDone)
        {
            return told;
        }

        var progress = Against(Record.Promises[0], workings);
        var moved = PromisedThen.Moved(workings, graph, this, progress, isRecorded: true);
        return told with { Moved = moved, Why = moved is null ? [] : MovedRow.Of(moved, progress, new(graph.Tasks.Select(task => task.Name)), zone) };
    }

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
}
