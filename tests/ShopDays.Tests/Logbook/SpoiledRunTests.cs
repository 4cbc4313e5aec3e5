using ShopDays.Cli.Files;
using ShopDays.Logbook;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Logbook;

public sealed class SpoiledRunTests
{
    [Fact]
    public void A_task_over_two_entries_is_one_run_with_what_was_spoiled_in_either()
    {
        var run = Assert.Single(Runs(Entry(1, finished: false, Setback.Spoiled), Entry(2, finished: true, Setback.None)));
        Assert.Equal((8, 1), (run.Pieces, run.Spoiled));
    }

    [Fact]
    public void Another_setback_spoils_nothing() => Assert.Equal(0, Assert.Single(Runs(Entry(1, finished: true, Setback.TearOut))).Spoiled);

    [Fact]
    public void A_day_that_was_marked_as_unusual_counts_all_the_same() =>
        Assert.Equal(1, Assert.Single(Runs(Entry(1, finished: true, Setback.Spoiled) with { Standing = Standing.Unusual })).Spoiled);

    [Fact]
    public void No_more_are_spoiled_than_there_were() =>
        Assert.Equal(1, Assert.Single(Runs(Entry(1, finished: false, Setback.Spoiled, pieces: 1), Entry(2, finished: true, Setback.Spoiled, pieces: 1))).Spoiled);

    [Fact]
    public void A_task_without_an_operation_is_no_run() => Assert.Empty(Runs(Entry(1, finished: true, Setback.Spoiled) with { Work = null }));

    [Theory]
    [InlineData("rip A1, cuts 1-4, pass 1", 0)]
    [InlineData("rip A1, cuts 1-4", 4)]
    [InlineData("rip A1, cuts 1-4, pass x", 4)]
    public void Of_a_run_that_was_sawn_in_passes_the_pieces_count_with_the_last(string task, int pieces)
    {
        Assert.Equal((pieces, 0), Of(Setback.None));
        Assert.Equal((Math.Max(pieces, 1), 1), Of(Setback.Spoiled));

        (int Pieces, int Spoiled) Of(Setback setback)
        {
            var run = Assert.Single(Runs(Entry(1, finished: true, setback) with { Task = task, Work = new() { Operation = "rip", Method = "hand", Unit = "ft of cut", Quantity = 12, Run = 4, Batch = 4 } }));
            return (run.Pieces, run.Spoiled);
        }
    }

    [Fact]
    public void A_task_of_the_makers_own_that_is_called_a_pass_counts_all_its_pieces() =>
        Assert.Equal(8, Assert.Single(Runs(Entry(1, finished: true, Setback.None) with { Task = "mortise: leg, pass 1" })).Pieces);

    private static IReadOnlyList<SpoiledRun> Runs(params LogEntry[] entries) => SpoiledRun.Of(WorkTimed.Of(entries, BuiltIn.Operations), entries, BuiltIn.Operations);

    private static LogEntry Entry(int number, bool finished, Setback setback, int pieces = 8) => new()
    {
        Id = new(number),
        Job = "table",
        Task = "mortise: leg",
        Work = new() { Operation = "mortise", Method = "hand", Unit = "mortise", Quantity = pieces, Run = pieces, Batch = pieces },
        Took = WorkTime.FromMinutes(40),
        On = new(new(2027, 3, number)),
        Worker = "maker",
        Finished = finished,
        Setback = setback,
    };
}
