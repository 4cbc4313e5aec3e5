using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>
/// How far each surface of a part is worked. The planes go to rough, scrub, jack or tried; smoothing is work of its own, on
/// a tried face. Where nothing is written, faces and edges are tried, and smoothed where they show.
/// </summary>
internal static class FaceStandards
{
    /// <summary>The reference face, never less than the part's joints need.</summary>
    public static SurfaceStandard FaceOne(Job job, Part part, OperationCatalogue operations) =>
        Planed(Written(part, PartSurface.Face), FaceNeeds.Of(job, part, PartSurface.Face, operations));

    /// <summary>The other face, inside or under, never less than the part's joints need.</summary>
    public static SurfaceStandard FaceTwo(Job job, Part part, OperationCatalogue operations) =>
        Planed(WrittenOfFaceTwo(part), FaceNeeds.Of(job, part, PartSurface.Under, operations));

    /// <summary>Whether the edges are planed: they are left from the saw only where that is written and no joint needs more.</summary>
    public static bool ArePlanedEdges(Job job, Part part, OperationCatalogue operations) =>
        Planed(Written(part, PartSurface.Edge), FaceNeeds.Of(job, part, PartSurface.Edge, operations)) != SurfaceStandard.Rough;

    /// <summary>What is written of the second face, the finer where both of its names are; null for nothing.</summary>
    public static SurfaceStandard? WrittenOfFaceTwo(Part part) =>
        (Written(part, PartSurface.Inside), Written(part, PartSurface.Under)) switch
        {
            ({ } inside, { } under) => inside > under ? inside : under,
            var (inside, under) => inside ?? under,
        };

    /// <summary>Whether a surface is smoothed: where it is written so, and where it shows and nothing less is written.</summary>
    public static bool IsSmoothed(Part part, PartSurface surface) =>
        Written(part, surface) is { } standard ? standard == SurfaceStandard.Smoothed : part.Shows.Contains(surface);

    /// <summary>Whether a surface of a part is written to be smoothed.</summary>
    public static bool IsWrittenSmooth(Part part) => part.Surfaces.Values.Contains(SurfaceStandard.Smoothed);

    private static SurfaceStandard? Written(Part part, PartSurface surface) =>
        part.Surfaces.TryGetValue(surface, out var standard) ? standard : null;

    private static SurfaceStandard Planed(SurfaceStandard? written, FaceNeeds needs)
    {
        var planed = written is { } standard && standard < SurfaceStandard.Tried ? standard : SurfaceStandard.Tried;
        return planed < needs.Least ? needs.Least : planed;
    }
}
