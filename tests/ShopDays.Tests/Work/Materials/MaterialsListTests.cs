using ShopDays.Cli.Files;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Tests.Layouts;
using ShopDays.Work.Materials;
using Xunit;

namespace ShopDays.Tests.Work.Materials;

public sealed class MaterialsListTests
{
    [Fact]
    public void All_pieces_together_are_what_stays_of_the_boards()
    {
        var job = AJob.Chest();
        var list = Of(job, HandLayout.Of(job));

        // Sums of doubles in another order.
        Assert.Equal(job.Parts.Sum(part => part.Volume.BoardFeet * part.Count), list.OnHand.Sum(one => one.Net.BoardFeet), 1e-9);
        Assert.All(list.OnHand, one => Assert.Equal(one.InBoards.BoardFeet, one.Net.BoardFeet + one.Kept.BoardFeet + one.Lost.BoardFeet, 1e-9));
        Assert.Empty(list.ToBuy);
    }

    [Fact]
    public void A_spare_blank_does_not_stay_in_the_piece()
    {
        var job = AJob.With(AJob.Part("rail", 30, 4, count: 2));
        var spared = job with { Parts = [job.Parts[0] with { Spare = 1 }] };
        Assert.Equal(Assert.Single(Of(job, HandLayout.Of(job)).OnHand).Net, Assert.Single(Of(spared, HandLayout.Of(spared)).OnHand).Net);
    }

    [Fact]
    public void The_waste_found_is_what_is_lost_by_what_stays()
    {
        // A board of 60 x 8 x 1 in gives two rails of 60 x 4 x 1: nothing is lost; rails of 60 x 3 leave a strip of 60 x 2, large enough to keep.
        var full = Laid([Timber.ABoard("A", 60, 8)], [Timber.APart("rail", 60, 4, count: 2)]);
        Assert.Equal(0, Assert.Single(full.OnHand).WasteFound!.Value, 1e-9);
        var kept = Assert.Single(Laid([Timber.ABoard("A", 60, 8)], [Timber.APart("rail", 60, 3, count: 2)]).OnHand);
        Assert.Equal(60 * 8 / 144.0, kept.InBoards.BoardFeet, 1e-9);
        Assert.Equal(60 * 6 / 144.0, kept.Net.BoardFeet, 1e-9);
        Assert.Equal(60 * 2 / 144.0, kept.Kept.BoardFeet, 1e-9);
        Assert.Equal(0, kept.WasteFound!.Value, 1e-9);

        // A strip of half an inch is not.
        var lost = Assert.Single(Laid([Timber.ABoard("A", 60, 8)], [Timber.APart("rail", 60, 3.75m, count: 2)]).OnHand);
        Assert.Equal(0.5 / 7.5, lost.WasteFound!.Value, 1e-9);
    }

    [Fact]
    public void What_is_missing_is_to_be_bought_with_the_waste_of_the_trade_and_the_least_sizes()
    {
        var list = Laid([Timber.ABoard("A", 60, 8)], [Timber.APart("rail", 60, 4, count: 7)]);
        var buy = Assert.Single(list.ToBuy);

        // Five rails of 60 x 4 x 1 in are 8 1/3 board feet; oak takes 30 to 50 % more.
        Assert.Equal(5 * 60 * 4 / 144.0, buy.Net.BoardFeet, 1e-9);
        Assert.Equal(1.3 * 5 * 60 * 4 / 144, buy.Least.BoardFeet, 1e-9);
        Assert.Equal(1.5 * 5 * 60 * 4 / 144, buy.Most.BoardFeet, 1e-9);
        Assert.Equal((Length.FromInches(60m), Length.FromInches(4m)), (buy.Longest, buy.Widest));
        Assert.Equal(3 * 60 * 8 / 144.0, buy.InBoards.BoardFeet, 1e-9);
        Assert.Equal(["rail"], buy.Parts.Select(part => part.Name));
        Assert.Single(list.OnHand);
    }

    [Fact]
    public void What_no_yard_sells_is_not_to_be_bought()
    {
        var list = Laid([Timber.ABoard("A", 60, 8)], [Timber.APart("post", 60, 4, 9)]);
        Assert.Empty(list.ToBuy);
        Assert.Equal("post", Assert.Single(list.NotToBeBought).Part.Name);
    }

    [Fact]
    public void Glue_is_spread_on_the_joints_of_panels_and_glue_ups()
    {
        var job = AJob.With(AJob.Part("top", 40, 20) with { IsPanel = true }) with { GlueUps = [] };

        // Three strips have two joints of 40 x 7/8 in.
        var glue = Assert.Single(Of(job, HandLayout.Of(job)).Adhesives);
        Assert.Equal("PVA, yellow (aliphatic)", glue.Name);
        Assert.Equal(2 * 40 * 0.875 / 144, glue.Surface.SquareFeet, 1e-9);

        // A mortise and tenon has two cheeks of 2 x 1 1/2 in.
        var frame = AJob.With(AJob.Part("leg", 28, 2, 2, 2), AJob.Part("rail", 20, 3)) with
        {
            Joints = [new Joint { Kind = "mortise and tenon", Parts = ["leg", "rail"], Count = 2, Width = Length.FromInches(2m), Depth = Length.FromInches(1.5m) }],
            GlueUps = [new GlueUp { Name = "frame", Joins = ["leg", "rail"], Adhesive = "liquid hide glue" }],
            Boards = AJob.Boards(12, 96, 12, 2.5m),
        };
        Assert.Equal(2 * 2 * 2 * 1.5 / 144, Assert.Single(Of(frame, HandLayout.Of(frame)).Adhesives).Surface.SquareFeet, 1e-9);
    }

