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

    /// <summary>
    /// Heavy work in a day and the next together, not less than in one day; null where it follows from that: a day after
    /// a full heavy one then holds six tenths of the cap (common practice, no source).
    /// </summary>
    public WorkTime? HeavyInTwoDays { get; init; }

    /// <summary>Heavy work in two days running of those whose measure is another, by their names.</summary>
    public IReadOnlyDictionary<string, WorkTime> HeavyInTwoDaysFor { get; init; } = new Dictionary<string, WorkTime>();

    /// <summary>Heavy work in two days running of somebody; null where it follows from what they do in one, as it does for those with a cap of a day of their own.</summary>
    public WorkTime? HeavyInTwoDaysOf(string worker) =>
        HeavyInTwoDaysFor.TryGetValue(worker, out var own) ? own : HeavyOf.ContainsKey(worker) ? null : HeavyInTwoDays;

    /// <summary>Heavy work in one day of whoever does the most.</summary>
    public WorkTime MostHeavyPerDay => HeavyOf.Values.Concat(HeavyOf.Count < Workers ? [HeavyPerDay] : []).Max();

    /// <summary>How long heavy work goes on before a rest or lighter work: 25 min, 20 to 30 being usual (common practice, no source).</summary>
    public WorkTime Bout { get; init; } = WorkTime.FromMinutes(25);

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
