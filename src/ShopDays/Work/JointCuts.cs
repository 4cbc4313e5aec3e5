using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>The tasks that one line of joints makes, before they are put in order.</summary>
internal static class JointCuts
{
    /// <summary>One step of a joint as runs: the sketch of each with the number of the first joint in it.</summary>
    public static IReadOnlyList<TaskSketch> Of(Draft draft, Joint joint, JointStep step, Stage stage)
    {
        var parts = On(draft, joint, step.On);
        var whole = Whole(draft, joint, step, parts, stage);
        var method = draft.Operations[step.Operation].MethodIn(draft.Job);
        var units = step.Count == StepCount.Length && method.IsSetUpOnce ? 1 : joint.Count;
        var limit = draft.RunLimit(step.Operation);
        var time = CentralTime.Of(draft.TimingOf(whole));
        if (units == 1 && time > limit && step.Count == StepCount.Length)
        {
            units = (int)Math.Ceiling(time / limit);
        }

        var runs = Runs.Of([.. Enumerable.Range(1, units)], time / units, limit).ToList();
        return
        [
            .. runs.Select(run => whole with
            {
                Name = runs.Count == 1 ? whole.Name : $"{whole.Name} ({Span(run)} of {units})",
                Quantity = whole.Quantity * run.Count / units,
                Each = whole.Each * run.Count / units,
                Run = step.Count == StepCount.Length ? 1 : run.Count,
            }),
        ];
    }

    /// <summary>The parts or glue-ups that a step is done on.</summary>
    public static IReadOnlyList<string> On(Draft draft, Joint joint, StepOn on)
    {
        List<string> named = [.. joint.Parts.Where(name => draft.Job.Parts.Any(part => part.Name == name) || draft.Job.GlueUps.Any(one => one.Name == name))];
        return on switch
        {
            StepOn.All => named,
            StepOn.First => [.. named.Take(1)],
            StepOn.Others => named.Count > 1 ? [.. named.Skip(1)] : named,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    // A leg has mortises for several rails, and the maker must know which.
    private static string For(Draft draft, Joint joint, JointStep step) =>
        step.On == StepOn.First && On(draft, joint, StepOn.Others) is var others && !others.SequenceEqual(On(draft, joint, StepOn.First), StringComparer.Ordinal)
            ? ", for " + string.Join(", ", others)
            : "";

    private static TaskSketch Whole(Draft draft, Joint joint, JointStep step, IReadOnlyList<string> on, Stage stage)
    {
        var parts = draft.Job.Parts.Where(part => on.Contains(part.Name)).ToList();
        var unit = draft.Operations[step.Operation].Unit;
        return new TaskSketch
        {
            Stage = stage,
            Operation = step.Operation,
            Name = step.Operation + ": " + string.Join(", ", on) + For(draft, joint, step),
            Quantity = step.Count switch
            {
                StepCount.Joints => joint.Count * step.PerJoint,
                StepCount.Tails => joint.Count * Math.Max(1, joint.Tails),
                StepCount.Length when unit.Kind == UnitKind.Area => unit.Of(parts.Aggregate(Area.Zero, (sum, part) => sum + (part.FaceArea * part.Count))),
                StepCount.Length => unit.Of(LengthOf(joint, step, parts)),
                _ => throw new System.Diagnostics.UnreachableException(),
            },
            Each = joint.Count,
            Batch = step.Count == StepCount.Length ? 1 : LikeJoints(draft.Job, joint),
            Covariates = Properties.Of(
                parts.Select(part => part.Species),
                joint.Thickness > Length.Zero ? joint.Thickness : MeanThickness(parts),
                DepthOf(joint, step, parts),
                joint.Width),
            Parts = on,
        };
    }

    /// <summary>How long a joint is in all. A groove whose length is not written goes the length of its parts, a dado across them.</summary>
    public static Length LengthOf(Joint joint, JointStep step, List<Part> parts)
    {
        var length = joint.Length > Length.Zero
            ? joint.Length
            : parts.Aggregate(Length.Zero, (sum, part) => sum + ((step.Operation == "dado" ? part.Width : part.Length) * part.Count));
        return Length.Max(length, Length.FromInches(1m));
    }

    private static Length DepthOf(Joint joint, JointStep step, List<Part> parts) => step switch
    {
        _ when joint.Depth > Length.Zero => joint.Depth,
        { Operation: "lap or halving" } => MeanThickness(parts) / 2,
        { Operation: "bore for peg, screw or bolt" } => MeanThickness(parts),
        _ => step.Depth,
    };

    private static Length MeanThickness(List<Part> parts) => parts.Count == 0
        ? Length.Zero
        : parts.Aggregate(Length.Zero, (sum, part) => sum + part.Thickness) / parts.Count;

    private static int LikeJoints(Job job, Joint joint) => job.Joints
        .Where(other => string.Equals(other.Kind, joint.Kind, StringComparison.OrdinalIgnoreCase)
            && other.Tails == joint.Tails && other.Depth == joint.Depth && other.Width == joint.Width)
        .Sum(other => other.Count);

    private static string Span(IReadOnlyList<int> run) => run.Count == 1
        ? FormattableString.Invariant($"{run[0]}")
        : FormattableString.Invariant($"{run[0]}-{run[^1]}");
}
