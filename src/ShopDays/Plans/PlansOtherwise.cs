using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>The promised job planned again, each time with one thing more as it came about, up to the plan of what is left.</summary>
internal sealed class PlansOtherwise
{
    private readonly JobProgress progress;
    private readonly PlanRequest ahead;
    private readonly PromisedJob then;
    private readonly bool isSafe;
    private readonly TimesOtherwise times;

    /// <summary>Gathers what came about.</summary>
    /// <param name="progress">Where the job stands.</param>
    /// <param name="then">The job as it was promised.</param>
    /// <param name="ahead">What is left of it, to be planned.</param>
    /// <param name="isSafe">Whether the dates are those that four courses in five keep; false for the planned ones.</param>
    public PlansOtherwise(JobProgress progress, PromisedJob then, PlanRequest ahead, bool isSafe)
    {
        (this.progress, this.then, this.ahead, this.isSafe) = (progress, then, ahead, isSafe);
        times = new(progress, then, ahead.Orders[0]);
    }

    /// <summary>Planned work of the promise that is not done by now, by the times that it takes; below zero when more is done.</summary>
    public WorkTime Behind { get; private set; }

    /// <summary>
    /// The date of the finish after each cause, in their order. A plan that cannot be made leaves the date where it was, and
    /// its cause to the next.
    /// </summary>
    /// <param name="promised">The date that was promised.</param>
    /// <param name="now">The same date as things stand.</param>
    public IReadOnlyList<FinishStep> Steps(LocalDate promised, LocalDate now)
    {
        var steps = new List<FinishStep>();
        var last = times.Promised;
        var plan = PlanOf(last);
        var chance = 0;
        Add(MoveCause.FilesChanged, DateOf(plan));
        foreach (var cause in (MoveCause[])[MoveCause.TasksChanged, MoveCause.Took, MoveCause.ToCome])
        {
            var (before, from) = (last, steps[^1].Date);
            last = times.With(cause, before);
            var other = before.SequenceEqual(last) ? plan : PlanOf(last);
            Add(cause, DateOf(other)?.PlusDays(-chance));
            plan = other ?? plan;

            // More work ends no sooner: what says so is the search, which came upon another order.
            if (WorkOf(cause).Minutes * Period.DaysBetween(from, steps[^1].Date) < 0)
            {
                chance += Period.DaysBetween(from, steps[^1].Date);
                steps[^1] = steps[^1] with { Date = from };
            }
        }

        foreach (var (cause, known) in ((MoveCause, Known)[])[(MoveCause.Luck, Known.WhatIsDone), (MoveCause.Certainty, Known.AllAsNow)])
        {
            Add(cause, isSafe ? plan?.SafeFinish(DrawsOf(last, known))?.Date.PlusDays(-chance) : null);
        }

        var came = new Dictionary<string, LocalDate>(StringComparer.Ordinal);
        foreach (var (arrived, asPlanned) in ArrivedIn(plan))
        {
            came[arrived.One.Name] = asPlanned;
            var asItCame = PlanOf(last, came);
            Add(MoveCause.Awaited, DateWhenAllIsKnown(asItCame), arrived);
            plan = asItCame ?? plan;
        }

        // What came on no known date, and held nothing up, is not awaited any more.
        var others = (plan?.Waits ?? []).Where(wait => wait.Awaited is { } one && progress.Left.Came.Any(two => two.One.Name == one.One.Name)).ToList();
        others.ForEach(wait => came.TryAdd(wait.Awaited!.One.Name, wait.End.Date));
        var asKnownNow = then.Left.Graph.Awaited.Any(one => !came.ContainsKey(one.Name)) || others.Count > 0 ? PlanOf(last, came, isKnownNow: true) : null;
        Add(MoveCause.Awaited, DateWhenAllIsKnown(asKnownNow));
        plan = asKnownNow ?? plan;

        var underWay = ahead.Orders[0].UnderWay!;
        var at = plan is null ? underWay.From : StandsAt(plan, last);
        var onTime = plan is null ? underWay : WaitsOnTime(plan);
        var late = onTime == underWay ? now : DateOf(PlanOf(onTime));
        Add(MoveCause.Order, at == onTime.From || late is null ? late : DateOf(PlanOf(onTime with { From = at, HeavyToday = HeavyOn(plan!, at, 0), HeavyYesterday = HeavyOn(plan!, at, 1) })));
        Add(MoveCause.Sessions, late);
        Add(MoveCause.LateWaits, now);
        return steps;

        void Add(MoveCause cause, LocalDate? date, ArrivedOtherwise? arrived = null) => steps.Add(new(cause, date ?? (steps.Count == 0 ? promised : steps[^1].Date), arrived));

        LocalDate? DateWhenAllIsKnown(FoundPlan? other) => (isSafe ? other?.SafeFinish(DrawsOf(last, Known.AllAsNow)) : other?.Finish)?.Date.PlusDays(-chance);
    }

