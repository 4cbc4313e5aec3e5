using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>Strips become panels: joints shot, glued, left to rest, then flattened and brought to size as one piece.</summary>
internal static class Panels
{
    /// <summary>The operation that fits the edges of strips to each other.</summary>
    public const string Shoot = "match and shoot a glue joint";

    /// <summary>The operation that glues strips to a panel.</summary>
    public const string Glue = "edge-glue panel";

    private const string Flatten = "flatten a glued panel";

    /// <summary>Writes the tasks of all the panels of a part.</summary>
    public static void Add(Draft draft, PieceStages stages, Part part, IReadOnlyList<RoughPiece> strips)
    {
        if (strips.Count == 0)
        {
            return;
        }

        var adhesive = AdhesiveFor(draft.Job, draft.Waits, part);
        var panels = strips.GroupBy(strip => strip.Piece.Number).Select(one => (IReadOnlyList<RoughPiece>)[.. one]).ToList();
        var clamps = ClampsFor(draft, part);
        var whole = new List<RoughPiece>();
        foreach (var panel in panels)
        {
            whole.Add(GlueUp(draft, part, panel, panels.Count, adhesive, clamps));
        }

        stages.JointTheEdge(whole, whole.Count, null);
        stages.WidthAndEnds(whole, whole.Count);
    }

    private static RoughPiece GlueUp(Draft draft, Part part, IReadOnlyList<RoughPiece> strips, int panels, Adhesive adhesive, IReadOnlyList<ClampsHeld> clamps)
    {
        var joints = strips.Count - 1;
        var joint = strips[0].Length;
        var label = panels == 1 ? part.Name : FormattableString.Invariant($"{part.Name} {strips[0].Piece.Number}");
        var grain = strips.Max(strip => strip.Board.GrainFactor);
        List<Piece> pieces = [.. strips.Select(strip => strip.Piece)];
        var shoot = new TaskSketch
        {
            Stage = Stage.Dimensioning,
            Operation = Shoot,
            Name = "match and shoot the joints: " + label,
            Quantity = draft.Operations[Shoot].Unit.Of(joint * joints),
            Each = joints,
            Run = joints,
            Batch = joints * panels,
            Covariates = Properties.Of([part.Species], strips[0].Target),
            Factor = grain,
            Parts = [part.Name],
        };
        var glue = new TaskSketch
        {
            Stage = Stage.Dimensioning,
            Operation = Glue,
            Name = "edge-glue: " + label,
            Quantity = draft.Operations[Glue].Unit.Of(joint * joints),
            Batch = panels,
            Covariates = Properties.Of([], strips[0].Target),
            Parts = [part.Name],
            Clamps = clamps,
            Floor = part.FaceArea,
            Sets = draft.SettingOf(adhesive),
            SetsFor = Duration.Max(adhesive.UntilWorked, adhesive.ClampTime),
            Note = adhesive.Name + "; clamps above and below in turn, spread and closed one joint after the other",
        };
        Check(draft, part, glue, joints, adhesive);

        var shot = Shot(draft, shoot, pieces, joints);
        var closed = draft.Add(glue);
        var together = CentralTime.Of(draft.TimingOf(glue)) + CentralTime.Of(((TaskTiming.ByOperation)draft.Tasks[shot].Timing));
        draft.Before(shot, closed, "a shot joint is glued before it moves", sameSession: together <= draft.LongestSession * 0.6);
        draft.Forget(pieces);
        return AtRest(draft, part, strips, label, grain, closed, adhesive);
    }

    private static int Shot(Draft draft, TaskSketch shoot, List<Piece> pieces, int joints)
    {
        var each = CentralTime.Of(draft.TimingOf(shoot)) / joints;
        foreach (var run in Runs.Of([.. Enumerable.Range(1, joints)], each, draft.RunLimit(Shoot)))
        {
            draft.Then(pieces, shoot with { Quantity = shoot.Quantity * run.Count / joints, Each = run.Count, Run = run.Count }, "joints are shot on strips of one thickness");
        }

        return draft.LastOf(pieces)[0];
    }

