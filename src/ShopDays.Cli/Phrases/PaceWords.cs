using System.Globalization;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>What the log says of work that was never timed, by the pace that all work shares.</summary>
internal static class PaceWords
{
    /// <summary>Less than this is no news.</summary>
    private const double Least = 0.03;

    /// <summary>One sentence; null when no pace has moved.</summary>
    /// <param name="paces">Time over the tables' time, by group.</param>
    public static string? Of(IReadOnlyList<(PaceGroup Group, double Factor)> paces)
    {
        var moved = paces.Where(one => Math.Abs(Math.Log(one.Factor)) >= Least).Select(one => $"{Name(one.Group)} {Moved(one.Factor)}").ToList();
        return moved.Count == 0
            ? null
            : $"Work that you have not timed yet goes by your pace, against the tables: {string.Join(", ", moved)}.";
    }

    private static string Moved(double factor)
    {
        var share = Math.Round(Math.Abs(factor - 1) * 100, MidpointRounding.AwayFromZero);
        return string.Create(CultureInfo.InvariantCulture, $"{share:0} % {(factor > 1 ? "longer" : "less")}");
    }

    private static string Name(PaceGroup group) => group switch
    {
        PaceGroup.Sawing => "sawing",
        PaceGroup.Planing => "planing",
        PaceGroup.Joinery => "joinery",
        PaceGroup.Assembly => "gluing and fitting together",
        PaceGroup.Finishing => "finishing",
        PaceGroup.Other => "other work",
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
