using ShopDays.Layouts;

namespace ShopDays.Cli.Json;

/// <summary>The answer of <c>shopdays layout --sawn --json</c>.</summary>
internal static class SawnJson
{
    /// <summary>What was recorded.</summary>
    /// <param name="file">The file, named from the shop's folder.</param>
    /// <param name="boards">The boards that were recorded now.</param>
    public static object Of(string file, IReadOnlyList<BoardLayout> boards) => new
    {
        File = file,
        Recorded = boards.Select(LayoutJson.BoardOf),
    };

    /// <summary>Why nothing was recorded.</summary>
    public static object Of(IReadOnlyList<string> complaints) => new { Recorded = Array.Empty<object>(), Complaints = complaints };
}
