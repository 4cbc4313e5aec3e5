using ShopDays.Cli.Files;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>A shop's nights, and what they mean for a job, for other programs.</summary>
internal static class NightsJson
{
    /// <summary>The nights of each month where work lies, and the remarks.</summary>
    public static object Of(ShopAndJob read, ShopNights nights) => new
    {
        Months = ShopNights.AllMonths.Select(month => new
        {
            Month = month,
            Celsius = Math.Round(nights.WhereWorkLies(month).Celsius, 2, MidpointRounding.AwayFromZero),
            InWarmRoom = nights.IsWarmRoomUsed(month),
        }),
        Remarks = NightRemarks.Of(read.Job, null, read.Waits, nights).Select(RemarkJson.Of),
    };

    /// <summary>What the nights make of a wait; null where they change nothing.</summary>
    public static object? Of(SlowedWait? slowed) => slowed is null ? null : new
    {
        Factor = Math.Round(slowed.Factor, 3, MidpointRounding.AwayFromZero),
        Celsius = Math.Round(slowed.Lies.Celsius, 2, MidpointRounding.AwayFromZero),
        InWarmRoom = slowed.IsInWarmRoom,
    };
}
