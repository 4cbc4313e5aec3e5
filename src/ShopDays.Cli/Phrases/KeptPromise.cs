using NodaTime;
using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>A promise that has just been put on record.</summary>
/// <param name="Promise">The promise.</param>
/// <param name="Before">How many of its job were on record before.</param>
internal sealed record KeptPromise(Promise Promise, int Before)
{
    /// <summary>A sentence about it.</summary>
    /// <param name="zone">The zone of the shop's clock.</param>
    public string In(DateTimeZone zone)
    {
        var date = Promise.P80 is { } known ? DateWords.Of(known.InZone(zone).Date) : "no date, since too few courses are finished within the years looked at";
        return Before == 0
            ? $"On record as promised: {date}."
            : $"On record as promised again: {date}. What progress compares with stays the first promise.";
    }
}
