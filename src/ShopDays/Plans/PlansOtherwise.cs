using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>The promised job planned again, each time with one thing more as it came about, up to the plan of what is left.</summary>
internal sealed class PlansOtherwise
{
    private readonly JobProgress progress;
    private readonly PlanRequest ahead;
    private readonly RemainingWork was;
    private readonly PromisedJob then;
    private readonly Dictionary<string, TaskChange> changes;
    private readonly List<TaskChange> extras;

    /// <summary>Gathers what came about.</summary>
    /// <param name="progress">Where the job stands.</param>
    /// <param name="then">The job as it was promised.</param>
    /// <param name="ahead">What is left of it, to be planned.</param>
    public PlansOtherwise(JobProgress progress, PromisedJob then, PlanRequest ahead)
    {
        (this.progress, this.then, this.ahead) = (progress, then, ahead);
        changes = progress.Changes.ToDictionary(one => one.Task, StringComparer.Ordinal);
        was = RemainingWork.Of(then.Graph, then.Standing, ahead.Calendars, ahead.Orders[0].Start, then.From);
        var known = then.Graph.Tasks.Select(task => task.Name).ToHashSet(StringComparer.Ordinal);
        extras = [.. progress.Changes.Where(one => !known.Contains(one.Task))];
    }

    /// <summary>Planned work of the promise that is not done by now, by the times that it takes; below zero when more is done.</summary>
    public WorkTime Behind { get; private set; }

    /// <summary>
    /// The date of the finish as it was promised, then after each cause but luck, in their order. A plan that cannot be made
    /// leaves the date where it was, and its cause to the next.
    /// </summary>
    public IReadOnlyList<LocalDate> Dates(LocalDate promised, Plan now)
    {
        var dates = new List<LocalDate> { promised };
        var times = TimesBy(one => one.Kind is ChangeKind.SameTask or ChangeKind.WentOut or ChangeKind.SawnUnlogged ? one.Promised : WorkTime.Zero);
        var plan = Add(dates, PlanOf(times), null);
        foreach (var cause in (MoveCause[])[MoveCause.TasksChanged, MoveCause.Took, MoveCause.ToCome])
        {
            var before = times;
            times = [.. times.Zip(TimesBy(one => one.Now), AllNames()).Select(one => changes.TryGetValue(one.Third, out var change) && CauseOf(change) == cause ? one.Second : one.First)];
            plan = Add(dates, before.SequenceEqual(times) ? plan : PlanOf(times), plan);
        }

        plan = Add(dates, was.Graph.Awaited.Count == 0 ? plan : PlanOf(times, cameAbout: true), plan);
        var from = plan is null ? ahead.Orders[0].UnderWay!.From : StandsAt(plan, times);
        var onTime = plan is null ? ahead.Orders[0].UnderWay! : WaitsOnTime(plan);
        var late = onTime == ahead.Orders[0].UnderWay ? now : PlanOf(onTime);
        var early = from == onTime.From || late is null ? late : PlanOf(onTime with { From = from, HeavyToday = HeavyOn(plan!, from) });
        Add(dates, early, plan);
        Add(dates, late, early);
        dates.Add(now.Finish.Date);
        return dates;

        static Plan? Add(List<LocalDate> dates, Plan? made, Plan? before)
        {
            dates.Add(made is null ? dates[^1] : made.Finish.Date);
            return made ?? before;
        }
    }

    /// <summary>Hands-on time behind a cause.</summary>
    public WorkTime WorkOf(MoveCause cause) => cause == MoveCause.Sessions
        ? Behind
        : JobProgress.Sum(progress.Changes.Where(one => CauseOf(one) == cause), one => one.Difference);

