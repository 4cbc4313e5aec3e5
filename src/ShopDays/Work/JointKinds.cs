using System.Diagnostics.CodeAnalysis;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>
/// The kinds of joints that a job file may name: those of this table, and every operation of the catalogue that works
/// on pieces, so that an operation of the shop's own is a joint without more ado.
/// </summary>
public static class JointKinds
{
    private const string Dado = "dado";

    private static readonly Length ThreeEighths = Length.FromInches(0.375m);

    private static readonly IReadOnlyList<JointKind> Table =
    [
        Tailed("dovetail", "dovetail, through"),
        Tailed("half-blind dovetail", "dovetail, half-blind"),
        new()
        {
            Name = "mortise and tenon",
            Parts = 2,
            Uses = [JointFigure.Depth, JointFigure.Width, JointFigure.Thickness],
            IsClosedInGlueUp = true,
            Steps =
            [
                new("mortise", StepCount.Joints, StepOn.First, Length.FromInches(1.5m)),
                new("tenon", StepCount.Joints, StepOn.Others, Length.FromInches(1.5m)),
            ],
        },
        Counted("lap", "lap or halving"),
        Counted("bridle", "bridle joint"),
        Long("groove", "groove", ThreeEighths),
        Long("rabbet", "rabbet", ThreeEighths),
        Long("tongue", "tongue", Length.FromInches(0.25m)) with { IsOfEvenThickness = true },
        Long(Dado, Dado, ThreeEighths) with { IsClosedInGlueUp = true },
        new()
        {
            Name = "bore",
            Uses = [JointFigure.Depth],
            IsSetOut = false,
            Steps = [new("bore for peg, screw or bolt", StepCount.Joints)],
        },
        new()
        {
            Name = "drawbore",
            Time = JointTime.WhileGluing,
            Parts = 2,
            Steps =
            [
                // One hole through the cheeks of the mortise, one nearer the shoulder through the tenon.
                new("bore for peg, screw or bolt", StepCount.Joints) { PerJoint = 2, IsBeforeGlue = true },
                new("drive a peg", StepCount.Joints),
            ],
        },
        new()
        {
            Name = "hinge",
            Time = JointTime.Together,
            Uses = [JointFigure.Width],
            Steps = [new("let in a hinge", StepCount.Joints)],
        },
        new()
        {
            Name = "drawer fitting",
            Time = JointTime.Together,
            Steps = [new("fit a drawer to its opening", StepCount.Joints)],
        },
        Shaped("taper", "taper or chamfer"),
        Shaped("chamfer", "taper or chamfer"),
        Shaped("curve", "saw a curve"),
    ];

    /// <summary>All names that may be written, those of the table first.</summary>
    public static IReadOnlyList<string> Names(OperationCatalogue operations) =>
    [
        .. Table.Select(kind => kind.Name),
        .. operations.All.Where(IsOnPieces).Select(operation => operation.Name).Where(name => !Table.Any(kind => Same(kind.Name, name))),
    ];

    /// <summary>Finds a kind by its name, without regard to case.</summary>
    public static bool TryFind(string name, OperationCatalogue operations, [NotNullWhen(true)] out JointKind? kind)
    {
        kind = Table.FirstOrDefault(one => Same(one.Name, name));
        if (kind is null && operations.TryFind(name, out var operation) && IsOnPieces(operation))
        {
            kind = OfOperation(operation);
        }

        return kind is not null;
    }

    /// <summary>Whether a kind is closed in a glue-up.</summary>
    internal static bool Closes(string name, OperationCatalogue operations) => TryFind(name, operations, out var kind) && kind.IsClosedInGlueUp;

    /// <summary>The step that cuts a dado, where a joint is one that is closed in a glue-up; null for all others.</summary>
    internal static JointStep? DadoIn(Joint joint, OperationCatalogue operations) =>
        TryFind(joint.Kind, operations, out var kind) && kind.IsClosedInGlueUp ? kind.Steps.FirstOrDefault(step => step is { Operation: Dado, Count: StepCount.Length }) : null;

    private static bool IsOnPieces(Operation operation) =>
        operation.Methods[0].PaceGroup is PaceGroup.Joinery or PaceGroup.Sawing or PaceGroup.Planing;

    private static JointKind OfOperation(Operation operation)
    {
        var isTail = operation.Unit.Name == "tail";
        var isLong = operation.Unit.Kind != UnitKind.Count;
        var own = Table.Where(kind => kind.Steps.Any(step => step.Operation == operation.Name)).ToList();
        return new()
        {
            Name = operation.Name,
            Needs = isTail ? [JointFigure.Tails] : [],
            Uses = isLong ? [JointFigure.Length, JointFigure.Depth, JointFigure.Width] : [JointFigure.Depth, JointFigure.Width, JointFigure.Thickness],
            // An operation under its own name is made when, closed as, and needs what the kind that it belongs to does.
            Time = own.FirstOrDefault()?.Time ?? JointTime.Cut,
            IsClosedInGlueUp = own.Exists(kind => kind.IsClosedInGlueUp),
            IsSetOut = own.Count == 0 || own.Exists(kind => kind.IsSetOut),
            IsOfEvenThickness = own.Exists(kind => kind.IsOfEvenThickness),
            Steps = [new(operation.Name, isTail ? StepCount.Tails : isLong ? StepCount.Length : StepCount.Joints)],
        };
    }

    private static JointKind Tailed(string name, string operation) => new()
    {
        Name = name,
        Needs = [JointFigure.Tails],
        Uses = [JointFigure.Thickness],
        Parts = 2,
        IsClosedInGlueUp = true,
        IsOfEvenThickness = true,
        Steps = [new(operation, StepCount.Tails)],
    };

    private static JointKind Counted(string name, string operation) => new()
    {
        Name = name,
        Uses = [JointFigure.Depth, JointFigure.Width, JointFigure.Thickness],
        Parts = 2,
        IsClosedInGlueUp = true,
        IsOfEvenThickness = true,
        Steps = [new(operation, StepCount.Joints)],
    };

    private static JointKind Long(string name, string operation, Length depth) => new()
    {
        Name = name,
        Time = JointTime.First,
        Uses = [JointFigure.Length, JointFigure.Depth, JointFigure.Width],
        Steps = [new(operation, StepCount.Length, StepOn.All, depth)],
    };

    private static JointKind Shaped(string name, string operation) => new()
    {
        Name = name,
        Time = JointTime.Shaping,
        Uses = [JointFigure.Length, JointFigure.Depth],
        IsSetOut = false,
        Steps = [new(operation, StepCount.Length)],
    };

    private static bool Same(string left, string right) => string.Equals(left, right, StringComparison.OrdinalIgnoreCase);
}
