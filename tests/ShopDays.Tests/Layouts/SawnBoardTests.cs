using CsCheck;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class SawnBoardTests
{
    private static readonly Allowances Usual = Timber.ByHand;

    [Fact]
    public void Blanks_of_a_sawn_board_keep_their_places_and_are_not_wanted_again()
    {
        Board[] stock = [Timber.ABoard("A", 62, 6), Timber.ABoard("B", 62, 6)];
        Part[] parts = [Timber.APart("rail", 29, 5, count: 4)];
        var before = Timber.LayOut(stock, parts, Usual);
        var after = GoOn(stock, parts, [before.Boards[0].AsSawn(1)]);
        Assert.True(after.Fits);
        Assert.Equal(before.Boards[0].Blanks, Assert.Single(after.Sawn).Blanks);
        Assert.Equal("B", Assert.Single(after.ToCut).Board.Name);
        Assert.Equal(2, after.ToCut[0].Blanks.Count);
    }

    [Fact]
    public void Only_what_is_still_to_be_sawn_counts_as_sawing_and_as_yield()
    {
        Board[] stock = [Timber.ABoard("A", 62, 6)];
        Part[] parts = [Timber.APart("rail", 29, 5, count: 2)];
        var after = GoOn(stock, parts, [Timber.LayOut(stock, parts, Usual).Boards[0].AsSawn(1)]);
        Assert.True(after.Fits);
        Assert.Equal((Length.Zero, Length.Zero, 0, 0), (after.RipLength, after.CrosscutLength, after.Yield, after.BestPossibleYield));
        Assert.Equal(WorkTime.Zero, after.SawingTime);
    }

    [Fact]
    public void An_offcut_that_was_kept_is_a_board_of_its_own()
    {
        Board[] stock = [(Timber.ABoard("A", 100, 6) with { Price = new Money(50, Timber.Dollars), EndTrim = Length.FromInches(2m) }).Flawed(90, 92, 0, 2)];
        var sawn = Timber.LayOut(stock, [Timber.APart("rail", 29, 5)], Usual).Boards[0].AsSawn(1);
        var rest = Assert.Single(SawnStock.Left(stock, [sawn]));
        Assert.Equal(("A rest 1", "A", "A"), (rest.Name, rest.Line, rest.CutFrom));

        // 100 in less the end of 2 in, the blank of 30 in and a kerf.
        Assert.Equal(100m - 2 - 30 - 0.0625m, Timber.Inches(rest.Length));
        Assert.Equal(50m * (67.9375m / 100), rest.Price!.Amount, 6);
        Assert.Equal(BoardEdges.Straight, rest.Edges);
        Assert.Equal(Length.Zero, rest.EndTrim);

        // The knot, and the end that is the board's own.
        Assert.Equal([90m - 32.0625m, 98m - 32.0625m], rest.Flaws.Select(flaw => Timber.Inches(flaw.From)));
        Assert.Equal(rest.Length, rest.Flaws[1].To);
    }

    [Fact]
    public void An_offcut_between_cuts_has_sound_ends_and_straight_edges()
    {
        var board = Timber.ABoard("A", 100, 8) with { Edges = BoardEdges.Live, EndTrim = Length.FromInches(3m) };
        var layout = new BoardLayout { Board = board, Usable = Region.Usable(board, Usual), Blanks = [], Cuts = [], Offcuts = [] };
        var inside = new Region(Length.FromInches(10m), Length.FromInches(2m), Length.FromInches(20m), Length.FromInches(3m));
        var rest = layout.AsBoard(new Offcut(inside, true), "A rest 1");
        Assert.Equal((BoardEdges.Straight, Length.Zero), (rest.Edges, rest.EndTrim));
        Assert.Empty(rest.Flaws);
        var atTheEdge = layout.AsBoard(new Offcut(inside with { Y = Length.Zero }, true), "A rest 2");
        Assert.Equal((BoardEdges.Straight, Length.Zero), (atTheEdge.Edges, atTheEdge.EndTrim));
        Assert.Equal(new Flaw(Length.Zero, inside.Length, Length.Zero, Usual.LiveEdge), Assert.Single(atTheEdge.Flaws));
        var wholeWidth = layout.AsBoard(new Offcut(inside with { Y = Length.Zero, Width = board.Width }, true), "A rest 3");
        Assert.Equal((BoardEdges.Live, 0), (wholeWidth.Edges, wholeWidth.Flaws.Count));
        var atTheEnd = layout.AsBoard(new Offcut(inside with { X = Length.FromInches(80m) }, true), "A rest 4");
        Assert.Equal((BoardEdges.Straight, Length.Zero), (atTheEnd.Edges, atTheEnd.EndTrim));
        Assert.Equal((17m, 20m), (Timber.Inches(Assert.Single(atTheEnd.Flaws).From), Timber.Inches(atTheEnd.Flaws[0].To)));
    }

    [Fact]
    public void A_spoiled_blank_is_wanted_again_and_may_come_of_an_offcut()
    {
        Board[] stock = [Timber.ABoard("A", 100, 6)];
        Part[] parts = [Timber.APart("rail", 29, 5, count: 2)];
        var sawn = Timber.LayOut(stock, parts, Usual).Boards[0].AsSawn(1);
        var after = GoOn(stock, parts, [sawn with { Blanks = [.. sawn.Blanks.Skip(1)] }]);
        Assert.True(after.Fits);
        Assert.Equal("A rest 1", Assert.Single(after.ToCut).Board.Name);
        Assert.Equal(sawn.Blanks[0].Blank.Numbers, after.ToCut[0].Blanks[0].Blank.Numbers);
    }

    [Fact]
    public void A_strip_that_was_spoiled_is_sawn_again_as_wide_as_the_panel_lacks()
    {
        Board[] stock = [Timber.ABoard("A", 33, 5), Timber.ABoard("B", 33, 5), Timber.ABoard("C", 33, 5)];
        Part[] parts = [Timber.APart("top", 30, 9) with { IsPanel = true }];
        var before = Timber.LayOut(stock, parts, Usual);
        Assert.Equal(2, before.Boards.Count);
        var after = GoOn(stock, parts, [before.Boards[0].AsSawn(1)]);
        Assert.True(after.Fits);
        var strip = Assert.Single(Assert.Single(after.ToCut).Blanks).Blank;
        Assert.Equal((2, 2), (strip.Strips, before.Boards[0].Blanks[0].Blank.Strip + strip.Strip - 1));
        Assert.Equal(before.Boards[1].Blanks[0].Blank.Width, strip.Width);
    }

    [Fact]
    public void The_glue_edges_of_a_started_panel_cost_the_same_whichever_strip_is_sawn()
    {
        Board[] stock = [Timber.ABoard("A", 33, 5), Timber.ABoard("B", 33, 5)];
        Part[] parts = [Timber.APart("top", 30, 9) with { IsPanel = true }];
        var before = Timber.LayOut(stock, parts, Usual);
        Assert.All(before.Boards, board => Assert.Equal(before.Cost.GlueEdges, GoOn(stock, parts, [board.AsSawn(1)]).Cost.GlueEdges));

        // One joint of 20 min at 48 an hour.
        Assert.Equal(16, before.Cost.GlueEdges.Amount);
    }

    [Fact]
    public void For_a_started_panel_only_the_strips_it_lacks_are_bought()
    {
        // 9 1/4 in and two glue edges are 4 3/4 in a strip: one board of 5 in as the one that is sawn, not two.
        Board[] stock = [Timber.ABoard("A", 36, 5), Timber.ABoard("B", 36, 5)];
        Part[] parts = [Timber.APart("top", 30, 9) with { IsPanel = true }];
        var sawn = Timber.LayOut(stock, parts, Usual).Boards[0].AsSawn(1);
        var layout = LayoutSearch.LayOut(Timber.Asked([], parts, Usual) with { Sawn = [sawn] });
        var wanted = Assert.Single(layout.Wanted);
        Assert.Equal((1, 5m), (wanted.Count, Timber.Inches(wanted.Width)));
    }

    [Fact]
    public void A_strip_for_which_there_is_no_board_leaves_its_panel_out()
    {
        Board[] stock = [Timber.ABoard("A", 33, 5), Timber.ABoard("B", 33, 5)];
        Part[] parts = [Timber.APart("top", 30, 9) with { IsPanel = true }];
        var sawn = Timber.LayOut(stock, parts, Usual).Boards[0].AsSawn(1);
        var layout = LayoutSearch.LayOut(Timber.Asked([], parts, Usual) with { Sawn = [sawn] });
        Assert.Equal(("top", 1), (Assert.Single(layout.Unplaced).Part.Name, layout.Unplaced[0].Number));
    }

    [Fact]
    public void Another_board_of_a_kind_that_is_all_sawn_may_be_wanted_but_no_offcut()
    {
        Board[] stock = [Timber.ABoard("A", 72, 6)];
        Part[] parts = [Timber.APart("rail", 40, 5)];
        var sawn = Timber.LayOut(stock, parts, Usual).Boards[0].AsSawn(1);
        var layout = GoOn(stock, [parts[0] with { Count = 2 }], [sawn]);
        Assert.Equal(stock[0].Length, Assert.Single(layout.Wanted).Length);
    }

    [Fact]
    public void Matched_parts_of_which_some_are_sawn_come_from_offcuts_of_the_same_board()
    {
        Board[] stock = [Timber.ABoard("A", 65, 6), Timber.ABoard("B", 32, 6)];
        Part[] parts = [Timber.APart("front", 30, 5, count: 2) with { Matched = "fronts" }];
        var before = Timber.LayOut(stock, parts, Usual);
        var sawn = before.Boards.Single().AsSawn(1);
        var spoiled = sawn with
        {
            Blanks = [.. sawn.Blanks.Take(1)],
            Offcuts = [new Offcut(sawn.Blanks[1].Region, true) { Name = "A rest 1" }],
        };
        var after = LayoutSearch.LayOut(Timber.Asked(SawnStock.Left(stock, [spoiled]), parts, Usual) with { Sawn = [spoiled] });
        Assert.Equal("A rest 1", Assert.Single(after.ToCut).Board.Name);
        Assert.Equal([new UnmetWish.NotInSequence("fronts")], after.NotHonoured);
    }

    [Fact]
    public void Every_piece_is_there_once_though_some_boards_are_sawn_and_some_blanks_spoiled() => RandomJobs.Any.Sample(
        job =>
        {
            var layout = Timber.LayOut(job.Boards, job.Parts, Usual, job.Seed);
            var chance = new Random(job.Seed);
            var sawn = new List<BoardLayout>();

            // Some boards, then some of what is then cut, offcuts of the first among them.
            for (var round = 0; round < 2; round++)
            {
                foreach (var board in layout.ToCut.Where(_ => chance.Next(2) == 0))
                {
                    var names = sawn.SelectMany(one => one.Offcuts).Select(offcut => offcut.Name!);
                    var done = board.AsSawn(SawnStock.NextRest(board.Board.Origin, names));
                    sawn.Add(done with { Blanks = [.. done.Blanks.Where(_ => chance.Next(5) > 0)] });
                }

                layout = LayoutSearch.LayOut(Timber.Asked(SawnStock.Left(job.Boards, sawn), job.Parts, Usual) with { Sawn = sawn, Seed = job.Seed });
            }

            Assert.Equal(sawn, layout.Sawn);
            Assert.DoesNotContain(layout.ToCut, board => sawn.Exists(one => one.Board.Name == board.Board.Name));
            foreach (var (part, number) in job.Parts.SelectMany(part => Enumerable.Range(1, part.Count + part.Spare), (part, number) => (part, number)))
            {
                var blanks = layout.Boards.SelectMany(board => board.Blanks).Select(placed => placed.Blank).Where(blank => blank.Part == part && blank.Numbers.Contains(number)).ToList();
                var isWhole = blanks.Count > 0 && blanks.Count == Math.Max(1, blanks[0].Strips) && blanks.DistinctBy(blank => blank.Strip).Count() == blanks.Count;
                Assert.Equal(1, (isWhole ? 1 : 0) + layout.Unplaced.Count(one => one.Part == part && one.Number == number));
            }
        },
        iter: 40,
        print: job => $"seed {job.Seed}\n{string.Join('\n', job.Boards)}\n{string.Join('\n', job.Parts)}");

    private static Layout GoOn(IReadOnlyList<Board> stock, IReadOnlyList<Part> parts, IReadOnlyList<BoardLayout> sawn) =>
        LayoutSearch.LayOut(Timber.Asked(SawnStock.Left(stock, sawn), parts, Usual) with { Sawn = sawn });
}
