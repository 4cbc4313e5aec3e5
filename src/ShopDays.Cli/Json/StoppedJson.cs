using ShopDays.Logbook;
using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>Where a maker stopped, for other programs.</summary>
internal static class StoppedJson
{
    /// <summary>The note; null for none.</summary>
    public static object? Of(StoppedNote? note, TaskMarks marks) => note is null ? null : new
    {
        note.Task,
        Mark = marks.Has(note.Task) ? marks.Of(note.Task) : null,
        Date = JsonAnswer.Date(note.On.Date),
        note.Text,
    };
}
