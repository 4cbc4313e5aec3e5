using NodaTime;
using NodaTime.Testing;

namespace ShopDays.Bench.Tests;

/// <summary>A clock that goes when it is told to.</summary>
internal static class FakeClocks
{
    /// <summary>Puts it forward.</summary>
    public static void AdvanceMinutes(this FakeClock clock, int minutes) => clock.Advance(Duration.FromMinutes(minutes));
}
