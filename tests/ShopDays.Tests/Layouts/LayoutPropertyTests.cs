using CsCheck;
using ShopDays.Layouts;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class LayoutPropertyTests
{
    private static readonly Lazy<IReadOnlyList<Layout>> Layouts = new(() => [.. RandomJobs.Some(100).Select(LayOut)]);

    private static IEnumerable<BoardLayout> Boards => Layouts.Value.SelectMany(layout => layout.Boards);

    [Fact]
    public void Every_part_is_placed_once_or_unplaced_and_the_saw_yields_the_pieces() => RandomJobs.Any.Sample(
        job =>
        {
            var layout = LayOut(job);
            Assert.Empty(LayoutCheck.Faults(job.Boards, job.Parts, Timber.ByHand, layout));
            var placed = layout.Boards.SelectMany(board => board.Blanks).Where(one => one.Blank.Strip <= 1).Sum(one => one.Blank.Numbers.Count);
            Assert.Equal(job.Parts.Sum(part => part.Count + part.Spare), placed + layout.Unplaced.Count);
            Assert.InRange(layout.BestPossibleYield, layout.Yield, 1);
        },
        iter: 24,
        print: RandomJobs.Print);

    [Fact]
    public void The_jobs_made_by_chance_hold_every_kind_of_case()
    {
        Assert.Contains(Layouts.Value, layout => layout.Fits);
        Assert.Contains(Layouts.Value, layout => !layout.Fits);
        Assert.Contains(Layouts.Value, layout => layout.NotHonoured.OfType<UnmetWish.NotInOneBoard>().Any());
        Assert.Contains(Layouts.Value, layout => layout.NotHonoured.OfType<UnmetWish.NotInSequence>().Any());
        Assert.Contains(Layouts.Value, layout => layout.NotHonoured.OfType<UnmetWish.NotBestFace>().Any());
        Assert.Contains(Layouts.Value, layout => layout.Unplaced.Any(one => one.Reason is UnplacedReason.OnlyForbidden));
        Assert.Contains(Boards, board => board.IsBestFaceUp);
        Assert.Contains(Boards, board => board.Blanks.Any(placed => placed.Blank.Strips > 1));
        Assert.Contains(Boards, board => board.Blanks.Any(placed => placed.Blank.IsResawn));
        Assert.Contains(Boards, board => board.Board.Flaws.Count > 0);
    }

    [Fact]
    public void No_yield_is_above_the_best_possible() =>
        Assert.All(Layouts.Value, layout => Assert.InRange(layout.BestPossibleYield, layout.Yield, 1));

    [Fact]
    public void One_seed_gives_one_layout() => Assert.All(
        RandomJobs.Some(12).Zip(Layouts.Value),
        pair => Assert.Equal(Written(pair.Second), Written(LayOut(pair.First))));

    [Fact]
    public void No_piece_is_sawn_across_where_nothing_comes_of_it() => Assert.All(Boards, board =>
        Assert.All(board.Cuts, cut => Assert.Contains(board.Blanks, placed => cut.Of.Holds(placed.Region))));

    [Fact]
    public void A_blank_that_is_out_is_not_sawn_again() => Assert.All(Boards, board => Assert.All(board.Blanks, placed =>
        Assert.DoesNotContain(board.Cuts, cut => cut.Of == placed.Region && cut.Kind != CutKind.Resaw)));

    [Fact]
    public void Edges_are_straight_before_the_first_rip_of_a_piece() => Assert.All(
        Boards.Where(board => board.Board.Edges != BoardEdges.Straight),
        board => Assert.All(board.Cuts.Where(cut => cut.Kind == CutKind.Rip), rip =>
        {
            Assert.True(rip.Of.Y >= board.Usable.Y);
            Assert.True(rip.Of.Top <= board.Usable.Top || board.Board.Edges == BoardEdges.RoughSawn);
        }));

    [Fact]
    public void Boards_that_are_not_needed_are_not_cut() => Assert.All(Boards, board => Assert.NotEmpty(board.Blanks));

    [Fact]
    public void Every_blank_is_named_once_by_the_cut_that_frees_it() => Assert.All(Boards, board =>
    {
        var freed = board.Cuts.Where(cut => cut.Kind != CutKind.Resaw).SelectMany(cut => cut.Frees.Split(", ")).Where(name => name is not "" and not "offcut");
        var blanks = board.Blanks.Where(placed => placed.Region != Region.Whole(board.Board)).Select(placed => placed.Blank.Label);
        Assert.Equal(blanks.Order(StringComparer.Ordinal), freed.Order(StringComparer.Ordinal));
    });

    [Fact]
    public void Sawing_time_is_the_sum_of_the_cuts() => Assert.All(Layouts.Value, layout =>
    {
        var minutes = layout.Boards.Sum(board => board.Cuts.Sum(cut =>
            Timber.Rates.For(cut.Kind).TimeFor(cut.Length, cut.Thickness, board.Board.Species).Minutes));

        // A sum of doubles in another order.
        Assert.Equal(minutes, layout.SawingTime.Minutes, 1e-6);
    });

    private static Layout LayOut((IReadOnlyList<Board> Boards, IReadOnlyList<Part> Parts, int Seed) job) =>
        Timber.LayOut(job.Boards, job.Parts, Timber.ByHand, job.Seed);

    private static string Written(Layout layout) => string.Join('\n', layout.Boards.Select(board =>
        $"{board.Board.Name}: {string.Join(", ", board.Blanks.Select(placed => $"{placed.Blank.Label} {placed.Region}"))} {string.Join(", ", board.Cuts)}"));
}
