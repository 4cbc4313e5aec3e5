using System.Diagnostics;
using ShopDays.Logbook;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>What is left of a task.</summary>
internal static class TaskLeft
{
    /// <summary>
    /// The task with what its log leaves of its quantity: known time beside the work and setups go down with it. A plan that
    /// breaks a task over sessions counts its setups once, and so does the rest of it: interrupted as planned, it takes what
    /// was planned. Without a quantity in the log it is as it was: how much
    /// is left of its time is then told by what was spent.
    /// </summary>
    public static ShopTask Of(TaskStanding standing)
    {
        if (standing.QuantityDone is not { } done)
        {
            return standing.Task;
        }

        Debug.Assert(standing.Task.Timing is TaskTiming.ByOperation, "only what an operation times has a quantity");
        var whole = (TaskTiming.ByOperation)standing.Task.Timing;
        var share = (whole.Quantity - done) / whole.Quantity;
        return standing.Task with
        {
            Timing = whole with
            {
                Quantity = whole.Quantity - done,
                Setups = whole.Setups * share,
                Besides = whole.Besides * share,
            },
        };
    }
}
