using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>What working some hidden faces to one standard saves.</summary>
/// <param name="Standard">The standard.</param>
/// <param name="Faces">The faces.</param>
/// <param name="Saved">Hands-on time saved, as likely as not; above zero.</param>
public sealed record FaceSaving(SurfaceStandard Standard, IReadOnlyList<HiddenFace> Faces, WorkTime Saved);

/// <summary>
/// What rougher hidden faces save: each time is the difference between two whole orders of work, so that honing and moves
/// that fall away with the planing are in it.
/// </summary>
public sealed record FaceSavings
{
    /// <summary>The hidden faces that the job leaves below tried.</summary>
    public required IReadOnlyList<HiddenFace> Written { get; init; }

    /// <summary>What those save against tried ones; zero when there are none.</summary>
    public required WorkTime Already { get; init; }

    /// <summary>What leaving finer ones from the jack plane, or the scrub plane, would save, each against the job as written; only what saves anything.</summary>
    public required IReadOnlyList<FaceSaving> Further { get; init; }

    /// <summary>Works it out.</summary>
    /// <param name="job">The job.</param>
    /// <param name="operations">The operations.</param>
    /// <param name="graph">Its order of work as written.</param>
    /// <param name="orderOf">Writes the order of work of the job with other surfaces, on the same layout.</param>
    /// <param name="rates">The rates.</param>
    public static FaceSavings Of(Job job, OperationCatalogue operations, TaskGraph graph, Func<Job, OrderOfWork> orderOf, RateModel rates)
    {
        var hidden = HiddenFaces.Of(job, operations);
        var now = LikelyTime(graph);
        List<HiddenFace> written = [.. hidden.Where(face => face.Now < SurfaceStandard.Tried)];
        return new()
        {
            Written = written,
            Already = written.Count == 0 ? WorkTime.Zero : WorkTime.Zero - SavedBy(written, SurfaceStandard.Tried),
            Further =
            [
                .. from standard in (SurfaceStandard[])[SurfaceStandard.Jack, SurfaceStandard.Scrub]
                   let faces = hidden.Where(face => face.Now > standard && face.Least <= standard).ToList()
                   where faces.Count > 0
                   let saved = SavedBy(faces, standard)
                   where saved > WorkTime.Zero
                   select new FaceSaving(standard, faces, saved),
            ],
        };

        WorkTime SavedBy(List<HiddenFace> faces, SurfaceStandard standard) =>
            orderOf(HiddenFaces.With(job, faces, standard)) is OrderOfWork.Made other
                ? now - LikelyTime(other.Graph)
                : throw new InvalidOperationException("surfaces do not change what comes before what");

        WorkTime LikelyTime(TaskGraph of) => of.Tasks.Aggregate(WorkTime.Zero, (sum, task) => sum + rates.LikelyTime(task));
    }
}
