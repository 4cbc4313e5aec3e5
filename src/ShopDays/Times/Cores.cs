namespace ShopDays.Times;

/// <summary>On which threads courses are worked out.</summary>
internal static class Cores
{
    /// <summary>
    /// Those that the caller runs on: all cores as a rule. One who has others to serve meanwhile calls from a scheduler with
    /// fewer threads, and keeps the rest free. What comes out is the same.
    /// </summary>
    public static ParallelOptions OfTheCaller => new() { TaskScheduler = TaskScheduler.Current };
}
