using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>A second face that nobody will see.</summary>
/// <param name="Part">The part.</param>
/// <param name="Surface">Inside or under, as it is written; where nothing is, inside for what a glue-up joins, under otherwise.</param>
/// <param name="Now">How far it is planed as the job is written.</param>
/// <param name="Least">Below what it must not be left, for the joints of its part.</param>
public sealed record HiddenFace(Part Part, PartSurface Surface, SurfaceStandard Now, SurfaceStandard Least);

/// <summary>
/// The second faces of a job that do not show, and the job with them worked otherwise. Squarish parts, less than twice as
/// wide as thick, are seen from all sides and count only where their standard is written (common practice, no source).
/// </summary>
public static class HiddenFaces
{
    private const int Squarish = 2;

    /// <summary>The hidden faces, in the order of the parts list.</summary>
    /// <param name="job">The job.</param>
    /// <param name="operations">The operations, of which joints may be named.</param>
    public static IReadOnlyList<HiddenFace> Of(Job job, OperationCatalogue operations)
    {
        var finished = FinishedAllRound(job);
        return
        [
            .. from part in job.Parts
               where IsHidden(part, finished)
               let least = FaceNeeds.Of(job, part, PartSurface.Under, operations).Least
               select new HiddenFace(part, SurfaceOf(job, part), FaceStandards.FaceTwo(job, part, operations), least),
        ];
    }

    /// <summary>The job with some hidden faces planed to one standard, where joints let it.</summary>
    public static Job With(Job job, IReadOnlyList<HiddenFace> faces, SurfaceStandard standard) => job with
    {
        Parts = [.. job.Parts.Select(part => faces.FirstOrDefault(face => face.Part.Name == part.Name) is { } face ? At(part, face.Surface, standard) : part)],
    };

    private static Part At(Part part, PartSurface surface, SurfaceStandard standard)
    {
        var surfaces = part.Surfaces.Where(one => one.Key is PartSurface.Face or PartSurface.Edge).ToDictionary(one => one.Key, one => one.Value);
        surfaces[surface] = standard;
        return part with { Surfaces = surfaces };
    }

    private static bool IsHidden(Part part, HashSet<Part> finishedAllRound) => FaceStandards.WrittenOfFaceTwo(part) is { } written
        ? written < SurfaceStandard.Smoothed
        : !part.Shows.Contains(PartSurface.Inside)
            && !part.Shows.Contains(PartSurface.Under)
            && !finishedAllRound.Contains(part)
            && part.Width >= part.Thickness * Squarish;

    // A finish on things of which nothing is said to show goes on all round.
    private static HashSet<Part> FinishedAllRound(Job job) =>
    [
        .. from work in job.Finishes
           from name in work.On
           let parts = Holders.PartsOf(name, job)
           where parts.All(part => part.Shows.Count == 0)
           from part in parts
           select part,
    ];

    private static PartSurface SurfaceOf(Job job, Part part) =>
        part.Surfaces.ContainsKey(PartSurface.Under) ? PartSurface.Under
        : part.Surfaces.ContainsKey(PartSurface.Inside) || job.GlueUps.Any(glueUp => glueUp.Joins.Contains(part.Name)) ? PartSurface.Inside
        : PartSurface.Under;
}