    /// <summary>What of the awaited came on a known date, in that order, with the date on which it would have come had it been asked for as planned.</summary>
    private IEnumerable<(ArrivedOtherwise Arrived, LocalDate AsPlanned)> ArrivedIn(FoundPlan? plan)
    {
        var expected = (plan?.Waits ?? []).Where(wait => wait.Awaited is not null).ToDictionary(wait => wait.Awaited!.One.Name, StringComparer.Ordinal);
        return
        [
            .. from came in progress.Left.Came
               where came.On is not null && expected.ContainsKey(came.One.Name)
               orderby came.On!.Value, came.One.Name
               let arrived = ArrivedOtherwise.Of(came, came.On!.Value, expected[came.One.Name])
               select (arrived, came.On!.Value.PlusDays(-arrived.DaysAskedLate)),
        ];
    }

    /// <summary>Hands-on time behind a cause.</summary>
    public WorkTime WorkOf(MoveCause cause) => cause == MoveCause.Sessions
        ? Behind
        : JobProgress.Sum(progress.Changes.Where(one => TimesOtherwise.CauseOf(one) == cause), one => one.Difference);

    private LocalDate? DateOf(FoundPlan? plan) => isSafe ? plan?.Forecasts[0].P80?.Date : plan?.Finish.Date;

    /// <summary>A plan with some times, and with what is awaited from others as it was likely then, but for what came on these dates.</summary>
    private FoundPlan? PlanOf(IReadOnlyList<WorkTime> those, Dictionary<string, LocalDate>? came = null, bool isKnownNow = false)
    {
        var graph = then.Left.Graph;
        var first = graph.Tasks.Count;
        List<int> more = [.. Enumerable.Range(first, those.Count - first).Where(place => those[place] > WorkTime.Zero)];
        List<Awaited> awaited = [.. graph.Awaited.Select(one => came is not null && came.TryGetValue(one.Name, out var on) ? one with { Decision = one.Decision with { Arrived = on } } : one)];
        return PlanOf(ahead.Orders[0] with
        {
            Graph = new([.. graph.Tasks, .. more.Select((place, index) => times.TaskOf(place, first + index))], graph.Precedences, awaited, graph.ClosingWaits),
            Times = [.. those.Take(first), .. more.Select(place => those[place])],
            Draws = DrawsOf(those, Known.AsThen),
            UnderWay = isKnownNow ? then.Left.UnderWay with { Known = ahead.Orders[0].UnderWay!.Known } : then.Left.UnderWay,
        });
    }

    private FoundPlan? PlanOf(UnderWay underWay) => PlanOf(ahead.Orders[0] with { UnderWay = underWay });

    private FoundPlan? PlanOf(OrderInHand order) => FoundPlan.Of(ahead with { Orders = [order], Progress = null }, out _);

    /// <summary>Draws of the tasks that are planned: what the promised job did not have, and what takes no time, is left out.</summary>
    private TimeDraws DrawsOf(IReadOnlyList<WorkTime> those, Known known)
    {
        List<int> planned = [.. Enumerable.Range(0, those.Count).Where(place => place < then.Left.Graph.Tasks.Count || those[place] > WorkTime.Zero)];
        var drawn = times.Drawn(those, known);
        return planned.Count == those.Count ? drawn : drawn.Only(planned);
    }

