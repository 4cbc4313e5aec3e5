using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using ShopDays.Plans.Bounds;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using ShopDays.Tests.Outside;

namespace ShopDays.Benchmarks;

/// <summary>
/// Schedules the published problems with so many schedules each and prints how far the lengths are above the optimum or
/// the critical path, beside what published methods reached.
/// </summary>
internal static class Psplib
{
    private const int Seed = 1;
    private const int Cores = 2;

    private const string Heading = "schedules    made     ours  best known   above   published median     goal          reached  as best known   proven  seconds";

    /// <summary>Reads [SET] [SCHEDULES ...] [every N], runs and prints.</summary>
    /// <returns>0 when every goal was reached, otherwise 1.</returns>
    public static int Print(IReadOnlyList<string> words)
    {
        var everyAt = words.ToList().IndexOf("every");
        var every = everyAt < 0 ? 1 : int.Parse(words[everyAt + 1], CultureInfo.InvariantCulture);
        var numbers = words.Take(everyAt < 0 ? words.Count : everyAt).Where(word => char.IsAsciiDigit(word[0])).Select(word => int.Parse(word, CultureInfo.InvariantCulture)).ToList();
        var schedules = numbers.Count == 0 ? [.. PublishedHeuristic.Schedules] : numbers;
        var all = true;
        foreach (var name in PsplibSet.Names.Where(name => words.Count == 0 || words[0] == "all" || words[0] == name || char.IsAsciiDigit(words[0][0])))
        {
            var set = PsplibSet.Read(name, every);
            Console.WriteLine($"{name}: {set.Instances.Length} problems{(every > 1 ? $", one in {every}" : "")}, seed {Seed}, {Cores} at a time; percent above {(name == "j30" ? "the optimum" : "the critical path")}, averages");
            Console.WriteLine(Heading);
            foreach (var number in schedules)
            {
                all &= PrintRow(set, number);
            }

            PrintPublished(name);
        }

        return all ? 0 : 1;
    }

    /// <summary>A problem's outcome: the length found, how many schedules that took, and whether our bound proves it.</summary>
    private readonly record struct Outcome(int Length, int Tried, bool Proven);

    private static bool PrintRow(PsplibSet set, int schedules)
    {
        var watch = Stopwatch.StartNew();
        var outcomes = new Outcome[set.Instances.Length];
        Parallel.For(0, outcomes.Length, new ParallelOptions { MaxDegreeOfParallelism = Cores }, index => outcomes[index] = Run(set.Instances[index], schedules));
        var seconds = watch.Elapsed.TotalSeconds;

        var isJ30 = set.Name == "j30";
        var ours = Average(set.Instances, (instance, index) => outcomes[index].Length, isJ30);
        var best = Average(set.Instances, (instance, _) => instance.BestUpper, isJ30);
        var median = PublishedHeuristic.Median(set.Name, schedules) - PublishedHeuristic.BestKnownOfWholeSet(set.Name);
        var (goal, reached) = (set.Name, schedules) switch
        {
            (_, < 50000) when median is { } published => (published, ours - best < published),
            ("j30", 50000) => (0.02, ours - best <= 0.02),
            ("j60", 50000) => (0.30, ours - best <= 0.30),
            ("j120", 50000) => (1.60, ours - best <= 1.60),
            _ => (double.NaN, true),
        };
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{schedules,9}  {outcomes.Average(one => one.Tried),6:0}  {ours,6:0.00} %    {best,6:0.00} %  {ours - best,6:0.000}  {median,17:0.00}  {(double.IsNaN(goal) ? "none" : schedules < 50000 ? "under" : "at most"),7} {(double.IsNaN(goal) ? "" : goal.ToString("0.00", CultureInfo.InvariantCulture)),4}  {(double.IsNaN(goal) ? "" : reached ? "yes" : "NO"),10}  {outcomes.Where((one, index) => one.Length <= set.Instances[index].BestUpper).Count(),13}  {outcomes.Count(one => one.Proven),7}  {seconds,7:0.0}"));
        return reached;
    }

    private static Outcome Run(PsplibInstance instance, int schedules)
    {
        var problem = instance.Problem;
        var search = new ScheduleSearch(problem, Seed);
        var order = search.Find(schedules) ?? throw new InvalidOperationException($"{instance.Name}: nothing found");
        var schedule = new Schedule(problem.Tasks.Length);
        new ScheduleGenerator(problem).Generate(order, problem.Minutes.AsSpan(), schedule);
        var faults = instance.Faults(schedule.Start.ToArray(), schedule.Finish).ToList();
        if (schedule.Finish < instance.BestLower)
        {
            faults.Add($"{instance.Name}: shorter than can be");
        }

        if (search.Tried > schedules)
        {
            faults.Add($"{instance.Name}: {search.Tried} schedules were made, not {schedules}");
        }

        var bound = ScheduleBound.Of(problem).Minute;
        if (bound > instance.BestUpper)
        {
            faults.Add($"{instance.Name}: a bound of {bound} is above the best known length of {instance.BestUpper}");
        }

        return faults.Count == 0
            ? new(schedule.Finish, search.Tried, bound == schedule.Finish)
            : throw new InvalidOperationException(string.Join('\n', faults));
    }

    private static double Average(ImmutableArray<PsplibInstance> instances, Func<PsplibInstance, int, int> length, bool aboveOptimum) =>
        instances.Select((instance, index) => 100.0 * ((length(instance, index) / (double)(aboveOptimum ? instance.BestUpper : instance.CriticalPath)) - 1)).Average();

    private static void PrintPublished(string set)
    {
        var whole = PublishedHeuristic.BestKnownOfWholeSet(set);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"published, on the whole set (best known there: {whole:0.00} %), at 1,000 / 5,000 / 50,000 schedules; from memory"));
        foreach (var one in PublishedHeuristic.All())
        {
            Console.WriteLine($"  {string.Join("  ", PublishedHeuristic.Schedules.Select(schedules => string.Create(CultureInfo.InvariantCulture, $"{one.On(set, schedules),6:0.00} %")))}   {one.Authors} {one.Year}: {one.Kind}");
        }

        Console.WriteLine($"  {string.Join("  ", PublishedHeuristic.Schedules.Select(schedules => string.Create(CultureInfo.InvariantCulture, $"{PublishedHeuristic.Median(set, schedules),6:0.00} %")))}   median");
        Console.WriteLine();
    }
}
