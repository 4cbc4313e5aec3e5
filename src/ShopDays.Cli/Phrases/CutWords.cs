using System.Diagnostics;
using ShopDays.Layouts;

namespace ShopDays.Cli.Phrases;

/// <summary>The trade's word for a kind of cut.</summary>
internal static class CutWords
{
    /// <summary>What its place on the board is measured from.</summary>
    public static string MeasuredFrom(CutKind kind) => kind switch
    {
        CutKind.Crosscut => "end",
        CutKind.Rip or CutKind.Straighten => "edge",
        CutKind.Resaw => "face",
        _ => throw new UnreachableException(),
    };

    /// <summary>The word.</summary>
    public static string Of(CutKind kind) => kind switch
    {
        CutKind.Straighten => "straighten",
        CutKind.Rip => "rip",
        CutKind.Crosscut => "crosscut",
        CutKind.Resaw => "resaw",
        _ => throw new UnreachableException(),
    };
}
