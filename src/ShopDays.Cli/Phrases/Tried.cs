using ShopDays.Choices;

namespace ShopDays.Cli.Phrases;

/// <summary>One way of doing a job, worked out.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Outcome">What it comes to; null where it cannot be done.</param>
/// <param name="Against">What stands against it; none where nothing does.</param>
internal sealed record Tried(string Name, Outcome? Outcome, IReadOnlyList<string> Against)
{
    /// <summary>The change as it may be typed or written into a file of variants; null where it comes from there.</summary>
    public string? Text { get; init; }

    /// <summary>The glues that hold it.</summary>
    public IReadOnlyList<string> Glues { get; init; } = [];
}
