using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Tests.Layouts;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, Journal of Heuristics 2 (1996) 5-30, the recipe of its triplets, from memory: three lengths fill a stick exactly, so the fewest sticks are known")]
public sealed class TripletSticksTests
{
    [Theory]
    [InlineData(60, 1, 0)]
    [InlineData(60, 2, 0)]
    [InlineData(60, 3, 0)]
    [InlineData(60, 4, 2)]
    [InlineData(60, 5, 2)]
    [InlineData(60, 6, 2)]
    [InlineData(120, 7, 0)]
    [InlineData(120, 8, 0)]
    [InlineData(120, 9, 2)]
    [InlineData(120, 10, 2)]
    [InlineData(249, 11, 0)]
    [InlineData(249, 12, 0)]
    public void Lengths_come_out_of_the_fewest_sticks(int pieces, int seed, int kerf)
    {
        var lengths = Lengths(pieces / 3, new Random(seed));
        IReadOnlyList<Board> sticks = [.. Timber.Boards((pieces / 3) + 2, name => Timber.ABoard(name, 1, 1) with
        {
            Length = Mm(1000 + (2 * kerf)),
            Width = Mm(50),
            Thickness = Mm(25),
        })];
        IReadOnlyList<Part> parts = [.. lengths.Select((length, index) => Timber.APart(FormattableString.Invariant($"piece {index + 1}"), 1, 1) with
        {
            Length = Mm(length),
            Width = Mm(50),
            Thickness = Mm(25),
        })];
        var layout = LayoutSearch.LayOut(Timber.Asked(sticks, parts, Timber.Bare with { Kerf = Mm(kerf) }) with { Effort = LayoutEffort.Normal });
        Assert.True(layout.Fits);
        Assert.Equal(pieces / 3, layout.Boards.Count);
    }

    /// <summary>Stick of 1,000: one piece of 380 to 490, the others of 250 or more, so that no stick holds four.</summary>
    private static int[] Lengths(int sticks, Random chance)
    {
        int[] lengths = [.. Enumerable.Range(0, sticks).SelectMany(_ =>
        {
            var first = chance.Next(380, 491);
            var second = chance.Next(250, ((1000 - first) / 2) + 1);
            return (int[])[first, second, 1000 - first - second];
        })];
        chance.Shuffle(lengths);
        return lengths;
    }

    private static Length Mm(int millimetres) => Length.FromMillimetres((decimal)millimetres);
}