    private static MoveCause CauseOf(TaskChange one) => (one.Kind, one.State) switch
    {
        (ChangeKind.CameIn or ChangeKind.OnlyLogged, _) => MoveCause.TasksChanged,
        (ChangeKind.WentOut, _) when one.Spent == WorkTime.Zero => MoveCause.TasksChanged,
        (ChangeKind.SameTask, TaskState.ToDo) => MoveCause.ToCome,
        _ => MoveCause.Took,
    };

    /// <summary>Names of all tasks that are planned, in their row: those of the promised job, then those that it did not have.</summary>
    private IEnumerable<string> AllNames() => was.Graph.Tasks.Select(task => task.Name).Concat(extras.Select(one => one.Task));

    /// <summary>Their times by one account of each task, without what was spent before the promise.</summary>
    private List<WorkTime> TimesBy(Func<TaskChange, WorkTime> account) =>
    [
        .. was.Graph.Tasks.Select(task => TimeOf(task.Name, was.Ids[task.Id], account)),
        .. extras.Select(account),
    ];

    /// <summary>
    /// The time that a task was planned with is the middle of its drawn times, a little off that which is accounted for: it
    /// goes up and down with the account, so that what is accounted for alike is planned alike.
    /// </summary>
    private WorkTime TimeOf(string name, int id, Func<TaskChange, WorkTime> account)
    {
        if (!changes.TryGetValue(name, out var change))
        {
            return WorkTime.Zero;
        }

        var (time, spent) = (account(change), then.Standing.Tasks[id].Spent);
        if (change.Promised > WorkTime.Zero && (time == change.Promised || change is { State: TaskState.ToDo, Kind: ChangeKind.SameTask }))
        {
            time = then.Times[id] * (time / change.Promised);
        }

        return time > spent ? time - spent : WorkTime.Zero;
    }

    /// <summary>A plan with some times, and with what is awaited from others as it was likely then, or as it came about.</summary>
    private Plan? PlanOf(List<WorkTime> times, bool cameAbout = false)
    {
        List<Awaited> awaited = [.. was.Graph.Awaited.Select(one => cameAbout ? one : one with { Decision = one.Decision with { Arrived = null } })];
        var first = was.Graph.Tasks.Count;
        List<(TaskChange Change, WorkTime Time)> more = [.. extras.Zip(times.Skip(first)).Where(one => one.Second > WorkTime.Zero)];
        List<WorkTime> all = [.. times.Take(first), .. more.Select(one => one.Time)];
        return PlanOf(ahead.Orders[0] with
        {
            Graph = new([.. was.Graph.Tasks, .. more.Select((one, place) => TaskOf(one.Change, first + place))], was.Graph.Precedences, awaited, was.Graph.ClosingWaits),
            Times = all,
            Draws = new([[.. all.Select(time => time.Minutes)]], 0),
            UnderWay = cameAbout ? was.UnderWay with { Known = ahead.Orders[0].UnderWay!.Known } : was.UnderWay,
        });
    }

    private Plan? PlanOf(UnderWay underWay)
    {
        var order = ahead.Orders[0];
        return PlanOf(order with { UnderWay = underWay, Draws = new([[.. order.Times.Select(time => time.Minutes)]], 0) });
    }

    private Plan? PlanOf(OrderInHand order) => PlanMaker.Plan(ahead with { Orders = [order] }) is PlanAnswer.Planned planned ? planned.Plan : null;

    /// <summary>A task that is in the job no more, or never was: of its kind only the time is known, so it may be done at any time.</summary>
    private static ShopTask TaskOf(TaskChange one, int id) => new()
    {
        Id = id,
        Name = one.Task,
        Stage = Stage.Sawing,
        Timing = new TaskTiming.ByGuess(new(one.Now, one.Now, one.Now)),
        WorkClass = WorkClass.Light,
        IsSplittable = true,
    };

