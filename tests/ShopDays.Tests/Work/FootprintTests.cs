using ShopDays.Parts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Work;

public sealed class FootprintTests
{
    [Fact]
    public void A_box_stands_on_its_front_by_its_end_though_it_has_a_back_as_long_as_the_front() =>
        // 42 in by 20 in are 840 square inches; 144 of them are a square foot.
        Assert.Equal(840 / 144.0, Footprint.Of("carcass", AJob.Chest()).SquareFeet, 1e-9);

    [Fact]
    public void A_square_frame_stands_on_its_side_by_its_side() =>
        Assert.Equal(20 * 19.5 / 144.0, Footprint.Of("frame", Frame([new Joint { Kind = "mortise and tenon", Parts = ["stile", "rail"] }])).SquareFeet, 1e-9);

    [Fact]
    public void A_box_of_four_alike_stands_on_a_square() =>
        Assert.Equal(400 / 144.0, Footprint.Of("frame", AJob.With(AJob.Part("stile", 20, 3, count: 4)) with { GlueUps = [new() { Name = "frame", Joins = ["stile"], Adhesive = "liquid hide glue" }] }).SquareFeet, 1e-9);

    [Fact]
    public void Without_joints_an_assembly_has_its_two_largest_dimensions() =>
        Assert.Equal(20 * 19.5 / 144.0, Footprint.Of("frame", Frame([])).SquareFeet, 1e-9);

    [Fact]
    public void Loose_parts_lie_flat_side_by_side() =>
        Assert.Equal(2 * 20 * 3 / 144.0, Footprint.Of("stile", Frame([])).SquareFeet, 1e-9);

    private static Job Frame(IReadOnlyList<Joint> joints) => AJob.With(AJob.Part("stile", 20, 3, count: 2), AJob.Part("rail", 19.5m, 3, count: 2)) with
    {
        Joints = joints,
        GlueUps = [new() { Name = "frame", Joins = ["stile", "rail"], Adhesive = "liquid hide glue" }],
    };
}
