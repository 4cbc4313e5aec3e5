using System.Diagnostics;
using NodaTime;
using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>What a maker should hear about orders in hand beside their dates.</summary>
internal static class OrderWords
{
    private const int MostNames = 3;

    /// <summary>Dates that are over, and starts that are past while nothing is logged.</summary>
    public static IReadOnlyList<string> OfDates(IReadOnlyList<ToldOrder> orders, LocalDate today) =>
    [
        .. orders.Where(order => order.Date < today).Select(order => $"The date of {order.Title}, {DateWords.Of(order.Date!.Value)}, is over."),
        .. orders.Where(order => !order.IsBegun && order.Start < today).Select(order => $"{order.Title} should have begun on {DateWords.Of(order.Start)} and nothing of it is logged: it is planned from now on, as a whole."),
    ];

    /// <summary>What is late from others.</summary>
    public static IReadOnlyList<string> OfLate(IReadOnlyList<ToldOrder> orders) => [.. orders.SelectMany(order => AwaitedWords.OfLate(order.Awaited, order.Title))];

    /// <summary>How dates are weighed against each other.</summary>
    public const string OfRoom = "Dates are to be kept with room for eight courses of ten: where an order would miss its date more often, the others give way as far as their own dates and the priorities allow.";

    /// <summary>Boards that stand alike in two jobs: they may be the same ones.</summary>
    public static IReadOnlyList<string> OfBoards(IReadOnlyList<ToldOrder> orders) =>
    [
        .. orders.SelectMany((one, place) => orders.Skip(place + 1).Select(other => (One: one, Other: other, Boards: Shared(one, other))))
            .Where(pair => pair.Boards.Count > 0)
            .Select(pair => $"{pair.One.Title} and {pair.Other.Title} both count on {(pair.Boards.Count == 1 ? "board" : "boards")} {CountWords.Names(pair.Boards, MostNames)} of the same timber and size: what is one board on the rack serves one of them only."),
    ];

    /// <summary>Trials that came to no end, and work that ran over.</summary>
    public static IReadOnlyList<string> OfTrials(IReadOnlyList<ToldOrder> orders) =>
    [
        .. orders.Where(order => order.Forecast.Unfinished > 0).Select(order => $"In {CountWords.Number(order.Forecast.Unfinished)} of the {CountWords.Of(order.Forecast.Trials, "drawn course")} {order.Title} is still not done after five years; no plan looks further ahead."),
    ];

    /// <summary>Jobs that are not planned.</summary>
    public static IReadOnlyList<string> OfLeftOut(IReadOnlyList<JobLeftOut> jobs) =>
        [.. jobs.GroupBy(job => job.Why).OrderBy(group => group.Key).Select(group => $"Not planned, {Of(group.Key)}: {string.Join(", ", group.Select(job => job.Title))}.")];

    /// <summary>What is done of each order in a session, in the order in which it is begun there: <c>Chest 2:10 (rip; saw tails)</c>.</summary>
    public static IEnumerable<(string Order, string Words)> Of(PlannedSession session) => session.Work
        .GroupBy(work => work.Order, StringComparer.Ordinal)
        .Select(group => (group.Key, $"{HoursOf(group)}: {CountWords.Names([.. group.Select(work => work.Task.Name).Distinct(StringComparer.Ordinal)], MostNames)}"));

    /// <summary>The hours of each order in some sessions: <c>Chest 9:10, Stool 2:35</c>.</summary>
    public static string Of(IEnumerable<PlannedSession> sessions) => string.Join(", ", sessions
        .SelectMany(session => session.Work)
        .GroupBy(work => work.Order, StringComparer.Ordinal)
        .Select(group => $"{group.Key} {HoursOf(group)}"));

    /// <summary>The Monday of a date's week.</summary>
    public static LocalDate WeekOf(LocalDate date) => date.PlusDays(1).Previous(IsoDayOfWeek.Monday);

    /// <summary>A date of a forecast in a table.</summary>
    public static string DateOf(ZonedDateTime? time) => time is { } known ? DateWords.Plain(known.Date) : "not in years";

    /// <summary>The chance of an order's date; nothing for one without.</summary>
    public static string ChanceOf(FinishForecast forecast) => forecast.ChanceOfDue is { } chance ? ChanceWords.Of(chance) : "";

    private static string HoursOf(IEnumerable<PlannedWork> work) => HourWords.Of(work.Aggregate(Measures.WorkTime.Zero, (sum, one) => sum + one.HandsOn));

    private static List<string> Shared(ToldOrder one, ToldOrder other) =>
    [
        .. one.Read.Job.Boards
            .Where(board => other.Read.Job.Boards.Any(like => board.Name == like.Name && board.Species.Name == like.Species.Name && (board.Length, board.Width, board.Thickness) == (like.Length, like.Width, like.Thickness)))
            .Select(board => board.Name),
    ];

    private static string Of(LeftOutJob why) => why switch
    {
        LeftOutJob.Asked => "asked for and not taken on (shopdays orders --like NAME says when one could be promised)",
        LeftOutJob.SetAside => "set aside",
        LeftOutJob.Delivered => "delivered",
        LeftOutJob.Done => "all done by the log ('status: delivered' in its file spares laying it out again)",
        _ => throw new UnreachableException(),
    };
}
