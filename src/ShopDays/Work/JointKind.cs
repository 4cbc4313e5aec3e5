using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>A figure of a joint in a job file.</summary>
public enum JointFigure
{
    /// <summary>Tails in each corner.</summary>
    Tails,

    /// <summary>Length in all.</summary>
    Length,

    /// <summary>Width of the joint.</summary>
    Width,

    /// <summary>Depth cut.</summary>
    Depth,

    /// <summary>Thickness of stock or tenon.</summary>
    Thickness,
}

/// <summary>When a joint is made.</summary>
public enum JointTime
{
    /// <summary>Grooves, dados, rabbets and tongues: first, while every reference is square; they guide what is cut later.</summary>
    First,

    /// <summary>Mortises, tenons, dovetails: when the parts are sized.</summary>
    Cut,

    /// <summary>Tapers, curves, chamfers: last, since references are lost.</summary>
    Shaping,

    /// <summary>Pegs: bored for when the joint fits, driven in the session of the glue-up.</summary>
    WhileGluing,

    /// <summary>Hinges, drawers: in what is together already.</summary>
    Together,
}

/// <summary>On which of a joint's parts a step is done.</summary>
internal enum StepOn
{
    /// <summary>On all of them.</summary>
    All,

    /// <summary>On the part named first.</summary>
    First,

    /// <summary>On the parts named after the first.</summary>
    Others,
}

/// <summary>How a step is counted.</summary>
internal enum StepCount
{
    /// <summary>By joints.</summary>
    Joints,

    /// <summary>By tails.</summary>
    Tails,

    /// <summary>By length.</summary>
    Length,
}

/// <summary>One operation that a joint takes.</summary>
internal sealed record JointStep(string Operation, StepCount Count, StepOn On = StepOn.All, Length Depth = default)
{
    /// <summary>How many of it one joint takes, where it is counted by joints.</summary>
    public int PerJoint { get; init; } = 1;

    /// <summary>Whether it is done in the loose parts, though the joint is made in a glue-up.</summary>
    public bool IsBeforeGlue { get; init; }
}

/// <summary>A kind of joint: what it takes, which figures it needs, and when it is made.</summary>
public sealed record JointKind
{
    /// <summary>The name in job files.</summary>
    public required string Name { get; init; }

    /// <summary>The figures without which its work cannot be reckoned.</summary>
    public IReadOnlyList<JointFigure> Needs { get; init; } = [];

    /// <summary>The figures that it uses when they are given; otherwise the usual ones hold.</summary>
    public IReadOnlyList<JointFigure> Uses { get; init; } = [];

    /// <summary>How many parts it names at least.</summary>
    public int Parts { get; init; } = 1;

    /// <summary>When it is made.</summary>
    public JointTime Time { get; init; } = JointTime.Cut;

    /// <summary>Whether it is closed in a glue-up, so that it counts towards the adhesive's open time.</summary>
    public bool IsClosedInGlueUp { get; init; }

    /// <summary>Whether it is set out by knife and gauge, and so needs a true face and edge to begin from.</summary>
    internal bool IsSetOut { get; init; } = true;

    /// <summary>Whether it fits only where its parts are of an even thickness, both faces worked.</summary>
    internal bool IsOfEvenThickness { get; init; }

    internal IReadOnlyList<JointStep> Steps { get; init; } = [];
}
