using NodaTime;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Logbook;

/// <summary>A piece of work and how long it took in all: what rates are learned from.</summary>
public sealed record TimedWork
{
    /// <summary>What was done.</summary>
    public required TaskTiming.ByOperation Timing { get; init; }

    /// <summary>How long it took, over all its entries; above zero.</summary>
    public required WorkTime Took { get; init; }

    /// <summary>The date of the last of its entries.</summary>
    public required LocalDate On { get; init; }

    /// <summary>Who did it; where several had a hand in it, the one with most of its time.</summary>
    public required string Worker { get; init; }

    /// <summary>The job; null for work timed by itself.</summary>
    public string? Job { get; init; }

    /// <summary>The task by its name.</summary>
    public required string Task { get; init; }

    /// <summary>Whether the maker has said that it is right, however odd.</summary>
    public bool IsKept { get; init; }

    /// <summary>The entries that it is made of, in the order of the log; at least one.</summary>
    public required IReadOnlyList<EntryId> Entries { get; init; }
}
