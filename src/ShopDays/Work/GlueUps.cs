using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>
/// Each glue-up: dry fit, insides smoothed, glued and squared in one session, the clamps left on, cleaned up when the
/// glue is hard.
/// </summary>
internal static class GlueUps
{
    /// <summary>The operation that closes the joints of a glue-up.</summary>
    public const string Glue = "glue-up";

    // Spreading, closing and clamping should end within 80 % of the assembly time (common practice, no source).
    private const double SafeShare = 0.8;

    private const string DryFit = "dry fit";

    /// <summary>Writes the tasks of the glue-ups, those that others join first.</summary>
    public static void Add(Draft draft, PieceStages stages, IReadOnlyList<GlueUp> inOrder)
    {
        foreach (var glueUp in inOrder)
        {
            AddOne(draft, stages, glueUp);
        }
    }

    /// <summary>The time that an adhesive leaves for spreading and closing.</summary>
    public static WorkTime Allowed(Adhesive adhesive) => adhesive.AssemblyTime * SafeShare;

    /// <summary>Whether a task tries a glue-up dry.</summary>
    public static bool IsDryFitOf(ShopTask task, string glueUp) => task.Timing is TaskTiming.ByOperation { Operation.Name: DryFit } && task.Parts.Contains(glueUp);

    private static void AddOne(Draft draft, PieceStages stages, GlueUp glueUp)
    {
        var adhesive = draft.Waits.TryFindAdhesive(glueUp.Adhesive, out var found)
            ? found
            : throw new ArgumentException($"'{glueUp.Adhesive}' is not an adhesive of the table");
        var pieces = glueUp.Joins.SelectMany(draft.PiecesOf).ToList();
        var parts = Holders.PartsOf(glueUp.Name, draft.Job);
        var joints = JointsIn(draft.Job, glueUp, draft.Operations);
        var sketch = new TaskSketch
        {
            Stage = Stage.Assembly,
            Operation = DryFit,
            Name = "dry fit: " + glueUp.Name,
            Quantity = joints,
            Parts = [glueUp.Name],
            Note = "try the very clamps that the glue-up will have; number the joints before it comes apart",
        };
        draft.Then(pieces, sketch, "the parts are sized and their joints cut");
        CutAngledEnds(draft, stages, glueUp);
        SmoothInsides(draft, glueUp, pieces);

        var weight = Weights.OfNamed(glueUp.Name, draft.Job, draft.Layout);
        var sets = draft.SettingOf(adhesive);
        sketch = sketch with
        {
            Operation = Glue,
            Name = "glue up: " + glueUp.Name,
            Clamps = Clamping.Of(draft, glueUp.Name, glueUp.Clamps),
            Floor = Footprint.Of(glueUp.Name, draft.Job),
            Lift = weight,
            Note = FormattableString.Invariant($"{adhesive.Name}: spread, closed and clamped within {Allowed(adhesive).Minutes:0.#} min"),
        };
        sketch = sketch with { Crew = HandsFor(draft, glueUp, sketch, joints, adhesive) };
        var last = draft.LastOf(pieces);
        var glued = draft.Add(sketch with { Sets = sets, SetsFor = Duration.Max(adhesive.UntilWorked, adhesive.ClampTime) });
        draft.Before(last, glued, "every joint is tried dry, with its clamps, before there is glue on it");
        var wet = WhileWet(draft, glueUp, glued, sketch with { Clamps = [], Floor = Area.Zero, Crew = 1, Note = "", Lift = Mass.Zero });

        var clean = draft.Add(sketch with
        {
            Operation = "clean up glue and flush joints",
            Name = "clean up and flush the joints: " + glueUp.Name,
            Clamps = [],
            Floor = Area.Zero,
            Crew = 1,
            Note = "",
            Covariates = Properties.Of(parts.Select(part => part.Species)),
        });
        draft.Before(glued, clean, "the glue sets under pressure", new Wait(adhesive.ClampTime, $"{glueUp.Name}: {adhesive.Name} sets in the clamps", HoldsClamps: true, HoldsFloor: true) { Sets = sets });
        draft.Before(wet, clean, "a joint is planed or levered only when its glue is hard", new Wait(Duration.Max(adhesive.UntilWorked, adhesive.ClampTime), $"{glueUp.Name}: the glue hardens until it may be planed") { Sets = sets });
        draft.CameTo([new Piece(glueUp.Name, 0)], clean);
    }

    // The check for square comes first, while the joints still give; pegs then hold them as they are. The last of all.
    private static int WhileWet(Draft draft, GlueUp glueUp, int glued, TaskSketch sketch)
    {
        var last = draft.Add(sketch with { Operation = "square and check assembly", Name = "check for square: " + glueUp.Name, Quantity = 1 });
        draft.Before(glued, last, "diagonals are compared at once, before the glue grips", sameSession: true);
        foreach (var peg in Joinery.PegsOf(draft, glueUp))
        {
            var id = draft.Add(peg);
            draft.Before(last, id, "pegs are driven when it stands square and the glue is still wet", sameSession: true);
            last = id;
        }

        return last;
    }

