using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>The orders in hand of a shop, with all that is told about them.</summary>
internal sealed record ToldOrders
{
    /// <summary>Days that are told session by session.</summary>
    public const int DaysAhead = 14;

    private const int MostAtRisk = 5;

    /// <summary>The shop.</summary>
    public required Shop Shop { get; init; }

    /// <summary>The date by the shop's clock.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>The orders in hand, in the order of their dates, those without one last; may be empty.</summary>
    public required IReadOnlyList<ToldOrder> Orders { get; init; }

    /// <summary>The plan of them all; null when there is none in hand.</summary>
    public required Plan? Plan { get; init; }

    /// <summary>Jobs of the shop that are not planned, each with the reason, in ordinal order.</summary>
    public required IReadOnlyList<JobLeftOut> LeftOut { get; init; }

    /// <summary>What their times come from.</summary>
    public required TimesBehind Behind { get; init; }

    /// <summary>The first date that is told session by session: today, or that of the first session with work.</summary>
    public LocalDate From => Plan is { Sessions: [var first, ..] } ? LocalDate.Max(Today, first.Session.Date) : Today;

    /// <summary>The sessions of the next two weeks.</summary>
    public IReadOnlyList<PlannedSession> Near => [.. (Plan?.Sessions ?? []).Where(session => session.Session.Date < From.PlusDays(DaysAhead))];

    /// <summary>The sessions after them.</summary>
    public IReadOnlyList<PlannedSession> Later => [.. (Plan?.Sessions ?? []).Skip(Near.Count)];

    /// <summary>The sessions in which some order slips most often, the first most often of all; five at the most.</summary>
    public IReadOnlyList<(ToldOrder Order, SessionAtRisk Risk)> AtRisk =>
    [
        .. Orders
            .SelectMany(order => order.Forecast.SessionsAtRisk, (order, risk) => (order, risk))
            .OrderByDescending(one => one.risk.Slips)
            .ThenBy(one => one.risk.Session.Start.ToInstant())
            .Take(MostAtRisk),
    ];

    /// <summary>How their dates are weighed against each other; null where there is nothing to weigh.</summary>
    public string? Room => Orders.Count > 1 && Orders.Any(order => order.Date is not null) ? OrderWords.OfRoom : null;

    /// <summary>What else should be known, each a sentence.</summary>
    public IReadOnlyList<string> Notes => [.. OrderWords.OfLate(Orders), .. OrderWords.OfDates(Orders, Today), .. OrderWords.OfBoards(Orders), .. OrderWords.OfTrials(Orders), .. OrderWords.OfLeftOut(LeftOut)];
}

/// <summary>A job that is not planned.</summary>
/// <param name="Job">The name of its file.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Why">Why it is not.</param>
internal sealed record JobLeftOut(string Job, string Title, LeftOutJob Why);

/// <summary>Why a job is not planned.</summary>
internal enum LeftOutJob
{
    /// <summary>Its file says that it is asked for and not taken on.</summary>
    Asked,

    /// <summary>Its file says that it is set aside.</summary>
    SetAside,

    /// <summary>Its file says that it is delivered.</summary>
    Delivered,

    /// <summary>All its tasks are done by the log.</summary>
    Done,
}
