using CsCheck;
using ShopDays.Layouts;
using ShopDays.Layouts.Search;
using Xunit;

namespace ShopDays.Tests.Layouts;

/// <summary>
/// What holds of any layout, on thousands of jobs. Rounds of bettering change nothing in how a layout is put together, so
/// the many make do with a few; the full search has jobs of its own.
/// </summary>
public sealed class ManyRandomJobsTests
{
    private const int Jobs = 2_000;

    [Fact]
    public void Every_piece_is_placed_once_clear_of_the_others_and_the_flaws_and_comes_free_by_cuts_right_across()
    {
        var pieces = 0;
        RandomJobs.Small.Sample(
            job =>
            {
                var request = Timber.Asked(job.Boards, job.Parts, Timber.ByHand) with { Seed = job.Seed };
                var (problem, arrangement) = Arranged(request);
                var layout = new LayoutWriter(problem, arrangement, request).Write([]);

                // Counts, sizes, overlaps, flaws, the edges of the board, cuts from edge to edge, pieces as sawn, area to the kerf.
                Assert.Empty(LayoutCheck.Faults(job.Boards, job.Parts, Timber.ByHand, layout));
                Assert.InRange(layout.BestPossibleYield, layout.Yield, 1);
                Assert.True(layout.Cost.Least.Amount <= layout.Cost.Total.Amount);
                Interlocked.Add(ref pieces, layout.Boards.Sum(board => board.Blanks.Count));
            },
            iter: Jobs,
            print: RandomJobs.Print);

        // Jobs that no board yields anything of would prove nothing: there are some blanks to each on average.
        Assert.True(pieces > 2 * Jobs, $"only {pieces} blanks came out of {Jobs} jobs");
    }

    private static (LayoutProblem Problem, Arrangement Arrangement) Arranged(LayoutRequest request)
    {
        List<Demand> demands = [.. request.Parts.Select(part => Demand.For(part, request.Sawn))];
        var tried = 0;
        return LayoutSearch.Arrange(request, demands, _ => ++tried > 2);
    }
}
