using NodaTime;
using ShopDays.Cli.Paper;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;
using ShopDays.Prices;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>What is planned: a whole job, or what is left of one.</summary>
/// <param name="Asked">What was asked for.</param>
/// <param name="Made">The order of work of the whole job.</param>
/// <param name="Rest">The job as it stands; null when the whole is planned.</param>
internal sealed record WorkToPlan(Question Asked, OrderOfWork.Made Made, JobNow? Rest)
{
    /// <summary>The moment up to which it is known what has come from others; null where the whole is planned as it was at its start.</summary>
    public Instant? Known { get; init; }

    /// <summary>The tasks that are planned.</summary>
    public TaskGraph Graph => Rest?.Left.Graph ?? Made.Graph;

    /// <summary>What there is to be known of the work that is planned.</summary>
    public IReadOnlyList<Remark> Remarks => [.. Made.Remarks.Where(remark => remark.Concerns(Graph.Tasks))];

    /// <summary>The plan, or what stands against it.</summary>
    public PlanAnswer Answer => field ??= Rest?.Ahead ?? Asked.Workings.PlanOf(Made.Graph, Known);

    /// <summary>The price of the whole job; null where the shop does not say what an hour has to earn.</summary>
    public PriceBuildUp? Price => Asked.Workings.Read.Shop.Money is { Terms: var terms } ? Asked.Workings.PriceOf(Made.Graph, terms, TimberBill.Of(Asked.Workings.Layout, terms.SpareBoards)) : null;

    private TimeDraws Draws => Rest?.Draws ?? Asked.Workings.DrawsOf(Made.Graph);

    /// <summary>What the plan promises.</summary>
    public Promise Promise(Instant made, PlanAnswer.Planned planned)
    {
        var (job, model) = (Asked.Workings.Read.LogName, Asked.Workings.Rates.Model);
        return Rest is { } rest
            ? Plans.Promise.OfTheRest(job, made, planned, rest.Standing, rest.Left, model, rest.Draws)
            : Plans.Promise.Of(job, made, planned, Made.Graph, model, Draws.OfAll());
    }

    /// <summary>The paper of the plan.</summary>
    public PlanPaper Paper(ToldPlan told, Instant made)
    {
        var workings = Asked.Workings;
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
