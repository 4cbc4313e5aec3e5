using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>How the long edges of a board come.</summary>
public enum BoardEdges
{
    /// <summary>Sawn, not straight enough to gauge from.</summary>
    RoughSawn,

    /// <summary>The outside of the tree, bark or not.</summary>
    Live,

    /// <summary>Straight and square already.</summary>
    Straight,
}

/// <summary>How the faces of a board come.</summary>
public enum BoardFaces
{
    /// <summary>From the saw.</summary>
    Rough,

    /// <summary>Planed here and there, saw marks left.</summary>
    SkipPlaned,

    /// <summary>Planed flat.</summary>
    Planed,
}

/// <summary>How the grain runs: planing wild grain takes longer, whatever the timber.</summary>
public enum BoardGrain
{
    /// <summary>Straight: factor 1.0.</summary>
    Straight,

    /// <summary>Wavy or knotty: factor 1.2 (common practice, no source).</summary>
    Wavy,

    /// <summary>Interlocked: factor 1.4 (common practice, no source).</summary>
    Interlocked,
}

/// <summary>How the rings lie in the end of a board, which says how much its width moves.</summary>
public enum BoardSawing
{
    /// <summary>Rings along the face: it moves most.</summary>
    Plain,

    /// <summary>Rings upright, or nearly: it moves about half as much.</summary>
    Quarter,
}

/// <summary>How fine the better face of a board is, as its maker judges it.</summary>
public enum BoardFigure
{
    /// <summary>Good enough where nobody looks: insides, undersides, frames that are covered.</summary>
    Plain,

    /// <summary>Fit to be seen.</summary>
    Good,

    /// <summary>Kept for what is looked at first.</summary>
    Best,
}

/// <summary>
/// One board or slab on hand. Its frame: x along the grain from the reference end, y across it from the reference edge.
/// </summary>
public sealed record Board
{
    /// <summary>The mark chalked on it, for example <c>A2</c>. One of a kind in its job.</summary>
    public required string Name { get; init; }

    /// <summary>The stock line it comes from, which parts may be pinned to; its own name when the line is one board.</summary>
    public string Line { get => field ?? Name; init; }

    /// <summary>The board of the stock that this is an offcut of; null when it is no offcut.</summary>
    public string? CutFrom { get; init; }

    /// <summary>The timber.</summary>
    public required Species Species { get; init; }

    /// <summary>Length along the grain, as it lies there.</summary>
    public required Length Length { get; init; }

    /// <summary>Width across the grain, as it lies there; of a live-edged slab where it is narrowest.</summary>
    public required Length Width { get; init; }

    /// <summary>Thickness as it lies there.</summary>
    public required Length Thickness { get; init; }

    /// <summary>The board of the stock that its timber was: itself, or the one that it is an offcut of.</summary>
    public string Origin => CutFrom ?? Name;

    /// <summary>How its edges come.</summary>
    public BoardEdges Edges { get; init; }

    /// <summary>How its faces come.</summary>
    public BoardFaces Faces { get; init; }

    /// <summary>How its grain runs.</summary>
    public BoardGrain Grain { get; init; }

    /// <summary>How it was sawn out of the log; what is not known is taken for plain.</summary>
    public BoardSawing Sawing { get; init; }

    /// <summary>How fine its better face is.</summary>
    public BoardFigure Figure { get; init; } = BoardFigure.Good;

    /// <summary>Depth to lose on the hollow face before it is flat, beyond the usual.</summary>
    public Length Cup { get; init; }

    /// <summary>Length lost at each end to checks.</summary>
    public Length EndTrim { get; init; }

    /// <summary>Places that no part may touch.</summary>
    public IReadOnlyList<Flaw> Flaws { get; init; } = [];

    /// <summary>What the whole board cost, if known.</summary>
    public Money? Price { get; init; }

    /// <summary>What is known of how dry it is.</summary>
    public Drying Drying { get; init; } = Drying.Unknown;

    /// <summary>Moisture as read or as assumed; weights are computed at it.</summary>
    public MoistureContent Moisture { get; init; } = AirDry;

    /// <summary>Moisture of air-dried stock where no reading is given: 12 to 16 % in temperate places (common practice, no source).</summary>
    public static MoistureContent AirDry { get; } = MoistureContent.FromPercent(14);

    /// <summary>The whole volume.</summary>
    public Volume Volume => Length * Width * Thickness;

    /// <summary>What it weighs at its moisture.</summary>
    public Mass Weight => Species.Weigh(Volume, Moisture);

    /// <summary>Whether a name means it: its own, that of its stock line, or that of the board which it is an offcut of.</summary>
    public bool IsCalled(string name) =>
        string.Equals(name, Name, StringComparison.Ordinal) || string.Equals(name, Line, StringComparison.Ordinal) || string.Equals(name, CutFrom, StringComparison.Ordinal);

    /// <summary>What planing time is multiplied with for the run of the grain: 1.0, 1.2 or 1.4 (common practice, no source).</summary>
    public double GrainFactor => Grain switch
    {
        BoardGrain.Straight => 1.0,
        BoardGrain.Wavy => 1.2,
        BoardGrain.Interlocked => 1.4,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}

/// <summary>A place in a board that no part may touch: a knot, a shake, rot.</summary>
/// <param name="From">Where it begins along the grain, from the reference end.</param>
/// <param name="To">Where it ends along the grain; beyond <paramref name="From"/>.</param>
/// <param name="AcrossFrom">Where it begins across the grain, from the reference edge.</param>
/// <param name="AcrossTo">Where it ends across the grain; beyond <paramref name="AcrossFrom"/>.</param>
public sealed record Flaw(Length From, Length To, Length AcrossFrom, Length AcrossTo);
