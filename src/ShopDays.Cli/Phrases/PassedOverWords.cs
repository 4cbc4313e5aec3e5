using ShopDays.Logbook;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>Work that is written down as done while what must come before it is not: most often a time that was not pencilled.</summary>
internal static class PassedOverWords
{
    private const int MostNamed = 3;

    /// <summary>
    /// A sentence and what to type; null where nothing is passed over: <c>PXJ glue up is written down as done, and KDR
    /// dry fit, which comes before it, is not. Is that done too? Then: shopdays log add tray KDR TIME</c>.
    /// </summary>
    /// <param name="passed">The tasks.</param>
    /// <param name="marks">The marks of the job's tasks.</param>
    /// <param name="job">The job, by the name of its file.</param>
    public static string? Of(IReadOnlyList<PassedOver> passed, TaskMarks marks, string job)
    {
        if (passed.Count == 0)
        {
            return null;
        }

        // What is done is surer than what is begun, so that it is asked about first.
        List<PassedOver> rows = [.. passed.OrderByDescending(one => one.By.State)];
        var (first, others) = (rows[0], rows.Skip(1).ToList());
        var by = $"{Marked(first.By.Task)} is written down as {(first.By.State == TaskState.Done ? "done" : "begun")}, and {Marked(first.Task)}, which comes before it, {(first.Standing.State == TaskState.HalfDone ? "only as half done" : "is not")}.";
        var more = others.Count == 0 ? "" : $" So it is with {CountWords.Names([.. others.Select(one => Marked(one.Task))], MostNamed - 1)}.";
        var typed = string.Join(' ', rows.Take(MostNamed).Select(one => $"{marks.Of(one.Task.Name)} TIME"));
        return $"{by}{more} {(others.Count == 0 ? "Is that done too?" : "Are these done too?")} Then: shopdays log add {job} {typed}";

        string Marked(ShopTask task) => $"{marks.Of(task.Name)} {task.Name}";
    }
}