    /// <summary>What is glued of a dado is its floor and its two shoulders: common practice, no source.</summary>
    [Theory]
    [InlineData("shelf")]
    [InlineData("shelf", "bracket")]
    public void A_dado_is_glued_on_its_floor_and_its_shoulders_however_it_is_written(params string[] parts)
    {
        var rack = Rack(new Joint { Kind = "dado", Parts = parts, Length = Length.FromInches(17m), Depth = Length.FromInches(0.25m) });

        // The thinnest of the parts is 3/4 in: 17 in by 3/4 in, and twice 1/4 in of shoulder.
        Assert.Equal(17 * 1.25 / 144, Glued(rack), 1e-9);
        Assert.Equal(17 * 1 / 144.0, Glued(Rack(rack.Joints[0] with { Width = Length.FromInches(0.5m) })), 1e-9);

        // Without a figure it is 3/8 in deep.
        Assert.Equal(17 * 1.5 / 144, Glued(Rack(rack.Joints[0] with { Depth = Length.Zero })), 1e-9);
    }

    [Fact]
    public void A_dado_in_one_part_is_glued_in_the_first_glue_up_that_holds_it_and_not_again()
    {
        var rack = Rack(new Joint { Kind = "dado", Parts = ["shelf"], Length = Length.FromInches(17m), Depth = Length.FromInches(0.25m) });
        var twice = rack with { GlueUps = [rack.GlueUps[0], new GlueUp { Name = "on the wall", Joins = ["rack", "rail"], Adhesive = "liquid hide glue" }] };
        var glue = Of(twice, HandLayout.Of(twice)).Adhesives;
        Assert.Equal(17 * 1.25 / 144, glue.Single(one => one.Name.Contains("epoxy", StringComparison.Ordinal)).Surface.SquareFeet, 1e-9);

        // Nothing is written of how the rail is glued: one of its ends, 5 in by 3/4 in.
        Assert.Equal(5 * 0.75 / 144, glue.Single(one => one.Name.Contains("hide", StringComparison.Ordinal)).Surface.SquareFeet, 1e-9);
    }

    /// <summary>A glue-up of which no joint is written is glued at one end of each piece: common practice, no source.</summary>
    [Fact]
    public void A_glue_up_without_joints_takes_glue_all_the_same()
    {
        Assert.Equal(((6 * 0.75) + (3 * 5 * 0.75)) / 144, Glued(Rack()), 1e-9);
        Assert.Equal(((6 * 0.75) + (3 * 5 * 0.75)) / 144, Glued(Rack(new Joint { Kind = "bore", Parts = ["shelf"] })), 1e-9);
    }

    private static Job Rack(params Joint[] joints) => AJob.With(AJob.Part("shelf", 40, 6, 0.75m), AJob.Part("bracket", 6, 5, 0.75m, count: 3), AJob.Part("rail", 30, 5, 0.75m)) with
    {
        Joints = joints,
        GlueUps = [new GlueUp { Name = "rack", Joins = ["shelf", "bracket"], Adhesive = "epoxy, slow hardener" }],
    };

    private static double Glued(Job job) => Assert.Single(Of(job, HandLayout.Of(job)).Adhesives).Surface.SquareFeet;

    [Fact]
    public void Each_coat_is_counted_and_less_goes_further_than_more()
    {
        var job = AJob.Chest();
        SpreadWanted Coats(int coats) => Assert.Single(Of(job with { Finishes = [job.Finishes[0] with { Coats = coats }] }, HandLayout.Of(job)).Finishes);
        Assert.Equal(3 * Coats(1).Surface.SquareFeet, Coats(3).Surface.SquareFeet, 1e-9);
        Assert.True(Coats(3).Least < Coats(3).Most);
        Assert.Equal(3 * Coats(1).Most!.Value, Coats(3).Most!.Value, 1e-12);
    }

    [Fact]
    public void How_far_it_goes_is_known_of_every_adhesive_and_finish()
    {
        string[] known = [.. BuiltIn.Waits.Adhesives.Select(one => one.Name), .. BuiltIn.Waits.Finishes.Select(one => one.Name)];
        Assert.Equal(known.Order(StringComparer.Ordinal), BuiltIn.Coverages.Keys.Order(StringComparer.Ordinal));
        Assert.All(BuiltIn.Coverages.Values, one =>
        {
            Assert.InRange(one.Low, 1, one.High);
            Assert.True(one.Source.StartsWith("from memory", StringComparison.Ordinal) || one.Source.StartsWith("common practice, no source", StringComparison.Ordinal), one.Source);
        });
    }

    private static MaterialsList Laid(IReadOnlyList<Board> boards, IReadOnlyList<Part> parts) =>
        Of(AJob.With(parts) with { Boards = boards, Allowances = Timber.Bare }, Timber.LayOut(boards, parts));

    private static MaterialsList Of(Job job, Layout layout) => MaterialsList.Of(job, layout, BuiltIn.Operations, BuiltIn.Waits, BuiltIn.Coverages, byBoardFeet: true);
}
