using System.Globalization;
using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Benchmarks;

/// <summary>
/// Walks forward through tasks that people estimated and then did, each time predicted before it is seen: how often the
/// 80 % ranges hold it and how wide they are, beside those made of all ratios so far.
/// </summary>
/// <remarks>The file has a row of heads and the columns order, person, category, kind, hours estimated, hours taken.</remarks>
internal static class Durations
{
    private const int NotCounted = 50;
    private const string Maker = "all of them";

    private static readonly LocalDate Day = new(2000, 1, 1);
    private static readonly Operation Own = OwnOperation();

    public static int Print(string path)
    {
        var done = Read(path);
        Console.WriteLine($"{done.Count} tasks, each predicted from those before it; the first {NotCounted} are not counted.");
        Console.WriteLine("Ranges are told in whole minutes, outward.");
        Console.WriteLine("width: ln(upper/lower); over the estimate; in hours. log score: mean ln density of ln(hours), greater is better");
        var ours = new Score("as learned");
        var log = new List<TimedWork>();
        var prior = RateModel.FromPrior(new([Own]));
        foreach (var one in done)
        {
            var work = WorkOf(one);
            if (log.Count >= NotCounted)
            {
                var belief = prior.Learn(log, new Learning(Day, Maker)).BeliefOf(work.Timing);
                ours.Add(one, belief.At(0.1).Minutes, belief.At(0.9).Minutes, belief.LogDensity(work.Took));
            }

            log.Add(work);
        }

        ours.Print();
        Plain(done, 0.10).Print();
        var (low, high) = (0.02, 0.3);
        while (high - low > 0.0005)
        {
            var middle = (low + high) / 2;
            (low, high) = Plain(done, middle).Coverage > ours.Coverage ? (middle, high) : (low, middle);
        }

        Plain(done, low).Print();
        return 0;
    }

    /// <summary>The plain method: two quantiles of all ratios of time to estimate so far.</summary>
    private static Score Plain(List<Done> done, double share)
    {
        var score = new Score(string.Create(CultureInfo.InvariantCulture, $"plain, {share:0.0%} to {1 - share:0.0%}"));
        var ratios = new List<double>();
        foreach (var one in done)
        {
            if (ratios.Count >= NotCounted)
            {
                score.Add(one, one.Estimated * At(share), one.Estimated * At(1 - share), Density(Math.Log(one.Actual / one.Estimated)));
            }

            var ratio = one.Actual / one.Estimated;
            var place = ratios.BinarySearch(ratio);
            ratios.Insert(place < 0 ? ~place : place, ratio);
        }

        return score;

        double At(double part)
        {
            var where = part * (ratios.Count - 1);
            var below = (int)where;
            return ratios[below] + ((ratios[Math.Min(below + 1, ratios.Count - 1)] - ratios[below]) * (where - below));
        }

        // A log-normal through its two quantiles: it has no density of its own.
        double Density(double off)
        {
            var (low, high) = (Math.Log(At(share)), Math.Log(At(1 - share)));
            var deviation = (high - low) / 2 / MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, 1 - share);
            return MathNet.Numerics.Distributions.Normal.PDFLn((low + high) / 2, deviation, off);
        }
    }

    /// <summary>
    /// Hours as estimated are the quantity that is done. Taken at its word an estimate is right, and nine in ten are believed
    /// within a factor of six; whether large ones are off otherwise than small ones is left to be learned.
    /// </summary>
    private static Operation OwnOperation() => new()
    {
        Name = "a task as estimated",
        Unit = new TradeUnit { Name = "h estimated" },
        Methods =
        [
            new Method
            {
                Name = "hand",
                PaceGroup = PaceGroup.Other,
                MinutesPerUnit = 60,
                LowMinutes = 10,
                HighMinutes = 360,
                Slopes = [new Slope(Covariate.Width, 4, 0)],
                Setup = WorkTime.Zero,
                SetupPer = "run",
                WorkClass = WorkClass.Light,
                Rest = 0,
                IsNoisy = false,
                IsSplittable = true,
                LeastUseful = WorkTime.Zero,
                Crew = 1,
                LearningRate = 1,
                Source = "the estimate itself",
            },
        ],
    };

    private static TimedWork WorkOf(Done done) => new()
    {
        Timing = new() { Operation = Own, Method = Own.Methods[0], Quantity = done.Estimated / 60, Setups = 0, Covariates = new Dictionary<Covariate, double> { [Covariate.Width] = done.Estimated / 60 } },
        Took = WorkTime.FromMinutes(done.Actual),
        On = Day,
        Worker = Maker,
        Task = Own.Name,
        IsKept = true,
        Entries = [default],
    };

    private static List<Done> Read(string path) =>
    [
        .. File.ReadLines(path).Skip(1).Select(line => line.Split(',')).Select(fields => new Done(
            60 * double.Parse(fields[4], CultureInfo.InvariantCulture),
            60 * double.Parse(fields[5], CultureInfo.InvariantCulture))),
    ];

    /// <summary>Minutes.</summary>
    private sealed record Done(double Estimated, double Actual);

    private sealed class Score(string name)
    {
        private const double Rounding = 1e-6;

        private int count;
        private int inside;
        private double factor;
        private double ratio;
        private double hours;
        private double density;

        public double Coverage => (double)inside / count;

        public void Add(Done done, double low, double high, double logDensity)
        {
            (low, high) = (Math.Floor(low + Rounding), Math.Ceiling(high - Rounding));
            low = Math.Max(low, 1.0 / 60);
            count++;
            inside += done.Actual >= low - Rounding && done.Actual <= high + Rounding ? 1 : 0;
            factor += Math.Log(high / low);
            ratio += (high - low) / done.Estimated;
            hours += (high - low) / 60;
            density += logDensity;
        }

        public void Print() => Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{name,-22} holds {Coverage,6:0.0%}  width {factor / count:0.000}  {ratio / count:0.000}  {hours / count:0.00} h  log score {density / count:0.000}"));
    }
}
