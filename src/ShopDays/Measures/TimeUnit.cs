namespace ShopDays.Measures;

/// <summary>A unit of time as it is written, largest first in <see cref="All"/>.</summary>
/// <param name="Names">What it may be called in a text; the first is how it is printed.</param>
/// <param name="Designator">Its letter in ISO 8601.</param>
/// <param name="Seconds">How long it is; a day is 24 hours of the clock.</param>
internal sealed record TimeUnit(IReadOnlyList<string> Names, char Designator, decimal Seconds)
{
    public static readonly TimeUnit Week = new(["w", "wk", "week", "weeks"], 'W', 604_800);
    public static readonly TimeUnit Day = new(["d", "day", "days"], 'D', 86_400);
    public static readonly TimeUnit Hour = new(["h", "hr", "hrs", "hour", "hours"], 'H', 3_600);
    public static readonly TimeUnit Minute = new(["min", "m", "mins", "minute", "minutes"], 'M', 60);
    public static readonly TimeUnit Second = new(["s", "sec", "secs", "second", "seconds"], 'S', 1);

    public static IReadOnlyList<TimeUnit> All { get; } = [Week, Day, Hour, Minute, Second];

    public static TimeUnit? Named(string word) => All.FirstOrDefault(unit => unit.Names.Contains(word, StringComparer.OrdinalIgnoreCase));
}
