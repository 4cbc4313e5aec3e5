using NodaTime;
using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>What is known of how dry a board is.</summary>
public sealed record Drying
{
    /// <summary>Nothing is known.</summary>
    public static Drying Unknown { get; } = new();

    /// <summary>The date on which it was stacked, fresh from the saw; null when not known.</summary>
    public LocalDate? Since { get; init; }

    /// <summary>What a meter said, the oldest first; one without a date comes first of all.</summary>
    public IReadOnlyList<MoistureReading> Readings { get; init; } = [];

    /// <summary>What the board or a piece of it weighed, the oldest first, each on a date of its own.</summary>
    public IReadOnlyList<Weighing> Weighings { get; init; } = [];
}

/// <summary>What a moisture meter said of a board.</summary>
/// <param name="On">The date; null when it was not written down.</param>
/// <param name="Moisture">The moisture.</param>
public readonly record struct MoistureReading(LocalDate? On, MoistureContent Moisture);

/// <summary>What a board, or always the same piece of it, weighed.</summary>
/// <param name="On">The date.</param>
/// <param name="Weight">The weight, above 0.</param>
public readonly record struct Weighing(LocalDate On, Mass Weight);
