using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Operations whose times go up and down together in one maker.</summary>
public enum PaceGroup
{
    /// <summary>Saws.</summary>
    Sawing,

    /// <summary>Planes.</summary>
    Planing,

    /// <summary>Joints.</summary>
    Joinery,

    /// <summary>Gluing and fitting together.</summary>
    Assembly,

    /// <summary>Smoothing and coating.</summary>
    Finishing,

    /// <summary>Everything else.</summary>
    Other,
}

/// <summary>How hard work is on the body; it drives the daily cap and nothing else.</summary>
public enum WorkClass
{
    /// <summary>Light.</summary>
    Light,

    /// <summary>Medium.</summary>
    Medium,

    /// <summary>Heavy.</summary>
    Heavy,
}

/// <summary>What an operation keeps taken.</summary>
public enum Holding
{
    /// <summary>Clamps, until the glue has set.</summary>
    Clamps,

    /// <summary>The bench.</summary>
    Bench,

    /// <summary>Clear floor, trestles included.</summary>
    Floor,

    /// <summary>A place without dust, until a coat is dry.</summary>
    DustFreePlace,
}

/// <summary>How the time of a method grows with one property of the work: (x / reference) to the power of the exponent.</summary>
/// <param name="Covariate">The property.</param>
/// <param name="Reference">Its value at which the central time holds: inches, or lbf for hardness.</param>
/// <param name="Exponent">The exponent on minutes.</param>
public sealed record Slope(Covariate Covariate, double Reference, double Exponent);

/// <summary>A property of the work that its time depends on.</summary>
public enum Covariate
{
    /// <summary>Thickness of the stock, in inches.</summary>
    Thickness,

    /// <summary>Side hardness, in lbf, the grain factor applied as a factor on time by its own.</summary>
    Hardness,

    /// <summary>Depth removed or cut, in inches.</summary>
    Depth,

    /// <summary>Width or length of the joint or piece, in inches.</summary>
    Width,
}

/// <summary>One way of doing an operation, with its central time and what surrounds it.</summary>
public sealed record Method
{
    /// <summary>The name, <c>hand</c> or that of a machine.</summary>
    public required string Name { get; init; }

    /// <summary>The group whose pace it shares.</summary>
    public required PaceGroup PaceGroup { get; init; }

    /// <summary>Minutes for one unit by a competent worker at the references, pauses between strokes included, rest not.</summary>
    public required double MinutesPerUnit { get; init; }

    /// <summary>Minutes for one unit that one in twenty beats.</summary>
    public required double LowMinutes { get; init; }

    /// <summary>Minutes for one unit that one in twenty exceeds.</summary>
    public required double HighMinutes { get; init; }

    /// <summary>What its time depends on; a property that is not listed does not matter.</summary>
    public required IReadOnlyList<Slope> Slopes { get; init; }

    /// <summary>Setting up, once for each <see cref="SetupPer"/>.</summary>
    public required WorkTime Setup { get; init; }

    /// <summary>What a setup serves: <c>run</c> for a whole run of like pieces, or what it is repeated for, such as <c>piece</c> or <c>cut</c>.</summary>
    public required string SetupPer { get; init; }

    /// <summary>How hard it is.</summary>
    public required WorkClass WorkClass { get; init; }

    /// <summary>Rest added to the time, as a share, 0 to 1.</summary>
    public required double Rest { get; init; }

    /// <summary>Whether it is barred in quiet hours.</summary>
    public required bool IsNoisy { get; init; }

    /// <summary>Whether it may go on in a later session.</summary>
    public required bool IsSplittable { get; init; }

    /// <summary>The least piece of it that is worth beginning; zero when it is done whole.</summary>
    public required WorkTime LeastUseful { get; init; }

    /// <summary>People it takes, at least 1.</summary>
    public required int Crew { get; init; }

    /// <summary>Time of the next piece as a share of the last when pieces double: 0.90 for hand joinery, 0.97 for sawing and planing by hand (common practice, no source; the rule: T. P. Wright, 1936, from memory).</summary>
    public required double LearningRate { get; init; }

    /// <summary>The edge that it dulls; null where none is counted.</summary>
    public CuttingEdge? Edge { get; init; }

    /// <summary>
    /// The chance, 0 up to 1, that a piece, cut or joint of a run is spoiled, so that the piece has to be made again, or that
    /// a glue-up or a coat fails and has to be done again; 0 for work that spoils nothing.
    /// </summary>
    public double SpoilChance { get; init; }

    /// <summary>Where the chance of spoiling comes from; empty where there is none.</summary>
    public string SpoilSource { get; init; } = "";

    /// <summary>The kinds of work whose cautions come with this way of doing it, beyond those of the operation.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Where its figures come from.</summary>
    public required string Source { get; init; }

    /// <summary>Whether a setup serves a whole run of like pieces rather than each of them.</summary>
    public bool IsSetUpOnce => SetupPer == "run";
}

/// <summary>Something that is done to wood, as the data file or the shop describes it.</summary>
public sealed record Operation
{
    /// <summary>The name in the trade, one of a kind in the catalogue.</summary>
    public required string Name { get; init; }

    /// <summary>What its quantity counts.</summary>
    public required TradeUnit Unit { get; init; }

    /// <summary>The ways of doing it; the first is the usual one.</summary>
    public required IReadOnlyList<Method> Methods { get; init; }

    /// <summary>The kinds of work whose cautions go with it, whatever the method.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>What it keeps taken while it lasts or sets.</summary>
    public IReadOnlyList<Holding> Holds { get; init; } = [];

    /// <summary>
    /// Whether a way of doing it fills the air with dust: saws and planes do, and whatever carries the caution of dust,
    /// such as sanding and most machines.
    /// </summary>
    public bool IsDustyBy(Method method) =>
        method.PaceGroup is PaceGroup.Sawing or PaceGroup.Planing || Cautions.Concat(method.Cautions).Contains("dust", StringComparer.Ordinal);

    /// <summary>The way in which it is done in a job: the one chosen, or the usual one.</summary>
    /// <exception cref="ArgumentException">The job chooses a method that the operation does not have.</exception>
    public Method MethodIn(Job job) => job.Methods.TryGetValue(Name, out var chosen)
        ? Methods.FirstOrDefault(method => string.Equals(method.Name, chosen, StringComparison.OrdinalIgnoreCase))
            ?? throw new ArgumentException($"'{Name}' is not done by '{chosen}'")
        : Methods[0];

    /// <inheritdoc/>
    public override string ToString() => Name;
}
