using ShopDays.Logbook;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>Where a maker stopped, in words.</summary>
internal static class StoppedWords
{
    /// <summary>What stands before it.</summary>
    public const string Lead = "Where you stopped";

    /// <summary>The whole: <c>Where you stopped, Sat 17 Apr, KDR rip A1: half way along cut 4</c>.</summary>
    /// <param name="note">The note.</param>
    /// <param name="marks">The marks of the job's tasks; null where they are not known.</param>
    public static string Of(StoppedNote note, TaskMarks? marks = null) => $"{Lead}, {About(note, marks)}: {LogPhrases.Plain(note.Text)}";

    /// <summary>When and at what: <c>Sat 17 Apr, KDR rip A1</c>.</summary>
    public static string About(StoppedNote note, TaskMarks? marks = null) => $"{DateWords.Short(note.On.Date)}, {(marks?.Has(note.Task) == true ? marks.Of(note.Task) + " " : "")}{LogPhrases.Plain(note.Task)}";
}
