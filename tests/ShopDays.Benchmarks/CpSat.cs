using System.Diagnostics;
using System.Globalization;
using Google.OrTools.Sat;
using ShopDays.Plans.Bounds;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using ShopDays.Tests.Outside;

namespace ShopDays.Benchmarks;

/// <summary>
/// The published problems, by the search here and by OR-Tools CP-SAT: the same seconds on the same two cores, one after the
/// other, never at the same time.
/// </summary>
internal static class CpSat
{
    private const int Cores = 2;

    /// <summary>More than a core makes in a second, so that the clock stops the search.</summary>
    private const int SchedulesASecond = 1_000_000;

    /// <summary>Reads [SET] [SECONDS ...] [every N], runs and prints. One in ten, the first of each parameter group, unless said otherwise.</summary>
    /// <returns>0 when the search here is ahead on average everywhere, otherwise 1.</returns>
    public static int Print(IReadOnlyList<string> words)
    {
        var everyAt = words.ToList().IndexOf("every");
        var every = everyAt < 0 ? 10 : int.Parse(words[everyAt + 1], CultureInfo.InvariantCulture);
        var numbers = words.Take(everyAt < 0 ? words.Count : everyAt).Where(word => char.IsAsciiDigit(word[0])).Select(word => double.Parse(word, CultureInfo.InvariantCulture)).ToList();
        var ahead = true;
        foreach (var name in PsplibSet.Names.Skip(1).Where(name => words.Count == 0 || words[0] == name || !PsplibSet.Names.Contains(words[0])))
        {
            var set = PsplibSet.Read(name, every);
            Console.WriteLine($"{name}: {set.Instances.Length} problems, one in {every}; {Cores} cores each, one after the other; excess over the best known length, averages");
            Console.WriteLine("seconds      ours   CP-SAT  ahead: ours  equal  CP-SAT  proven: ours  CP-SAT  nothing found: CP-SAT");
            foreach (var seconds in numbers.Count == 0 ? [1, 5] : numbers)
            {
                ahead &= PrintRow(set, seconds);
            }
        }

        return ahead ? 0 : 1;
    }

    private readonly record struct Outcome(int Length, bool Proven, bool Found);

    private static bool PrintRow(PsplibSet set, double seconds)
    {
        var rows = set.Instances.Select(instance => (Best: (double)instance.BestUpper, Ours: Ours(instance, seconds), Theirs: Theirs(instance, seconds))).ToList();
        var (ours, theirs) = (rows.Average(row => row.Ours.Length / row.Best) - 1, rows.Average(row => row.Theirs.Length / row.Best) - 1);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{seconds,7:0.#}  {100 * ours,6:0.00} % {100 * theirs,6:0.00} %  {rows.Count(row => row.Ours.Length < row.Theirs.Length),11}  {rows.Count(row => row.Ours.Length == row.Theirs.Length),5}  {rows.Count(row => row.Ours.Length > row.Theirs.Length),6}  {rows.Count(row => row.Ours.Proven),12}  {rows.Count(row => row.Theirs.Proven),6}  {rows.Count(row => !row.Theirs.Found),21}"));
        return ours < theirs;
    }

    /// <summary>Two searches with seeds of their own, one on each core, stopped by the clock or at the bound.</summary>
    private static Outcome Ours(PsplibInstance instance, double seconds)
    {
        var begin = Stopwatch.GetTimestamp();
        var lengths = new int[Cores];
        var bound = ScheduleBound.Of(instance.Problem).Minute;
        var isMet = false;
        Parallel.For(0, Cores, new ParallelOptions { MaxDegreeOfParallelism = Cores }, core =>
        {
            var problem = instance.Problem;
            var search = new ScheduleSearch(problem, core + 1)
            {
                NoneBefore = bound,
                GoesOn = () => !Volatile.Read(ref isMet) && Stopwatch.GetElapsedTime(begin).TotalSeconds < seconds,
            };
            var schedule = new Schedule(problem.Tasks.Length);
            new ScheduleGenerator(problem).Generate(search.Find((int)(SchedulesASecond * seconds))!, problem.Minutes.AsSpan(), schedule);
            lengths[core] = schedule.Finish;
            Check(instance, schedule.Start.ToArray(), schedule.Finish);
            if (schedule.Finish == bound)
            {
                Volatile.Write(ref isMet, true);
            }
        });
        return new(lengths.Min(), lengths.Min() == bound, Found: true);
    }

    /// <summary>CP-SAT; where it finds nothing in time, all activities one after another.</summary>
    private static Outcome Theirs(PsplibInstance instance, double seconds)
    {
        var model = new CpModel();
        var oneByOne = instance.Durations.Sum();
        var starts = instance.Durations.Select(duration => model.NewIntVar(0, oneByOne - duration, "")).ToArray();
        var intervals = instance.Durations.Select((duration, activity) => model.NewFixedSizeIntervalVar(starts[activity], duration, "")).ToArray();
        foreach (var (before, after) in instance.Order)
        {
            model.Add(starts[after] >= starts[before] + instance.Durations[before]);
        }

        for (var resource = 0; resource < instance.Capacities.Length; resource++)
        {
            var inUse = model.AddCumulative(instance.Capacities[resource]);
            for (var activity = 0; activity < intervals.Length; activity++)
            {
                if (instance.Requests[activity][resource] > 0)
                {
                    inUse.AddDemand(intervals[activity], instance.Requests[activity][resource]);
                }
            }
        }

        model.Minimize(starts[^1]);
        using var solver = new CpSolver { StringParameters = string.Create(CultureInfo.InvariantCulture, $"num_workers:{Cores} random_seed:1 max_time_in_seconds:{seconds}") };
        var status = solver.Solve(model);
        if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
        {
            return new(oneByOne, Proven: false, Found: false);
        }

        var found = starts.Select(start => (int)solver.Value(start)).ToArray();
        Check(instance, found, found[^1]);
        return new(found[^1], status == CpSolverStatus.Optimal, Found: true);
    }

    private static void Check(PsplibInstance instance, int[] starts, int length)
    {
        if (instance.Faults(starts, length).FirstOrDefault() is { } fault)
        {
            throw new InvalidOperationException(fault);
        }
    }
}
