using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Days;
using ShopDays.Layouts;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Prices;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>Layout, order of work, drawn times and plan of one job, each worked out when it is first asked for and kept.</summary>
/// <param name="read">The shop and the job.</param>
/// <param name="seed">Where layout, draws and plan draw from.</param>
/// <param name="effort">How hard the layout is searched for.</param>
/// <param name="preference">Which way the layout leans.</param>
/// <param name="rates">The rates.</param>
/// <param name="progress">Told of each step.</param>
internal sealed class Workings(ShopAndJob read, int seed, LayoutEffort effort, LayoutPreference preference, LearnedRates rates, Progress progress)
{
    /// <summary>Courses of the job that are drawn. The finish's quantiles are then good to about a hundredth of their range.</summary>
    public const int Draws = 2000;

    /// <summary>Courses that are drawn to tell the risk of a price: a chance of one in ten is then good to half a hundredth.</summary>
    public const int RiskDraws = 10_000;

    /// <summary>Schedules that a plan looks at unless it is said how many.</summary>
    public const int UsualSchedules = 5000;

    private Layout? layout;
    private OrderOfWork? order;
    private TimeDraws? draws;
    private IReadOnlyList<TimeRange>? taskTimes;

    /// <summary>The shop and the job.</summary>
    public ShopAndJob Read { get; } = read;

    /// <summary>The rates that times are worked out with.</summary>
    public LearnedRates Rates { get; } = rates;

    /// <summary>The seed.</summary>
    public int Seed { get; } = seed;

    /// <summary>Schedules that a plan is to look at, 1 or more.</summary>
    public int Schedules { get; init; } = UsualSchedules;

    /// <summary>Courses of the job that are drawn, 1 or more.</summary>
    public int Courses { get; init; } = Draws;

    /// <summary>The tasks of the same job done otherwise, in whose courses this one is drawn; null for courses of its own.</summary>
    public TaskGraph? Beside { get; init; }

    /// <summary>The layout where it was found before, from the same files and rates; null to look for it.</summary>
    public Layout? KnownLayout
    {
        init => layout = value;
    }

    /// <summary>Which way the layout leans.</summary>
    public LayoutPreference Preference { get; } = preference;

    /// <summary>Where each part comes out of which board.</summary>
    public Layout Layout => layout ??= Step(
        $"laying out {Read.Job.Parts.Sum(part => part.Count + part.Spare)} parts on {CountWords.Of(Read.Job.Boards.Count, "board")}",
        () => LayoutSearch.LayOut(LayoutRequest.For(Read.Job, SawingRates) with
        {
            Yard = Read.Shop.Units == LengthUnit.Inch ? YardSizes.Feet : YardSizes.Metric,
            Sawn = Read.SawnBoards,
            Effort = effort,
            Seed = Seed,
            Preference = Preference,
            Progress = new LayoutSteps(progress.Now, CostsAreTold ? Read.Shop.Currency : null),
        }));

    /// <summary>The same workings once some boards of the layout are sawn.</summary>
    /// <param name="now">Those boards, as sawn.</param>
    public Workings Once(IReadOnlyList<BoardLayout> now) => new(
        Read with
        {
            SawnBoards = [.. Read.SawnBoards, .. now],
            Located = Read.Located with { Job = Read.Job with { Boards = SawnStock.Left(Read.Job.Boards, now) } },
        },
        Seed,
        effort,
        Preference,
        Rates,
        progress) { Schedules = Schedules };

    /// <summary>The same job, planned with all the care that is usual on paper.</summary>
    public Workings ForPaper() => new(Read, Seed, effort, Preference, Rates, progress) { KnownLayout = Layout };

    /// <summary>The same job by other rates.</summary>
    public Workings By(LearnedRates others) => new(Read, Seed, effort, Preference, others, progress)
    {
        Schedules = Schedules,
        KnownLayout = others.Behind.PriorOnly == Rates.Behind.PriorOnly && others.CountBefore(Read) == Rates.CountBefore(Read) ? layout : null,
    };

