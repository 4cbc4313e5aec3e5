using System.Diagnostics;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times.Regression;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>
/// How fast this shop works, over all operations at once:
/// ln(minutes) = ln(effective quantity) + pace + group + level + sum of slope x ln(x / reference) + noise,
/// with the noise of a task normal, its variance the method's own times s2. Given s2 the terms are jointly normal, and
/// s2 is inverse gamma: the conjugate family of linear regression, so that learning is exact and nothing needs sampling to
/// be known.
/// </summary>
/// <remarks>Source of the family: Gelman et al., Bayesian Data Analysis, 3rd ed. (2013), chapter 14, from memory.</remarks>
public sealed class RateModel
{
    private readonly BlockRegression regression;
    private readonly Learning? how;

    private RateModel(RateTerms terms, BlockRegression regression, Learning? how, IReadOnlyList<JudgedWork> log, Luck luck)
    {
        Terms = terms;
        this.regression = regression;
        this.how = how;
        Log = log;
        Luck = luck;
    }

    /// <summary>The terms.</summary>
    public RateTerms Terms { get; }

    /// <summary>The work that was learned from or held out, in the order in which it was given.</summary>
    public IReadOnlyList<JudgedWork> Log { get; }

    /// <summary>How the luck of single tasks is spread.</summary>
    internal Luck Luck { get; }

    /// <summary>Shape of the inverse gamma of the noise scale's square.</summary>
    internal double NoiseShape => regression.Shape;

    /// <summary>Scale of the inverse gamma of the noise scale's square.</summary>
    internal double NoiseScale => regression.Scale;

    /// <summary>The model before any time is logged.</summary>
    public static RateModel FromPrior(OperationCatalogue catalogue)
    {
        var terms = new RateTerms(catalogue, []);
        return new(terms, BelievedWidth.Usual(terms), null, [], Luck.Unknown);
    }

    /// <summary>
    /// The model that a log makes of the catalogue; what this model had learned before is not in it. Each time is judged by
    /// the others, and one that is far out and not kept is held out until the maker has said what it is.
    /// </summary>
    /// <param name="work">The work and its times.</param>
    /// <param name="how">How to learn.</param>
    public RateModel Learn(IReadOnlyList<TimedWork> work, Learning how)
    {
        var terms = new RateTerms(Terms.Catalogue, [.. work.Select(one => one.Worker).Where(name => name != how.Maker).Distinct().Order(StringComparer.Ordinal)]);
        var (regression, log) = Judgement.Of(terms, [.. work.Select(one => (one, RowOf(one, terms, how), NoiseOf(one)))]);
        return new(terms, regression, how, log, new(log.Where(one => !one.IsHeldOut).Select(one => one.Luck)));

        static double NoiseOf(TimedWork work) => RatePrior.Noise(work.Timing.Method);
    }

    /// <summary>The model with one more time, judged by those before it, which stay as they were judged; it is learned from however odd it is.</summary>
    /// <exception cref="InvalidOperationException">The model has not been told how to learn, or does not know the worker.</exception>
    public RateModel With(TimedWork work)
    {
        var learning = how ?? throw new InvalidOperationException("learn from a log first, be it empty");
        if (work.Worker != learning.Maker && !Terms.Others.Contains(work.Worker))
        {
            throw new InvalidOperationException($"the model has no pace for '{work.Worker}'");
        }

        var row = RowOf(work, Terms, learning);
        var expected = BeliefOf(work.Timing, work.Worker) with { Luck = null };
        var judged = new JudgedWork(work, expected, isHeldOut: false, new(row.Block, expected.Location, expected.OffOf(work.Took), row.Weight));
        return new(Terms, regression.With(FoldedRows.Of([row])), learning, [.. Log, judged], Luck.With(judged.Luck));
    }

    /// <summary>The hands-on time of a task.</summary>
    /// <param name="timing">The task.</param>
    /// <param name="worker">Who does it; null for the maker.</param>
    public TimeRange TimeFor(TaskTiming.ByOperation timing, string? worker = null) => BeliefOf(timing, worker).Range;

    /// <summary>What is believed of the hands-on time of a task, in closed form.</summary>
    /// <param name="timing">The task.</param>
    /// <param name="worker">Who does it; null for the maker.</param>
    public TimeBelief BeliefOf(TaskTiming.ByOperation timing, string? worker = null)
    {
        var row = RateRow.Of(timing, Terms, worker);
        var belief = BeliefOf(row, row.Noise);
        return belief with { Luck = Luck.Of(row.Block, belief.Location, belief.Degrees) };
    }

    /// <summary>What all other times would have made one expect of a time of the log, their luck in it.</summary>
    /// <param name="judged">One of <see cref="Log"/>.</param>
    public TimeBelief ExpectedOf(JudgedWork judged) => judged.Expected with
    {
        Luck = Luck.Of(judged.Luck.Block, judged.Luck.Size, judged.Expected.Degrees, judged.Luck),
    };

