using System.Collections.Concurrent;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Logbook;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>The rates that times are worked out with: what the shop's log teaches, on the ground of the catalogue.</summary>
internal sealed record LearnedRates
{
    /// <summary>The rates; those of the catalogue where nothing is learned.</summary>
    public required RateModel Model { get; init; }

    /// <summary>The rates of the catalogue, before any time is logged.</summary>
    public required RateModel Prior { get; init; }

    /// <summary>The chances of spoiling a piece, learned as the rates are.</summary>
    public required SpoilingChances Spoiling { get; init; }

    /// <summary>The chances of the catalogue, before anything is logged.</summary>
    public SpoilingChances PriorSpoiling => SpoilingChances.FromPrior(Prior.Terms.Catalogue);

    /// <summary>The whole log; empty where there is none.</summary>
    public required IReadOnlyList<LogEntry> Entries { get; init; }

    /// <summary>The log put together to pieces of work, with what nothing is learned from; empty where nothing was to be learned.</summary>
    public required WorkTimed Work { get; init; }

    /// <summary>What the times come from, to be told.</summary>
    public required TimesBehind Behind { get; init; }

    /// <summary>What <see cref="Before"/> has learned already, each by the entry before which it ends: learned from the same entries.</summary>
    public ConcurrentDictionary<EntryId, LearnedRates> Earlier { get; init; } = new();

    /// <summary>Learns from the log of a shop, as it stands today; it is not made where there is none.</summary>
    /// <param name="folder">The shop's folder.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="operations">The operations, the shop's own among them.</param>
    /// <param name="clock">Tells today's date, from which the entries' ages count.</param>
    /// <param name="priorOnly">Whether the log is to be left aside.</param>
    public static LearnedRates Of(ShopFolder folder, Shop shop, OperationCatalogue operations, IClock clock, bool priorOnly = false)
    {
        var entries = EntriesIn(folder);
        return priorOnly
            ? FromPrior(entries, operations)
            : From(entries, shop, operations, clock.GetCurrentInstant().InZone(shop.Place.Zone).Date);
    }

    /// <summary>Learns from some entries.</summary>
    /// <param name="entries">The entries.</param>
    /// <param name="shop">The shop, which says who the maker is and how fast times are forgotten.</param>
    /// <param name="operations">The operations.</param>
    /// <param name="asOf">The date from which the entries' ages count.</param>
    public static LearnedRates From(IReadOnlyList<LogEntry> entries, Shop shop, OperationCatalogue operations, LocalDate asOf)
    {
        var work = WorkTimed.Of(entries, operations);
        var prior = RateModel.FromPrior(operations);
        var model = work.Timed.Count == 0 ? prior : prior.Learn(work.Timed, shop.LearningAsOf(asOf));
        var odd = model.Log.Count(one => one.IsHeldOut);
        var how = shop.LearningAsOf(asOf);
        return new()
        {
            Model = model,
            Prior = prior,
            Spoiling = SpoilingChances.Learn(operations, SpoiledRun.Of(work, entries, operations), run => how.WeightOf(run.On)),
            Entries = entries,
            Work = work,
            Behind = new(entries.Count, work.Timed.Count - odd, odd, work.LeftOut, PriorOnly: false),
        };
    }

    /// <summary>
    /// The rates as they were known when the first entry of a job was written down: by them its boards were laid out, and
    /// what is learned while they are sawn must not lay them out anew.
    /// </summary>
    /// <returns>The rates; these themselves while nothing of the job is logged.</returns>
    public LearnedRates Before(ShopAndJob read)
    {
        var own = EntriesOf(read);
        if (own.Count == 0 || Behind.PriorOnly)
        {
            return this;
        }

        var first = own.MinBy(entry => entry.Id.Number)!;
        return Earlier.GetOrAdd(first.Id, _ => From([.. Entries.Where(entry => entry.Id.Number < first.Id.Number)], read.Shop, read.Operations, first.On.Date));
    }

    /// <summary>How many entries <see cref="Before"/> has: with as many, the boards of a job are laid out alike.</summary>
    public int CountBefore(ShopAndJob read)
    {
        var own = EntriesOf(read);
        if (own.Count == 0 || Behind.PriorOnly)
        {
            return Entries.Count;
        }

        var first = own.Min(entry => entry.Id.Number);
        return Entries.Count(entry => entry.Id.Number < first);
    }

    /// <summary>The entries of a job.</summary>
    public IReadOnlyList<LogEntry> EntriesOf(ShopAndJob read) => [.. Entries.Where(entry => string.Equals(entry.Job, read.LogName, StringComparison.Ordinal))];

    private static LearnedRates FromPrior(IReadOnlyList<LogEntry> entries, OperationCatalogue operations)
    {
        var prior = RateModel.FromPrior(operations);
        return new() { Model = prior, Prior = prior, Spoiling = SpoilingChances.FromPrior(operations), Entries = entries, Work = new([], []), Behind = new(entries.Count, 0, 0, [], PriorOnly: true) };
    }

    private static IReadOnlyList<LogEntry> EntriesIn(ShopFolder folder)
    {
        using var log = ShopLog.OpenToRead(folder);
        return log?.All() ?? [];
    }
}
