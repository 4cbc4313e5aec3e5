using System.Diagnostics.CodeAnalysis;
using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>An adhesive, at 20 degrees C and 50 % humidity. What the tin says goes before it.</summary>
public sealed record Adhesive
{
    /// <summary>The name.</summary>
    public required string Name { get; init; }

    /// <summary>From spreading to first contact.</summary>
    public required WorkTime OpenTime { get; init; }

    /// <summary>From spreading to full pressure.</summary>
    public required WorkTime AssemblyTime { get; init; }

    /// <summary>How long the clamps stay on.</summary>
    public required Duration ClampTime { get; init; }

    /// <summary>From pressure until the joint may be planed or levered.</summary>
    public required Duration UntilWorked { get; init; }

    /// <summary>From pressure until the joint has its full strength and resists water as well as it ever will.</summary>
    public Duration FullCure { get; init; }

    /// <summary>The least temperature in degrees C.</summary>
    public required double LeastTemperature { get; init; }

    /// <summary>A remark; may be empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>Where its figures come from.</summary>
    public required string Source { get; init; }
}

/// <summary>Where a finish belongs in a build-up of several, from the wood outward.</summary>
public enum FinishLayer
{
    /// <summary>Stains and dyes: into bare wood.</summary>
    Stain,

    /// <summary>Oils.</summary>
    Oil,

    /// <summary>Shellac.</summary>
    Shellac,

    /// <summary>Varnish, lacquer, paint.</summary>
    Film,

    /// <summary>Wax and soap: last, since nothing else sticks to them.</summary>
    Wax,
}

/// <summary>A finish, at 20 degrees C and 50 % humidity. What the tin says goes before it.</summary>
public sealed record Finish
{
    /// <summary>The name.</summary>
    public required string Name { get; init; }

    /// <summary>Where it belongs when several finishes go on one thing.</summary>
    public required FinishLayer Layer { get; init; }

    /// <summary>Whether it is brushed on; wiped on otherwise.</summary>
    public bool IsBrushed { get; init; }

    /// <summary>Whether it leaves a film, which is rubbed down between coats.</summary>
    public bool IsFilm { get; init; }

    /// <summary>Whether its rags can set themselves on fire.</summary>
    public bool LeavesOilyRags { get; init; }

    /// <summary>Whether it turns white when it dries in damp air: shellac and lacquer (common practice, no source).</summary>
    public bool Blooms { get; init; }

    /// <summary>
    /// From a coat until dust no longer sticks to it; dusty work stays away as long. Films 4 h, oils and shellac 1 h, wax
    /// and stain none (common practice, no source).
    /// </summary>
    public Duration DustFree { get; init; }

    /// <summary>From one coat to the next.</summary>
    public required Duration Recoat { get; init; }

    /// <summary>From the last coat until the piece may be handled and used lightly.</summary>
    public required Duration LightUse { get; init; }

    /// <summary>From the last coat until it is fully hard.</summary>
    public required Duration FullCure { get; init; }

    /// <summary>The least temperature in degrees C.</summary>
    public required double LeastTemperature { get; init; }

    /// <summary>Where its figures come from.</summary>
    public required string Source { get; init; }
}

/// <summary>A rest that timber needs.</summary>
public sealed record Rest
{
    /// <summary>What for, for example <c>rest after resawing</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The shortest.</summary>
    public required Duration Low { get; init; }

    /// <summary>The usual.</summary>
    public required Duration Likely { get; init; }

    /// <summary>The longest.</summary>
    public required Duration High { get; init; }

    /// <summary>A remark; may be empty.</summary>
    public string Note { get; init; } = "";

    /// <summary>Where its figures come from.</summary>
    public required string Source { get; init; }
}

/// <summary>Adhesives, finishes and rests, looked up by name without regard to case.</summary>
public sealed class WaitTable(IReadOnlyList<Adhesive> adhesives, IReadOnlyList<Finish> finishes, IReadOnlyList<Rest> rests)
{
    /// <summary>The adhesives, in the order of the data file.</summary>
    public IReadOnlyList<Adhesive> Adhesives { get; } = adhesives;

    /// <summary>The finishes, in the order of the data file.</summary>
    public IReadOnlyList<Finish> Finishes { get; } = finishes;

    /// <summary>The rests, in the order of the data file.</summary>
    public IReadOnlyList<Rest> Rests { get; } = rests;

    /// <summary>
    /// Finds an adhesive by its name; the words may stand in another order, so that <c>liquid hide glue</c> finds
    /// <c>hide glue, liquid</c>.
    /// </summary>
    public bool TryFindAdhesive(string name, [NotNullWhen(true)] out Adhesive? adhesive) =>
        (adhesive = Adhesives.FirstOrDefault(one => SameWords(one.Name, name))) is not null;

    /// <summary>Finds a finish by its name, by its words in any order, or by its name less what stands in brackets.</summary>
    public bool TryFindFinish(string name, [NotNullWhen(true)] out Finish? finish) =>
        (finish = Finishes.FirstOrDefault(one => SameWords(one.Name, name))) is not null;

    /// <summary>Finds a rest by its name, or by its words in any order.</summary>
    public bool TryFindRest(string name, [NotNullWhen(true)] out Rest? rest) =>
        (rest = Rests.FirstOrDefault(one => SameWords(one.Name, name))) is not null;

    private static bool SameWords(string known, string typed)
    {
        var bracket = known.IndexOf('(', StringComparison.Ordinal);
        return Words(known) == Words(typed) || (bracket > 0 && Words(known[..bracket]) == Words(typed));
    }

    private static string Words(string name) => string.Join(' ', name
        .ToUpperInvariant()
        .Split([' ', ',', '(', ')'], StringSplitOptions.RemoveEmptyEntries)
        .Order(StringComparer.Ordinal));
}
