using CsCheck;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class MovementTests
{
    [Fact]
    public void Wide_parts_and_all_panels_are_listed_and_narrow_parts_are_not()
    {
        var job = AJob.With(AJob.Part("top", 40, 17) with { IsPanel = true }, AJob.Part("apron", 40, 4), AJob.Part("leg", 29, 1.75m), AJob.Part("little panel", 20, 3.5m) with { IsPanel = true });

        Assert.Equal(["top", "apron", "little panel"], Movement.Of(job, null, BuiltIn.Waits).Select(one => one.Part.Name));
    }

    [Fact]
    public void Timber_made_wetter_than_its_room_only_shrinks_and_made_drier_only_swells()
    {
        var (wet, dry) = (Of(14, 6, 9), Of(5, 6, 9));

        Assert.True(wet.Shrinks > Length.Zero && wet.Swells == Length.Zero);
        Assert.True(dry.Swells > Length.Zero && dry.Shrinks == Length.Zero);
        Assert.Equal(wet.Shrinks, wet.InAll);
    }

    [Fact]
    public void Quarter_sawn_boards_move_less_and_one_plain_board_among_them_decides()
    {
        var job = Job(12, 6, 9);
        var quarter = job with { Boards = [.. job.Boards.Select(board => board with { Sawing = BoardSawing.Quarter })] };
        var mixed = job with { Boards = [.. quarter.Boards.Skip(1), job.Boards[0]] };

        Assert.True(Movement.Of(quarter, null, BuiltIn.Waits)[0].Shrinks < Movement.Of(job, null, BuiltIn.Waits)[0].Shrinks);
        Assert.Equal(BoardSawing.Plain, Movement.Of(mixed, null, BuiltIn.Waits)[0].Sawing);
    }

    [Fact]
    public void Only_the_boards_that_the_layout_uses_for_a_part_count()
    {
        var job = Job(12, 6, 9) with { Parts = [AJob.Part("top", 40, 11)] };
        var layout = HandLayout.Of(job);
        var used = layout.Boards.First(board => board.Blanks.Count > 0).Board.Name;
        var others = job with { Boards = [.. job.Boards.Select(board => board.Name == used ? board : board with { Drying = Read(25) })] };

        Assert.Equal(Movement.Of(job, layout, BuiltIn.Waits)[0].Made, Movement.Of(others, layout, BuiltIn.Waits)[0].Made);
        Assert.NotEqual(Movement.Of(job, null, BuiltIn.Waits)[0].Made, Movement.Of(others, null, BuiltIn.Waits)[0].Made);
    }

    [Fact]
    public void What_shrinks_on_the_way_down_swells_by_as_much_on_the_way_up() =>
        Gen.Select(Gen.Double[1, 30], Gen.Double[0, 35], Gen.Double[0, 35]).Sample((inches, one, other) =>
        {
            var (width, from, to) = (Length.FromInches(inches), MoistureContent.FromPercent(one), MoistureContent.FromPercent(other));
            var (there, back) = (Movement.Change(AJob.Oak, BoardSawing.Plain, width, from, to), Movement.Change(AJob.Oak, BoardSawing.Plain, width, to, from));

            Assert.Equal(0, (there + back).Millimetres, 3);
            Assert.True(Math.Min(one, 30) < Math.Min(other, 30) ? there <= Length.Zero : there >= Length.Zero);
        });

    private static Movement Of(double made, double driest, double dampest) => Movement.Of(Job(made, driest, dampest), null, BuiltIn.Waits)[0];

    private static Job Job(double made, double driest, double dampest)
    {
        var job = AJob.With(AJob.Part("top", 40, 17) with { IsPanel = true });
        return job with { Home = new(MoistureContent.FromPercent(driest), MoistureContent.FromPercent(dampest)), Boards = [.. job.Boards.Select(board => board with { Drying = Read(made) })] };
    }

    private static Drying Read(double percent) => new() { Readings = [new(new(2027, 2, 28), MoistureContent.FromPercent(percent))] };
}
