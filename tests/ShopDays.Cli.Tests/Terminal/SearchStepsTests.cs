using NodaTime;
using ShopDays.Cli.Terminal;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

public sealed class SearchStepsTests
{
    [Fact]
    public void The_search_for_a_plan_says_how_many_schedules_it_has_seen_and_what_the_best_of_them_is()
    {
        var said = new List<string>();
        new SearchSteps(words => said.Add(words()), 2000).Report(new(1200, new LocalDateTime(2027, 7, 5, 18, 30).InUtc(), 14));
        Assert.Equal("1200 of 2000 schedules, finish Mon 5 Jul, 18:30, 14 shop days", Assert.Single(said));
    }
}