    /// <summary>The moment of a plan at which what is done by now is done and more is begun; now itself where the plan would have it so. Time in which a plan waits for others went by for nothing.</summary>
    private Instant StandsAt(FoundPlan plan, IReadOnlyList<WorkTime> those)
    {
        var now = ahead.Orders[0].UnderWay!.From;
        var done = times.Names.Zip(those).Sum(one => times.ChangeOf(one.First) is { } change ? MinutesDone(change, one.Second) : 0);
        var pieces = plan.Sessions.SelectMany(session => session.Work).OrderBy(work => work.Start.ToInstant()).ToList();
        var byNow = pieces.Sum(work => Math.Clamp((now - work.Start.ToInstant()).TotalMinutes, 0, work.HandsOn.Minutes) / work.Task.Crew);
        Behind = WorkTime.FromMinutes(byNow - done);
        // A minute is what rounding leaves of a task that is under way.
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
                return done <= 0 ? work.Start.ToInstant() : work.Start.ToInstant() + Duration.FromMinutes(done * work.Task.Crew);
            }

            (done, at) = (done - minutes, work.End.ToInstant());
        }

        return at;
    }

    private double MinutesDone(TaskChange change, WorkTime planned) => change.State switch
    {
        TaskState.ToDo => 0,
        TaskState.HalfDone => Math.Min(planned.Minutes, Math.Max(0, (change.Spent - times.SpentThen(change.Task)).Minutes)),
        _ => planned > WorkTime.Zero ? ProblemCompiler.MinutesOf(planned.Minutes) : 0,
    };

    /// <summary>How the shop would stand had each wait that still runs begun when a plan has it begin, if that is sooner.</summary>
    private UnderWay WaitsOnTime(FoundPlan plan)
    {
        var underWay = ahead.Orders[0].UnderWay!;
        var last = plan.Sessions.SelectMany(session => session.Work).Where(work => work.IsLastPiece).ToList();
        var late = underWay.Waits
            .GroupBy(wait => wait.AfterWhat, StringComparer.Ordinal)
            .Select(group => (What: group.Key, group.First().Start, Planned: EndOf(group.First())))
            .Where(one => one.Planned < one.Start)
            .ToDictionary(one => one.What, one => one.Start - one.Planned!.Value, StringComparer.Ordinal);
        return late.Count == 0
            ? underWay
            : underWay with
            {
                Waits = [.. underWay.Waits.Select(wait => wait with { Start = wait.Start - Late(wait.AfterWhat), Until = wait.Until - Late(wait.AfterWhat) }).Where(wait => wait.Until > underWay.From)],
                Held = [.. underWay.Held.Select(held => held with { ClampsUntil = held.ClampsUntil - Late(held.By.Name), BenchUntil = held.BenchUntil - Late(held.By.Name), WetUntil = held.WetUntil - Late(held.By.Name) })],
            };

        // A plan from before a board was recorded as sawn has its cuts as tasks.
        Instant? EndOf(RunningWait wait) => last
            .Where(work => wait.After is { } after ? work.Task.Name == after.Name : work.Task.Stage == Stage.Sawing && work.Task.Board == wait.Sawn)
            .Select(work => (Instant?)work.End.ToInstant())
            .Max();

        Duration Late(string after) => late.GetValueOrDefault(after, Duration.Zero);
    }

    /// <summary>Heavy work by worker, as a plan has it before a moment, of its date or some days before that; as it was where work is logged.</summary>
    private Dictionary<string, WorkTime> HeavyOn(FoundPlan plan, Instant from, int daysBefore)
    {
        var underWay = ahead.Orders[0].UnderWay!;
        var date = from.InZone(ahead.Zone).Date;
        if (date == underWay.From.InZone(ahead.Zone).Date)
        {
            return new(daysBefore == 0 ? underWay.HeavyToday : underWay.HeavyYesterday, StringComparer.Ordinal);
        }

        date = date.PlusDays(-daysBefore);
        return plan.Sessions
            .SelectMany(session => session.Work)
            .Where(work => work.Task.WorkClass == WorkClass.Heavy && work.Start.Date == date && work.End.ToInstant() <= from)
            .GroupBy(work => work.Worker, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Aggregate(WorkTime.Zero, (sum, work) => sum + work.HandsOn), StringComparer.Ordinal);
    }
}

/// <summary>The date of a finish after one cause more.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Date">The date.</param>
/// <param name="Arrived">What came from others, where it is that.</param>
internal readonly record struct FinishStep(MoveCause Cause, LocalDate Date, ArrivedOtherwise? Arrived);
