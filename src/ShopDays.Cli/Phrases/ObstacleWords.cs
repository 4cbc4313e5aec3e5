using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>What stands against a plan, in one line.</summary>
internal static class ObstacleWords
{
    /// <summary>A line for each; where several have one cure it is told once.</summary>
    /// <param name="reasons">What stands against a plan.</param>
    /// <param name="withOrders">Whether the order of each task is said.</param>
    public static IEnumerable<string> Lines(IReadOnlyList<Unplannable> reasons, bool withOrders = false) => reasons.Select((reason, place) =>
        (withOrders && reason.Order is { } order ? order + ": " : "")
        + (reasons.Take(place).FirstOrDefault(other => other.Task is not null && reason.Task is not null && other.Cure == reason.Cure) is { } same
            ? $"{reason.Task!.Name}: {reason.Limit}; what would do for {same.Task!.Name} is enough"
            : Of(reason)));

    /// <summary>The task, the limit and the least that would help.</summary>
    public static string Of(Unplannable reason) => $"{(reason.Task is null ? "" : reason.Task.Name + ": ")}{reason.Limit}; {reason.Cure}";
}
