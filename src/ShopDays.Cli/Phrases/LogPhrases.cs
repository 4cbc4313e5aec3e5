using System.Globalization;
using System.Text;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Phrases;

/// <summary>Entries of the log in words.</summary>
internal static class LogPhrases
{
    /// <summary>One line for an entry: <c>12: tray, rip A into 2, 45 min, Sat 17 Apr 2027</c>.</summary>
    public static string Of(LogEntry entry) =>
        $"{entry.Id}: {Whole(entry)}, {WorkTimeText.Write(entry.Took)}{(entry.Finished ? "" : ", half done")}, {DateWords.Of(entry.On.Date)}";

    /// <summary><c>1 entry</c>, <c>3 entries</c>.</summary>
    public static string Count(int entries) => entries == 1 ? "1 entry" : CountWords.Number(entries) + " entries";

    /// <summary>Job and task: <c>tray, rip A into 2</c>; of work timed by itself the operation with its quantity.</summary>
    public static string Whole(LogEntry entry) => entry switch
    {
        { Job: { } job } => Plain($"{job}, {entry.Task}"),
        { Work: { } work } => Plain(string.Create(CultureInfo.InvariantCulture, $"{entry.Task}, {work.Quantity:0.###} {work.Unit}")),
        _ => Plain(entry.Task),
    };

    /// <summary>What went wrong; empty for nothing.</summary>
    public static string Of(Setback setback) => setback switch
    {
        Setback.None => "",
        Setback.DullEdge => "dull edge",
        Setback.TearOut => "tear-out",
        Setback.Interrupted => "interrupted",
        Setback.Cold => "cold",
        Setback.FirstOfItsKind => "first of its kind",
        Setback.Spoiled => "spoiled a piece",
        _ => throw new ArgumentOutOfRangeException(nameof(setback), setback, "no word for it"),
    };

    /// <summary>What the maker said of it; empty for nothing.</summary>
    public static string Of(Standing standing) => standing switch
    {
        Standing.AsLogged => "",
        Standing.Kept => "kept",
        Standing.Unusual => "unusual",
        _ => throw new ArgumentOutOfRangeException(nameof(standing), standing, "no word for it"),
    };

    /// <summary>All remarks on an entry in one line: standing, setback, note, where it was stopped.</summary>
    public static string Remarks(LogEntry entry) => string.Join("; ", new[]
    {
        Of(entry.Standing),
        Of(entry.Setback),
        Plain(entry.Note),
        entry.Stopped.Length == 0 ? "" : "stopped: " + Plain(entry.Stopped),
    }.Where(text => text.Length > 0));

    /// <summary>What differs between two forms of an entry, old before new.</summary>
    public static IReadOnlyList<string> Changes(LogEntry before, LogEntry after) =>
    [
        .. new (string What, string Before, string After)[]
        {
            ("job", Plain(before.Job ?? "none"), Plain(after.Job ?? "none")),
            ("task", Plain(before.Task), Plain(after.Task)),
            ("took", WorkTimeText.Write(before.Took), WorkTimeText.Write(after.Took)),
            ("on", DateWords.Of(before.On.Date), DateWords.Of(after.On.Date)),
            ("worker", Plain(before.Worker), Plain(after.Worker)),
            ("finished", YesOrNo(before.Finished), YesOrNo(after.Finished)),
            ("quantity", Quantity(before), Quantity(after)),
            ("setback", Of(before.Setback), Of(after.Setback)),
            ("note", Plain(before.Note), Plain(after.Note)),
            ("stopped", Plain(before.Stopped), Plain(after.Stopped)),
            ("standing", Of(before.Standing), Of(after.Standing)),
        }.Where(one => one.Before != one.After).Select(one => $"{one.What}: {Shown(one.Before)}, before; {Shown(one.After)}, now"),
    ];

    /// <summary>A text on one line: signs that drive a terminal or turn the direction of writing become spaces.</summary>
    public static string Plain(string text) => string.Create(text.Length, text, static (target, source) =>
    {
        for (var at = 0; at < source.Length; at++)
        {
            target[at] = char.GetUnicodeCategory(source[at]) is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator
                ? ' '
                : source[at];
        }
    }).Trim().Normalize(NormalizationForm.FormC);

    private static string Quantity(LogEntry entry) => entry.Work is { } work
        ? Plain(string.Create(CultureInfo.InvariantCulture, $"{work.Quantity:0.###} {work.Unit} by {work.Method}"))
        : "not said";

    private static string Shown(string text) => text.Length == 0 ? "nothing" : text;

    private static string YesOrNo(bool value) => value ? "yes" : "no";
}
