using ShopDays.Measures;

namespace ShopDays.Cli.Phrases;

/// <summary>Times at the bench in hours and minutes under each other, to the nearest minute, halves away from zero.</summary>
internal static class HourWords
{
    /// <summary><c>12:05</c>, <c>0:40</c>.</summary>
    public static string Of(WorkTime time)
    {
        var minutes = WholeMinutes(time);
        return FormattableString.Invariant($"{(minutes < 0 ? "-" : "")}{Math.Abs(minutes) / 60}:{Math.Abs(minutes) % 60:00}");
    }

    /// <summary><c>+0:25</c>, <c>-1:10</c>, <c>0:00</c>.</summary>
    public static string Signed(WorkTime time) => (WholeMinutes(time) > 0 ? "+" : "") + Of(time);

    /// <summary>The minutes that are written.</summary>
    public static long WholeMinutes(WorkTime time) => (long)Math.Round(time.Minutes, MidpointRounding.AwayFromZero);
}