    /// <summary>The moment of a plan at which as much is done in it as is done by now; now itself where the plan would have it so.</summary>
    private Instant StandsAt(Plan plan, List<WorkTime> times)
    {
        var now = ahead.Orders[0].UnderWay!.From;
        var done = AllNames().Zip(times).Sum(one => changes.TryGetValue(one.First, out var change) ? MinutesDone(change, one.Second) : 0);
        var pieces = plan.Sessions.SelectMany(session => session.Work).OrderBy(work => work.Start.ToInstant()).ToList();
        var byNow = pieces.Sum(work => Math.Clamp((now - work.Start.ToInstant()).TotalMinutes, 0, work.HandsOn.Minutes) / work.Task.Crew);
        Behind = WorkTime.FromMinutes(byNow - done);
        // A minute is what rounding up leaves of a task that is under way.
        if (Math.Abs(byNow - done) < 1)
        {
            Behind = WorkTime.Zero;
            return now;
        }

        var at = pieces.Count == 0 ? now : pieces[0].Start.ToInstant();
        foreach (var work in pieces)
        {
            var minutes = work.HandsOn.Minutes / work.Task.Crew;
            if (done < minutes)
            {
                return done <= 0 ? at : work.Start.ToInstant() + Duration.FromMinutes(done * work.Task.Crew);
            }

            (done, at) = (done - minutes, work.End.ToInstant());
        }

        return at;
    }

    private double MinutesDone(TaskChange change, WorkTime planned) => change.State switch
    {
        TaskState.ToDo => 0,
        TaskState.HalfDone => Math.Min(planned.Minutes, Math.Max(0, change.Spent.Minutes - SpentThen(change.Task))),
        _ => planned > WorkTime.Zero ? Math.Ceiling(planned.Minutes) : 0,
    };

    private double SpentThen(string name) => then.Standing.Tasks.FirstOrDefault(one => string.Equals(one.Task.Name, name, StringComparison.Ordinal))?.Spent.Minutes ?? 0;

    /// <summary>How the shop would stand had each wait that still runs begun when a plan has it begin, if that is sooner.</summary>
    private UnderWay WaitsOnTime(Plan plan)
    {
        var underWay = ahead.Orders[0].UnderWay!;
        var planned = plan.Sessions.SelectMany(session => session.Work).Where(work => work.IsLastPiece).GroupBy(work => work.Task.Name, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.Max(work => work.End.ToInstant()), StringComparer.Ordinal);
        var late = underWay.Waits
            .Where(wait => planned.TryGetValue(wait.After.Name, out var end) && end < wait.Start)
            .GroupBy(wait => wait.After.Name, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.First().Start - planned[group.Key], StringComparer.Ordinal);
        return late.Count == 0
            ? underWay
            : underWay with
            {
                Waits = [.. underWay.Waits.Select(wait => wait with { Start = wait.Start - Late(wait.After), Until = wait.Until - Late(wait.After) }).Where(wait => wait.Until > underWay.From)],
                Held = [.. underWay.Held.Select(held => held with { ClampsUntil = held.ClampsUntil - Late(held.By), BenchUntil = held.BenchUntil - Late(held.By), WetUntil = held.WetUntil - Late(held.By) })],
            };

        Duration Late(ShopTask after) => late.GetValueOrDefault(after.Name, Duration.Zero);
    }

    private Dictionary<string, WorkTime> HeavyOn(Plan plan, Instant from)
    {
        var underWay = ahead.Orders[0].UnderWay!;
        var date = from.InZone(ahead.Zone).Date;
        return date == underWay.From.InZone(ahead.Zone).Date
            ? new(underWay.HeavyToday, StringComparer.Ordinal)
            : plan.Sessions
                .SelectMany(session => session.Work)
                .Where(work => work.Task.WorkClass == WorkClass.Heavy && work.Start.Date == date && work.End.ToInstant() <= from)
                .GroupBy(work => work.Worker, StringComparer.Ordinal)
                .ToDictionary(group => group.Key, group => group.Aggregate(WorkTime.Zero, (sum, work) => sum + work.HandsOn), StringComparer.Ordinal);
    }
}
