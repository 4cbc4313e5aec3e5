using NodaTime;
using ShopDays.Cli.Store;
using ShopDays.Logbook;

namespace ShopDays.Cli.Bench.Now;

/// <summary>What the log says at one moment of work that goes on and of a date.</summary>
/// <param name="Date">The date.</param>
/// <param name="Begun">Work that is begun and not logged.</param>
/// <param name="OfDate">What is logged of the date, in order.</param>
/// <param name="Count">How many entries there are in all.</param>
internal sealed record LogReading(LocalDate Date, IReadOnlyList<BegunWork> Begun, IReadOnlyList<LogEntry> OfDate, int Count)
{
    /// <summary>What a worker is at; null for nothing.</summary>
    public BegunWork? AtHand(string worker) => Begun.FirstOrDefault(work => work.PausedAt is null && work.Worker == worker);

    /// <summary>What a worker has laid aside, the last first.</summary>
    public IReadOnlyList<BegunWork> LaidAside(string worker) => [.. Begun.Where(work => work.PausedAt is not null && work.Worker == worker).OrderByDescending(work => work.PausedAt)];

    /// <summary>Whether a task was finished on the date.</summary>
    public bool IsDone(string? job, string task) => OfDate.Any(entry => entry.Finished && entry.Job == job && entry.Task == task);
}
