using System.Diagnostics;
using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Phrases;

/// <summary>Says in the shop's own units why a part comes out of no board, and what stock would do.</summary>
internal static class UnplacedWords
{
    /// <summary>Why a part comes out of no board.</summary>
    public static string Why(Unplaced unplaced, LengthFormat format) => unplaced.Reason switch
    {
        UnplacedReason.NoSpecies none => $"there is no {none.Species} on hand",
        UnplacedReason.NoSuchStock none => $"it must come from {none.Line}, and no such board of its timber is on hand",
        UnplacedReason.OnlyForbidden forbidden => $"only {CountWords.Names(forbidden.Boards, 3)} would do, and it must not come from there",
        UnplacedReason.TooThin thin => $"needs stock {format.Write(thin.Needed)} thick, the thickest is {format.Write(thin.Best)}",
        UnplacedReason.TooShort @short => $"needs {format.Write(@short.Needed)} of length, the longest board gives {format.Write(@short.Longest)}",
        UnplacedReason.TooNarrow narrow => $"needs {format.Write(narrow.Needed)} of width, the widest board gives {format.Write(narrow.Widest)}",
        UnplacedReason.NoClearPlace place => $"needs a clear {format.Write(place.Length)} x {format.Write(place.Width)}, and the flaws leave none",
        UnplacedReason.NoRoom => "the other parts take the room",
        _ => throw new UnreachableException(),
    };

    /// <summary>The stock that would do, in one line a kind.</summary>
    public static string Wanted(StockWanted wanted, LengthFormat format) => FormattableString.Invariant(
        $"{wanted.Count} more of {wanted.Species}, {format.Write(wanted.Length)} x {format.Write(wanted.Width)} x {format.Write(wanted.Thickness)} ({SawnWords.Of(wanted.Volume, format)}){(wanted.ClearOfFlaws ? ", clear of flaws" : "")}");
}
