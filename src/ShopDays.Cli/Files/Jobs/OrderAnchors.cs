namespace ShopDays.Cli.Files.Jobs;

/// <summary>The stages of the work that <c>before</c> and <c>after</c> may name, in their order.</summary>
internal static class OrderAnchors
{
    public static IReadOnlyList<string> Stages { get; } =
        ["drawing", "buying timber", "layout", "sawing", "dimensioning", "joinery", "assembly", "finish", "delivery"];

    public static bool IsStage(string name) => Stages.Contains(name, StringComparer.Ordinal);
}
