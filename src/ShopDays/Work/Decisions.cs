using NodaTime;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Waits for somebody else's word: from the job's start, or from the tasks after which they can be asked for.</summary>
internal sealed class Decisions
{
    /// <summary>Where a decision's wait begins: the end of a task, or the job's start when null.</summary>
    private sealed record Asked(int? After, Duration Wait, string Name);

    private readonly Draft draft;
    private readonly Anchors anchors;
    private readonly Dictionary<string, Decision> byName;

    public Decisions(Draft draft, Anchors anchors)
    {
        this.draft = draft;
        this.anchors = anchors;
        byName = draft.Job.Decisions.ToDictionary(decision => decision.Name, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Whether a name is that of a decision.</summary>
    public bool Has(string name) => byName.ContainsKey(name);

    /// <summary>The decisions that wait for each other in a circle; empty when none do.</summary>
    public static IReadOnlyList<string> Round(Job job)
    {
        var byName = job.Decisions.ToDictionary(decision => decision.Name, StringComparer.OrdinalIgnoreCase);
        foreach (var start in job.Decisions)
        {
            var path = new List<string>();
            if (Follow(start.Name, path))
            {
                return path;
            }
        }

        return [];

        bool Follow(string name, List<string> path)
        {
            var decision = byName[name];
            path.Add(decision.Name);
            if (path.IndexOf(decision.Name) < path.Count - 1)
            {
                var isRound = path[0] == decision.Name;
                if (!isRound)
                {
                    path.RemoveAt(path.Count - 1);
                }

                return isRound;
            }

            foreach (var earlier in AfterOf(job, decision).Where(byName.ContainsKey))
            {
                if (Follow(earlier, path))
                {
                    return true;
                }
            }

            path.RemoveAt(path.Count - 1);
            return false;
        }
    }

    /// <summary>Ties every decision to what it holds back.</summary>
    public void Tie()
    {
        foreach (var decision in draft.Job.Decisions)
        {
            var held = decision.Before.Where(name => !Has(name)).SelectMany(name => anchors.Beginnings(name))
                .Concat(draft.Job.Work.Where(task => task.After.Any(name => Is(name, decision))).Select(task => draft.FreeTasks[task.Name]))
                .Distinct()
                .ToList();
            foreach (var asked in AskedAt(decision))
            {
                Hold(asked, decision, held);
            }
        }
    }

    private void Hold(Asked asked, Decision decision, List<int> held)
    {
        if (asked.After is not { } after)
        {
            draft.OpeningWaits.Add(new OpeningWait(asked.Name, asked.Wait, held));
            return;
        }

        foreach (var later in held)
        {
            draft.Before(after, later, $"it waits for: {decision.Name}", new Wait(asked.Wait, asked.Name) { IsPeoples = true });
        }
    }

    private List<Asked> AskedAt(Decision decision)
    {
        var after = AfterOf(draft.Job, decision);
        var asked = new List<Asked>();
        foreach (var name in after)
        {
            asked.AddRange(byName.TryGetValue(name, out var earlier)
                ? AskedAt(earlier).Select(one => new Asked(one.After, one.Wait + decision.Wait, one.Name + ", then " + decision.Name))
                : anchors.Endings(name).Select(id => new Asked(id, decision.Wait, decision.Name)));
        }

        return asked.Count > 0 ? asked : [new Asked(null, decision.Wait, decision.Name)];
    }

    // A task or decision that says it comes before this one says the same as this one saying after.
    private static IEnumerable<string> AfterOf(Job job, Decision decision) => decision.After
        .Concat(job.Work.Where(task => task.Before.Any(name => Is(name, decision))).Select(task => task.Name))
        .Concat(job.Decisions.Where(other => other.Before.Any(name => Is(name, decision))).Select(other => other.Name))
        .Distinct(StringComparer.OrdinalIgnoreCase);

    private static bool Is(string name, Decision decision) => string.Equals(name, decision.Name, StringComparison.OrdinalIgnoreCase);
}
