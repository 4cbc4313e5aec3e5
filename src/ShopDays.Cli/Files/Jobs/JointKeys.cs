namespace ShopDays.Cli.Files.Jobs;

/// <summary>What each kind of joint must say of itself, and what it may say.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Joins">Whether it joins two parts; otherwise it is cut in one.</param>
/// <param name="Needs">The figures it must have.</param>
/// <param name="May">The figures it may have.</param>
internal sealed record JointKeys(string Kind, bool Joins, IReadOnlyList<string> Needs, IReadOnlyList<string> May)
{
    /// <summary>All kinds, in the order in which they are listed.</summary>
    public static IReadOnlyList<JointKeys> All { get; } =
    [
        new("dovetail", true, ["tails"], ["corners", "count", "depth", "width", "thickness"]),
        new("half-blind dovetail", true, ["tails"], ["corners", "count", "depth", "width", "thickness"]),
        new("mortise and tenon", true, [], ["count", "width", "depth", "thickness"]),
        new("lap", true, [], ["corners", "count", "width", "depth", "thickness"]),
        new("bridle", true, [], ["corners", "count", "width", "depth", "thickness"]),
        new("groove", false, ["length"], ["count", "width", "depth"]),
        new("dado", false, ["length"], ["count", "width", "depth"]),
        new("rabbet", false, ["length"], ["count", "width", "depth"]),
        new("tongue", false, ["length"], ["count", "width", "depth"]),
        new("bore", false, [], ["count", "depth", "width"]),
        new("drawbore", true, [], ["count", "depth", "width"]),
        new("hinge", false, [], ["count", "width", "depth", "thickness"]),
    ];

    /// <summary>The figures in the order in which they are read.</summary>
    public static IReadOnlyList<(string Key, string Example)> Figures { get; } =
    [
        ("tails", "how many tails are in a corner, such as tails: 5"),
        ("length", "the length of all of it together, such as length: 9' 6\""),
        ("width", "the width, such as width: 2\""),
        ("depth", "the depth, such as depth: 3/8\""),
        ("thickness", "the thickness, such as thickness: 3/8\""),
    ];

    /// <summary>The kind of that name; null when there is none.</summary>
    public static JointKeys? TryFind(string kind) => All.FirstOrDefault(one => string.Equals(one.Kind, kind, StringComparison.OrdinalIgnoreCase));
}
