using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>How a face is planed to its standard.</summary>
/// <param name="Operation">The operation, by its name in the catalogue.</param>
/// <param name="Name">What the task is called, before the piece.</param>
internal sealed record FacePlaning(string Operation, string Name)
{
    /// <summary>Across the grain with the scrub plane, and no further.</summary>
    public const string Scrub = "scrub a face";

    /// <summary>From the scrub plane on with the jack, and no further.</summary>
    public const string Jack = "jack a face";

    /// <summary>Whether thickness is worked to a gauge line; a scrubbed face comes only near one.</summary>
    public bool IsGauged => Operation != Scrub;

    /// <summary>
    /// The planing of a face; null for a face that stays from the saw. A machine takes a face all the way in one go: where
    /// truing it is not handwork, leaving it rougher spares nothing.
    /// </summary>
    /// <param name="draft">The order of work.</param>
    /// <param name="truing">The operation that makes the face true.</param>
    /// <param name="face">Which face, in words.</param>
    /// <param name="standard">How far it is taken.</param>
    public static FacePlaning? Of(Draft draft, string truing, string face, SurfaceStandard standard) => standard switch
    {
        SurfaceStandard.Rough => null,
        _ when draft.Operations[truing].MethodIn(draft.Job).Name != "hand" => new(truing, truing),
        SurfaceStandard.Scrub => new(Scrub, "scrub " + face),
        SurfaceStandard.Jack => new(Jack, "jack " + face),
        _ => new(truing, truing),
    };

    /// <summary>
    /// The factor on time for the grain, for blending passes along a long piece, and for a wide face. The scrub plane goes
    /// across, where fibres part sideways however they run, and its ridges need no blending (common practice, no source).
    /// </summary>
    /// <param name="grain">The board's factor, 1 for straight grain.</param>
    /// <param name="length">Length of the piece.</param>
    /// <param name="width">Its width.</param>
    /// <param name="pass">The longest pass in the shop.</param>
    public double FactorOn(double grain, Length length, Length width, Length pass) =>
        Passes.WideFace(width) * (Operation == Scrub ? 1 : grain * Passes.Blending(length, pass));
}
