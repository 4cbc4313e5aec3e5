using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>
/// What is left on a blank beyond the finished size, and what the saw takes. All defaults: common practice, no source.
/// </summary>
public sealed record Allowances
{
    /// <summary>Width of the slot the saw leaves: 1/16 in by hand.</summary>
    public Length Kerf { get; init; } = Length.FromInches(0.0625m);

    /// <summary>Extra length of a blank, both ends together: 1 in.</summary>
    public Length Length { get; init; } = Length.FromInches(1m);

    /// <summary>Extra width of a blank, both edges together: 1/8 in; 1/4 in where the saw wanders.</summary>
    public Length Width { get; init; } = Length.FromInches(0.125m);

    /// <summary>Extra width of each strip of a panel, for its two glue edges: 1/8 in.</summary>
    public Length Strip { get; init; } = Length.FromInches(0.125m);

    /// <summary>Width lost to straightening at each live edge: 3/4 in.</summary>
    public Length LiveEdge { get; init; } = Length.FromInches(0.75m);

    /// <summary>Width lost at each rough-sawn edge: 1/8 in.</summary>
    public Length RoughEdge { get; init; } = Length.FromInches(0.125m);

    /// <summary>Thickness that rough faces lose together, cup not counted: 1/8 in.</summary>
    public Length RoughFaces { get; init; } = Length.FromInches(0.125m);

    /// <summary>Thickness that skip-planed faces lose together: 1/16 in.</summary>
    public Length SkipPlanedFaces { get; init; } = Length.FromInches(0.0625m);

    /// <summary>An offcut at least so long is kept: 12 in.</summary>
    public Length UsefulLength { get; init; } = Length.FromInches(12m);

    /// <summary>An offcut at least so wide is kept: 2 in.</summary>
    public Length UsefulWidth { get; init; } = Length.FromInches(2m);

    /// <summary>The least thickness that must come off a board before its faces are flat and clean.</summary>
    public Length PlaningDepth(Board board) => board.Cup + board.Faces switch
    {
        BoardFaces.Rough => RoughFaces,
        BoardFaces.SkipPlaned => SkipPlanedFaces,
        BoardFaces.Planed => Length.Zero,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
