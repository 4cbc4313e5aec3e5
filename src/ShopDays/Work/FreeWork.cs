using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Work that the parts do not imply, tied to stages, parts, glue-ups, other free work and decisions by name.</summary>
internal static class FreeWork
{
    /// <summary>
    /// Whether a free task is one more operation on loose parts: it names an operation of the saw, the plane or the
    /// joiner and parts, and says nothing of what it comes after.
    /// </summary>
    public static bool IsOnLooseParts(Draft draft, FreeTask task) =>
        task.Operation is { } operation
        && task.After.Count == 0
        && task.On.Count > 0
        && task.On.All(name => draft.Job.Parts.Any(part => part.Name == name))
        && draft.Operations[operation].MethodIn(draft.Job).PaceGroup is PaceGroup.Sawing or PaceGroup.Planing or PaceGroup.Joinery;

    /// <summary>The sketch of a free task that an operation times.</summary>
    public static TaskSketch SketchOf(Draft draft, FreeTask task, Stage stage) => new()
    {
        Stage = stage,
        Operation = task.Operation!,
        Name = task.Name,
        Quantity = task.Quantity,
        Each = Math.Max(1, draft.Operations[task.Operation!].Unit.Kind == UnitKind.Count ? task.Quantity : 1),
        Covariates = Properties.Of(task.On.SelectMany(name => Holders.PartsOf(name, draft.Job)).Select(part => part.Species)),
        Parts = task.On,
        Crew = task.People,
    };

    /// <summary>Writes the tasks that are not written yet, and ties them all.</summary>
    public static void Add(Draft draft)
    {
        foreach (var task in draft.Job.Work.Where(task => !draft.FreeTasks.ContainsKey(task.Name)))
        {
            var stage = StageOf(draft, task);
            draft.FreeTasks[task.Name] = task.Operation is null
                ? draft.Add(id => ByGuess(draft, task, stage, id))
                : draft.Add(SketchOf(draft, task, stage));
        }

        var anchors = new Anchors(draft);
        var decisions = new Decisions(draft, anchors);
        foreach (var task in draft.Job.Work)
        {
            Tie(draft, task, anchors, decisions);
        }

        decisions.Tie();
    }

    private static void Tie(Draft draft, FreeTask task, Anchors anchors, Decisions decisions)
    {
        var id = draft.FreeTasks[task.Name];
        SetDates(draft, task, id);
        foreach (var name in task.Before.Where(name => !decisions.Has(name)))
        {
            foreach (var later in anchors.Beginnings(name, id))
            {
                draft.Before(id, later, $"'{task.Name}' is to be done before {name}");
            }
        }

        foreach (var name in task.After.Where(name => !decisions.Has(name)))
        {
            foreach (var earlier in anchors.Endings(name, id))
            {
                draft.Before(earlier, id, $"'{task.Name}' is to be done after {name}", WaitAfter(draft, earlier, task));
            }
        }

        // What is fitted late is sized before, whatever else the task comes after.
        if (task.After.Count > 0 && draft.Tasks[id].Stage > Stage.Joinery)
        {
            foreach (var earlier in task.On.Where(name => draft.Job.Parts.Any(part => part.Name == name)).SelectMany(name => anchors.Endings(name, id)))
            {
                draft.Before(earlier, id, "its parts are sized and jointed first");
            }
        }

        // Without a word about when, hardware and packing come after all that is done to their parts.
        if (task.After.Count == 0 && task.On.Count > 0 && !IsOnLooseParts(draft, task))
        {
            foreach (var earlier in LastOn(draft, task, id))
            {
                draft.Before(earlier, id, "it comes when its parts are together and finished", WaitAfter(draft, earlier, task));
            }
        }
    }

    // People who come for it do not come back tomorrow for the rest.
    private static void SetDates(Draft draft, FreeTask task, int id) => draft.Change(draft.Tasks[id] with
    {
        IsOwn = true,
        NotBefore = task.NotBefore,
        Appointed = task.Appointed,
        IsSplittable = draft.Tasks[id].IsSplittable && task.Appointed is null,
    });

    private static List<int> LastOn(Draft draft, FreeTask task, int id)
    {
        var names = task.On.SelectMany(name => new[] { name, Holders.OutermostOf(name, draft.Job) }).ToHashSet(StringComparer.Ordinal);
        var set = draft.Tasks.Where(other => other.Id != id && !draft.FreeTasks.ContainsValue(other.Id) && other.Parts.Any(names.Contains)).Select(other => other.Id).ToHashSet();
        return [.. set.Where(one => !draft.Precedences.Exists(order => order.Before == one && set.Contains(order.After)))];
    }

    // After a last coat its wait goes first; nothing is packed before a film is hard right through.
    private static Wait? WaitAfter(Draft draft, int earlier, FreeTask task)
    {
        var closing = draft.ClosingWaits.Find(one => one.After == earlier)?.Wait;
        var isPacking = task.Operation == "pack and load";
        return closing is not null && isPacking && Finishing.LastCoatIsFilm(draft, earlier)
            ? Dimensioning.RestNamed(draft, "cure before delivery of a film finish", "the film hardens right through: no blankets on a soft one") ?? closing
            : closing;
    }

    private static ShopTask ByGuess(Draft draft, FreeTask task, Stage stage, int id) => new()
    {
        Id = id,
        Name = draft.Unique(task.Name),
        Stage = stage,
        Timing = new TaskTiming.ByGuess(task.Guess ?? throw new ArgumentException($"'{task.Name}' has neither a guess nor an operation")),
        Parts = task.On,
        WorkClass = task.IsHeavy ? WorkClass.Heavy : WorkClass.Light,
        IsNoisy = task.IsNoisy,
        Crew = task.People,
        // A journey is made in one go; desk work can be laid aside.
        IsSplittable = task.PaidKilometres <= 0 && stage != Stage.Delivery,
        LeastUseful = WorkTime.FromMinutes(15),
        Cautions = task.IsHeavy ? ["heavy work"] : [],
    };

    private static Stage StageOf(Draft draft, FreeTask task)
    {
        var after = task.After.Select(name => StageOfName(draft, name)).Where(stage => stage is not null).Select(stage => (int)stage!.Value).DefaultIfEmpty(-1).Max();
        if (after >= 0)
        {
            return (Stage)Math.Min(after + 1, (int)Stage.Delivery);
        }

        var before = task.Before.Select(name => StageOfName(draft, name)).Where(stage => stage is not null).Select(stage => (int)stage!.Value).DefaultIfEmpty(-1).Min();
        return before switch
        {
            >= 0 and <= (int)Stage.Layout => Stage.Drawing,
            > (int)Stage.Layout => (Stage)(before - 1),
            _ => task.On.Count > 0 ? Stage.Delivery : Stage.Drawing,
        };
    }

    private static Stage? StageOfName(Draft draft, string name)
    {
        if (StageNames.TryFind(name, out var stage))
        {
            return stage;
        }

        return draft.Job.GlueUps.Any(one => one.Name == name) ? Stage.Assembly
            : draft.Job.Parts.Any(one => one.Name == name) ? Stage.Joinery
            : null;
    }
}
