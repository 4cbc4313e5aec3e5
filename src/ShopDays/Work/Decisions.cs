using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Waits for somebody else's word, money or goods: from a date, from the tasks after which they can be asked for, or from the job's start.</summary>
internal sealed class Decisions
{
    private readonly Draft draft;
    private readonly Anchors anchors;
    private readonly Dictionary<string, Decision> byName;
    private readonly Dictionary<string, int> places = new(StringComparer.OrdinalIgnoreCase);

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

    /// <summary>Ties every decision to what it holds back, those first that others wait for.</summary>
    public void Tie()
    {
        foreach (var decision in draft.Job.Decisions)
        {
            Place(decision);
        }
    }

    /// <summary>The place of a decision among all that is awaited.</summary>
    private int Place(Decision decision)
    {
        if (places.TryGetValue(decision.Name, out var known))
        {
            return known;
        }

        var hasDate = decision.Asked is not null || decision.Arrived is not null;
        string[] after = [.. AfterOf(draft.Job, decision)];
        int[] others = [.. after.Where(Has).Select(name => Place(byName[name]))];
        int[] endings = [.. after.Where(name => !Has(name)).SelectMany(name => anchors.Endings(name)).Distinct()];
        int[] held = [.. Held(decision)];
        foreach (var earlier in hasDate ? [] : EarlierThan(decision))
        {
            foreach (var later in held)
            {
                draft.Before(earlier, later, $"it waits for: {decision.Name}");
            }
        }

        draft.Awaited.Add(new()
        {
            Decision = decision,
            After = hasDate ? [] : endings,
            AfterOthers = hasDate ? [] : others,
            AfterByOrder = endings,
            AfterOthersByOrder = others,
            Holds = held,
        });
        return places[decision.Name] = draft.Awaited.Count - 1;
    }

    private IEnumerable<int> Held(Decision decision) => decision.Before.Where(name => !Has(name)).SelectMany(name => anchors.Beginnings(name))
        .Concat(draft.Job.Work.Where(task => task.After.Any(name => Is(name, decision))).Select(task => draft.FreeTasks[task.Name]))
        .Distinct();

    /// <summary>The tasks that come before a decision can be asked for, be it that another waits for them.</summary>
    private IEnumerable<int> EarlierThan(Decision decision) => AfterOf(draft.Job, decision)
        .SelectMany(name => !Has(name) ? anchors.Endings(name) : byName[name] is { Asked: null, Arrived: null } other ? EarlierThan(other) : [])
        .Distinct();

    // A task or decision that says it comes before this one says the same as this one saying after.
    private static IEnumerable<string> AfterOf(Job job, Decision decision) => decision.After
        .Concat(job.Work.Where(task => task.Before.Any(name => Is(name, decision))).Select(task => task.Name))
        .Concat(job.Decisions.Where(other => other.Before.Any(name => Is(name, decision))).Select(other => other.Name))
        .Distinct(StringComparer.OrdinalIgnoreCase);

    private static bool Is(string name, Decision decision) => string.Equals(name, decision.Name, StringComparison.OrdinalIgnoreCase);
}
