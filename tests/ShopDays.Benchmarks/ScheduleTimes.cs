using System.Diagnostics;
using System.Globalization;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;

namespace ShopDays.Benchmarks;

/// <summary>
/// How long a schedule of 300 tasks over a year of sessions takes when its order is given, beside the limit that is set for
/// it and a bare loop in the same run; every time with other drawn times, as in a forecast.
/// </summary>
internal static class ScheduleTimes
{
    private const int Courses = 64;
    private const int Rounds = 60;
    private const int Repeats = 40;

    public static int Print()
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{BenchShop.Tasks} tasks, order given, {Courses} courses of drawn times; microseconds a schedule, the least of {Rounds} rounds"));
        var plain = BenchShop.Plain(1);
        var (order, courses) = (Order(plain), Draw(plain));
        var bare = new BareLoop(plain);
        var yardstick = Least(course => bare.Run(order, courses[course]));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{"bare loop, no gaps filled",-58} {yardstick,6:0.0}"));
        Row("precedence, waits, sessions, one worker", plain, yardstick, 8);
        Row("with clamps, cap, quiet hours, set-ups", BenchShop.WithLimits(1), yardstick, 25);
        Row("a bench that is kept, dust and coats too", BenchShop.WithAllLimits(1), yardstick, null);
        Row("two workers, some work for both", BenchShop.ForTwo(1), yardstick, null);
        ForecastTimes.Print(plain, order);
        return 0;
    }

    private static void Row(string what, ScheduleProblem problem, double yardstick, double? limit)
    {
        var (order, courses) = (Order(problem), Draw(problem));
        var generator = new ScheduleGenerator(problem);
        var schedule = new Schedule(problem.Tasks.Length);
        var unplaced = 0;
        var least = Least(course =>
        {
            unplaced += generator.Generate(order, courses[course], schedule, mayRunOver: true) ? 0 : 1;
            return schedule.Finish;
        });
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var course = 0; course < Courses; course++)
        {
            generator.Generate(order, courses[course], schedule, mayRunOver: true);
        }

        var allocated = (GC.GetAllocatedBytesForCurrentThread() - before) / (double)Courses;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{what,-58} {least,6:0.0}   {(limit is null ? "no limit" : $"limit {limit,2}"),-8}   {least / yardstick:0.0} times the bare loop   {allocated:0} bytes   {schedule.Pieces.Length} stretches on {schedule.ShopDays} days{(unplaced > 0 ? $"; {unplaced} UNPLACED" : "")}"));
    }

    private static int[] Order(ScheduleProblem problem)
    {
        var order = new int[problem.Blocks];
        new ScheduleOrders(problem).Write(order, likeness: 0.03, noise: 0.02, new Random(1));
        return order;
    }

    /// <summary>A pace for each course and luck for each task, as spread as hand work is.</summary>
    private static int[][] Draw(ScheduleProblem problem)
    {
        var chance = new Random(2);
        return [.. Enumerable.Range(0, Courses).Select(_ =>
        {
            var pace = 0.7 + (0.6 * chance.NextDouble());
            return problem.Minutes.Select(minutes => 1 + (int)(minutes * pace * (0.6 + (0.8 * chance.NextDouble())))).ToArray();
        })];
    }

    private static double Least(Func<int, int> run)
    {
        var least = double.MaxValue;
        for (var round = 0; round < Rounds; round++)
        {
            var watch = Stopwatch.StartNew();
            for (var repeat = 0; repeat < Repeats; repeat++)
            {
                for (var course = 0; course < Courses; course++)
                {
                    run(course);
                }
            }

            least = Math.Min(least, watch.Elapsed.TotalMicroseconds / (Repeats * Courses));
        }

        return least;
    }
}
