using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>
/// A piece to be sawn out of a board: a part with its allowances, one strip of a panel, or a blank that is resawn
/// into several parts.
/// </summary>
public sealed record Blank
{
    /// <summary>
    /// How wide a strip of a panel is at least once its edges are shot: 2 in. Narrower ones make a panel look like a
    /// striped cloth and slip about under the clamps (common practice, no source).
    /// </summary>
    public static Length LeastStrip { get; } = Length.FromInches(2m);

    /// <summary>The part that comes of it.</summary>
    public required Part Part { get; init; }

    /// <summary>The numbers of the parts that come of it, from 1; more than one when it is resawn. Spares are numbered on.</summary>
    public required IReadOnlyList<int> Numbers { get; init; }

    /// <summary>Which strip of a panel this is, from 1; 0 when the part is one piece.</summary>
    public int Strip { get; init; }

    /// <summary>How many strips the panel has; 0 when the part is one piece.</summary>
    public int Strips { get; init; }

    /// <summary>Length along the grain, allowance included.</summary>
    public required Length Length { get; init; }

    /// <summary>Width across the grain, allowance included.</summary>
    public required Length Width { get; init; }

    /// <summary>Whether it is sawn through its thickness into as many parts as it has numbers.</summary>
    public bool IsResawn => Numbers.Count > 1;

    /// <summary>
    /// How thick the board must be between flat and clean faces: each part, and for each cut through the thickness the kerf and
    /// what the two new faces lose.
    /// </summary>
    public Length DepthNeeded(Allowances allowances) =>
        (Part.Thickness * Numbers.Count) + ((allowances.Kerf + allowances.RoughFaces) * (Numbers.Count - 1));

    /// <summary>
    /// How wide a strip of a panel is sawn at least, with the allowance for its glue edges: <see cref="LeastStrip"/>, or the
    /// strip's share where all of them are narrower.
    /// </summary>
    public static Length LeastWidthOfStrip(Part part, int strips, Allowances allowances) =>
        Length.Min(LeastStrip, (part.Width + allowances.Width) / strips) + allowances.Strip;

    /// <summary>Its label on boards and lists, for example <c>front 1 strip 2</c>.</summary>
    public string Label
    {
        get
        {
            var number = Part.Count + Part.Spare > 1 ? " " + string.Join('+', Numbers) : "";
            return Strip > 0 ? FormattableString.Invariant($"{Part.Name}{number} strip {Strip}") : Part.Name + number;
        }
    }
}
