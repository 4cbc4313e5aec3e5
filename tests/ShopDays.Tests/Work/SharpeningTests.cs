using CsCheck;
using ShopDays.Cli.Files;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class SharpeningTests
{
    private const string TouchUp = "file and set a saw";

    [Fact]
    public void Nothing_is_used_longer_between_two_sharpenings_than_its_edge_lasts()
    {
        Gen.Select(Gen.Int[1, 12], Gen.Int[12, 80], Gen.Int[2, 9], Gen.Int[0, 8], Gen.Double[300, 3500]).Sample(
            (count, length, width, tails, hardness) =>
            {
                var timber = AJob.Oak with { HardnessPoundsForce = hardness };
                var job = AJob.With(AJob.Part("side", length, width, count: count, species: timber), AJob.Part("end", 12, width, species: timber)) with
                {
                    Boards = [.. AJob.Boards(12, 96, 12, 1.25m).Select(board => board with { Species = timber })],
                    Joints = [new Joint { Kind = "dovetail", Parts = ["side", "end"], Count = 4, Tails = 1 + tails }, new Joint { Kind = "mortise and tenon", Parts = ["side", "end"], Count = count }],
                    Finishes = [new FinishWork { Finish = "wax", On = ["side", "end"] }],
                };
                var graph = job.Graph();
                foreach (var tasks in graph.Tasks.Where(task => EdgeOf(task) is not null).GroupBy(task => EdgeOf(task)!.Name))
                {
                    Follow(graph, tasks.Key, [.. tasks]);
                }
            },
            iter: 60);
    }

    [Fact]
    public void Harder_timber_wants_more_honing_and_more_touching_up()
    {
        var (soft, hard) = (Ripped(500), Ripped(2000));
        Assert.True(Honed(hard) > Honed(soft), $"{Honed(hard)} and {Honed(soft)}");
        Assert.True(hard.Of(TouchUp).Quantity() > soft.Of(TouchUp).Quantity());

        static int Honed(TaskGraph graph) => graph.Tasks.Sum(task => task.Honed?.Times ?? 0);

        static TaskGraph Ripped(double hardness) => Slats(24, hardness).Graph();
    }

    [Theory]
    [InlineData("teak")]
    [InlineData("iroko")]
    public void Gritty_timber_dulls_an_edge_in_half_the_time(string name)
    {
        Assert.True(BuiltIn.Species.TryFind(name, out var timber));
        Assert.True(timber.IsGritty);
        var (gritty, clean) = (Planed(timber), Planed(timber with { IsGritty = false }));
        Assert.True(gritty.Tasks.Sum(task => task.Honed?.Times ?? 0) > clean.Tasks.Sum(task => task.Honed?.Times ?? 0));
        Assert.True(gritty.Of(TouchUp).Quantity() > clean.Of(TouchUp).Quantity());

        static TaskGraph Planed(Species timber) => (AJob.With(AJob.Part("slat", 90, 2, 1.75m, count: 24, species: timber)) with
        {
            Boards = [.. AJob.Boards(12, 96, 12, 2).Select(board => board with { Species = timber })],
        }).Graph();
    }

    [Fact]
    public void In_whatever_order_a_plan_takes_the_boards_the_saw_is_touched_up_when_it_is_dull_and_never_twice_in_a_row() =>
        Gen.Select(Gen.Int[10, 40], Gen.Double[500, 2500], Gen.Int[0, int.MaxValue]).Sample(
            (count, hardness, seed) =>
            {
                var graph = Slats(count, hardness).Graph();
                var random = new Random(seed);
                double used = 0, since = double.PositiveInfinity;
                foreach (var task in SomeOrder(graph, random))
                {
                    if (task.Sharpens is not null)
                    {
                        Assert.True(since > 0, $"{task.Name}: nothing is sawn since the one before");
                        (used, since) = (0, 0);
                    }
                    else if (EdgeOf(task)?.Name == "rip saw")
                    {
                        var use = CuttingEdge.UseBy((TaskTiming.ByOperation)task.Timing, isGritty: false);
                        (used, since) = (used + use, since + use);
                        Assert.True(used <= EdgeOf(task)!.Life + 1e-6, $"{task.Name} goes to {used} min");
                    }
                }
            },
            iter: 40);

    [Fact]
    public void A_maker_who_saws_the_boards_in_another_order_has_passed_over_no_sawing()
    {
        var graph = Slats(40, 2000).Graph();
        var touchUps = graph.Of(TouchUp);
        Assert.True(touchUps.Count > 1);
        var last = touchUps[^1];
        var later = graph.Precedences.Where(one => one.Before == last.Id).Select(one => graph.Tasks[one.After]).ToList();
        var board = later[^1].Board;
        var done = graph.Tasks.Where(task => task.Board == board || task.Stage < Stage.Sawing || task.Id == last.Id)
            .Select(task => new LogEntry { Job = "slats", Task = task.Name, Took = WorkTime.FromMinutes(20), On = new(new(2027, 3, 2)), Worker = "maker", Finished = true });
        var passedOver = PassedOver.In(graph, JobStanding.Of(graph, [.. done]));
        Assert.DoesNotContain(passedOver, one => one.Task.Board is { } other && other != board);
    }

    [Fact]
    public void The_day_sheet_says_what_is_honed_and_how_often()
    {
        var graph = AJob.Chest().Graph();
        var honed = graph.Tasks.Where(task => task.Honed is not null).ToList();
        Assert.All(honed, task => Assert.StartsWith("hone ", task.Honed!.First, StringComparison.Ordinal));
        Assert.Contains(honed, task => task.Honed!.First.StartsWith("hone 2 plane irons first", StringComparison.Ordinal));
        Assert.Contains(honed, task => task.Honed!.First.StartsWith("hone the smoothing iron first, and ", StringComparison.Ordinal));
        Assert.All(honed, task => Assert.True(((TaskTiming.ByOperation)task.Timing).Besides >= task.Honed!.Time && task.Honed.Time > WorkTime.Zero));
        Assert.All(honed, task => Assert.Contains("sharpening", task.Cautions));
    }

    [Fact]
    public void Keen_work_is_begun_with_no_more_than_half_of_the_edge_gone()
    {
        foreach (var tasks in AJob.Chest().Graph().Tasks.Where(task => EdgeOf(task) is not null).GroupBy(task => EdgeOf(task)!.Name))
        {
            var used = double.PositiveInfinity;
            foreach (var task in tasks)
            {
                used = task.Honed is null ? used : 0;
                Assert.False(EdgeOf(task)!.IsForKeenWork && used > EdgeOf(task)!.Life / 2, task.Name);
                used += CuttingEdge.UseBy((TaskTiming.ByOperation)task.Timing, isGritty: false) / (task.Honed?.Times ?? 1);
            }
        }
    }

    [Fact]
    public void A_sharp_saw_that_rips_little_is_not_touched_up_and_machines_dull_no_edge_of_the_hand()
    {
        Assert.Empty(AJob.With(AJob.Part("rail", 30, 3)).Graph().Of(TouchUp));
        var planed = AJob.With(AJob.Part("rail", 30, 3)) with { Methods = new Dictionary<string, string> { ["flatten face one"] = "jointer" } };
        Assert.All(planed.Graph().Of("flatten face one"), task => Assert.Null(task.Honed));
    }

    // What is honed in a task splits its use; a saw that is touched up has a task of its own for it.
    private static void Follow(TaskGraph graph, string edge, List<ShopTask> tasks)
    {
        var isSaw = EdgeOf(tasks[0])!.SharpenedBy == TouchUp;
        var used = isSaw ? 0 : double.PositiveInfinity;
        foreach (var task in tasks)
        {
            var times = isSaw ? Touched(task) : task.Honed?.Times ?? 0;
            used = times > 0 ? 0 : used;
            used += CuttingEdge.UseBy((TaskTiming.ByOperation)task.Timing, isGritty: false) / Math.Max(1, times);
            Assert.True(used <= EdgeOf(task)!.Life + 1e-6, $"{edge}: {task.Name} goes to {used} min");
        }

        int Touched(ShopTask task) => (int)graph.Tasks.Where(one => one.Name == $"touch up the {edge}, before: {task.Name}").Quantity();
    }

    private static CuttingEdge? EdgeOf(ShopTask task) => (task.Timing as TaskTiming.ByOperation)?.Method.Edge;

    private static Job Slats(int count, double hardness)
    {
        var timber = AJob.Oak with { HardnessPoundsForce = hardness };
        return AJob.With(AJob.Part("slat", 90, 2, 1.75m, count: count, species: timber)) with
        {
            Boards = [.. AJob.Boards(12, 96, 12, 2).Select(board => board with { Species = timber })],
        };
    }

    /// <summary>All tasks in some order that the graph allows.</summary>
    private static IEnumerable<ShopTask> SomeOrder(TaskGraph graph, Random random)
    {
        var before = graph.Precedences.Select(one => (one.Before, one.After)).Distinct().ToLookup(one => one.After, one => one.Before);
        var done = new HashSet<int>();
        while (done.Count < graph.Tasks.Count)
        {
            List<ShopTask> ready = [.. graph.Tasks.Where(task => !done.Contains(task.Id) && before[task.Id].All(done.Contains))];
            var next = ready[random.Next(ready.Count)];
            done.Add(next.Id);
            yield return next;
        }
    }
}
