using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
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
    public void Glue_edges_and_faces_of_a_panel_in_unequal_strips_are_sums_of_their_own_widths()
    {
        // 17 in and 1/4 allowed are 9, 6 and 2 5/8 in of strips, 1/8 of each for its glue edges.
        decimal[] widths = [9, 6, 2.625m];
        var lid = AJob.Part("lid", 42, 17) with { IsPanel = true };
        var job = AJob.With(lid) with { Boards = AJob.Boards(3, 50, 10, 1.25m), Allowances = Timber.ByHand };
        var layout = HandLayout.Of(job) with { Boards = [.. widths.Select((width, order) => Strip(job, order, width))] };
        var graph = Assert.IsType<OrderOfWork.Made>(job.Ordered(layout: layout)).Graph;

        // Nine digits leave room for the rounding of a few operations on doubles, and for nothing else.
        Assert.Equal(2 * 43 / 12.0, graph.Of("match and shoot a glue joint").Quantity(), 9);
        Assert.Equal(2 * 43 / 12.0, graph.Of("edge-glue panel").Quantity(), 9);
        Assert.Equal(43 * (9 + 6 + 2.625) / 144, graph.Of("flatten face one").Quantity(), 9);
        Assert.Equal(43 * (9 + 6 + 2.625) / 144, graph.Of("gauge and thickness face two").Quantity(), 9);
        Assert.Equal(2 * 43 * 17.25 / 144, graph.Of("flatten a glued panel").Quantity(), 9);

        static BoardLayout Strip(Job job, int order, decimal width)
        {
            var whole = Region.Whole(job.Boards[order]);
            var blank = new Blank { Part = job.Parts[0], Numbers = [1], Strip = order + 1, Strips = 3, Length = Length.FromInches(43m), Width = Length.FromInches(width) };
            var region = whole with { Length = blank.Length, Width = blank.Width };
            return new BoardLayout
            {
                Board = job.Boards[order],
                Usable = whole,
                Blanks = [new PlacedBlank(blank, region)],
                Offcuts = [],
                Cuts =
                [
                    new Cut(1, CutKind.Crosscut, whole, region.Right, whole.Width, job.Boards[order].Thickness, ""),
                    new Cut(2, CutKind.Rip, whole with { Length = blank.Length }, region.Top, blank.Length, job.Boards[order].Thickness, blank.Label),
                ],
            };
        }
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
