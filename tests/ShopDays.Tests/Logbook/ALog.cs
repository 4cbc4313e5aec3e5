using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Tests.Logbook;

/// <summary>A job's log in a few words, in New York's time unless said otherwise.</summary>
internal sealed class ALog
{
    private readonly List<LogEntry> entries = [];

    public DateTimeZone Zone { get; init; } = DateTimeZoneProviders.Tzdb["America/New_York"];

    public IReadOnlyList<LogEntry> Entries => entries;

    /// <summary>A task, or what remained of it, ended at that hour of that day of March 2027.</summary>
    public ALog Done(string task, double minutes, int day, double hour) => Add(task, minutes, At(day, hour), finished: true);

    /// <summary>A task went on and is not finished.</summary>
    public ALog Went(string task, double minutes, int day, double hour, LoggedWork? work = null) => Add(task, minutes, At(day, hour), finished: false, work);

    /// <summary>A task was ended on a day, as a pencilled sheet says it.</summary>
    public ALog DoneOn(string task, double minutes, int day) => Add(task, minutes, new(new(2027, 3, day)), finished: true);

    /// <summary>The moment.</summary>
    public Instant Moment(int day, double hour) => (Zone.AtStartOfDay(new(2027, 3, day)) + Duration.FromHours(hour)).ToInstant();

    private WorkedOn At(int day, double hour) => WorkedOn.At(Moment(day, hour), Zone);

    private ALog Add(string task, double minutes, WorkedOn on, bool finished, LoggedWork? work = null)
    {
        entries.Add(new() { Id = new(entries.Count + 1), Job = "chest", Task = task, Took = WorkTime.FromMinutes(minutes), On = on, Worker = "maker", Finished = finished, Work = work });
        return this;
    }
}
