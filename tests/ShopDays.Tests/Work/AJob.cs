using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

/// <summary>Jobs for tests in trade words and inches.</summary>
internal static class AJob
{
    public static Species Oak { get; } = Known("white oak");

    public static Species Pine { get; } = Known("eastern white pine");

    public static WorkTime Evening { get; } = WorkTime.FromMinutes(110);

    public static Job With(params IReadOnlyList<Part> parts) => new()
    {
        Name = "a piece",
        Start = new LocalDate(2027, 3, 1),
        Boards = Boards(12, 96, 12, 1.25m),
        Parts = parts,
    };

    public static Part Part(string name, decimal length, decimal width, decimal thickness = 0.875m, int count = 1, Species? species = null) => new()
    {
        Name = name,
        Count = count,
        Species = species ?? Oak,
        Length = Length.FromInches(length),
        Width = Length.FromInches(width),
        Thickness = Length.FromInches(thickness),
    };

    public static IReadOnlyList<Board> Boards(int count, decimal length, decimal width, decimal thickness, BoardFaces faces = BoardFaces.Rough) =>
    [
        .. Enumerable.Range(1, count).Select(number => new Board
        {
            Name = FormattableString.Invariant($"A{number}"),
            Species = Oak,
            Length = Length.FromInches(length),
            Width = Length.FromInches(width),
            Thickness = Length.FromInches(thickness),
            Faces = faces,
        }),
    ];

    /// <summary>A chest of some twenty pieces: panels, dovetails, grooves, a lid on hinges, a finish, a client.</summary>
    public static Job Chest()
    {
        var show = new HashSet<PartSurface> { PartSurface.Face, PartSurface.Edge };
        return With(
            Part("front", 42, 17) with { IsPanel = true, Shows = show },
            Part("back", 42, 17) with { IsPanel = true, Shows = show },
            Part("end", 20, 17, count: 2) with { IsPanel = true, Shows = show },
            Part("lid", 44, 21) with { IsPanel = true, Shows = show },
            Part("bottom board", 19, 4, 0.625m, count: 9),
            Part("batten", 18, 2.5m, count: 2),
            Part("foot rail", 42, 3, 1, count: 2),
            Part("foot end", 20, 3, 1, count: 2)) with
        {
            Boards = Boards(20, 96, 9.5m, 1.25m),
            Joints =
            [
                new Joint { Kind = "dovetail", Parts = ["front", "back", "end"], Count = 4, Tails = 6 },
                new Joint { Kind = "groove", Parts = ["front", "back", "end"], Length = Length.FromInches(114m), Depth = Length.FromInches(0.375m) },
                new Joint { Kind = "tongue", Parts = ["bottom board"] },
                new Joint { Kind = "mortise and tenon", Parts = ["foot rail", "foot end"], Count = 4 },
                new Joint { Kind = "hinge", Parts = ["lid", "carcass"], Count = 6 },
            ],
            GlueUps =
            [
                new GlueUp { Name = "carcass", Joins = ["front", "back", "end", "bottom board"], Adhesive = "liquid hide glue", Clamps = [new ClampsHeld(Length.FromInches(48m), 6)] },
                new GlueUp { Name = "stand", Joins = ["foot rail", "foot end"], Adhesive = "liquid hide glue", Clamps = [new ClampsHeld(Length.FromInches(24m), 4)] },
            ],
            Finishes = [new FinishWork { Finish = "wiping varnish", On = ["carcass", "lid", "stand"], Coats = 3 }],
            Work =
            [
                new FreeTask { Name = "drawings and letters", Guess = Guess(150), Before = ["layout"] },
                new FreeTask { Name = "fit the lock", Operation = "fit hardware", Quantity = 1, On = ["lid"] },
                new FreeTask { Name = "deliver", Guess = Guess(180), After = ["finish"], PaidKilometres = 42 },
            ],
            Decisions =
            [
                new Decision { Name = "client approves the drawing", Wait = WaitGuess.About(Duration.FromDays(5)), Before = ["layout"], After = ["drawings and letters"] },
                new Decision { Name = "deposit received", Wait = WaitGuess.About(Duration.FromDays(3)), Before = ["buying timber"] },
            ],
        };
    }

    public static TimeGuess Guess(double likely) => new(WorkTime.FromMinutes(likely * 0.6), WorkTime.FromMinutes(likely), WorkTime.FromMinutes(likely * 2));

    public static ShopLimits Shop { get; } = new()
    {
        Clamps = [new ClampsHeld(Length.FromInches(24m), 8), new ClampsHeld(Length.FromInches(48m), 6)],
    };

    public static OrderOfWork Ordered(this Job job, ShopLimits? limits = null, WorkTime? session = null, Layout? layout = null) =>
        OrderOfWork.Build(job, layout ?? HandLayout.Of(job), BuiltIn.Operations, BuiltIn.Waits, limits ?? Shop, session ?? Evening);

    public static TaskGraph Graph(this Job job, ShopLimits? limits = null, WorkTime? session = null) =>
        Assert.IsType<OrderOfWork.Made>(job.Ordered(limits, session)).Graph;

    public static IReadOnlyList<Remark> Remarks(this Job job, ShopLimits? limits = null) =>
        Assert.IsType<OrderOfWork.Made>(job.Ordered(limits)).Remarks;

    public static IReadOnlyList<ShopTask> Of(this TaskGraph graph, string operation) =>
        [.. graph.Tasks.Where(task => task.Timing is TaskTiming.ByOperation by && by.Operation.Name == operation)];

    public static double Quantity(this IEnumerable<ShopTask> tasks) => tasks.Sum(task => ((TaskTiming.ByOperation)task.Timing).Quantity);

    /// <summary>Whether one task must be over before another begins, directly or through others.</summary>
    public static bool Leads(this TaskGraph graph, int from, int to)
    {
        var reached = new HashSet<int> { from };
        var open = new Queue<int>([from]);
        while (open.TryDequeue(out var at))
        {
            foreach (var next in graph.Precedences.Where(one => one.Before == at).Select(one => one.After).Where(reached.Add))
            {
                open.Enqueue(next);
            }
        }

        return from != to && reached.Contains(to);
    }

    private static Species Known(string name) => BuiltIn.Species.TryFind(name, out var species) ? species : throw new ArgumentException(name);
}
