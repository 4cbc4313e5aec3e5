using NodaTime;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>
/// How a glue-up or a coat that fails is put right without a piece being lost. Joints are taken apart, cleaned and glued
/// again; a panel is sawn apart along its joints, which are shot and glued again; a coat is rubbed down and laid on again.
/// Each then sets or dries a second time.
/// </summary>
/// <param name="Work">What has to be done before the task can be done again.</param>
/// <param name="Again">Work before the task that has to be done again, with the share of it.</param>
/// <param name="Wait">How long it sets or dries once more, by the clock.</param>
/// <remarks>
/// Common practice, no source. Left out: parts that break while a joint is taken apart, the width that a panel loses to the
/// saw, clamps that stay on for longer. In a shop with cold nights the second wait is as long as on the average of the
/// months in which the work is possible, since its month is not known beforehand.
/// </remarks>
internal sealed record Mending(IReadOnlyList<TaskTiming.ByOperation> Work, IReadOnlyList<DoneBefore> Again, Duration Wait)
{
    private const string TakeApart = "take apart a glued joint";
    private const string SawApart = "rip";

    /// <summary>Of the tasks of a job, by their names; tasks of other kinds are not among them.</summary>
    public static IReadOnlyDictionary<string, Mending> Of(TaskGraph graph, Job job, OperationCatalogue operations)
    {
        var before = graph.Precedences.ToLookup(one => one.After, one => one.Before);
        var found = new Dictionary<string, Mending>(StringComparer.Ordinal);
        foreach (var task in graph.Tasks)
        {
            if (task.Timing is TaskTiming.ByOperation by && Of(task, by) is { } mending)
            {
                found.Add(task.Name, mending);
            }
        }

        return found;

        Mending? Of(ShopTask task, TaskTiming.ByOperation by) => by.Operation.Name switch
        {
            GlueUps.Glue when operations.TryFind(TakeApart, out var apart) => new([Timed(apart, by)], [], SecondWait(task)),
            Panels.Glue when operations.TryFind(SawApart, out var rip) => new([Timed(rip, by)], [.. ShotFor(task)], SecondWait(task)),
            Finishing.Wiped or Finishing.Brushed when operations.TryFind(Finishing.RubDown, out var rubbed) => new([Timed(rubbed, by)], [], SecondWait(task)),
            _ => null,
        };

        // As much of it as there was of the task: joints of a glue-up, feet of joint, area of a coat.
        TaskTiming.ByOperation Timed(Operation operation, TaskTiming.ByOperation like) => new()
        {
            Operation = operation,
            Method = operation.MethodIn(job),
            Quantity = like.Quantity,
            Setups = 1,
            Covariates = like.Covariates,
        };

        // The runs of shooting follow one another, the last one before the glue.
        IEnumerable<DoneBefore> ShotFor(ShopTask glued)
        {
            var shot = before[glued.Id].Select(id => graph.Tasks[id]).Where(one => one.Timing is TaskTiming.ByOperation { Operation.Name: Panels.Shoot }).ToList();
            while (shot.Count > 0)
            {
                var last = shot[0];
                yield return new(last, 1);
                shot = [.. before[last.Id].Select(id => graph.Tasks[id]).Where(one => one.Timing is TaskTiming.ByOperation { Operation.Name: Panels.Shoot })];
            }
        }
    }

    private static Duration SecondWait(ShopTask task)
    {
        if (task.Sets is not { } sets)
        {
            return task.SetsFor;
        }

        var possible = ShopNights.AllMonths.Where(month => !sets.IsBarredIn(month)).ToList();
        return possible.Count == 0 ? task.SetsFor : task.SetsFor * possible.Average(sets.FactorIn);
    }
}
