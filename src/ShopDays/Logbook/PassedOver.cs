using ShopDays.Work;

namespace ShopDays.Logbook;

/// <summary>A task that is not done by the log although work that must come after it is: skipped, or not written down.</summary>
/// <param name="Standing">The task, and how far it has come.</param>
/// <param name="By">The nearest work that comes after it and is further: done, or begun where nothing is logged of the task.</param>
public sealed record PassedOver(TaskStanding Standing, TaskStanding By)
{
    /// <summary>The task.</summary>
    public ShopTask Task => Standing.Task;

    /// <summary>Looks for them.</summary>
    /// <param name="graph">The job's tasks and what comes before what.</param>
    /// <param name="standing">How far they have come.</param>
    /// <returns>Each task once, in the order of their ids.</returns>
    /// <exception cref="ArgumentException">The standing is another job's.</exception>
    public static IReadOnlyList<PassedOver> In(TaskGraph graph, JobStanding standing)
    {
        if (standing.Tasks.Count != graph.Tasks.Count)
        {
            throw new ArgumentException($"{standing.Tasks.Count} standings for {graph.Tasks.Count} tasks", nameof(standing));
        }

        var before = graph.Precedences.Where(one => !one.IsForThePlan).ToLookup(one => one.After, one => one.Before);
        var byDone = Behind(TaskState.Done);
        var byBegun = Behind(TaskState.HalfDone);
        return
        [
            .. standing.Tasks.Select(one => one.State switch
            {
                TaskState.Done => null,
                TaskState.HalfDone => ByOf(byDone, one),
                _ => ByOf(byDone, one) ?? ByOf(byBegun, one),
            }).OfType<PassedOver>(),
        ];

        PassedOver? ByOf(Dictionary<int, int> by, TaskStanding one) => by.TryGetValue(one.Task.Id, out var id) ? new(one, standing.Tasks[id]) : null;

        // Wave by wave from all tasks of a state: what is met first is met from the nearest of them.
        Dictionary<int, int> Behind(TaskState state)
        {
            var by = new Dictionary<int, int>();
            var wave = new Queue<(int Task, int By)>(standing.Tasks.Where(one => one.State == state).Select(one => (one.Task.Id, one.Task.Id)));
            while (wave.TryDequeue(out var one))
            {
                foreach (var earlier in before[one.Task].Where(earlier => by.TryAdd(earlier, one.By)))
                {
                    wave.Enqueue((earlier, one.By));
                }
            }

            return by;
        }
    }
}
