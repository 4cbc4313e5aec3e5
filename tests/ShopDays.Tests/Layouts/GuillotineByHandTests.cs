using ShopDays.Layouts;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Layouts;

/// <summary>Tiny boards against a search that tries every cut.</summary>
public sealed class GuillotineByHandTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Whatever_can_be_sawn_out_of_one_small_board_is_placed(int kerf)
    {
        var random = new Random(4711 + kerf);
        var allowances = Timber.Bare with { Kerf = Length.FromInches((decimal)kerf) };
        var fitting = 0;
        var missedAtOnce = 0;
        for (var trial = 0; trial < 160; trial++)
        {
            var (length, width) = (6 + random.Next(9), 4 + random.Next(7));
            List<(int Length, int Width)> sizes = [.. Enumerable.Range(0, 2 + random.Next(4)).Select(_ => (1 + random.Next(length), 1 + random.Next(width)))];
            var fits = CanSaw(length, width, sizes, kerf);
            fitting += fits ? 1 : 0;
            var found = Fits(LayoutEffort.Quick);
            missedAtOnce += fits && !found ? 1 : 0;
            Assert.True(fits == (found || Fits(LayoutEffort.Normal)), $"trial {trial}: {length} x {width}, kerf {kerf}: {string.Join(", ", sizes)}");

            bool Fits(LayoutEffort effort) => (fits || effort == LayoutEffort.Quick) && LayoutSearch.LayOut(Timber.Asked(
                [Timber.ABoard("A", length, width)],
                [.. sizes.Select((size, index) => Timber.APart($"part {index}", size.Length, size.Width))],
                allowances) with { Effort = effort }).Fits;
        }

        // The trials must hold both answers to mean anything; the quickest search may miss one in twenty.
        Assert.InRange(fitting, 15, 145);
        Assert.InRange(missedAtOnce, 0, fitting / 20);
    }

    private static bool CanSaw(int length, int width, List<(int Length, int Width)> sizes, int kerf)
    {
        if (sizes.Count == 0)
        {
            return true;
        }

        if (sizes.Exists(size => size.Length > length || size.Width > width)
            || sizes.Sum(size => (size.Length + kerf) * (size.Width + kerf)) > (length + kerf) * (width + kerf))
        {
            return false;
        }

        if (sizes.Count == 1)
        {
            return true;
        }

        for (var chosen = 1; chosen < (1 << sizes.Count) - 1; chosen++)
        {
            var near = sizes.Where((_, index) => ((chosen >> index) & 1) == 1).ToList();
            var far = sizes.Where((_, index) => ((chosen >> index) & 1) == 0).ToList();
            for (var at = 1; at < length - kerf; at++)
            {
                if (CanSaw(at, width, near, kerf) && CanSaw(length - at - kerf, width, far, kerf))
                {
                    return true;
                }
            }

            for (var at = 1; at < width - kerf; at++)
            {
                if (CanSaw(length, at, near, kerf) && CanSaw(length, width - at - kerf, far, kerf))
                {
                    return true;
                }
            }
        }

        return false;
    }
}
