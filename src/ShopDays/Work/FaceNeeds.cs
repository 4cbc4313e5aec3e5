using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>
/// How far a face must be worked for the joints and edge joints of its part to be set out and to fit. All common practice,
/// no source.
/// </summary>
/// <param name="Least">The standard below which it must not be left.</param>
/// <param name="Why">What needs it, in words that end a sentence about the part; empty when nothing does.</param>
public sealed record FaceNeeds(SurfaceStandard Least, string Why)
{
    private static readonly FaceNeeds Nothing = new(SurfaceStandard.Rough, "");

    /// <summary>What a surface of a part must be worked to.</summary>
    /// <param name="job">The job, whose joints are known kinds.</param>
    /// <param name="part">The part.</param>
    /// <param name="surface">The surface; inside and under are both the second face.</param>
    /// <param name="operations">The operations, of which joints may be named.</param>
    public static FaceNeeds Of(Job job, Part part, PartSurface surface, OperationCatalogue operations)
    {
        var kinds = job.Joints
            .Where(joint => joint.Parts.Contains(part.Name))
            .Select(joint => JointKinds.TryFind(joint.Kind, operations, out var kind) ? kind : throw new ArgumentException($"'{joint.Kind}' is not a kind of joint"))
            .ToList();
        return surface switch
        {
            PartSurface.Inside or PartSurface.Under => OfFaceTwo(kinds),
            PartSurface.Face or PartSurface.Edge => OfReference(kinds, part, surface == PartSurface.Face ? "face" : "edge"),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static FaceNeeds OfReference(List<JointKind> kinds, Part part, string surface) =>
        kinds.Find(kind => kind.IsSetOut) is { } joint ? new(SurfaceStandard.Tried, $"its {joint.Name} is set out from a true {surface}")
        : part.IsPanel ? new(SurfaceStandard.Tried, surface == "face" ? "the strips of a panel are squared from a true face" : "the strips of a panel are jointed edge to edge")
        : Nothing;

    private static FaceNeeds OfFaceTwo(List<JointKind> kinds) => kinds.Find(kind => kind.IsOfEvenThickness) is { } joint
        ? new(SurfaceStandard.Jack, $"its {joint.Name} needs an even thickness")
        : Nothing;
}
