using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Twelve pieces of work that fill four sessions of an hour, three in each, if they are put together well; the bound is met by any order.</summary>
public sealed class SearchAtTheBoundTests
{
    private static readonly int[] Minutes = [27, 22, 11, 26, 20, 14, 25, 19, 16, 24, 21, 15];

    [Fact]
    public void Where_none_can_finish_sooner_the_search_goes_on_until_breeding_brings_nothing_more()
    {
        var atOnce = Found(isForTheFinishAlone: true);
        var goingOn = Found(isForTheFinishAlone: false);
        Assert.True(goingOn.Score <= atOnce.Score);

        // It goes on beyond the few orders of the rules, and stops when breeding brings nothing more.
        Assert.InRange(goingOn.Tried, atOnce.Tried + 100, 2999);
    }

    [Fact]
    public void One_seed_gives_one_answer() => Assert.Equal(Found(isForTheFinishAlone: false), Found(isForTheFinishAlone: false));

    private static (ScheduleScore Score, int Tried) Found(bool isForTheFinishAlone)
    {
        var hours = new CompiledCalendar([.. Enumerable.Range(0, 20).Select(day => new OpenStretch(1440 * day, (1440 * day) + 60, day))], []);

        // The finish is that of a wait which ends on the tenth day, whatever comes first.
        var problem = new ScheduleProblem([.. Minutes.Select(minutes => new CompiledTask { Minutes = minutes }), new() { Minutes = 1440 * 10, Crew = 0 }], [], [hours], []);
        var search = new ScheduleSearch(problem, 1) { NoneBefore = 1440 * 10, IsForTheFinishAlone = isForTheFinishAlone };
        Assert.NotNull(search.Find(3000));
        Assert.True(search.IsAtBound);
        return (search.BestScore, search.Tried);
    }
}
