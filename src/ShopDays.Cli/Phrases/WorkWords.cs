using System.Globalization;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Times;

namespace ShopDays.Cli.Phrases;

/// <summary>A stretch of work as it stands on a day's sheet and on a day's page.</summary>
internal static class WorkWords
{
    /// <summary>What is to be known beside its name and its time; null for nothing.</summary>
    /// <param name="work">The stretch.</param>
    /// <param name="all">What the whole of its task takes.</param>
    public static string? NoteOf(PlannedWork work, WorkTime all)
    {
        List<string> notes = [];
        if (PieceOf(work) is { } piece)
        {
            notes.Add(string.Create(CultureInfo.InvariantCulture, $"{piece}, of {WorkTimeText.Write(all)} in all"));
        }

        // What the name of the task says already is not said again.
        if (work.Task.Board is { } board && !Says(work.Task.Name, board))
        {
            notes.Add($"board {board}");
        }

        string[] parts = [.. work.Task.Parts.Where(part => !Says(work.Task.Name, part))];
        if (parts.Length > 0)
        {
            notes.Add(CountWords.Names(parts, 4));
        }

        if (work.Task.Crew > 1)
        {
            notes.Add($"{CountWords.Number(work.Task.Crew)} people");
        }

        if (work.Bouts is { } bouts)
        {
            notes.Add(BoutWords.Of(bouts));
        }

        if (work.Honing.Length > 0)
        {
            notes.Add(work.Honing);
        }

        if (work.Task.Note.Length > 0)
        {
            notes.Add(work.Task.Note);
        }

        return notes.Count == 0 ? null : string.Join("; ", notes);
    }

    /// <summary>The share of a task's range that a stretch of it has.</summary>
    public static double ShareOf(PlannedWork work, TimeRange range) =>
        (work.IsFirstPiece && work.IsLastPiece) || range.P50 <= WorkTime.Zero ? 1 : Math.Min(1, work.HandsOn / range.P50);

    private static bool Says(string name, string word) => name.Contains(word, StringComparison.OrdinalIgnoreCase);

    private static string? PieceOf(PlannedWork work) => (work.IsFirstPiece, work.IsLastPiece) switch
    {
        (true, true) => null,
        (true, false) => "begins",
        (false, false) => "goes on",
        (false, true) => "ends",
    };
}
