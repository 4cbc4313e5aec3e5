using ShopDays.Parts;

namespace ShopDays.Work.Materials;

/// <summary>
/// How much more timber is bought than stays in the piece, as a share of what stays in it, where no layout says it.
/// </summary>
/// <param name="Low">With luck, for example 0.30.</param>
/// <param name="High">Without, for example 0.50.</param>
/// <remarks>Softwood and clear stock 20 to 30 %, hardwood boards 30 to 50 %, live-edge or flawed slabs 60 to 100 %; matched figure takes as much again and more (common practice, no source).</remarks>
public readonly record struct WasteFactor(double Low, double High)
{
    private static readonly WasteFactor Softwood = new(0.20, 0.30);
    private static readonly WasteFactor Hardwood = new(0.30, 0.50);
    private static readonly WasteFactor Slabs = new(0.60, 1.00);

    /// <summary>For a kind of timber.</summary>
    /// <param name="species">The timber.</param>
    /// <param name="edges">How its boards come.</param>
    public static WasteFactor Of(Species species, BoardEdges edges) => (edges, species.Kind) switch
    {
        (BoardEdges.Live, _) => Slabs,
        (_, SpeciesKind.Softwood) => Softwood,
        _ => Hardwood,
    };
}
