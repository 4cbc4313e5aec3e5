using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>Which of the times just logged look odd: while the maker still knows how it was, it is asked about at once.</summary>
internal static class OddNow
{
    private const int MostAsked = 4;

    /// <summary>The odd ones among some entries, by what the whole log teaches.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="clock">Tells today's date.</param>
    /// <param name="logged">The entries, with their numbers.</param>
    public static IReadOnlyList<OddTime> Of(LogShop shop, IClock clock, IReadOnlyList<LogEntry> logged)
    {
        var numbers = logged.Where(entry => entry.Work is not null).Select(entry => entry.Id).ToHashSet();
        return numbers.Count == 0
            ? []
            : [.. OddTime.In(LearnedRates.Of(shop.Folder, shop.Shop, shop.Operations, clock).Model).Where(one => one.Judged.Work.Entries.Any(numbers.Contains))];
    }

    /// <summary>The numbers of their entries.</summary>
    public static IReadOnlyList<long> Numbers(IReadOnlyList<OddTime> odd) => [.. odd.SelectMany(one => one.Judged.Work.Entries).Select(entry => entry.Number).Order()];

    /// <summary>Says what is odd, what was expected and what can be typed; nothing where nothing is.</summary>
    public static void Say(Screen answers, IReadOnlyList<OddTime> odd)
    {
        if (odd.Count > 0)
        {
            answers.Out.WriteLine();
            RatesPrint.PrintOdd(answers, odd, MostAsked);
        }
    }
}
