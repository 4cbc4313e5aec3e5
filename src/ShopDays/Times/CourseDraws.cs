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
                var chance = new Chance(spread, usual, scale, luck, random);
                course[task] = begun <= 0
                    ? Math.Exp(centre + (row.Noise * chance.Beyond(double.NegativeInfinity)))
                    : Left(chance, centre, row.Noise, begun);
            }

            minutes[trial] = course;
        }

        return new(minutes, seed);
    }

    // A method of its own, so that only work that is begun costs an allocation.
    private static double Left(Chance chance, double centre, double noise, double begun) =>
        TimeLeft.Minutes(least => Math.Exp(centre + (noise * chance.Beyond(least))), begun, (Math.Log(begun) - centre) / noise);

    /// <summary>The luck of one task in one course.</summary>
    /// <param name="Spread">How it is spread.</param>
    /// <param name="Usual">The noise scale as it usually is.</param>
    /// <param name="Scale">The noise scale of this course.</param>
    /// <param name="Deviate">A standard normal.</param>
    /// <param name="Random">Where one of the log's own is drawn from.</param>
    private readonly record struct Chance(LuckSpread Spread, double Usual, double Scale, double Deviate, Random Random)
    {
        /// <summary>
        /// The luck beyond a least one, which work that is begun has used up. What is believed is as great as this course's
        /// scale; what the log was off by is told in the usual one.
        /// </summary>
        public double Beyond(double least)
        {
            if (Spread.ShareOfLog == 0)
            {
                return Scale * TimeLeft.Beyond(Deviate, least / Scale);
            }

            var above = Spread.ShareOfLogAbove(least / Usual);
            var logged = Spread.ShareOfLog * above;
            var believed = (1 - Spread.ShareOfLog) * Normal.CDF(0, 1, -least / Scale);
            var share = Random.NextDouble() * (logged + believed);
            return share < logged
                ? Usual * Spread.OfLog(1 - above + (share / Spread.ShareOfLog))
                : Scale * TimeLeft.Beyond(Deviate, least / Scale);
        }
    }
}
