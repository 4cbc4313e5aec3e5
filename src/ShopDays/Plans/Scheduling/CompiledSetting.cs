namespace ShopDays.Plans.Scheduling;

/// <summary>How long a glue or coat takes to set, by the minute at which it begins to: each part of it as slow as the spell of the year that it falls in.</summary>
/// <remarks>What begins later never ends sooner, so a placed task's end is enough to know what follows it.</remarks>
internal sealed class CompiledSetting
{
    private const double Rounding = 1e-6;

    private readonly int[] begins;
    private readonly double[] factors;
    private readonly int minutes;
    private readonly int delay;

    /// <summary>Prepares it.</summary>
    /// <param name="begins">The minute with which each spell begins, rising; what is before the first is like it, and the last goes on for ever.</param>
    /// <param name="factors">How many times as long it takes in each, above 0.</param>
    /// <param name="minutes">How long it takes where the factor is 1, 0 or more.</param>
    /// <param name="delay">Minutes of the clock that go by before it begins to set; counted in all that it takes.</param>
    public CompiledSetting(int[] begins, double[] factors, int minutes, int delay = 0)
    {
        (this.begins, this.factors, this.minutes, this.delay) = (begins, factors, minutes, delay);
        (Least, Most) = (delay + InWhole(minutes * factors.Min()), delay + InWhole(minutes * factors.Max()));
    }

    /// <summary>How long it takes at least.</summary>
    public int Least { get; }

    /// <summary>How long it takes at most.</summary>
    public int Most { get; }

    /// <summary>Whether it takes longer in some spell than where the factor is 1.</summary>
    public bool IsSlowed => factors.Any(factor => factor > 1);

    /// <summary>The same after some more minutes of the clock in which nothing sets.</summary>
    public CompiledSetting After(int wait) => new(begins, factors, minutes, delay + wait);

    /// <summary>The same where no spell makes it slower.</summary>
    public CompiledSetting WithoutCold() => new(begins, [.. factors.Select(factor => Math.Min(1, factor))], minutes, delay);

    /// <summary>When it has set that begins to with a minute.</summary>
    public int EndFrom(int minute)
    {
        var (at, left, spell) = (minute + delay, (double)minutes, 0);
        while (spell + 1 < begins.Length)
        {
            var next = begins[spell + 1];
            if (next > at)
            {
                var room = (next - at) / factors[spell];
                if (left <= room)
                {
                    break;
                }

                (at, left) = (next, left - room);
            }

            spell++;
        }

        return (int)Math.Min(CompiledCalendar.Never, at + (long)InWhole(left * factors[spell]));
    }

    /// <summary>The last minute from which it has set by another; that other when it takes no time.</summary>
    public int LatestFor(int by)
    {
        var (enough, tooLate) = (by - Most, by);
        if (EndFrom(tooLate) <= by)
        {
            return tooLate;
        }

        while (tooLate - enough > 1)
        {
            var middle = enough + ((tooLate - enough) / 2);
            (enough, tooLate) = EndFrom(middle) <= by ? (middle, tooLate) : (enough, middle);
        }

        return enough;
    }

    private static int InWhole(double minutes) => (int)Math.Min(CompiledCalendar.Never, Math.Ceiling(minutes - Rounding));
}
