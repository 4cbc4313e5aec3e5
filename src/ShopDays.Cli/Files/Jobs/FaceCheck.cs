using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>Sees whether faces are left rougher than the joints of their parts can do with.</summary>
internal static class FaceCheck
{
    /// <summary>Reports every such face at its place.</summary>
    /// <param name="job">The job; its joints are known kinds, and its names are known.</param>
    /// <param name="lines">The parts as they are written.</param>
    /// <param name="operations">The operations, of which joints may be named.</param>
    /// <param name="findings">Where mistakes go.</param>
    public static void Run(Job job, IReadOnlyList<PartLine> lines, OperationCatalogue operations, Findings findings)
    {
        // A part whose timber nobody knows, for want of any stock, is not in the job.
        foreach (var (line, part) in lines.Join(job.Parts, line => line.Name.Value, part => part.Name, (line, part) => (line, part)))
        {
            foreach (var (surface, standard) in line.Rest.Surfaces)
            {
                // Inside and under are one face: where both are written the finer holds.
                var needs = FaceNeeds.Of(job, part, surface, operations);
                if (Holding(line, surface) < needs.Least)
                {
                    findings.Add(FaceMistakes.RougherThanNeeded(
                        standard.Place, part.Name, SurfaceWords.Of(surface), SurfaceWords.Of(standard.Value), needs.Why, SurfaceWords.Of(needs.Least)));
                }
            }
        }
    }

    private static SurfaceStandard Holding(PartLine line, PartSurface surface) => line.Rest.Surfaces
        .Where(one => one.Key == surface || (IsFaceTwo(one.Key) && IsFaceTwo(surface)))
        .Max(one => one.Value.Value);

    private static bool IsFaceTwo(PartSurface surface) => surface is PartSurface.Inside or PartSurface.Under;
}
