using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Paper;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;
using ShopDays.Prices;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>What is planned: a whole job, or what is left of one.</summary>
/// <param name="Workings">The job, worked out.</param>
/// <param name="Made">The order of work of the whole job.</param>
/// <param name="Rest">The job as it stands; null when the whole is planned.</param>
internal sealed record WorkToPlan(Workings Workings, OrderOfWork.Made Made, JobNow? Rest)
{
    /// <summary>The moment up to which it is known what has come from others; null where the whole is planned as it was at its start.</summary>
    public Instant? Known { get; init; }

    /// <summary>The tasks that are planned.</summary>
    public TaskGraph Graph => Rest?.Left.Graph ?? Made.Graph;

    /// <summary>What there is to be known of the work that is planned.</summary>
    public IReadOnlyList<Remark> Remarks => [.. Made.Remarks.Where(remark => remark.Concerns(Graph.Tasks))];

    /// <summary>The plan, or what stands against it.</summary>
    public PlanAnswer Answer => field ??= Rest?.Ahead ?? Workings.PlanOf(Made.Graph, Known);

    /// <summary>The price of the whole job; null where the shop does not say what an hour has to earn.</summary>
    public PriceBuildUp? Price => Workings.Read.Shop.Money is { Terms: var terms } ? Workings.PriceOf(Made.Graph, terms, TimberBill.Of(Workings.Layout, terms.SpareBoards)) : null;

    private TimeDraws Draws => Rest?.Draws ?? Workings.DrawsOf(Made.Graph);

    /// <summary>What the plan promises.</summary>
    public Promise Promise(Instant made, PlanAnswer.Planned planned)
    {
        var (job, model) = (Workings.Read.LogName, Workings.Rates.Model);
        return Rest is { } rest
            ? Plans.Promise.OfTheRest(job, made, planned, rest.Standing, rest.Left, model, rest.Draws)
            : Plans.Promise.Of(job, made, planned, Made.Graph, model, Draws.OfAll());
    }

    /// <summary>The plan with all that is told about it.</summary>
    /// <param name="planned">The plan.</param>
    /// <param name="now">The moment.</param>
    public ToldPlan Told(PlanAnswer.Planned planned, Instant now)
    {
        var today = now.InZone(Workings.Read.Shop.Place.Zone).Date;
        return new(Workings.Read, Workings.Layout, planned, Caution.For(Graph.Tasks, BuiltIn.Cautions), Remarks, new(Made.Graph.Tasks.Select(task => task.Name)), Workings.Rates.Behind, today)
        {
            Budget = Workings.Schedules,
            IsBegun = Workings.Rates.EntriesOf(Workings.Read).Count > 0,
            Rest = Rest?.Told(Workings, Made.Graph),
        };
    }

    /// <summary>The job as it stands where its rest is to be planned: when work of it is logged or goes on, or its start is past.</summary>
    /// <returns>The rest; null where the whole is to be planned.</returns>
    public static JobNow? RestOf(Workings workings, OrderOfWork.Made made, Instant now)
    {
        var read = workings.Read;
        var record = OnRecord.Of(read, now);
        var isLate = read.Job.Start < now.InZone(read.Shop.Place.Zone).Date;
        return isLate || record.Running.Count > 0 || workings.Rates.EntriesOf(read).Count > 0 ? new JobNow(workings, made.Graph, record, now) : null;
    }

    /// <summary>The paper of the plan.</summary>
    public PlanPaper Paper(ToldPlan told, Instant made)
    {
        var workings = Workings;
        return new()
        {
            Shop = workings.Read.Shop,
            Format = workings.Read.Located.Format,
            Job = workings.Read.Job,
            Layout = workings.Layout,
            Preference = workings.Preference,
            Graph = Graph,
            Marks = told.Marks,
            Estimate = JobEstimate.Of(Graph, Draws),
            Faces = Rest is null ? FaceWords.InShort(workings.FaceSavingsOf(Graph)) : null,
            TaskTimes = Rest is null ? workings.TaskTimesOf(Graph) : Draws.OfEach(),
            Plan = told.Answer.Plan,
            Forecast = told.Answer.Forecast,
            Cautions = told.Cautions,
            Remarks = told.Remarks,
            Movements = Movement.Of(workings.Read.Job, workings.Layout, workings.Read.Waits),
            Verdicts = Remark.AwaitsSize(Graph.Tasks) ? DrynessWords.Verdicts(workings.Read.Job, workings.Layout.ToCut.Select(board => board.Board), workings.Read.Waits) : [],
            SpoilingNotes = told.SpoilingNotes,
            UnusedHours = told.UnusedHours,
            Rest = told.Rest,
            Made = made,
        };
    }
}
