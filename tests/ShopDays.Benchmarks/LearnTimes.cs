using System.Diagnostics;
using System.Globalization;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Benchmarks;

/// <summary>How long it takes to learn a log from scratch, and one more entry.</summary>
internal static class LearnTimes
{
    private const int Runs = 25;
    private const string Maker = "maker";

    private static readonly LocalDate Day = new(2000, 1, 1);

    /// <summary>How the log is learned from.</summary>
    public static readonly Learning How = new(Day, Maker);

    public static int Print()
    {
        Console.WriteLine($"milliseconds: the first run, cold, and the least and the median of {Runs} after it; the least is freest of what else the machine does");
        Console.WriteLine("entries | from scratch: cold   least  median  ratio | one more: least  median  of scratch");
        var above = 0.0;
        foreach (var count in (int[])[10, 100, 1_000, 10_000])
        {
            var log = Log(count + 1);
            var prior = RateModel.FromPrior(BuiltIn.Operations);
            var how = How;
            List<TimedWork> all = [.. log.Take(count)];
            var (cold, least, median) = Timed(() => prior.Learn(all, how));
            var model = prior.Learn(all, how);
            var (_, one, oneMedian) = Timed(() => model.With(log[count]));
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{count,7} | {cold,18:0.00} {least,7:0.00} {median,7:0.00} {(above == 0 ? "" : $"{least / above:0.0}"),6} | {one,15:0.000} {oneMedian,7:0.000}  1/{least / one:0}"));
            above = least;
        }

        return 0;
    }

    private static (double Cold, double Least, double Median) Timed(Func<RateModel> learn)
    {
        var times = new List<double>();
        for (var run = 0; run <= Runs; run++)
        {
            var start = Stopwatch.GetTimestamp();
            learn();
            times.Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        }

        return (times[0], times.Skip(1).Min(), times.Skip(1).Order().ElementAt(Runs / 2));
    }

    /// <summary>Work at all operations of the catalogue in turn, by a maker a fifth slower than it says, with luck.</summary>
    public static List<TimedWork> Log(int count)
    {
        var random = new Random(1);
        var model = RateModel.FromPrior(BuiltIn.Operations);
        var ways = BuiltIn.Operations.All.SelectMany(operation => operation.Methods.Select(method => (operation, method))).ToList();
        return [.. Enumerable.Range(0, count).Select(at =>
        {
            var (operation, method) = ways[at % ways.Count];
            var timing = new TaskTiming.ByOperation
            {
                Operation = operation,
                Method = method,
                Quantity = 1 + random.Next(20),
                Setups = 1,
                Covariates = method.Slopes.ToDictionary(slope => slope.Covariate, slope => slope.Reference * (0.5 + random.NextDouble())),
            };
            return new TimedWork
            {
                Timing = timing,
                Took = WorkTime.FromMinutes(model.BeliefOf(timing).Median.Minutes * 1.2 * (0.8 + (0.4 * random.NextDouble()))),
                On = Day,
                Worker = Maker,
                Task = operation.Name,
                Entries = [new EntryId(at + 1)],
            };
        })];
    }
}