    /// <summary>The same shop and job with something done otherwise, or looked at with less effort; drawn in the courses of this one where it has any.</summary>
    /// <param name="other">The shop and the job.</param>
    /// <param name="laidOut">Where its parts come out of the boards; null to look for it.</param>
    /// <param name="schedules">Schedules that a plan is to look at.</param>
    /// <param name="courses">Courses that are drawn.</param>
    public Workings Otherwise(ShopAndJob other, Layout? laidOut, int schedules, int courses) => new(other, Seed, effort, Preference, Rates, progress)
    {
        Schedules = schedules,
        Courses = courses,
        Beside = Missing.Count == 0 && Order is OrderOfWork.Made made ? made.Graph : null,
        layout = laidOut,
    };

    /// <summary>The job as it was before any board was sawn, by other rates.</summary>
    public Workings BeforeSawing(LearnedRates then) => Read.SawnBoards.Count == 0 ? By(then) : new(Read.BeforeSawing, Seed, effort, Preference, then, progress) { Schedules = Schedules };

    /// <summary>The parts, spares not counted, that no board yields.</summary>
    public IReadOnlyList<Unplaced> Missing => [.. Layout.Unplaced.Where(one => one.Number <= one.Part.Count)];

    /// <summary>The tasks and what comes before what, or why there is no order.</summary>
    public OrderOfWork Order => order ??= Step(
        $"writing the order of work",
        () => OrderOf(Read.Job));

    /// <summary>What rougher hidden faces save.</summary>
    /// <param name="graph">The job's order of work.</param>
    public FaceSavings FaceSavingsOf(TaskGraph graph) => FaceSavings.Of(Read.Job, Read.Operations, graph, OrderOf, Rates.Model);

    /// <summary>Drawn courses of the job.</summary>
    public TimeDraws DrawsOf(TaskGraph graph) => draws ??= Step(
        $"drawing {Courses} courses of {graph.Tasks.Count} tasks",
        () => Drawn(graph, Courses));

    /// <summary>More drawn courses of the job, for chances to be told to a hundredth.</summary>
    public TimeDraws RiskDrawsOf(TaskGraph graph) => Step(
        $"drawing {RiskDraws} courses of {graph.Tasks.Count} tasks",
        () => Drawn(graph, RiskDraws));

    private TimeDraws Drawn(TaskGraph graph, int courses) => SpoilingOf(graph, graph).On(Beside is { } beside
        ? Rates.Model.DrawOtherwise(beside.Tasks, graph.Tasks, courses, Seed)
        : Rates.Model.Draw(graph.Tasks, courses, Seed));

    /// <summary>The range of all hands-on time by the rates of the catalogue alone.</summary>
    public TimeRange PriorTimeOf(TaskGraph graph) =>
        SpoilingOf(graph, graph, Rates.Prior, Rates.PriorSpoiling).On(Rates.Prior.Draw(graph.Tasks, Draws, Seed)).OfAll();

    /// <summary>What may be spoiled in the job, or in what is left of it, and what it takes to come as far again.</summary>
    /// <param name="whole">The whole job.</param>
    /// <param name="tasks">The tasks that are drawn.</param>
    public SpoilingDraws SpoilingOf(TaskGraph whole, TaskGraph tasks) => SpoilingOf(whole, tasks, Rates.Model, Rates.Spoiling);

    /// <summary>The same by other rates.</summary>
    public SpoilingDraws SpoilingOf(TaskGraph whole, TaskGraph tasks, RateModel model, SpoilingChances chances) =>
        new(Read.LogName, MadeAgain.Of(whole, Read.Job, Layout, Read.Operations, Read.Waits, Read.Shop.NewTimber), tasks.Tasks, model, chances);

    /// <summary>The range of each task, at its id.</summary>
    public IReadOnlyList<TimeRange> TaskTimesOf(TaskGraph graph) => taskTimes ??= DrawsOf(graph).OfEach();

    /// <summary>Drawn courses of what is left of the job.</summary>
    /// <param name="whole">The whole job.</param>
    /// <param name="left">What is left.</param>
    public TimeDraws DrawsOf(TaskGraph whole, RemainingWork left) => Step(
        $"drawing {Draws} courses of {left.Graph.Tasks.Count} tasks that are left",
        () => SpoilingOf(whole, left.Graph).On(Rates.Model.Draw(left.Graph.Tasks, Draws, Seed, left.Spent)));

