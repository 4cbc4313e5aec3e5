using ShopDays.Measures;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans;

/// <summary>Whose cap on heavy work is too low, where it stands in the shop's file, and how high it must be.</summary>
internal sealed class HeavyMeasure(PlanRequest request, HeavyCaps caps)
{
    /// <summary>The caps that are in the way of those for whom the least more would do.</summary>
    /// <param name="minutes">The heavy work of one day.</param>
    /// <param name="teams">Those who could do it but for their caps; at least one.</param>
    /// <returns>What the caps allow, and what they would have to; null when none is in the way.</returns>
    public (string Allowed, string Raised)? For(int minutes, IEnumerable<int[]> teams)
    {
        var lowest = teams.Select(team => Lower(minutes, team)).MinBy(low => low.Sum(worker => minutes - caps.Of(worker)))!;
        return lowest.Length == 0
            ? null
            : (string.Join(" and ", lowest.Select(worker => $"{PlaceOf(worker)} allows {Words(caps.Of(worker))} a day")), Raised(minutes, lowest));
    }

    /// <summary>What the caps that are lower than some minutes would have to be.</summary>
    public string Raised(int minutes) => Raised(minutes, [.. Enumerable.Range(0, request.Calendars.Count).Where(worker => caps.Of(worker) < minutes || caps.IsTwoDaysBelow(worker, minutes)).DistinctBy(PlaceOf)]);

    private string Raised(int minutes, int[] workers)
    {
        var twoDays = workers.Where(worker => caps.IsTwoDaysBelow(worker, minutes)).Select(TwoDaysOf).Distinct();
        return $"{Words(minutes)} as {string.Join(" and as ", workers.Select(PlaceOf).Concat(twoDays))}";
    }

    /// <summary>Workers with a lower cap, one of those who have the shop's.</summary>
    private int[] Lower(int minutes, int[] team) => [.. team.Where(worker => caps.Of(worker) < minutes).DistinctBy(PlaceOf)];

    private string PlaceOf(int worker) => request.Calendars[worker].Worker is var name && request.Limits.HeavyOf.ContainsKey(name)
        ? $"'heavy-per-day' of {name} under 'workers'"
        : "'heavy-per-day' under 'limits'";

    private string TwoDaysOf(int worker) => request.Calendars[worker].Worker is var name && request.Limits.HeavyInTwoDaysFor.ContainsKey(name)
        ? $"'heavy-in-two-days' of {name} under 'workers'"
        : "'heavy-in-two-days' under 'limits'";

    private static string Words(int minutes) => WorkTimeText.Write(WorkTime.FromMinutes(minutes));
}
