using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>
/// What the names after <c>before:</c> and <c>after:</c> stand for. A stage without tasks of its own stands for the
/// nearest one that has some: the next for <c>before</c>, the last for <c>after</c>.
/// </summary>
internal sealed class Anchors
{
    private readonly Draft draft;
    private readonly Dictionary<string, IReadOnlyList<int>> sets = new(StringComparer.OrdinalIgnoreCase);
    private readonly IReadOnlyList<int>[] stages;

    public Anchors(Draft draft)
    {
        this.draft = draft;
        var own = draft.FreeTasks.Values.ToHashSet();
        // A stage between is what the parts imply; free work is reached by its own name, so that no order goes round by chance.
        stages = [.. Enum.GetValues<Stage>().Select(stage => (IReadOnlyList<int>)[.. draft.Tasks.Where(task => task.Stage == stage && (!own.Contains(task.Id) || IsOutside(stage))).Select(task => task.Id)])];
        foreach (var name in draft.Job.Parts.Select(part => part.Name))
        {
            // What is fitted to a part when it stands, a hinge say, is among its joints.
            sets[name] = [.. draft.Tasks.Where(task => task.Stage is Stage.Dimensioning or Stage.Joinery or Stage.Assembly && task.Parts.Contains(name)).Select(task => task.Id)];
        }

        foreach (var name in draft.Job.GlueUps.Select(glueUp => glueUp.Name))
        {
            sets[name] = [.. draft.Tasks.Where(task => task.Stage == Stage.Assembly && task.Parts.Contains(name)).Select(task => task.Id)];
        }

        foreach (var (name, id) in draft.FreeTasks)
        {
            sets[name] = [id];
        }
    }

    /// <summary>The names that a job file may use: stages, parts, glue-ups, free tasks and decisions.</summary>
    public static IReadOnlyList<string> NamesIn(Job job) =>
    [
        .. StageNames.All,
        .. job.Parts.Select(part => part.Name),
        .. job.GlueUps.Select(glueUp => glueUp.Name),
        .. job.Work.Select(task => task.Name),
        .. job.Decisions.Select(decision => decision.Name),
    ];

    /// <summary>The tasks that everything under a name begins with.</summary>
    public IReadOnlyList<int> Beginnings(string name, int? except = null)
    {
        var set = StageNames.TryFind(name, out var stage) ? Nearest(stage.Value, 1, except) : Set(name, except);
        return [.. set.Where(id => !draft.Precedences.Exists(one => one.After == id && set.Contains(one.Before)))];
    }

    /// <summary>The tasks that everything under a name ends with.</summary>
    public IReadOnlyList<int> Endings(string name, int? except = null)
    {
        var set = StageNames.TryFind(name, out var stage) ? Nearest(stage.Value, -1, except) : Set(name, except);
        return [.. set.Where(id => !draft.Precedences.Exists(one => one.Before == id && set.Contains(one.After)))];
    }

    private static bool IsOutside(Stage stage) => stage is Stage.Drawing or Stage.BuyingTimber or Stage.Delivery;

    private HashSet<int> Set(string name, int? except) => [.. sets.GetValueOrDefault(name, []).Where(id => id != except)];

    private HashSet<int> Nearest(Stage stage, int step, int? except)
    {
        for (var at = (int)stage; at >= 0 && at < stages.Length; at += step)
        {
            var set = stages[at].Where(id => id != except).ToHashSet();
            if (set.Count > 0)
            {
                return set;
            }
        }

        return [];
    }
}
