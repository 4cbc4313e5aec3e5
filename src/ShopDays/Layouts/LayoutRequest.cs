using ShopDays.Layouts.Search;
using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>What is to be laid out on what, and how.</summary>
public sealed record LayoutRequest
{
    /// <summary>The boards on hand, offcuts kept of sawn ones among them; each name is there once.</summary>
    public required IReadOnlyList<Board> Boards { get; init; }

    /// <summary>
    /// The boards that are sawn already, with the blanks that came of them: these are not wanted again, keep their places,
    /// and the rest is laid out around them. None of these boards is on hand.
    /// </summary>
    public IReadOnlyList<BoardLayout> Sawn { get; init; } = [];

    /// <summary>The parts, spares among their numbers; each name is there once.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    /// <summary>What is left on blanks and what the saw takes.</summary>
    public required Allowances Allowances { get; init; }

    /// <summary>What sawing costs in the shop.</summary>
    public required SawingRates Rates { get; init; }

    /// <summary>In which sizes more stock can be bought: in feet and inches unless the shop works in millimetres.</summary>
    public YardSizes Yard { get; init; } = YardSizes.Feet;

    /// <summary>How hard to search.</summary>
    public LayoutEffort Effort { get; init; } = LayoutEffort.Normal;

    /// <summary>What the maker would rather spend.</summary>
    public LayoutPreference Preference { get; init; }

    /// <summary>One seed gives one answer.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>Told how far the search has come; null when nobody listens.</summary>
    public IProgress<LayoutStep>? Progress { get; init; }

    /// <summary>
    /// What work and timber are worth. Settled once for all the boards, so that some of them looked at alone are not
    /// worth anything else.
    /// </summary>
    internal Worth Worth { get => field ?? Worth.Of(this); init; }

    /// <summary>The same with the boards as a yard sells them: whole, those that are sawn among them, and no offcuts.</summary>
    internal LayoutRequest AsSold => this with { Boards = [.. Boards.Concat(Sawn.Select(board => board.Board)).Where(board => board.CutFrom is null)], Sawn = [] };

    /// <summary>The boards and parts of a job.</summary>
    public static LayoutRequest For(Job job, SawingRates rates) =>
        new() { Boards = job.Boards, Parts = job.Parts, Allowances = job.Allowances, Rates = rates };
}
