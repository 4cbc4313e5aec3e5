using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Days;

/// <summary>What every session loses before and after the work.</summary>
public sealed record Overhead
{
    /// <summary>An overhead.</summary>
    /// <param name="openUp">From the door to the first stroke: lights, heat, tools out, reading where one stopped; not negative.</param>
    /// <param name="sweepUp">From the last stroke to the door: sweeping, wiping, oiling, writing up; not negative.</param>
    /// <exception cref="ArgumentOutOfRangeException">One of them is negative.</exception>
    public Overhead(WorkTime openUp, WorkTime sweepUp)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(openUp, WorkTime.Zero);
        ArgumentOutOfRangeException.ThrowIfLessThan(sweepUp, WorkTime.Zero);
        (OpenUp, SweepUp) = (openUp, sweepUp);
    }

    /// <summary>Work from the door to the door.</summary>
    public static Overhead None { get; } = new(WorkTime.Zero, WorkTime.Zero);

    /// <summary>What is lost at the beginning.</summary>
    public WorkTime OpenUp { get; }

    /// <summary>What is lost at the end.</summary>
    public WorkTime SweepUp { get; }

    internal Duration OpenUpOnTheClock => Duration.FromMinutes(OpenUp.Minutes);

    internal Duration SweepUpOnTheClock => Duration.FromMinutes(SweepUp.Minutes);
}
