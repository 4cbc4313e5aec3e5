namespace ShopDays.Plans.Scheduling;

/// <summary>Heavy work that each worker does in a day at most, in minutes.</summary>
/// <param name="each">The cap of each worker; a single one is everybody's.</param>
internal sealed class HeavyCaps(IReadOnlyList<int> each)
{
    /// <summary>No cap for anybody.</summary>
    public static HeavyCaps None { get; } = CompiledCalendar.Never;

    /// <summary>Whether there is a cap for somebody.</summary>
    public bool IsAny => each.Any(cap => cap < CompiledCalendar.Never);

    /// <summary>The least that somebody's cap is.</summary>
    public int Least => each.Min();

    /// <summary>The different caps, the greatest first.</summary>
    public IEnumerable<int> Different => each.Distinct().OrderDescending();

    /// <summary>The same cap for everybody.</summary>
    public static implicit operator HeavyCaps(int minutes) => new([minutes]);

    /// <summary>The cap of a worker.</summary>
    public int Of(int worker) => each[each.Count == 1 ? 0 : worker];

    /// <summary>The cap of a team: that of the one with the least.</summary>
    public int OfTeam(IEnumerable<int> team) => team.Select(Of).DefaultIfEmpty(CompiledCalendar.Never).Min();

    /// <summary>The greatest cap that a crew of so many can have.</summary>
    public int OfCrew(int crew) => crew == 0 ? CompiledCalendar.Never : each[0] is var all && each.Count == 1 ? all : each.OrderDescending().ElementAt(crew - 1);

    /// <summary>The same caps, each raised to some minutes at least.</summary>
    public HeavyCaps AtLeast(int minutes) => new([.. each.Select(cap => Math.Max(cap, minutes))]);
}
