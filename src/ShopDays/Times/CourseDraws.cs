using MathNet.Numerics.Distributions;
using ShopDays.Measures;
using ShopDays.Times.Regression;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>Draws possible courses of a job from a rate model.</summary>
internal sealed class CourseDraws
{
    private readonly RateModel model;
    private readonly IReadOnlyList<ShopTask> tasks;
    private readonly (RateRow Row, double Location, double[] Figures, LuckSpread Luck)?[] rows;
    private readonly int normals;

    /// <summary>Prepares the tasks: each gets its figures on the standard normals that any task depends on.</summary>
    public CourseDraws(RateModel model, IReadOnlyList<ShopTask> tasks)
    {
        this.model = model;
        this.tasks = tasks;
        var whitened = tasks.Select(task => task.Timing is TaskTiming.ByOperation by ? model.Whiten(by) : ((RateRow, Whitened)?)null).ToList();
        var known = whitened.OfType<(RateRow Row, Whitened Terms)>().ToList();
        int[] common = [.. Enumerable.Range(0, model.Terms.Common).Where(term => known.Any(one => one.Terms.Common[term] != 0))];
        (int Block, int Term)[] own = [.. known
            .SelectMany(one => one.Terms.Own.Select((figure, term) => (one.Terms.Block, Term: term, Figure: figure)))
            .Where(one => one.Figure != 0)
            .Select(one => (one.Block, one.Term))
            .Distinct()
            .Order()];
        normals = common.Length + own.Length;
        rows = [.. whitened.Select(one => one is var (row, terms)
            ? (row, terms.Location, (double[])[.. common.Select(term => terms.Common[term]), .. own.Select(place => place.Block == terms.Block ? terms.Own[place.Term] : 0)], model.Luck.Of(row.Block, row.Offset + terms.Location, 2 * model.NoiseShape))
            : ((RateRow, double, double[], LuckSpread)?)null)];
    }

    /// <inheritdoc cref="RateModel.Draw"/>
    public TimeDraws Draw(int trials, int seed, IReadOnlyList<WorkTime>? spent = null)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        var random = new Random(seed);
        var standard = new double[normals];
        var usual = Math.Sqrt(model.NoiseScale / model.NoiseShape);
        var minutes = new double[trials][];
        for (var trial = 0; trial < trials; trial++)
        {
            var scale = Math.Sqrt(model.NoiseScale / Gamma.Sample(random, model.NoiseShape, 1));
            Normal.Samples(random, standard, 0, 1);
            var course = new double[tasks.Count];
            for (var task = 0; task < tasks.Count; task++)
            {
                var luck = Normal.Sample(random, 0, 1);
                var begun = spent?[task].Minutes ?? 0;
                if (rows[task] is not var (row, location, figures, spread))
                {
                    course[task] = GuessedTime.Left(((TaskTiming.ByGuess)tasks[task].Timing).Guess, begun, luck);
                    continue;
                }

                var centre = row.Offset + location + (scale * Whitened.Along(figures, standard));
                course[task] = begun <= 0
                    ? Math.Exp(centre + (row.Noise * LuckBeyond(spread, double.NegativeInfinity)))
                    : TimeLeft.Minutes(least => Math.Exp(centre + (row.Noise * LuckBeyond(spread, least))), begun, (Math.Log(begun) - centre) / row.Noise);

                // The believed luck is as great as this course's scale; what the log was off by is told in the usual one.
                // What is begun has used up the luck up to a least one: of either only what lies beyond it can be.
                double LuckBeyond(LuckSpread spread, double least)
                {
                    if (spread.ShareOfLog == 0)
                    {
                        return scale * TimeLeft.Beyond(luck, least / scale);
                    }

                    var above = spread.ShareOfLogAbove(least / usual);
                    var logged = spread.ShareOfLog * above;
                    var believed = (1 - spread.ShareOfLog) * Normal.CDF(0, 1, -least / scale);
                    var share = random.NextDouble() * (logged + believed);
                    return share < logged
                        ? usual * spread.OfLog(1 - above + (share / spread.ShareOfLog))
                        : scale * TimeLeft.Beyond(luck, least / scale);
                }
            }

            minutes[trial] = course;
        }

        return new(minutes, seed);
    }
}
