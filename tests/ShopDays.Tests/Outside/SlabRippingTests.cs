using ShopDays.Layouts;
using ShopDays.Parts;
using ShopDays.Tests.Layouts;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "common practice, no source")]
public sealed class SlabRippingTests
{
    [Fact]
    public void Straightening_and_ripping_three_ten_foot_slabs_into_parts_is_some_160_feet()
    {
        var slabs = Timber.Boards(3, name => Timber.ABoard(name, 120, 16, 2) with { Edges = BoardEdges.Live, Faces = BoardFaces.Rough });
        var layout = Timber.LayOut(slabs, [Timber.APart("plank", 108, 3.25m, 1.75m, 12)], Timber.ByHand);
        Assert.True(layout.Fits);

        // "Some 160 ft": a tenth either way.
        Assert.InRange(layout.RipLength.Feet, 144, 176);
        Assert.Equal(6, layout.Boards.Sum(board => board.Cuts.Count(cut => cut.Kind == CutKind.Straighten)));
    }
}
