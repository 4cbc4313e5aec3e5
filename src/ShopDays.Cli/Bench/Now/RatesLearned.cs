using NodaTime;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Work;

namespace ShopDays.Cli.Bench.Now;

/// <summary>What the log teaches, learned again only when an entry has come, gone or changed, the shop's files are others, or the day is.</summary>
/// <param name="folder">The shop's folder.</param>
internal sealed class RatesLearned(ShopFolder folder)
{
    private EntriesRead entries = EntriesRead.None;
    private (string Files, LocalDate Date) from;
    private LearnedRates? last;

    /// <summary>The rates as of now.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="operations">The operations, the shop's own among them.</param>
    /// <param name="files">The stamp of the files that say both.</param>
    /// <param name="today">The date by the shop's clock.</param>
    /// <exception cref="FileTroubleException">The log cannot be read.</exception>
    public LearnedRates Of(Shop shop, OperationCatalogue operations, string files, LocalDate today)
    {
        using var log = ShopLog.OpenToRead(folder);
        var now = log?.AllAfter(entries) ?? EntriesRead.None;
        if (last is { } known && ReferenceEquals(now, entries) && from == (files, today))
        {
            return known;
        }

        var rates = LearnedRates.From(now.All, shop, operations, today);
        // What was known before a job was begun is what it was, unless what it was learned from has changed.
        var isAsBefore = last is not null && from.Files == files && now.Follows(entries);
        (entries, from, last) = (now, (files, today), isAsBefore ? rates with { Earlier = last!.Earlier } : rates);
        return last;
    }
}
