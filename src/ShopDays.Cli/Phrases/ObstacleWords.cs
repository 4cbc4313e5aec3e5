using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>What stands against a plan, in one line.</summary>
internal static class ObstacleWords
{
    /// <summary>The task, the limit and the least that would help.</summary>
    public static string Of(Unplannable reason) => $"{(reason.Task is null ? "" : reason.Task.Name + ": ")}{reason.Limit}; {reason.Cure}";
}
