using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Json;

/// <summary>How far a finish moved and why, for other programs; the days of the causes add up.</summary>
internal static class MovedJson
{
    /// <summary>The same as an object to be written; null where nothing can be said.</summary>
    public static object? Of(MovedFinish? moved, IReadOnlyList<MovedRow> why) => moved is null ? null : new
    {
        Promised = JsonAnswer.Date(moved.Promised),
        Now = JsonAnswer.Date(moved.Now),
        moved.IsSafe,
        moved.Days,
        Causes = why.Select(row => new { row.Move.Cause, row.Move.Days, Minutes = JsonAnswer.Minutes(row.Move.Work), Text = row.What, Awaited = row.Move.Arrived?.One.Name, row.Move.Arrived?.DaysLate }),
    };
}
