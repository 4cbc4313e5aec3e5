using ShopDays.Measures;
using ShopDays.Times;

namespace ShopDays.Cli.Phrases;

/// <summary>What a shop's nights make of the waits of an estimate, in words.</summary>
internal static class NightWords
{
    /// <summary>What follows the sum of the waits; empty in a heated shop.</summary>
    public static string Of(JobEstimate estimate)
    {
        if (estimate.InNights is not { } nights)
        {
            return "";
        }

        var month = MonthText.Runs([nights.Month]);
        var when = nights.AreLater ? $"from {month} on, each wait begun in the first month that is not too cold for it" : $"in the nights of {month}";
        return $" at the temperature of the tables, and to {WaitText.Write(nights.Waits)} {when}";
    }
}
