using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Json;

/// <summary>What the times of an answer come from.</summary>
internal static class TimesJson
{
    /// <summary>As an object to be written within an answer.</summary>
    public static object Of(TimesBehind behind) => new
    {
        behind.Source,
        TimedTasks = behind.Timed,
        HeldOut = behind.Odd,
        LeftOut = behind.LeftOut.Select(one => new { one.Reason, Entries = one.Entries.Select(entry => entry.Id.Number) }),
        behind.Notes,
    };
}
