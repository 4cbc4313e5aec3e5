using NodaTime;

namespace ShopDays.Cli.Phrases;

/// <summary>How far the search for a plan has come, for a passing line.</summary>
internal static class SearchWords
{
    /// <summary><c>1200 of 2000 schedules, finish Mon 5 Jul, 18:30, 14 shop days</c>.</summary>
    /// <param name="schedules">Schedules looked at so far.</param>
    /// <param name="budget">Schedules that are to be looked at.</param>
    /// <param name="finish">The finish of the best.</param>
    /// <param name="shopDays">Its days on which somebody works.</param>
    public static string Of(int schedules, int budget, ZonedDateTime finish, int shopDays) =>
        $"{CountWords.Number(schedules)} of {CountWords.Of(budget, "schedule")}, finish {DateWords.When(finish)}, {CountWords.Of(shopDays, "shop day")}";
}
