using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>
/// Joints of one kind between named parts. Which figures a kind needs is said by the table of joint kinds in the work layer.
/// </summary>
public sealed record Joint
{
    /// <summary>The kind, for example <c>dovetail</c> or <c>groove</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>The parts that it joins, or in which it is cut.</summary>
    public required IReadOnlyList<string> Parts { get; init; }

    /// <summary>How many there are (corners of dovetails, mortises with their tenons, laps, holes, leaves), at least 1.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Tails in each corner, for dovetails; 0 otherwise.</summary>
    public int Tails { get; init; }

    /// <summary>Length in all of a groove, dado, rabbet or tongue; zero where the kind has none.</summary>
    public Length Length { get; init; }

    /// <summary>Width of the joint: length of a mortise along the grain, width of a tenon or lap; zero for the usual.</summary>
    public Length Width { get; init; }

    /// <summary>Depth cut; zero for the usual.</summary>
    public Length Depth { get; init; }

    /// <summary>Thickness of the stock or tenon; zero for that of the parts.</summary>
    public Length Thickness { get; init; }
}
