namespace ShopDays.Plans.Scheduling;

/// <summary>Heavy work that each worker does in a day at most, and in a day and the next together, in minutes.</summary>
/// <param name="each">The cap of each worker; a single one is everybody's.</param>
/// <param name="inTwoDays">
/// The cap of each worker on two days running, not below that of a day; one that is null follows from the cap of a day, as
/// <see cref="UsualInTwoDays"/> says. Null where the day after a heavy one is like any other.
/// </param>
internal sealed class HeavyCaps(IReadOnlyList<int> each, IReadOnlyList<int?>? inTwoDays = null)
{
    /// <summary>No cap for anybody.</summary>
    public static HeavyCaps None { get; } = CompiledCalendar.Never;

    /// <summary>Whether there is a cap for somebody.</summary>
    public bool IsAny => each.Any(cap => cap < CompiledCalendar.Never);

    /// <summary>The least that somebody's cap is.</summary>
    public int Least => each.Min();

    /// <summary>The different caps of a day, the greatest first.</summary>
    public IEnumerable<int> Different => each.Distinct().OrderDescending();

    /// <summary>The different caps of two days running, the greatest first.</summary>
    public IEnumerable<int> DifferentInTwoDays => each.Select((_, worker) => OfTwoDays(worker)).Distinct().OrderDescending();

    /// <summary>The same cap for everybody.</summary>
    public static implicit operator HeavyCaps(int minutes) => new([minutes]);

    /// <summary>The cap of a worker.</summary>
    public int Of(int worker) => each[each.Count == 1 ? 0 : worker];

    /// <summary>The cap of a worker on two days running; more than can ever be done where it is twice that of a day or more.</summary>
    public int OfTwoDays(int worker) =>
        inTwoDays is not null && (InTwoDays(worker) ?? UsualInTwoDays(Of(worker))) is var cap && cap < 2L * Of(worker) ? cap : 2 * CompiledCalendar.Never;

    /// <summary>Whether a worker's cap on two days running is one of its own, and lower than some minutes.</summary>
    public bool IsTwoDaysBelow(int worker, int minutes) => inTwoDays is not null && InTwoDays(worker) < minutes;

    /// <summary>The cap of a team: that of the one with the least.</summary>
    public int OfTeam(IEnumerable<int> team) => team.Select(Of).DefaultIfEmpty(CompiledCalendar.Never).Min();

    /// <summary>The greatest cap that a crew of so many can have.</summary>
    public int OfCrew(int crew) => OfCrew(crew, Of);

    /// <summary>The greatest cap on two days running that a crew of so many can have.</summary>
    public int OfCrewInTwoDays(int crew) => OfCrew(crew, OfTwoDays);

    /// <summary>The same caps, each raised to some minutes at least.</summary>
    public HeavyCaps AtLeast(int minutes) => new(
        [.. each.Select(cap => Math.Max(cap, minutes))],
        inTwoDays is null ? null : [.. inTwoDays.Select(cap => cap is { } own ? Math.Max(own, minutes) : (int?)null)]);

    /// <summary>The same caps of a day, and none on two days running.</summary>
    public HeavyCaps WithoutTwoDays() => new(each);

    /// <summary>
    /// What two days running hold where nothing else is said: the day after a full heavy one holds six tenths of the cap
    /// (common practice, no source).
    /// </summary>
    /// <param name="perDay">The cap of a day.</param>
    public static int UsualInTwoDays(int perDay) => perDay + (int)(perDay * 6L / 10);

    private int OfCrew(int crew, Func<int, int> of) => crew == 0
        ? CompiledCalendar.Never
        : each.Count == 1 ? of(0) : Enumerable.Range(0, each.Count).Select(of).OrderDescending().ElementAt(crew - 1);

    private int? InTwoDays(int worker) => inTwoDays![inTwoDays.Count == 1 ? 0 : worker];
}
