using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Logbook;
using ShopDays.Plans;

namespace ShopDays.Cli.Commands;

/// <summary>What the shop's log holds of a job beside its entries.</summary>
/// <param name="Promises">What was promised of it, in the order in which it was.</param>
/// <param name="Running">Work of it that goes on now.</param>
internal sealed record OnRecord(IReadOnlyList<Promise> Promises, IReadOnlyList<RunningWork> Running)
{
    /// <summary>Looks it up; a shop without a log has nothing on record.</summary>
    public static OnRecord Of(ShopAndJob read, Instant now)
    {
        using var log = ShopLog.OpenToRead(read.Folder);
        var begun = log?.Begun.All().Where(work => string.Equals(work.Job, read.LogName, StringComparison.Ordinal)) ?? [];
        return new(
            log?.Promises.Of(read.LogName) ?? [],
            [.. begun.Select(work => new RunningWork(work.Task, work.TookBy(now), WorkedOn.At(work.PausedAt ?? now, read.Shop.Place.Zone), work.Stopped))]);
    }
}