    private static void CutAngledEnds(Draft draft, PieceStages stages, GlueUp glueUp)
    {
        foreach (var part in draft.Job.Parts.Where(part => part.Ends == PartEnds.Angled && glueUp.Joins.Contains(part.Name) && draft.IsFirst("ends", part.Name)))
        {
            var pieces = draft.PiecesOf(part.Name);
            if (pieces.Count > 0)
            {
                stages.EndsOf(part, pieces, pieces.Count, Stage.Assembly, "the angle is taken from the dry assembly");
            }
        }
    }

    private static void SmoothInsides(Draft draft, GlueUp glueUp, List<Piece> pieces)
    {
        var inside = draft.Job.Parts.Where(part => glueUp.Joins.Contains(part.Name) && FaceStandards.IsSmoothed(part, PartSurface.Inside) && draft.IsFirst("inside", part.Name)).ToList();
        if (inside.Count == 0 || pieces.Count == 0)
        {
            return;
        }

        draft.Then(pieces, new TaskSketch
        {
            Stage = Stage.Assembly,
            Operation = Finishing.Smooth,
            Name = "smooth the insides: " + glueUp.Name,
            Quantity = draft.Operations[Finishing.Smooth].Unit.Of(inside.Aggregate(Area.Zero, (sum, part) => sum + (part.FaceArea * part.Count))),
            Covariates = Properties.Of(inside.Select(part => part.Species)),
            Parts = [.. inside.Select(part => part.Name)],
        }, "inside faces cannot be reached once it is together");
    }

    /// <summary>What is too heavy for one is too heavy to be turned and squared by one while its glue is open; what has too many joints for one may be closed in time by two.</summary>
    private static int HandsFor(Draft draft, GlueUp glueUp, TaskSketch sketch, int joints, Adhesive adhesive)
    {
        var each = SpreadingEach(draft, sketch);
        var allowed = Allowed(adhesive);
        var forItsWeight = draft.Limits.Workers >= 2 && draft.Limits.IsForTwo(sketch.Lift) ? 2 : 1;
        if (each * joints <= allowed)
        {
            return forItsWeight;
        }

        // Two pairs of hands close two joints while one closes one.
        if (draft.Limits.Workers >= 2 && each * joints / 2 <= allowed)
        {
            return 2;
        }

        var said = FormattableString.Invariant($"{glueUp.Name} closes {joints} joints, about {(each * joints).Minutes:0} min of spreading and clamping, and {adhesive.Name} allows {allowed.Minutes:0.#} min");
        draft.Remarks.Add(new Remark(RemarkKind.OpenTime, glueUp.Name, said, GlueUpCure.For(draft.Waits, joints, each, allowed)));
        return forItsWeight;
    }

    private static WorkTime SpreadingEach(Draft draft, TaskSketch sketch)
    {
        var timing = draft.TimingOf(sketch);
        return CentralTime.Of(timing with { Setups = 0 }) / (1 + timing.Method.Rest) / timing.Quantity;
    }

    /// <summary>Joints that a glue-up closes: as written, or the joining joints among its parts that no earlier glue-up closes.</summary>
    public static int JointsIn(Job job, GlueUp glueUp, OperationCatalogue operations)
    {
        if (glueUp.Joints is { } written)
        {
            return Math.Max(1, written);
        }

        var counted = ClosedIn(job, glueUp, operations).Sum(joint => joint.Count);
        return counted > 0 ? counted : Math.Max(1, glueUp.Joins.Count - 1);
    }

    /// <summary>The joining joints among the parts of a glue-up that no earlier glue-up closes.</summary>
    public static IEnumerable<Joint> ClosedIn(Job job, GlueUp glueUp, OperationCatalogue operations) => GluedIn(job, glueUp, operations).Where(joint => joint.Parts.Count > 1);

    /// <summary>The same, and those that are written in one part, without what they join to it.</summary>
    public static IEnumerable<Joint> GluedIn(Job job, GlueUp glueUp, OperationCatalogue operations)
    {
        var inside = Names(glueUp.Name);
        var earlier = glueUp.Joins.Where(name => job.GlueUps.Any(other => other.Name == name)).Select(Names).ToList();
        return job.Joints.Where(joint => JointKinds.Closes(joint.Kind, operations) && joint.Parts.Count > 0 && joint.Parts.All(inside.Contains) && !earlier.Exists(held => joint.Parts.All(held.Contains)));

        HashSet<string> Names(string name) => [.. Holders.PartsOf(name, job).Select(part => part.Name)];
    }
}
