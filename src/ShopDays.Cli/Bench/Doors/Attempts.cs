using System.Collections.Concurrent;
using NodaTime;

namespace ShopDays.Cli.Bench.Doors;

/// <summary>Counts keys that did not fit, by the machine that they came from: ten a minute, and no more are looked at.</summary>
internal sealed class Attempts(IClock clock)
{
    private const int Most = 10;

    // So many machines are in no shop: beyond them all are counted as one, and memory stays as it is.
    private const int MostMachines = 1000;

    private static readonly Duration Span = Duration.FromMinutes(1);

    private readonly ConcurrentDictionary<string, (Instant Since, int Count)> counts = new(StringComparer.Ordinal);

    /// <summary>Whether a machine must wait.</summary>
    public bool AreSpent(string machine) => counts.TryGetValue(Counted(machine), out var one) && one.Count >= Most && clock.GetCurrentInstant() - one.Since < Span;

    /// <summary>Counts one.</summary>
    public void Count(string machine)
    {
        var now = clock.GetCurrentInstant();
        counts.AddOrUpdate(Counted(machine), (now, 1), (_, one) => now - one.Since < Span ? (one.Since, one.Count + 1) : (now, 1));
    }

    private string Counted(string machine) => counts.ContainsKey(machine) || counts.Count < MostMachines ? machine : "";
}
