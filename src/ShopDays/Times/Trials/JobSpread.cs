using MathNet.Numerics.Distributions;
using ShopDays.Times.Regression;
using ShopDays.Work;

namespace ShopDays.Times.Trials;

/// <summary>
/// The hands-on time of a job in closed form, and how much less uncertain it is expected to be with some trials timed. Given
/// s2 the logarithms of all times are jointly normal: means, variances and covariances of the times themselves are then sums
/// of exponentials, and a trial takes as much from the covariances of the logarithms whatever its outcome.
/// </summary>
/// <remarks>
/// The law of total variance: the variance expected after a trial y is the variance now less that of the mean given y, which
/// is the sum over pairs of E_j E_k (exp(cov(j, y) cov(k, y) / var(y)) - 1). s2 stands at the value at which a normal has the
/// 80 % range of the model's Student, and luck counts as normal. Tasks that differ in size only share a row of the sums.
/// </remarks>
internal sealed class JobSpread
{
    private readonly Rows rows;
    private readonly double variance;
    private readonly IReadOnlyList<double[]> told;

    private JobSpread(Rows rows, double variance, IReadOnlyList<double[]> told)
    {
        (this.rows, this.variance, this.told) = (rows, variance, told);
        Total = new(rows.Mean, variance - rows.Known(told));
    }

    /// <summary>The hands-on time, as it is expected to be known with the trials so far.</summary>
    public TotalTime Total { get; }

    /// <summary>The time of a job before any trial.</summary>
    /// <param name="model">The model.</param>
    /// <param name="tasks">The job's tasks.</param>
    /// <param name="trials">The trials that could be made.</param>
    public static JobSpread Of(RateModel model, IReadOnlyList<ShopTask> tasks, IReadOnlyList<TaskTiming.ByOperation> trials)
    {
        var scale = UsualScale(model);
        var groups = tasks
            .Select(task => task.Timing)
            .OfType<TaskTiming.ByOperation>()
            .Select(timing => model.Whiten(timing))
            .GroupBy(one => one, SameRow.Instance)
            .ToList();
        var means = new double[groups.Count];
        var (mean, variance) = OfGuesses(tasks);
        for (var group = 0; group < groups.Count; group++)
        {
            foreach (var (row, terms) in groups[group])
            {
                var (shared, own) = (scale * terms.Variance, scale * row.Noise * row.Noise);
                var expected = Math.Exp(row.Offset + terms.Location + ((shared + own) / 2));
                means[group] += expected;
                variance += expected * expected * Math.Exp(shared) * (Math.Exp(own) - 1);
            }
        }

        var (ofJob, ofTrials) = (groups.Select(group => group.Key.Terms).ToArray(), trials.Select(trial => model.Whiten(trial)).ToArray());
        var rows = new Rows(ofJob, means, mean + means.Sum(), ofTrials, scale);
        return new(rows, variance + rows.Shared(), []);
    }

    /// <summary>The same job with one more trial made.</summary>
    /// <param name="trial">Its place in the list of trials, from 0.</param>
    public JobSpread After(int trial) => new(rows, variance, [.. told, rows.ToldBy(trial, told)]);

    /// <summary>The s2 at which a normal has the 80 % range of the model's Student.</summary>
    private static double UsualScale(RateModel model)
    {
        var wider = StudentT.InvCDF(0, 1, 2 * model.NoiseShape, 0.9) / TimeRange.NinetiethDeviate;
        return model.NoiseScale / model.NoiseShape * wider * wider;
    }

    /// <summary>The maker's guesses go each their own way: mean and variance of their sum, from equal chances all over.</summary>
    private static (double Mean, double Variance) OfGuesses(IReadOnlyList<ShopTask> tasks)
    {
        const int Chances = 400;
        var (mean, variance) = (0.0, 0.0);
        foreach (var guess in tasks.Select(task => task.Timing).OfType<TaskTiming.ByGuess>().Select(timing => timing.Guess))
        {
            var minutes = Enumerable.Range(0, Chances).Select(chance => GuessedTime.Minutes(guess, Normal.InvCDF(0, 1, (chance + 0.5) / Chances))).ToList();
            var middle = minutes.Average();
            mean += middle;
            variance += minutes.Average(one => (one - middle) * (one - middle));
        }

        return (mean, variance);
    }

    /// <summary>The rows of the job, each with the mean of its tasks together in minutes, and those of the trials.</summary>
    private sealed class Rows(Whitened[] job, double[] means, double mean, (RateRow Row, Whitened Terms)[] trials, double scale)
    {
        public double Mean => mean;

        /// <summary>The part of the variance that tasks share.</summary>
        public double Shared() => OverPairs((row, other) => scale * job[row].CovarianceWith(job[other]));

        /// <summary>The variance of the mean over the outcomes of trials.</summary>
        public double Known(IReadOnlyList<double[]> told) => told.Count == 0 ? 0 : OverPairs((row, other) => told.Sum(one => one[row] * one[other]));

        /// <summary>
        /// What a trial tells of each row, the job's first: its covariance with it that earlier ones have left, over its own
        /// standard deviation. The products of these figures are what it takes from the covariances.
        /// </summary>
        public double[] ToldBy(int trial, IReadOnlyList<double[]> told)
        {
            var at = job.Length + trial;
            var (row, terms) = trials[trial];
            var left = (scale * (terms.Variance + (row.Noise * row.Noise))) - told.Sum(one => one[at] * one[at]);
            return [.. job
                .Concat(trials.Select(one => one.Terms))
                .Select((other, index) => ((scale * terms.CovarianceWith(other)) - told.Sum(one => one[at] * one[index])) / Math.Sqrt(left))];
        }

        private double OverPairs(Func<int, int, double> covariance)
        {
            var sum = 0.0;
            for (var row = 0; row < job.Length; row++)
            {
                sum += means[row] * means[row] * (Math.Exp(covariance(row, row)) - 1);
                for (var other = 0; other < row; other++)
                {
                    sum += 2 * means[row] * means[other] * (Math.Exp(covariance(row, other)) - 1);
                }
            }

            return sum;
        }
    }

    private sealed class SameRow : IEqualityComparer<(RateRow Row, Whitened Terms)>
    {
        public static readonly SameRow Instance = new();

        public bool Equals((RateRow Row, Whitened Terms) x, (RateRow Row, Whitened Terms) y) =>
            x.Row.Block == y.Row.Block && x.Row.Own.AsSpan().SequenceEqual(y.Row.Own) && x.Row.Common.AsSpan().SequenceEqual(y.Row.Common);

        public int GetHashCode((RateRow Row, Whitened Terms) obj) => HashCode.Combine(obj.Row.Block, obj.Row.Own.Sum());
    }
}
