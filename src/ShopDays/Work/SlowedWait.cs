using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>What a shop's nights make of a wait.</summary>
/// <param name="Factor">How many times as long as at 20 degrees C it takes.</param>
/// <param name="Lies">The temperature where the work lies when it begins.</param>
/// <param name="IsInWarmRoom">Whether that is the warm room.</param>
public sealed record SlowedWait(double Factor, Temperature Lies, bool IsInWarmRoom)
{
    /// <summary>What is less than this is not worth a word.</summary>
    private const double Told = 0.05;

    /// <summary>Looks at a wait.</summary>
    /// <param name="setting">What sets.</param>
    /// <param name="start">When it begins.</param>
    /// <param name="atTwenty">How long it takes at 20 degrees C; above zero.</param>
    /// <returns>Null where nothing is to be said: it lies in the shop and takes as long as it should.</returns>
    public static SlowedWait? Of(Setting setting, ZonedDateTime start, Duration atTwenty)
    {
        var factor = (setting.EndFrom(start, atTwenty) - start) / atTwenty;
        var isInWarmRoom = setting.Nights.IsWarmRoomUsed(start.Month);
        return isInWarmRoom || Math.Abs(factor - 1) >= Told ? new(factor, setting.Nights.WhereWorkLies(start.Month), isInWarmRoom) : null;
    }

    /// <summary>In words, for example <c>x 2.1 at 9 °C at night</c>.</summary>
    public string Words
    {
        get
        {
            var times = Math.Abs(Factor - 1) >= Told ? FormattableString.Invariant($"x {Factor:0.0} at {Lies}") : "";
            return (times, IsInWarmRoom) switch
            {
                ("", _) => "overnight in the warm room",
                (_, true) => times + ", overnight in the warm room",
                _ => times + " at night",
            };
        }
    }

    /// <summary>A wait's reason with what the nights make of it.</summary>
    public static string Reason(Wait wait, ZonedDateTime start) => wait.SlowedFrom(start) is { } slowed ? $"{wait.Reason} ({slowed.Words})" : wait.Reason;
}
