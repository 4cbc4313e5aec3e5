using System.Diagnostics;
using System.Globalization;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>Hours of the shop that give no session, and why, in a maker's words.</summary>
internal static class UnusedWords
{
    /// <summary>The hours that cannot be used while a plan runs.</summary>
    public static IReadOnlyList<UnusedSpan> Of(ShopAndJob read, Plan plan) =>
        plan.Sessions.Count == 0 ? [] : Of(read, plan.Begin.Date, plan.Sessions[^1].Session.Date);

    /// <summary>The hours that cannot be used in the year from the job's start.</summary>
    public static IReadOnlyList<UnusedSpan> OfYear(ShopAndJob read) => Of(read, read.Job.Start, read.Job.Start.PlusYears(1).PlusDays(-1));

    /// <summary>For example <c>Tuesday 19:00-21:15, 2 Nov 2027 to 8 Feb 2028: no daylight left</c>.</summary>
    public static string Of(UnusedSpan span, Shop shop)
    {
        var days = string.Join(", ", span.Days.Select(day => day.ToString()));
        var whose = shop.Workers.Count > 1 ? $" ({span.Worker})" : "";
        var dates = span.First == span.Last ? $"on {Date(span.First)}" : $"from {Date(span.First)} to {Date(span.Last)}";
        return $"{days} {span.Hours}{whose}, {dates}: {span.Appointment ?? Why(span.Reason, shop)}";
    }

    /// <summary>The hours of the week that begin or end at a time which the clock shows twice in the year from the job's start, and which of the two counts.</summary>
    public static IReadOnlyList<string> Doubled(ShopAndJob read)
    {
        var zone = read.Shop.Place.Zone;
        return
        [
            .. from day in Enumerable.Range(0, 365)
               let date = read.Job.Start.PlusDays(day)
               where read.Shop.Extra.On(date) is null && !read.Shop.Closed.Contains(date)
               from hours in read.Shop.Week[date.DayOfWeek].Items
               from said in (string[])
               [
                   .. ClockChange.IsDoubled(date + hours.From, zone) ? [$"{hours.From:HH':'mm} comes twice: they begin with the first"] : Array.Empty<string>(),
                   .. !hours.EndWithTheDay && ClockChange.IsDoubled(date + hours.To, zone) ? [$"{hours.To:HH':'mm} comes twice: they end with the second"] : Array.Empty<string>(),
               ]
               select string.Create(CultureInfo.InvariantCulture, $"{date.DayOfWeek} {hours}, on {Date(date)}: the clock is put back, and {said}"),
        ];
    }

    private static string Why(UnusedReason reason, Shop shop) => reason switch
    {
        UnusedReason.NoDaylight => "no daylight to work by",
        UnusedReason.TooShort => $"too short: less than {WorkTimeText.Write(shop.LeastSession)} ('least-session') is left to work in when the shop is opened and swept",
        UnusedReason.ClockSkipped => "the clock is put forward over them",
        UnusedReason.Closed => "closed",
        UnusedReason.Appointment => "an appointment",
        _ => throw new UnreachableException(),
    };

    private static List<UnusedSpan> Of(ShopAndJob read, LocalDate first, LocalDate last) =>
        [.. read.Shop.Workers.SelectMany(worker => UnusedSpan.Of(read.Shop.CalendarOf(worker), first, last))];

    private static string Date(LocalDate date) => DateWords.Plain(date);
}
