using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>What one maker and one shop can do.</summary>
public sealed record ShopLimits
{
    /// <summary>Heavy work in one day: 2 h 30 unless the shop says otherwise (common practice, no source).</summary>
    public WorkTime HeavyPerDay { get; init; } = WorkTime.FromMinutes(150);

    /// <summary>Heavy work in one day of those whose measure is another, by their names.</summary>
    public IReadOnlyDictionary<string, WorkTime> HeavyOf { get; init; } = new Dictionary<string, WorkTime>();

    /// <summary>Heavy work in one day of somebody.</summary>
    public WorkTime HeavyPerDayOf(string worker) => HeavyOf.TryGetValue(worker, out var own) ? own : HeavyPerDay;

    /// <summary>Heavy work in one day of whoever does the most.</summary>
    public WorkTime MostHeavyPerDay => HeavyOf.Values.Concat(HeavyOf.Count < Workers ? [HeavyPerDay] : []).Max();

    /// <summary>
    /// What one person lifts alone: 23 kg, the load constant of the revised lifting equation under ideal conditions
    /// (NIOSH 94-110, rev. 2021).
    /// </summary>
    public Mass LiftAlone { get; init; } = Mass.FromKilograms(23);

    /// <summary>Whether a weight is more than one person lifts alone here.</summary>
    public bool IsForTwo(Mass weight) => weight > LiftAlone;

    /// <summary>The longest piece that is ripped or planed in one pass without moving it: 8 ft (common practice, no source).</summary>
    public Length LongestPass { get; init; } = Length.FromInches(96m);

    /// <summary>Benches, at least 1.</summary>
    public int Benches { get; init; } = 1;

    /// <summary>Floor that is free for assemblies in clamps and coats that dry; null when there is no lack of it.</summary>
    public Area? Floor { get; init; }

    /// <summary>Its nights, where they are colder or damper than the tables of glues and finishes take for granted; null for a shop that is heated through.</summary>
    public ShopNights? Nights { get; init; }

    /// <summary>The clamps of the shop; null when it does not say which it has.</summary>
    public IReadOnlyList<ClampsHeld>? Clamps { get; init; }

    /// <summary>People in the shop, at least 1.</summary>
    public int Workers { get; init; } = 1;
}
