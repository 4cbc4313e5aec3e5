using NodaTime;
using ShopDays.Work;

namespace ShopDays.Cli.Calendars;

/// <summary>One job in a calendar.</summary>
/// <param name="Name">What the plan calls it.</param>
/// <param name="Job">The name of its file without ending.</param>
/// <param name="Title">What it is called to the maker.</param>
/// <param name="Marks">The marks of its tasks.</param>
internal sealed record CalendarOrder(string Name, string Job, string Title, TaskMarks Marks)
{
    /// <summary>The date by the end of which it should be finished; null for none.</summary>
    public LocalDate? Due { get; init; }

    /// <summary>The date that is promised, or could be; null for none.</summary>
    public LocalDate? Promise { get; init; }

    /// <summary>Whether that date is on record as promised.</summary>
    public bool IsPromised { get; init; }
}
