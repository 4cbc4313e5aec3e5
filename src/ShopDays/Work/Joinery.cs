using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>
/// The joints of sized parts: grooves first, mortises before the tenons that are fitted to them, shaping and mitred ends
/// last.
/// </summary>
internal static class Joinery
{
    private sealed record Made(int Id, JointTime Time, IReadOnlyList<string> On);

    /// <summary>Writes the tasks of all joints that are cut in loose parts, and of free work that belongs with them.</summary>
    public static void Add(Draft draft, PieceStages stages)
    {
        var made = new List<Made>();
        foreach (var joint in draft.Job.Joints)
        {
            var kind = KindOf(draft, joint);
            if (kind.Time != JointTime.Together)
            {
                var isGlued = kind.Time == JointTime.WhileGluing && GlueUpOf(draft.Job, joint) is not null;
                made.AddRange(Cut(draft, joint, [.. kind.Steps.Where(step => !isGlued || step.IsBeforeGlue)], kind.Time));
            }
        }

        foreach (var task in draft.Job.Work.Where(task => FreeWork.IsOnLooseParts(draft, task)))
        {
            var id = draft.Add(FreeWork.SketchOf(draft, task, Stage.Joinery));
            draft.FreeTasks[task.Name] = id;
            draft.Before(task.On.SelectMany(draft.LastOf), id, "the parts are sized before they are worked on further");
            made.Add(new Made(id, JointTime.Shaping, task.On));
        }

        PutInOrder(draft, made);
        Finish(draft, stages, made);
    }

    /// <summary>The pegs that are driven in a glue-up.</summary>
    public static IEnumerable<TaskSketch> PegsOf(Draft draft, GlueUp glueUp) =>
        from joint in draft.Job.Joints
        let kind = KindOf(draft, joint)
        where kind.Time == JointTime.WhileGluing && GlueUpOf(draft.Job, joint) == glueUp.Name
        from step in kind.Steps.Where(step => !step.IsBeforeGlue)
        from sketch in JointCuts.Of(draft, joint, step, Stage.Assembly)
        select sketch with { Parts = [glueUp.Name] };

    /// <summary>Hinges let in and drawers fitted, when what they belong to is together.</summary>
    public static void AddTogether(Draft draft)
    {
        foreach (var joint in draft.Job.Joints.Where(joint => KindOf(draft, joint).Time == JointTime.Together))
        {
            var holders = JointCuts.On(draft, joint, StepOn.All).Select(name => Holders.OutermostOf(name, draft.Job)).Distinct(StringComparer.Ordinal).ToList();
            var pieces = holders.SelectMany(draft.PiecesOf).ToList();
            var last = draft.LastOf(pieces);
            var ids = new List<int>();
            foreach (var sketch in KindOf(draft, joint).Steps.SelectMany(step => JointCuts.Of(draft, joint, step, Stage.Assembly)))
            {
                var id = draft.Add(sketch);
                draft.Before(last, id, "it is fitted to what stands and has settled, and before the finish");
                ids.Add(id);
            }

            draft.CameTo(pieces, [.. ids]);
        }
    }

    private static JointKind KindOf(Draft draft, Joint joint) => JointKinds.TryFind(joint.Kind, draft.Operations, out var kind)
        ? kind
        : throw new ArgumentException($"'{joint.Kind}' is not a kind of joint");

    private static string? GlueUpOf(Job job, Joint joint) => Holders.InOrder(job).Order
        .FirstOrDefault(glueUp => joint.Parts.All(name => Holders.PartsOf(glueUp.Name, job).Any(part => part.Name == name)))?.Name;

    private static List<Made> Cut(Draft draft, Joint joint, IReadOnlyList<JointStep> steps, JointTime time)
    {
        var made = new List<Made>();
        List<int> before = [];
        foreach (var step in steps)
        {
            var on = JointCuts.On(draft, joint, step.On);
            var ids = new List<int>();
            foreach (var sketch in JointCuts.Of(draft, joint, step, Stage.Joinery))
            {
                var id = draft.Add(sketch);
                draft.Before(on.SelectMany(draft.LastOf), id, "joints are set out from true faces, edges and ends");
                draft.AfterTheRunBefore(ids.Count > 0 ? ids[^1] : null, id);
                ids.Add(id);
                made.Add(new Made(id, time, on));
            }

            Fit(draft, before, ids, time == JointTime.WhileGluing ? "a peg goes into holes that are bored" : "the tenon is fitted to its mortise, which is hard to alter");
            before = ids;
        }

        return made;
    }

    // Runs of mortises and runs of tenons need not be equally long: each tenon waits for the mortises up to its own.
    private static void Fit(Draft draft, List<int> first, List<int> then, string reason)
    {
        for (var run = 0; run < then.Count && first.Count > 0; run++)
        {
            var upTo = (((run + 1) * first.Count) + then.Count - 1) / then.Count;
            draft.Before(first[Math.Max(0, upTo - 1)], then[run], reason);
        }
    }

    private static void PutInOrder(Draft draft, List<Made> made)
    {
        foreach (var later in made)
        {
            foreach (var earlier in made.Where(one => one.On.Intersect(later.On).Any()))
            {
                if (later.Time == JointTime.Shaping && earlier.Time != JointTime.Shaping)
                {
                    draft.Before(earlier.Id, later.Id, "shaping takes the square references away");
                }
                else if (later.Time == JointTime.WhileGluing && earlier.Time is JointTime.First or JointTime.Cut)
                {
                    draft.Before(earlier.Id, later.Id, "holes for pegs are set off from a joint that fits");
                }
                else if (earlier.Time == JointTime.First && IsMortise(draft, later.Id))
                {
                    draft.Before(earlier.Id, later.Id, "the groove guides the mortise");
                }
            }
        }
    }

    private static bool IsMortise(Draft draft, int id) => draft.Tasks[id].Timing is TaskTiming.ByOperation { Operation.Name: "mortise" };

    private static void Finish(Draft draft, PieceStages stages, List<Made> made)
    {
        foreach (var part in draft.Job.Parts)
        {
            var pieces = draft.PiecesOf(part.Name);
            List<int> own = [.. made.Where(one => one.On.Contains(part.Name)).Select(one => one.Id)];
            if (own.Count > 0)
            {
                draft.CameTo(pieces.Count > 0 ? pieces : [new Piece(part.Name, 1)], [.. own]);
                foreach (var id in own)
                {
                    // No joint is cut in a spare before it is wanted.
                    draft.WorksOn(id, pieces.Where(piece => piece.Number <= part.Count));
                }
            }

            var isLate = part.Ends == PartEnds.Mitred || (part.Ends == PartEnds.Angled && !draft.Job.GlueUps.Any(one => one.Joins.Contains(part.Name)));
            if (isLate && pieces.Count > 0)
            {
                stages.EndsOf(part, pieces, pieces.Count, Stage.Joinery, "length comes last where ends are at an angle");
            }
        }
    }
}
