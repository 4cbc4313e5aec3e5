using ShopDays.Layouts;
using ShopDays.Layouts.Search;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Layouts;

public sealed class SmallJobTests
{
    [Fact]
    public void No_way_of_cutting_a_small_job_is_cheaper()
    {
        var chance = new Random(1);
        var fitting = 0;
        for (var job = 0; job < 24; job++)
        {
            var request = Make(chance);
            var least = new EveryWayToCut(request).LeastMoney();
            var (_, arrangement) = LayoutSearch.Arrange(request, [.. request.Parts.Select(part => Demand.For(part, []))]);
            Assert.Equal(double.IsFinite(least), arrangement.Left.Count == 0);
            if (double.IsFinite(least))
            {
                // The same sums in another order; a hundredth of a cent is far below any cut.
                Assert.Equal(least, arrangement.Score().Money, 1e-4);
                fitting++;
            }
        }

        Assert.InRange(fitting, 12, 24);
    }

    [Fact]
    public void More_effort_with_the_same_seed_is_never_dearer()
    {
        var chance = new Random(2);
        for (var job = 0; job < 4; job++)
        {
            var request = Make(chance);
            var scores = Enum.GetValues<LayoutEffort>().Select(effort =>
                LayoutSearch.Arrange(request with { Effort = effort }, [.. request.Parts.Select(part => Demand.For(part, []))]).Arrangement.Score()).ToList();
            Assert.False(scores[0].Beats(scores[1]), FormattableString.Invariant($"job {job}"));
            Assert.False(scores[1].Beats(scores[2]), FormattableString.Invariant($"job {job}"));
        }
    }

    /// <summary>Up to eight pieces of three kinds on two boards, whole inches, with a kerf of an inch or none.</summary>
    private static LayoutRequest Make(Random chance)
    {
        IReadOnlyList<Board> boards = [.. Enumerable.Range(0, 2).Select(board =>
            Timber.ABoard(board == 0 ? "A" : "B", chance.Next(14, 37), chance.Next(5, 13)) with { Price = new Money(chance.Next(10, 40), Timber.Dollars) })];
        IReadOnlyList<Part> parts = [.. Enumerable.Range(0, 3).Select(kind =>
            Timber.APart(FormattableString.Invariant($"part {kind}"), chance.Next(4, 15), chance.Next(2, 6), count: chance.Next(1, kind == 0 ? 3 : 4)))];
        return Timber.Asked(boards, parts, Timber.Bare with { Kerf = Length.FromInches((decimal)chance.Next(2)) }) with { Effort = LayoutEffort.Normal };
    }
}
