using System.Diagnostics;
using ShopDays.Layouts;

namespace ShopDays.Cli.Phrases;

/// <summary>The trade's word for a kind of cut.</summary>
internal static class CutWords
{
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
