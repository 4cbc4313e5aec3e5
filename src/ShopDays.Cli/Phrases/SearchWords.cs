using NodaTime;

namespace ShopDays.Cli.Phrases;

/// <summary>How far the search for a plan has come, for a passing line.</summary>
internal static class SearchWords
{
    /// <summary><c>1200 of 2000 schedules, finish Mon 5 Jul, 18:30, none before Thu 1 Jul, 17:00</c>.</summary>
    /// <param name="schedules">Schedules looked at so far.</param>
    /// <param name="budget">Schedules that are to be looked at.</param>
    /// <param name="finish">The finish of the best; null when none is done within the hours looked at.</param>
    /// <param name="bound">When no plan could be finished before.</param>
    public static string Of(int schedules, int budget, ZonedDateTime? finish, ZonedDateTime bound) =>
        $"{CountWords.Number(schedules)} of {CountWords.Of(budget, "schedule")}{(finish is { } best ? $", finish {DateWords.When(best)}" : "")}, none before {DateWords.When(bound)}";
}
