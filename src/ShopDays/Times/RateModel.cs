using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>
/// How fast this shop works, over all operations at once:
/// ln(minutes) = ln(effective quantity) + pace + group + level + sum of slope x ln(x / reference) + noise,
/// with the noise of a task normal, its variance the method's own times s2. Given s2 the terms are jointly normal, and
/// s2 is inverse gamma: the conjugate family of linear regression, so that nothing needs sampling to be known.
/// </summary>
/// <remarks>Source of the family: Gelman et al., Bayesian Data Analysis, 3rd ed. (2013), chapter 14, from memory.</remarks>
public sealed class RateModel
{
    private readonly Vector<double> centre;
    private readonly Matrix<double> covariance;
    private readonly double noiseShape;
    private readonly double noiseScale;

    private RateModel(RateTerms terms, Vector<double> centre, Matrix<double> covariance, double noiseShape, double noiseScale)
    {
        Terms = terms;
        this.centre = centre;
        this.covariance = covariance;
        this.noiseShape = noiseShape;
        this.noiseScale = noiseScale;
    }

    /// <summary>The terms and their places.</summary>
    public RateTerms Terms { get; }

    /// <summary>The model before any time is logged.</summary>
    public static RateModel FromPrior(OperationCatalogue catalogue)
    {
        var terms = new RateTerms(catalogue);
        var centre = Vector<double>.Build.Dense(terms.Count);
        var spread = Vector<double>.Build.Dense(terms.Count);
        spread[RateTerms.Pace] = RatePrior.PaceSpread;
        foreach (var group in Enum.GetValues<PaceGroup>())
        {
            spread[RateTerms.Group(group)] = RatePrior.GroupSpread;
        }

        foreach (var operation in catalogue.All)
        {
            foreach (var method in operation.Methods)
            {
                var level = terms.Level(operation, method);
                centre[level] = RatePrior.LevelCentre(method);
                spread[level] = RatePrior.LevelSpread(method);
                for (var slope = 0; slope < method.Slopes.Count; slope++)
                {
                    centre[level + 1 + slope] = method.Slopes[slope].Exponent;
                    spread[level + 1 + slope] = RatePrior.SlopeSpread(method.Slopes[slope]);
                }
            }
        }

        var covariance = Matrix<double>.Build.SparseOfDiagonalVector(spread.PointwisePower(2));
        return new(terms, centre, covariance, RatePrior.NoiseShape, RatePrior.NoiseScale);
    }

    /// <summary>
    /// The hands-on time of a task in closed form. Its logarithm has a Student distribution, whose average has no
    /// logarithm, so the mean given is that of the log-normal with the same centre and spread.
    /// </summary>
    public TimeRange TimeFor(TaskTiming.ByOperation timing)
    {
        var row = RateRow.Of(timing, Terms);
        var location = row.Offset;
        var variance = row.Noise * row.Noise;
        foreach (var (place, value) in row.Terms)
        {
            location += centre[place] * value;
            foreach (var (other, otherValue) in row.Terms)
            {
                variance += covariance[place, other] * value * otherValue;
            }
        }

        var scale = Math.Sqrt(variance * noiseScale / noiseShape);
        return new(At(0.1), At(0.5), At(0.8), At(0.9), WorkTime.FromMinutes(Math.Exp(location + (scale * scale / 2))));

        WorkTime At(double share) =>
            WorkTime.FromMinutes(Math.Exp(StudentT.InvCDF(location, scale, 2 * noiseShape, share)));
    }

    /// <summary>Minutes for one unit at the centre of what is believed, rest included, at the references.</summary>
    public double CentralMinutes(Operation operation, Method method) => Math.Exp(
        centre[RateTerms.Pace] + centre[RateTerms.Group(method.PaceGroup)] + centre[Terms.Level(operation, method)]);

    /// <summary>The centre of what is believed of a slope.</summary>
    public double CentralSlope(Operation operation, Method method, Covariate covariate)
    {
        for (var slope = 0; slope < method.Slopes.Count; slope++)
        {
            if (method.Slopes[slope].Covariate == covariate)
            {
                return centre[Terms.Level(operation, method) + 1 + slope];
            }
        }

        return 0;
    }

    /// <summary>Draws possible courses of a job. Terms are drawn once a trial, so that its tasks' errors go together.</summary>
    /// <param name="tasks">The tasks, each at its id.</param>
    /// <param name="trials">How many courses, at least 1.</param>
    /// <param name="seed">The seed: the same seed gives the same draws.</param>
    public TimeDraws Draw(IReadOnlyList<ShopTask> tasks, int trials, int seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        var random = new Random(seed);
        var rows = tasks.Select(task => task.Timing is TaskTiming.ByOperation by ? RateRow.Of(by, Terms) : null).ToList();
        int[] used = [.. rows.OfType<RateRow>().SelectMany(row => row.Terms.Select(term => term.Place)).Distinct().Order()];
        var places = used.Index().ToDictionary(pair => pair.Item, pair => pair.Index);
        var root = Root(used);
        var local = rows.Select(row => row?.Terms.Select(term => (Place: places[term.Place], term.Value)).ToArray()).ToList();

        var minutes = new double[trials][];
        var drawn = new double[used.Length];
        var standard = new double[used.Length];
        for (var trial = 0; trial < trials; trial++)
        {
            var scale = Math.Sqrt(noiseScale / Gamma.Sample(random, noiseShape, 1));
            Normal.Samples(random, standard, 0, 1);
            for (var term = 0; term < used.Length; term++)
            {
                var sum = 0.0;
                for (var other = 0; other <= term; other++)
                {
                    sum += root[term, other] * standard[other];
                }

                drawn[term] = centre[used[term]] + (scale * sum);
            }

            var course = new double[tasks.Count];
            for (var task = 0; task < tasks.Count; task++)
            {
                var luck = Normal.Sample(random, 0, 1);
                course[task] = rows[task] is { } row
                    ? Math.Exp(row.Offset + Along(local[task]!, drawn) + (scale * row.Noise * luck))
                    : GuessedTime.Minutes(((TaskTiming.ByGuess)tasks[task].Timing).Guess, luck);
            }

            minutes[trial] = course;
        }

        return new(minutes, seed);
    }

    private static double Along((int Place, double Value)[] row, double[] drawn)
    {
        var sum = 0.0;
        foreach (var (place, value) in row)
        {
            sum += value * drawn[place];
        }

        return sum;
    }

    private double[,] Root(int[] used)
    {
        if (used.Length == 0)
        {
            return new double[0, 0];
        }

        var block = Matrix<double>.Build.Dense(used.Length, used.Length, (row, column) => covariance[used[row], used[column]]);
        return block.Cholesky().Factor.ToArray();
    }
}