    /// <summary>The time of a task that is as likely passed as not, without the chance of draws; of a guess, what was guessed.</summary>
    /// <param name="task">The task, done by the maker.</param>
    public WorkTime LikelyTime(ShopTask task) => task.Timing switch
    {
        TaskTiming.ByOperation by => BeliefOf(by).Median,
        TaskTiming.ByGuess by => by.Guess.Likely,
        _ => throw new UnreachableException(),
    };

    /// <summary>What is believed of the rate behind a task: the time that it would take on an average day, luck left out.</summary>
    /// <param name="timing">The task.</param>
    public TimeBelief RateOf(TaskTiming.ByOperation timing) => BeliefOf(RateRow.Of(timing, Terms), noise: 0);

    /// <summary>Minutes for one unit at the centre of what is believed, rest included, at the references.</summary>
    public double CentralMinutes(Operation operation, Method method) => Math.Exp(Central(operation, method, term: 0));

    /// <summary>The centre of what is believed of a slope.</summary>
    public double CentralSlope(Operation operation, Method method, Covariate covariate)
    {
        for (var slope = 0; slope < method.Slopes.Count; slope++)
        {
            if (method.Slopes[slope].Covariate == covariate)
            {
                return Central(operation, method, 1 + slope);
            }
        }

        return 0;
    }

    /// <summary>Draws possible courses of a job. Terms are drawn once a trial, so that its tasks' errors go together.</summary>
    /// <param name="tasks">The tasks, each at its id.</param>
    /// <param name="trials">How many courses, at least 1.</param>
    /// <param name="seed">The seed: the same seed gives the same draws.</param>
    /// <param name="spent">
    /// Time that some tasks, each at its id, have taken already without being finished: what is left of them is drawn, given
    /// that the whole is longer; above zero in every trial. Null when none is begun.
    /// </param>
    public TimeDraws Draw(IReadOnlyList<ShopTask> tasks, int trials, int seed, IReadOnlyList<WorkTime>? spent = null) =>
        new CourseDraws(this, tasks).Draw(trials, seed, spent);

    /// <summary>Draws other tasks in the very courses that <see cref="Draw"/> draws of some: they are slow together, and those are what they are without these.</summary>
    /// <param name="tasks">The tasks that were drawn, each at its id.</param>
    /// <param name="behind">The others, none of them begun, each at its id.</param>
    /// <param name="trials">How many courses, at least 1.</param>
    /// <param name="seed">The seed of those.</param>
    public TimeDraws DrawBehind(IReadOnlyList<ShopTask> tasks, IReadOnlyList<ShopTask> behind, int trials, int seed) =>
        new CourseDraws(this, tasks).DrawBehind(behind, trials, seed);

    /// <summary>Draws the tasks of the same job done otherwise in the very courses that <see cref="Draw"/> draws of some: what both have in common is the same in each, so that what differs is not luck.</summary>
    /// <param name="tasks">The tasks that were drawn, each at its id.</param>
    /// <param name="others">Those of the job done otherwise, each at its id.</param>
    /// <param name="trials">How many courses, at least 1.</param>
    /// <param name="seed">The seed of those.</param>
    public TimeDraws DrawOtherwise(IReadOnlyList<ShopTask> tasks, IReadOnlyList<ShopTask> others, int trials, int seed) =>
        new CourseDraws(this, tasks).DrawOtherwise(others, trials, seed);

    /// <summary>A row of this model and what is believed of it, its noise left out.</summary>
    internal (RateRow Row, Whitened Terms) Whiten(TaskTiming.ByOperation timing, string? worker = null)
    {
        var row = RateRow.Of(timing, Terms, worker);
        return (row, regression.Whiten(row.Block, row.Own, row.Common));
    }

    private static RegressionRow RowOf(TimedWork work, RateTerms terms, Learning how) => RateRow
        .Of(work.Timing, terms, work.Worker == how.Maker ? null : work.Worker)
        .With(work.Took, how.WeightOf(work.On));

    private TimeBelief BeliefOf(RateRow row, double noise)
    {
        var terms = regression.Whiten(row.Block, row.Own, row.Common);
        var variance = (noise * noise) + terms.Variance;
        return new(row.Offset + terms.Location, Math.Sqrt(variance * NoiseScale / NoiseShape), 2 * NoiseShape);
    }

    /// <summary>The centre of a block's term; with its level go the pace of the shop and of the group.</summary>
    private double Central(Operation operation, Method method, int term)
    {
        var own = new double[1 + method.Slopes.Count];
        own[term] = 1;
        var common = term == 0 ? Terms.CommonOf(method.PaceGroup, worker: null) : new double[Terms.Common];
        return regression.Whiten(Terms.Block(operation, method), own, common).Location;
    }
}
