using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Tests.Layouts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class SearchedLayoutTests
{
    [Fact]
    public void Work_from_a_layout_that_was_searched_for_saws_just_its_feet_and_planes_just_its_faces()
    {
        var job = AJob.Chest();
        var layout = LayoutSearch.LayOut(LayoutRequest.For(job, Timber.Rates) with { Effort = LayoutEffort.Quick });
        Assert.True(layout.Fits);
        var graph = Assert.IsType<OrderOfWork.Made>(job.Ordered(layout: layout)).Graph;
        // Sums in double against sums of whole numbers: far below a thousandth.
        Assert.Equal(layout.RipLength.Feet, graph.Of("rip").Quantity() + graph.Of("straighten a live edge").Quantity(), 6);
        Assert.Equal(layout.CrosscutLength.Inches, graph.Of("crosscut").Quantity(), 6);
        var faces = layout.Boards.SelectMany(board => board.Blanks).Sum(blank => blank.Region.Area.SquareFeet * blank.Blank.Numbers.Count);
        Assert.Equal(faces, graph.Of("flatten face one").Quantity(), 6);
        Assert.InRange(graph.Tasks.Count, 80, 170);
    }

    [Fact]
    public void A_blank_that_is_resawn_gives_pieces_that_rest_and_are_planed_one_by_one()
    {
        var job = AJob.With(AJob.Part("drawer side", 18, 5, 0.375m, count: 2)) with { Boards = AJob.Boards(1, 48, 7, 1.25m) };
        var blank = new Blank { Part = job.Parts[0], Numbers = [1, 2], Length = Inches(19), Width = Inches(5.25m) };
        var whole = new Region(Inches(0), Inches(0), Inches(48), Inches(7));
        var region = new Region(Inches(0), Inches(0), Inches(19), Inches(5.25m));
        var layout = HandLayout.Of(job) with
        {
            Boards =
            [
                new BoardLayout
                {
                    Board = job.Boards[0],
                    Usable = whole,
                    Blanks = [new PlacedBlank(blank, region)],
                    Offcuts = [],
                    Cuts =
                    [
                        new Cut(1, CutKind.Crosscut, whole, Inches(19), Inches(7), Inches(1.25m), ""),
                        new Cut(2, CutKind.Rip, whole with { Length = Inches(19) }, Inches(5.25m), Inches(19), Inches(1.25m), blank.Label),
                        new Cut(3, CutKind.Resaw, region, Inches(0.6m), Inches(19), Inches(5.25m), blank.Label),
                    ],
                },
            ],
        };
        var graph = Assert.IsType<OrderOfWork.Made>(job.Ordered(layout: layout)).Graph;
        var resaw = Assert.Single(graph.Of("resaw"));
        Assert.Equal(19 * 5.25 / 144, graph.Of("resaw").Quantity(), 9);
        var face = Assert.Single(graph.Of("flatten face one"));
        Assert.Equal(2 * 19 * 5.25 / 144, graph.Of("flatten face one").Quantity(), 9);
        Assert.Equal(NodaTime.Duration.FromDays(7), Assert.Single(graph.Precedences, one => one.Before == resaw.Id && one.After == face.Id).Wait?.Duration);
        // Half of what 1 1/4 in less a kerf of 1/16 leaves, down to 3/8, less the 1/16 of face one.
        var depth = ((TaskTiming.ByOperation)Assert.Single(graph.Of("gauge and thickness face two")).Timing).Covariates[Covariate.Depth];
        Assert.Equal(((1.25 - 0.0625) / 2) - 0.375 - 0.0625, depth, 6);

        static Length Inches(decimal inches) => Length.FromInches(inches);
    }
}
