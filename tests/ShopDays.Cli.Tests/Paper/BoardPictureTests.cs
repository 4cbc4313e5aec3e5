using CsCheck;
using ShopDays.Cli.Paper.Boards;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

public sealed class BoardPictureTests
{
    private static readonly LengthFormat Format = LengthFormat.Inches(16);

    private static readonly Gen<BoardLayout> Layouts = Gen.Select(Gen.Int[40, 150], Gen.Int[8, 24], Gen.Int[1, 14], Gen.Enum<BoardEdges>(), (length, width, parts, edges) =>
        ALayout.Of(APlan.Parts(parts).Select(part => part with { Length = Length.Min(part.Length, ALayout.In(34)) }).ToList(), number => ALayout.Board(number, edges, length, width)).Boards[0]);

    [Fact]
    public void Every_piece_and_every_cut_lies_inside_the_board() => Layouts.Sample(
        layout =>
        {
            var frame = PictureOf(layout).Frame;
            Assert.All(layout.Blanks.Select(blank => blank.Region).Concat(layout.Offcuts.Select(offcut => offcut.Region)), region => AssertInside(frame.Of(region), frame.Outline));
            Assert.All(layout.Cuts, cut =>
            {
                var (from, to) = CutLines.Line(frame, cut, new Allowances().Kerf);
                AssertInside(Box.Around([from, to]), frame.Outline);
            });
        },
        iter: 200);

    [Fact]
    public void The_board_is_drawn_to_one_scale_with_the_reference_corner_at_the_lower_left()
    {
        var layout = ALayout.Of(APlan.Parts(5), number => ALayout.Board(number)).Boards[0];
        var frame = PictureOf(layout).Frame;

        // Drawn lengths are doubles: what is lost is far below a hundredth of a point.
        Assert.Equal(layout.Board.Length / layout.Board.Width, frame.Outline.Width / frame.Outline.Height, 1e-9);
        Assert.Equal((frame.Outline.X, frame.Outline.Bottom), (frame.X(Length.Zero), frame.Y(Length.Zero)));
        Assert.True(frame.Y(ALayout.In(3)) < frame.Y(ALayout.In(1)));
        var region = layout.Blanks[0].Region;
        Assert.Equal(region.Length / region.Width, frame.Of(region).Width / frame.Of(region).Height, 1e-9);
    }

    [Fact]
    public void The_picture_fills_its_width_unless_it_would_be_too_tall() => Layouts.Sample(
        layout =>
        {
            var outline = PictureOf(layout).Frame.Outline;
            Assert.True(outline.Right <= 702 + 1e-9 && outline.Height <= 230 + 1e-9);
            Assert.True(outline.Right > 690 || outline.Height > 229);
        },
        iter: 200);

    [Fact]
    public void A_live_edge_never_cuts_into_the_boards_narrowest_width() => Gen.Int[50, 700].Sample(width =>
    {
        var outline = new Box(20, 30, width, 60);
        var shape = BoardOutline.Of(ALayout.Board(1, BoardEdges.Live), outline);

        Assert.All(shape, spot => Assert.True(spot.Y <= outline.Y + 1e-9 || spot.Y >= outline.Bottom - 1e-9));
        Assert.All(shape, spot => Assert.InRange(spot.Y, outline.Y - BoardOutline.Wave, outline.Bottom + BoardOutline.Wave));
        Assert.True(shape.Select(spot => spot.Y).Distinct().Count() > 10);
    });

    [Fact]
    public void Every_piece_has_its_name_on_it_or_in_the_key() => Layouts.Sample(
        layout =>
        {
            var picture = PictureOf(layout);
            Assert.All(layout.Blanks, placed =>
            {
                var place = picture.Frame.Of(placed.Region);
                var label = PieceLabel.Fitted(placed.Blank.Label, Shown(placed.Region), place);
                if (label is null)
                {
                    Assert.Contains(picture.Key, entry => ReferenceEquals(entry.Blank, placed.Blank));
                }
                else
                {
                    AssertInside(label.Place, place);
                    Assert.True(picture.Key.Any(entry => ReferenceEquals(entry.Blank, placed.Blank)) || picture.Labels.Any(shown => string.Concat(shown.Lines).Contains(placed.Blank.Label, StringComparison.Ordinal)));
                }
            });
            Assert.Equal(picture.Key.Count, picture.Key.Select(entry => entry.Letter).Distinct().Count());
        },
        iter: 100);

    [Fact]
    public void No_number_of_a_cut_covers_the_name_of_a_piece() => Layouts.Sample(
        layout =>
        {
            var picture = PictureOf(layout);
            var letters = picture.Key.Select(entry => entry.Letter).ToHashSet();
            // A letter stands even where a piece is too small to be clear of its cuts.
            Assert.All(picture.Labels.Where(label => !letters.Contains(label.Lines[0])), label => Assert.All(picture.Numbers, number => Assert.Equal(0, Overlap.Of(label.Place, number))));
            Assert.Equal(layout.Cuts.Count, picture.Numbers.Count);
        },
        iter: 100);

    [Fact]
    public void A_piece_too_small_for_its_name_gets_a_letter()
    {
        Part[] parts = [ALayout.Part("cock bead of the second drawer, mitred at both ends", 12, 3, 0.5)];
        var layout = ALayout.Of(parts, number => ALayout.Board(number, BoardEdges.Straight, 140, 12)).Boards[0];
        var picture = PictureOf(layout);

        Assert.Equal(layout.Blanks.Count, picture.Key.Count);
        Assert.Equal("a", picture.Key[0].Letter);
    }

    [Fact]
    public void Figures_along_a_side_never_touch() => Gen.Double[0, 500].Array[1, 40].Sample(wanted =>
    {
        var places = Ruler.Spread([.. wanted.Order()], 0, 500);

        for (var order = 1; order < places.Length; order++)
        {
            Assert.True(places[order] - places[order - 1] >= Ruler.Apart - 1e-9);
        }

        Assert.True(places[^1] <= 500 + 1e-9);
        Assert.True(places[0] >= -1e-9);
    });

    [Theory]
    [InlineData(true, "26 1/2\" × 3\"")]
    [InlineData(false, "673 × 76 mm")]
    public void Sizes_are_written_as_on_a_drawing(bool inches, string expected) =>
        Assert.Equal(expected, ShopDays.Cli.Paper.Wording.Sides(inches ? Format : LengthFormat.Millimetres, ALayout.In(26.5), ALayout.In(3)));

    private static string Shown(Region region) => ShopDays.Cli.Paper.Wording.Sides(Format, region.Length, region.Width);

    private static BoardPicture PictureOf(BoardLayout layout) => new(layout, Format, new Allowances().Kerf, 702, 230);

    // Lengths become points by one multiplication each: rounding stays far below a millionth of a point.
    private static void AssertInside(Box inner, Box outer)
    {
        Assert.True(inner.X >= outer.X - 1e-6 && inner.Right <= outer.Right + 1e-6, $"{inner} stands out of {outer}");
        Assert.True(inner.Y >= outer.Y - 1e-6 && inner.Bottom <= outer.Bottom + 1e-6, $"{inner} stands out of {outer}");
    }
}
