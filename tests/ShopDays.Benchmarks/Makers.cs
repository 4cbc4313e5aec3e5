using System.Globalization;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Layouts;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Tests.Times;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Benchmarks;

/// <summary>
/// Makers whose true rates are hidden from the program do work of two sample jobs, it learns, and then says how long a third
/// will take them: how often its 80 % ranges hold what they took, and how far off its middle is.
/// </summary>
internal static class Makers
{
    private const int Courses = 400;
    private const string Maker = "maker";

    private static readonly LocalDate Day = new(2000, 1, 1);
    private static readonly int[] Logged = [0, 5, 20, 100];

    /// <summary>Prints the table.</summary>
    /// <param name="many">How many makers of each kind.</param>
    public static int Print(int many)
    {
        var tried = TasksOf("elm-workbench", "bench").Concat(TasksOf("evening-cupboard", "wall-cupboard")).ToList();
        var job = TasksOf("tidewater-commission", "writing-table");
        Console.WriteLine($"{many} makers of each kind, seeds 1 to {many}; a job of {job.Count} tasks, learned on {tried.Count} tasks of two others");
        Console.WriteLine("every time is as it was, so those that the program asks about are kept");
        Console.WriteLine("held: share inside the 80 % range, of tasks and of the job's hours; off: how far from them the middle is, for half of the makers");
        Console.WriteLine("maker                     | " + string.Join(" | ", Logged.Select(count => $"after {count,3}: tasks   job    off")));
        foreach (var kind in (HiddenMaker.Kind[])[HiddenMaker.Kind.Inside, .. HiddenMaker.Kind.Outside])
        {
            var rows = Enumerable.Range(1, many).Select(seed => Walk(kind, seed, tried, job)).ToList();
            Console.WriteLine($"{kind.Name,-25} | " + string.Join(" | ", Logged.Select((_, stage) => string.Create(
                CultureInfo.InvariantCulture,
                $"           {rows.Average(row => row[stage].Tasks),6:0.0%} {rows.Average(row => row[stage].Job ? 1.0 : 0),6:0.0%} {Median(rows.Select(row => row[stage].Off)),6:0.0%}"))));
        }

        return 0;
    }

    private static List<(double Tasks, bool Job, double Off)> Walk(HiddenMaker.Kind kind, int seed, IReadOnlyList<ShopTask> tried, IReadOnlyList<ShopTask> job)
    {
        var maker = new HiddenMaker(BuiltIn.Operations, kind, seed);
        var shuffled = tried.ToArray();
        new Random(seed).Shuffle(shuffled);
        var work = shuffled.Take(Logged[^1]).Select((task, at) => new TimedWork
        {
            Timing = (TaskTiming.ByOperation)task.Timing,
            Took = maker.Do((TaskTiming.ByOperation)task.Timing),
            On = Day,
            Worker = Maker,
            Task = task.Name,
            IsKept = true,
            Entries = [new EntryId(at + 1)],
        }).ToList();
        if (work.Count < Logged[^1])
        {
            throw new InvalidOperationException($"there are only {work.Count} tasks to try");
        }

        var actual = job.Select(task => maker.Do((TaskTiming.ByOperation)task.Timing)).ToList();
        var total = actual.Aggregate(WorkTime.Zero, (sum, one) => sum + one);
        return [.. Logged.Select(count =>
        {
            var model = RateModel.FromPrior(BuiltIn.Operations).Learn([.. work.Take(count)], new Learning(Day, Maker));
            var inside = job.Zip(actual).Count(one => model.BeliefOf((TaskTiming.ByOperation)one.First.Timing).ShareBelow(one.Second) is >= 0.1 and <= 0.9);
            var range = model.Draw(job, Courses, seed).OfAll();
            return ((double)inside / job.Count, total >= range.P10 && total <= range.P90, Math.Abs((range.P50 / total) - 1));
        })];
    }

    private static IReadOnlyList<ShopTask> TasksOf(string shop, string job)
    {
        var read = ShopAndJob.Read(Path.Combine("sample-projects", shop, "jobs", job + ".yaml"), Directory.GetCurrentDirectory()).Read
            ?? throw new InvalidOperationException($"{job} has mistakes");
        var rates = ShopRates.ForLayout(RateModel.FromPrior(read.Operations), operation => operation.MethodIn(read.Job), read.Shop.Money?.Hour);
        var layout = LayoutSearch.LayOut(LayoutRequest.For(read.Job, rates) with { Effort = LayoutEffort.Quick });
        var order = OrderOfWork.Build(read.Job, layout, read.Operations, read.Waits, read.Shop.Limits, WorkTime.FromHours(4));
        return [.. ((OrderOfWork.Made)order).Graph.Tasks.Where(task => task.Timing is TaskTiming.ByOperation).Select((task, id) => task with { Id = id })];
    }

    private static double Median(IEnumerable<double> figures)
    {
        var sorted = figures.Order().ToList();
        return sorted[sorted.Count / 2];
    }
}
