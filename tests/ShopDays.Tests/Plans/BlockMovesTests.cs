using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Blocks moved one at a time, for fewer days and turns at the same finish.</summary>
public sealed class BlockMovesTests
{
    private const int Day = 24 * 60;

    /// <summary>Work of two kinds by turns, and a wait of a fortnight that settles the finish whatever is done first.</summary>
    private static readonly ScheduleProblem Shop = new(
        [
            new() { Minutes = 30, SetupKey = 0 },
            new() { Minutes = 30, SetupKey = 0 },
            .. Enumerable.Range(0, 12).Select(task => new CompiledTask { Minutes = 20, SetupKey = task % 2 }),
        ],
        [new(0, 1, 14 * Day)],
        [new([.. Enumerable.Range(0, 30).Select(day => new OpenStretch(day * Day, (day * Day) + 150, day))], [])],
        [],
        changeover: 5);

    [Fact]
    public void Like_work_is_put_together_where_a_wait_settles_the_finish()
    {
        var given = new Schedule(Shop.Tasks.Length);
        Assert.True(new ScheduleGenerator(Shop).Generate(Given, Shop.Minutes.AsSpan(), given));
        var moves = new BlockMoves(Shop, [], Given, seed: 1);
        Assert.NotNull(moves.Find(4000));
        Assert.Equal((14 * Day) + 60, moves.Best.Finish);
        Assert.True(given.Changeovers > 3, $"{given.Changeovers} turns in the order given");

        // A move at a time finds at most a turn for each of the two days.
        Assert.InRange(moves.Best.Changeovers, 0, 2);
    }

    [Fact]
    public void When_moves_gain_nothing_for_long_enough_they_stop()
    {
        var moves = new BlockMoves(Shop, [], Given, seed: 1);
        Assert.NotNull(moves.Find(1_000_000, patience: 300));
        Assert.InRange(moves.Tried, 301, 50_000);
    }

    private static int[] Given => [.. Enumerable.Range(0, Shop.Blocks)];
}
