using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>What comes of writing a job's order of work: the graph, or the names of what goes round.</summary>
public abstract record OrderOfWork
{
    private OrderOfWork()
    {
    }

    /// <summary>There is an order.</summary>
    /// <param name="Graph">The tasks and what must come before what.</param>
    /// <param name="Remarks">What the maker should know before work begins.</param>
    public sealed record Made(TaskGraph Graph, IReadOnlyList<Remark> Remarks) : OrderOfWork;

    /// <summary>There is none: what is written goes round.</summary>
    /// <param name="Names">Tasks, glue-ups or decisions of one round, the first again at the end.</param>
    public sealed record GoesRound(IReadOnlyList<string> Names) : OrderOfWork;

    /// <summary>The names that <c>before:</c> and <c>after:</c> in a job may use: stages, parts, glue-ups, free tasks and decisions.</summary>
    public static IReadOnlyList<string> AnchorNames(Job job) => Anchors.NamesIn(job);

    /// <summary>Writes the order of work of a job whose parts have their places in boards.</summary>
    /// <param name="job">The job; its names are known to be good.</param>
    /// <param name="layout">Where the parts come from. A part that has no place gets a remark, and no sawing or planing.</param>
    /// <param name="operations">The operations.</param>
    /// <param name="waits">Adhesives, finishes and rests.</param>
    /// <param name="limits">What the shop can do.</param>
    /// <param name="longestSession">The longest session that can be worked, opening and sweeping up taken off; above 0. Runs of like pieces are cut to it.</param>
    /// <exception cref="ArgumentException">The job names a method, joint, adhesive or finish that is not there: reading it should have said so.</exception>
    /// <exception cref="KeyNotFoundException">The catalogue lacks an operation that the work needs.</exception>
    public static OrderOfWork Build(Job job, Layout layout, OperationCatalogue operations, WaitTable waits, ShopLimits limits, WorkTime longestSession)
    {
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(longestSession, WorkTime.Zero);
        var (glueUps, round) = Holders.InOrder(job);
        if (round.Count == 0)
        {
            round = Decisions.Round(job);
        }

        if (round.Count > 0)
        {
            return new GoesRound(round);
        }

        var draft = new Draft(job, layout, operations, waits, limits, longestSession);
        var stages = new PieceStages(draft);
        SawingOut.Add(draft, FetchAndChalk.Add(draft));
        var turns = Sharpening.AddTouchUps(draft);
        Dimensioning.Add(draft, stages);
        Joinery.Add(draft, stages);
        GlueUps.Add(draft, stages, glueUps);
        Joinery.AddTogether(draft);
        Finishing.Add(draft);
        FreeWork.Add(draft);
        Sharpening.KeepTurns(draft, turns);
        Sharpening.AddHonings(draft);
        draft.Remarks.AddRange(NightRemarks.Of(job, layout, waits, limits.Nights));
        WarnOfPlacesAndPeople(draft);
        WarnOfLooseEnds(draft);
        WarnOfWaitsForNothing(draft);
        return TaskCycle.Find(draft.Tasks.Count, draft.Precedences) is { } cycle
            ? new GoesRound([.. cycle.Select(id => draft.Tasks[id].Name)])
            : new Made(new TaskGraph(draft.Tasks, draft.Precedences, draft.Awaited, draft.ClosingWaits) { SawnRests = draft.SawnRests }, draft.Remarks);
    }

    private static void WarnOfLooseEnds(Draft draft)
    {
        var job = draft.Job;
        var used = job.Joints.SelectMany(joint => joint.Parts)
            .Concat(job.GlueUps.SelectMany(glueUp => glueUp.Joins))
            .Concat(job.Finishes.SelectMany(finish => finish.On))
            .Concat(job.Work.SelectMany(task => task.On.Concat(task.After).Concat(task.Before)))
            .SelectMany(name => Holders.PartsOf(name, job))
            .ToHashSet();
        foreach (var part in job.Parts.Where(part => !used.Contains(part)))
        {
            draft.Remarks.Add(new Remark(RemarkKind.LooseEnd, part.Name, $"nothing is done with {part.Name} after it is sized", "name it in a joint, a glue-up, a finish or the on: of a task"));
        }
    }

    private static void WarnOfWaitsForNothing(Draft draft)
    {
        var wanted = draft.Awaited.SelectMany(one => one.AfterOthers).ToHashSet();
        foreach (var (_, one) in draft.Awaited.Index().Where(pair => pair.Item is { HasCome: false, Holds.Count: 0 } && !wanted.Contains(pair.Index)))
        {
            draft.Remarks.Add(new Remark(RemarkKind.LooseEnd, one.Name, $"nothing in the job waits for {one.Decision.What}", "name in its before: what cannot begin without it"));
        }
    }

    private static void WarnOfPlacesAndPeople(Draft draft)
    {
        foreach (var part in draft.Layout.Unplaced.Select(unplaced => unplaced.Part.Name).Distinct(StringComparer.Ordinal))
        {
            draft.Remarks.Add(new Remark(RemarkKind.Unplaced, part, $"{part} has pieces without a place in a board: their sawing and planing are not reckoned", "add stock, or fewer parts"));
        }

        var things = Weights.Of(draft.Job, draft.Layout, draft.Limits).Where(one => one is { IsOverLimit: true, Kind: WeighedKind.Part or WeighedKind.GlueUp });
        foreach (var thing in things)
        {
            draft.Remarks.Add(new Remark(RemarkKind.Lift, thing.Name, $"{thing.Name} weighs more than one person should lift", "turn and carry it with a second person, or slide it", thing.Mass));
        }

        foreach (var task in draft.Tasks.Where(task => task.Crew > draft.Limits.Workers))
        {
            draft.Remarks.Add(new Remark(RemarkKind.Crew, task.Name, FormattableString.Invariant($"'{task.Name}' takes {task.Crew} people, and the shop has {draft.Limits.Workers}"), "ask a helper for that day"));
        }
    }
}