    private static RoughPiece AtRest(Draft draft, Part part, IReadOnlyList<RoughPiece> strips, string label, double grain, int closed, Adhesive adhesive)
    {
        var width = strips.Aggregate(-(draft.Job.Allowances.Strip * strips.Count), (sum, strip) => sum + strip.Width);
        var panel = strips[0] with
        {
            Piece = new Piece(part.Name, strips[0].Piece.Number),
            Width = Length.Max(width, part.Width),
            Thickness = strips[0].Target,
        };
        var faceTwo = FacePlaning.Of(draft, Flatten, "the other face", FaceStandards.FaceTwo(draft.Job, part, draft.Operations));
        var isSecondFlattened = faceTwo is { Operation: Flatten };
        var moves = (isSecondFlattened ? 2 : 1) * Passes.Moves(panel.Length, draft.Limits.LongestPass);
        LongMoves.Warn(draft, part.Name, moves, panel.Weight / 2);
        var surfacing = new TaskSketch
        {
            Stage = Stage.Dimensioning,
            Operation = Flatten,
            Name = "flatten the panel: " + label,
            Quantity = draft.Operations[Flatten].Unit.Of(panel.Length * panel.Width * (isSecondFlattened ? 2 : 1)),
            Covariates = Properties.Of([part.Species], depth: RoughPiece.PanelSpare / 2, width: panel.Width),
            Factor = grain * Passes.Blending(panel.Length, draft.Limits.LongestPass) * Passes.WideFace(panel.Width),
            Parts = [part.Name],
            Lift = panel.Weight,
        };
        var passes = LongMoves.Add(draft, surfacing, moves, panel.Weight / 2);
        var flat = passes[0];
        draft.Before(closed, flat, "the glue sets under pressure", new Wait(adhesive.ClampTime, $"{label}: {adhesive.Name} sets in the clamps", HoldsClamps: true, HoldsFloor: true) { Sets = draft.SettingOf(adhesive) });
        var rest = Dimensioning.RestNamed(draft, "panel rest after edge-gluing, before surfacing", $"{label} rests: water from the glue swells the joint, and planed now it sinks later");
        draft.Before(closed, flat, "a joint line planed while it is swollen sinks later", new Wait(Duration.Max(rest?.Duration ?? Duration.Zero, adhesive.UntilWorked), rest?.Reason ?? $"{label}: the glue hardens"));
        if (draft.SettingOf(adhesive) is { } sets)
        {
            // Water leaves the joint as it does elsewhere; the glue is what the cold keeps.
            draft.Before(closed, flat, "a joint is planed only when its glue is hard", new Wait(adhesive.UntilWorked, $"{label}: the glue hardens until it may be planed") { Sets = sets });
        }

        draft.WorksOn(closed, [panel.Piece]);
        Came(draft, panel, passes);
        if (faceTwo is { Operation: FacePlaning.Jack })
        {
            var jacked = LongMoves.Add(draft, surfacing with
            {
                Operation = faceTwo.Operation,
                Name = faceTwo.Name + ": " + label,
                Quantity = draft.Operations[faceTwo.Operation].Unit.Of(panel.Length * panel.Width),
                Factor = faceTwo.FactorOn(grain, panel.Length, panel.Width, draft.Limits.LongestPass),
            }, moves, panel.Weight / 2);
            draft.Before(passes[^1], jacked[0], "a face that does not show is taken no further than its joints need");
            Came(draft, panel, jacked);
        }

        return panel;
    }

    private static void Came(Draft draft, RoughPiece panel, IReadOnlyList<int> through)
    {
        draft.CameTo([panel.Piece], through[^1]);
        foreach (var id in through)
        {
            draft.WorksOn(id, [panel.Piece]);
        }
    }

    private static void Check(Draft draft, Part part, TaskSketch glue, int joints, Adhesive adhesive)
    {
        var timing = draft.TimingOf(glue);
        var spread = CentralTime.Of(timing with { Setups = 0 }) / (1 + timing.Method.Rest);
        var allowed = GlueUps.Allowed(adhesive);
        if (spread / joints > allowed)
        {
            draft.Remarks.Add(new Remark(
                RemarkKind.OpenTime,
                part.Name,
                FormattableString.Invariant($"one joint of {part.Name} takes {spread.Minutes / joints:0} min to spread and close, and {adhesive.Name} allows {allowed.Minutes:0}"),
                "a slower adhesive leaves more time, and a helper saves some"));
        }
    }

    /// <summary>The adhesive of a panel: that of the glue-up which holds it, else of the first, else a usual one.</summary>
    public static Adhesive AdhesiveFor(Job job, WaitTable waits, Part part) => AdhesiveNameFor(job, part) is var name && waits.TryFindAdhesive(name, out var adhesive)
        ? adhesive
        : throw new ArgumentException($"'{name}' is not an adhesive of the table");

    /// <summary>The name of that adhesive.</summary>
    public static string AdhesiveNameFor(Job job, Part part) =>
        (job.GlueUps.FirstOrDefault(one => one.Joins.Contains(part.Name)) ?? (job.GlueUps.Count > 0 ? job.GlueUps[0] : null))?.Adhesive ?? "PVA, yellow";

    // One clamp to ten inches of joint, the middle of 8 to 12 (common practice, no source).
    private static IReadOnlyList<ClampsHeld> ClampsFor(Draft draft, Part part)
    {
        var wanted = new ClampsHeld(part.Width, Math.Max(2, (int)Math.Ceiling(part.Length.Inches / 10)));
        return Clamping.Of(draft, part.Name, [wanted]);
    }
}
