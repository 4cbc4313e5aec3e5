using ShopDays.Plans;

namespace ShopDays.Cli.Json;

/// <summary>A wait of a plan, for other programs.</summary>
internal static class WaitJson
{
    /// <summary>What is awaited from others; null for a wait of the work's own.</summary>
    public static object? AwaitedOf(PlannedWait wait) => wait.Awaited is not { } awaited ? null : new
    {
        What = awaited.One.Name,
        awaited.One.Decision.From,
        Ordered = awaited.One.Decision.IsOrdered,
        Since = JsonAnswer.Time(wait.Start),
        Early = JsonAnswer.Time(awaited.Early),
        Late = JsonAnswer.Time(awaited.Late),
        awaited.DaysLate,
    };
}
