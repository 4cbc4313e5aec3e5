using NodaTime;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Tests.Work;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "common practice, no source; both facts were in view when the catalogue was made, so this shows that the work adds up, not that each rate is right")]
public sealed class SlabDaysTests
{
    private static readonly Length Ten = Length.FromFeet(10);
    private static readonly Species Elm = Cli.Files.BuiltIn.Species.TryFind("American elm", out var elm) ? elm : throw new ArgumentException("elm");

    private static readonly Part Leg = new()
    {
        Name = "leg",
        Count = 12,
        Species = Elm,
        Length = Ten,
        Width = Length.FromInches(3.40625m),
        Thickness = Length.FromInches(1.8125m),
        Ends = PartEnds.Sawn,
    };

    [Fact]
    public void Straightening_three_slabs_and_ripping_them_takes_a_little_over_a_day_of_eight_hours()
    {
        var hours = Hours(task => task.Stage is Stage.Layout or Stage.Sawing);
        // A little over eight hours; the middle may be a quarter off.
        Assert.InRange(hours, 8 * 0.75, 8 * 1.25);
    }

    [Fact]
    public void Flattening_edging_and_thicknessing_what_comes_of_it_takes_a_little_less_than_a_day()
    {
        var hours = Hours(task => task.Stage == Stage.Dimensioning && !task.Name.StartsWith("mark out", StringComparison.Ordinal));
        Assert.InRange(hours, 8 * 0.75, 8 * 1.25);
    }

    private static double Hours(Func<ShopTask, bool> which)
    {
        var job = new Job
        {
            Name = "slabs",
            Start = new LocalDate(2027, 3, 1),
            Parts = [Leg],
            Allowances = new Allowances { Length = Length.Zero, Width = Length.FromInches(0.09375m) },
            Boards = [.. Enumerable.Range(1, 3).Select(number => new Board
            {
                Name = FormattableString.Invariant($"S{number}"),
                Species = Elm,
                Length = Ten,
                Width = Length.FromInches(16m),
                Thickness = Length.FromInches(2m),
                Edges = BoardEdges.Live,
            })],
        };
        var layout = new Layout
        {
            Boards = [.. job.Boards.Select(LaidOut)],
            Unplaced = [],
            Wanted = [],
            NotHonoured = [],
            BestPossibleYield = 1,
            SawingTime = WorkTime.Zero,
        };
        // A clear run of ten feet, and a day of eight hours.
        var limits = AJob.Shop with { LongestPass = Ten, HeavyPerDay = WorkTime.FromHours(8) };
        var graph = Assert.IsType<OrderOfWork.Made>(job.Ordered(limits, WorkTime.FromHours(8), layout)).Graph;
        return graph.Tasks.Where(which).Sum(task => CentralTime.Of((TaskTiming.ByOperation)task.Timing).Hours);
    }

    // Two edges straightened and three or four rips a slab: sixteen cuts of ten feet in all three.
    private static BoardLayout LaidOut(Board board)
    {
        var whole = new Region(Length.Zero, Length.Zero, Ten, board.Width);
        var rips = board.Name == "S1" ? 4 : 3;
        var first = (int.Parse(board.Name[1..], System.Globalization.CultureInfo.InvariantCulture) - 1) * 4;
        return new BoardLayout
        {
            Board = board,
            Usable = whole,
            Cuts = [.. Enumerable.Range(1, 2 + rips).Select(order => new Cut(order, order <= 2 ? CutKind.Straighten : CutKind.Rip, whole, Length.Zero, Ten, board.Thickness, ""))],
            Blanks = [.. Enumerable.Range(1, 4).Select(strip => new PlacedBlank(
                new Blank { Part = Leg, Numbers = [first + strip], Length = Ten, Width = Length.FromInches(3.5m) },
                new Region(Length.Zero, Length.FromInches(3.6m) * (strip - 1), Ten, Length.FromInches(3.5m))))],
            Offcuts = [],
        };
    }
}
