using System.Collections.Concurrent;
using ShopDays.Cli.Bench.Now;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>
/// Sheets that hang on nothing but what was worked out and what the log says: each is put together once, however many
/// phones look at it, until one of the two is another.
/// </summary>
internal sealed class SheetsKept
{
    private const int Most = 500;

    private volatile Kept last = new(null, null, 0);

    /// <summary>The sheet of an address.</summary>
    /// <param name="shop">What was worked out.</param>
    /// <param name="worked">Counts what else was worked out of it since.</param>
    /// <param name="log">What the log says.</param>
    /// <param name="address">What is looked at.</param>
    /// <param name="make">Puts it together; null where there is no such thing, which is not kept.</param>
    public T? Of<T>(ShopAtHand shop, long worked, LogReading log, string address, Func<T?> make)
        where T : class
    {
        var now = last;
        if (now.Shop != shop || now.Log != log || now.Worked != worked || now.Sheets.Count > Most)
        {
            last = now = new(shop, log, worked);
        }

        if (now.Sheets.TryGetValue(address, out var known))
        {
            return (T)known;
        }

        var sheet = make();
        if (sheet is not null)
        {
            now.Sheets[address] = sheet;
        }

        return sheet;
    }

    private sealed record Kept(ShopAtHand? Shop, LogReading? Log, long Worked)
    {
        public ConcurrentDictionary<string, object> Sheets { get; } = new(StringComparer.Ordinal);
    }
}
