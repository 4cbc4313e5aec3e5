using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>What of a job is between the maker and whoever ordered it: all of it may be left out.</summary>
public sealed record Commission
{
    /// <summary>Who ordered it; null where that is not said.</summary>
    public string? Client { get; init; }

    /// <summary>What it is, in words for the client; null where that is not said.</summary>
    public string? Description { get; init; }

    /// <summary>How large the whole piece is; null where that is not said.</summary>
    public Dimensions? Dimensions { get; init; }

    /// <summary>Bought fittings.</summary>
    public IReadOnlyList<BoughtItem> Hardware { get; init; } = [];

    /// <summary>Work that others do.</summary>
    public IReadOnlyList<OutsideWork> Outside { get; init; } = [];

    /// <summary>Travel beyond the paid kilometres of its tasks: tolls, a hired van; null for none.</summary>
    public Money? Travel { get; init; }

    /// <summary>Glue, abrasives, finish and the like for this job, where the shop's own rule does not fit it; null for the shop's rule.</summary>
    public Money? Consumables { get; init; }

    /// <summary>What the price covers, in words for the client.</summary>
    public IReadOnlyList<string> Included { get; init; } = [];

    /// <summary>What it does not cover.</summary>
    public IReadOnlyList<string> NotIncluded { get; init; } = [];

    /// <summary>A price that is given already, in place of the reckoned one; null for none.</summary>
    public Money? Price { get; init; }
}

/// <summary>How large a whole piece is, as far as it is said; at least one of them is.</summary>
/// <param name="Width">From left to right.</param>
/// <param name="Depth">From front to back.</param>
/// <param name="Height">From the floor up.</param>
public sealed record Dimensions(Length? Width, Length? Depth, Length? Height);

/// <summary>A fitting that is bought.</summary>
/// <param name="Name">What it is, for example <c>brass knob</c>.</param>
/// <param name="Count">How many, at least 1.</param>
/// <param name="Each">What one costs.</param>
public sealed record BoughtItem(string Name, int Count, Money Each)
{
    /// <summary>What all of them cost.</summary>
    public Money Price => Each * Count;
}

/// <summary>Work that somebody else does for the job.</summary>
/// <param name="Name">What, for example <c>turned feet</c>.</param>
/// <param name="By">Who; null where that is not said.</param>
/// <param name="Price">What it costs.</param>
public sealed record OutsideWork(string Name, string? By, Money Price);
