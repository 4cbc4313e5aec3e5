using System.Diagnostics;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Phrases;

/// <summary>Says in the shop's own units why a part comes out of no board, and what stock would do.</summary>
internal static class UnplacedWords
{
    private const int QuartersOfAnInch = 4;

    /// <summary>
    /// What is left over and why, in one line for all of a part that have the same reason: <c>rail, 24 of 26 (3 to 26): ...</c>.
    /// </summary>
    public static IEnumerable<string> Lines(IEnumerable<Unplaced> unplaced, LengthFormat format) => unplaced
        .GroupBy(one => (one.Part, Why: Why(one, format)))
        .Select(alike => $"{Which(alike.Key.Part, [.. alike.Select(one => one.Number).Order()])}: {alike.Key.Why}");

    private static string Which(Part part, IReadOnlyList<int> numbers)
    {
        var all = part.Count + part.Spare;
        var spares = numbers.Count(number => number > part.Count);
        var named = $"{part.Name}{(all == 1 ? "" : " " + CountWords.Runs(numbers))}";
        var ofAll = numbers.Count switch
        {
            1 => "",
            2 when all == 2 => "both",
            _ when numbers.Count == all => $"all {CountWords.Number(all)}",
            _ => $"{CountWords.Number(numbers.Count)} of {CountWords.Number(all)}",
        };
        var spare = spares == 0 ? "" : spares == numbers.Count ? "spare" : CountWords.Number(spares) + " spare";
        string[] notes = [.. ((string[])[ofAll, spare]).Where(note => note.Length > 0)];
        return notes.Length == 0 ? named : $"{named} ({string.Join(", ", notes)})";
    }

    /// <summary>Why a part comes out of no board, and what to do where more stock does not help.</summary>
    public static string Why(Unplaced unplaced, LengthFormat format) => Reason(unplaced, format) + (unplaced.MoreStock switch
    {
        StockHelp.Helps => "",
        StockHelp.PinnedToABoard => $"; more stock cannot help while it must come from {unplaced.Part.From}: take 'from' away, or name a stock line there",
        StockHelp.NotSold => "; a yard has no board that would do" + (unplaced.Part.IsPanel ? "" : ", unless it may be a panel or be built up"),
        _ => throw new UnreachableException(),
    });

    /// <summary>The stock that would do, in one line a kind.</summary>
    public static string Wanted(StockWanted wanted, LengthFormat format) => FormattableString.Invariant(
        $"{wanted.Count} more of {wanted.Species}, {format.Write(wanted.Length)} long, at least {format.Write(wanted.Width)} wide, {Thickness(wanted.Thickness, format)} thick ({SawnWords.Of(wanted.Volume, format)}){(wanted.ClearOfFlaws ? ", clear of flaws" : "")}");

    private static string Reason(Unplaced unplaced, LengthFormat format) => unplaced.Reason switch
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

    /// <summary>Rough thickness as a yard names it: <c>5/4</c>, or <c>32 mm</c>.</summary>
    public static string Thickness(Length thickness, LengthFormat format)
    {
        var quarter = Length.FromInches(1m / QuartersOfAnInch);
        var quarters = thickness.EighthMicrometres / quarter.EighthMicrometres;
        return format != LengthFormat.Millimetres && quarter * (int)quarters == thickness
            ? FormattableString.Invariant($"{quarters}/{QuartersOfAnInch}")
            : format.Write(thickness);
    }
}