    /// <summary>What the whole job costs, and what is asked for it.</summary>
    /// <param name="graph">The whole job.</param>
    /// <param name="terms">How the shop makes its prices.</param>
    /// <param name="timber">The bill for its timber.</param>
    public PriceBuildUp PriceOf(TaskGraph graph, PricingTerms terms, TimberBill timber)
    {
        var draws = DrawsOf(graph);
        return PriceBuildUp.Of(terms, LabourShare.Of(Read.Job, graph, draws), LabourShare.WholeMinutes(draws.OfAll().P80), timber, Read.Job);
    }

    /// <summary>A plan, or what stands against it.</summary>
    /// <param name="graph">The whole job.</param>
    /// <param name="known">The moment up to which it is known what has come from others; null for a plan as it was at the start.</param>
    public PlanAnswer PlanOf(TaskGraph graph, Instant? known = null) => Planned(RequestOf(graph, graph, DrawsOf(graph), WholeMinutes.Of(graph, Rates.Model), null, known));

    /// <summary>Rests of the whole job's boards that are sawn already and that run on into it.</summary>
    private IReadOnlyList<RunningWait> RestingIn(TaskGraph graph, Instant? known)
    {
        var start = Read.Shop.Place.Zone.AtStartOfDay(Read.Job.Start).ToInstant();
        return RestAfterSawing.Running(graph, JobStanding.Of(graph, Rates.EntriesOf(Read)), Calendars, start, known is { } moment ? Instant.Max(moment, start) : start);
    }

    /// <summary>What is left of the job, to be planned.</summary>
    public PlanRequest RequestOf(TaskGraph whole, RemainingWork left, TimeDraws drawn) => RequestOf(whole, left.Graph, drawn, left.PlannedTimes(Rates.Model, drawn), left.UnderWay);

    /// <summary>A plan of what is asked for, or what stands against it.</summary>
    public PlanAnswer Planned(PlanRequest request) => Step($"planning, {request.Budget} schedules to look at", () => PlanMaker.Plan(request with { Progress = new SearchSteps(progress.Now, request.Budget) }));

    /// <summary>Why the finish moved since a promise.</summary>
    public MovedFinish Moved(JobProgress progress, PromisedJob then, PlanRequest ahead, PlanAnswer.Planned answer) =>
        Step($"finding out what moved the finish", () => MovedFinish.Of(progress, then, ahead, answer));

    private PlanRequest RequestOf(TaskGraph whole, TaskGraph graph, TimeDraws drawn, IReadOnlyList<WorkTime> times, UnderWay? underWay, Instant? known = null) => new()
    {
        Orders =
        [
            new()
            {
                Name = Read.LogName,
                Graph = graph,
                Times = times,
                Draws = drawn,
                Spoiling = SpoilingOf(whole, graph),
                Start = Read.Job.Start,
                Due = Read.Job.Due,
                UnderWay = underWay,
                Resting = underWay is null ? RestingIn(graph, known) : [],
                Known = known,
            },
        ],
        Calendars = Calendars,
        Limits = Read.Shop.Limits,
        Budget = Schedules,
        Seed = Seed,
        Lengths = Read.Located.Format,
    };

    /// <summary>The workers' calendars, the maker's first.</summary>
    public IReadOnlyList<WorkingCalendar> Calendars => [.. Read.Shop.Workers.Select(Read.Shop.CalendarOf)];

    /// <summary>While a layout leans to one side, the search compares by sums that are nobody's cost.</summary>
    private bool CostsAreTold => Preference == LayoutPreference.AsPriced
        && (Read.Shop.Money is not null || Read.Job.Boards.Any(board => board.Price is not null));

    private SawingRates SawingRates => ShopRates.ForLayout(Rates.Before(Read).Model, operation => operation.MethodIn(Read.Job), Read.Shop.Money?.Hour);

    /// <summary>Runs of like pieces are cut to the longest session of a year; without any, to the shortest that is used, so that no longer hours are asked for than they need.</summary>
    private WorkTime LongestSession =>
        Calendars.Max(calendar => calendar.LongestSession(Read.Job.Start)) ?? Calendars.Min(calendar => calendar.LeastUseful);

    private OrderOfWork OrderOf(Job job) => OrderOfWork.Build(job, Layout, Read.Operations, Read.Waits, Read.Shop.Limits, LongestSession);

    private T Step<T>(FormattableString what, Func<T> work) => progress.During(FormattableString.Invariant(what), work);
}
