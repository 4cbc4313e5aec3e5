using System.Diagnostics.CodeAnalysis;

namespace ShopDays.Work;

/// <summary>The stages as job files write them.</summary>
public static class StageNames
{
    private static readonly string[] Written =
        ["drawing", "buying timber", "layout", "sawing", "dimensioning", "joinery", "assembly", "finish", "delivery"];

    /// <summary>All of them, in the usual order of work.</summary>
    public static IReadOnlyList<string> All => Written;

    /// <summary>The name of a stage.</summary>
    public static string Of(Stage stage) => Written[(int)stage];

    /// <summary>Finds a stage by its name, without regard to case.</summary>
    public static bool TryFind(string name, [NotNullWhen(true)] out Stage? stage)
    {
        var place = Array.FindIndex(Written, one => string.Equals(one, name, StringComparison.OrdinalIgnoreCase));
        stage = place < 0 ? null : (Stage)place;
        return place >= 0;
    }
}
