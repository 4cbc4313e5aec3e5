using NodaTime;

namespace ShopDays.Parts;

/// <summary>One piece to be made: what is wanted, what is there, how it goes together.</summary>
/// <remarks>Names of parts, glue-ups, free tasks and decisions are one of a kind together.</remarks>
public sealed record Job
{
    /// <summary>The name of the piece.</summary>
    public required string Name { get; init; }

    /// <summary>The first day on which work may be done.</summary>
    public required LocalDate Start { get; init; }

    /// <summary>The date promised; null when none is.</summary>
    public LocalDate? Due { get; init; }

    /// <summary>How much its promise weighs beside another job's, 1 to 9; 1 is usual.</summary>
    public int Priority { get; init; } = 1;

    /// <summary>Where it stands with whoever wants it.</summary>
    public OrderState State { get; init; }

    /// <summary>The boards on hand.</summary>
    public IReadOnlyList<Board> Boards { get; init; } = [];

    /// <summary>The parts list.</summary>
    public IReadOnlyList<Part> Parts { get; init; } = [];

    /// <summary>The joints.</summary>
    public IReadOnlyList<Joint> Joints { get; init; } = [];

    /// <summary>The glue-ups, in the order written.</summary>
    public IReadOnlyList<GlueUp> GlueUps { get; init; } = [];

    /// <summary>The finishes.</summary>
    public IReadOnlyList<FinishWork> Finishes { get; init; } = [];

    /// <summary>Work that the parts do not imply.</summary>
    public IReadOnlyList<FreeTask> Work { get; init; } = [];

    /// <summary>Waits for somebody else.</summary>
    public IReadOnlyList<Decision> Decisions { get; init; } = [];

    /// <summary>What of it is between the maker and the client.</summary>
    public Commission Commission { get; init; } = new();

    /// <summary>The air that its timber lies in; null when the shop does not say.</summary>
    public YearAir? Air { get; init; }

    /// <summary>What the timber goes through over the year where the piece will stand.</summary>
    public MoistureRange Home { get; init; } = MoistureRange.HeatedRoom;

    /// <summary>What is left on blanks and what the saw takes.</summary>
    public Allowances Allowances { get; init; } = new();

    /// <summary>Method by operation where it is not by hand, for example <c>rip</c> to <c>band saw</c>.</summary>
    public IReadOnlyDictionary<string, string> Methods { get; init; } = new Dictionary<string, string>();
}
