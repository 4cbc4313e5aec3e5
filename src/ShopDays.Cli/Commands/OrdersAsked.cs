using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>Works out what was asked of a shop's orders: each job as it stands, one plan of all, and another piece behind them.</summary>
/// <param name="shop">The shop and all its jobs.</param>
/// <param name="workingsOf">The workings of one of them.</param>
/// <param name="rates">The rates.</param>
/// <param name="progress">Told of each step.</param>
internal sealed class OrdersAsked(ShopAndJobs shop, Func<ShopAndJob, Workings> workingsOf, LearnedRates rates, Progress progress)
{
    private readonly List<(string Title, Workings Workings)> unmade = [];
    private PlanAnswer.CannotBePlanned? cannot;
    private int seed;

    /// <summary>The moment.</summary>
    public required Instant Now { get; init; }

    /// <summary>Schedules to look at for each plan.</summary>
    public required int Schedules { get; init; }

    private LocalDate Today => Now.InZone(shop.Shop.Place.Zone).Date;

    /// <summary>Works it out.</summary>
    /// <param name="like">The job that another piece is wanted of; null for none.</param>
    /// <param name="start">When that would begin; null for today.</param>
    /// <returns>What is to be told; nothing when something stands against it.</returns>
    public (ToldOrders? Told, ToldNewOrder? Another) Tell(ShopAndJob? like, LocalDate? start)
    {
        List<OrderNow> orders = [.. shop.Jobs.Where(job => job.Job.State == OrderState.InHand).Select(InHand).OfType<OrderNow>()];
        var another = like is null ? null : Another(like.BeforeSawing.AskedAnew, start ?? Today);
        if (unmade.Count > 0)
        {
            return default;
        }

        // Those with a date first, as a maker would look for them.
        List<OrderNow> open = [.. orders.Where(order => !order.IsOver).OrderBy(order => order.Date ?? LocalDate.MaxIsoValue).ThenBy(order => order.Title, StringComparer.Ordinal)];
        List<JobLeftOut> leftOut = [.. shop.Jobs.Select(job => LeftOut(job, open)).OfType<JobLeftOut>()];
        if (open.Count == 0 && another is null)
        {
            return (Told([], null, leftOut, []), null);
        }

        var now = new OrdersNow(shop.Shop, open, another, rates.Model, seed, Schedules, progress);
        var planned = open.Count == 0 ? null : Planned(now.InHand());
        var with = another is null || cannot is not null ? null : now.WithAnother(planned?.Forecasts ?? []);
        var behind = with is null ? null : Planned(with.Behind);
        if (cannot is not null)
        {
            return default;
        }

        var told = Told(open, planned, leftOut, now.Left);
        return (told, another is null ? null : new()
        {
            Title = another.Title,
            Read = another.Read,
            Start = another.Start,
            Left = now.Left[^1],
            Others = [.. open.Select(order => order.Title)],
            Behind = behind!,
            Among = with!.Among,
        });
    }

    /// <summary>Says what stood against it: stock that does not yield every part, an order of work that goes round, a task that has no place.</summary>
    /// <param name="complaints">Where complaints go, and how wide.</param>
    /// <param name="answers">Where an answer for other programs goes; null for none.</param>
    public void SayWhatStandsAgainst(Screen complaints, TextWriter? answers)
    {
        foreach (var (title, workings) in unmade)
        {
            if (workings.Order is OrderOfWork.GoesRound round)
            {
                complaints.Error.WriteLine($"{title}: the order of work goes round: {string.Join(", ", round.Names)}; remove one of its 'before' or 'after' lines");
                continue;
            }

            complaints.Error.WriteLine($"{title}:");
            LayoutPrint.PrintMissing(complaints.Error, complaints, workings.Layout, workings.Read.Located.Format);
        }

        if (unmade.Count > 0)
        {
            complaints.Wrapped(complaints.Error, "Nothing was planned: dates that leave an order out would be no dates.");
        }

        if (cannot is not null)
        {
            OrdersPrint.Print(complaints, cannot);
        }

        if (answers is not null)
        {
            JsonAnswer.Write(answers, cannot is not null ? PlanJson.Of(cannot) : new { NotMade = unmade.Select(one => new { Order = one.Title, Why = WhyNot(one.Workings) }) });
        }
    }

    private static object WhyNot(Workings workings) => workings.Order is OrderOfWork.GoesRound round
        ? RefusalJson.Of(round.Names)
        : RefusalJson.Of(workings.Layout, workings.Read.Located.Format);

    private OrderNow? InHand(ShopAndJob job)
    {
        var (title, workings) = (job.TitleAmong(shop.Jobs), workingsOf(job));
        return GraphOf(title, workings) is { } graph ? OrderNow.InHand(title, workings, graph, Now) : null;
    }

    private OrderNow? Another(ShopAndJob like, LocalDate start)
    {
        var (title, workings) = (like.TitleAmong(shop.Jobs) + " (new)", workingsOf(like));
        return GraphOf(title, workings) is { } graph ? OrderNow.Another(title, workings, graph, start, Now) : null;
    }

    private TaskGraph? GraphOf(string title, Workings workings)
    {
        seed = workings.Seed;
        if (workings.Missing.Count == 0 && workings.Order is OrderOfWork.Made made)
        {
            return made.Graph;
        }

        unmade.Add((title, workings));
        return null;
    }

    private PlanAnswer.Planned? Planned(PlanAnswer answer)
    {
        cannot = answer as PlanAnswer.CannotBePlanned;
        return answer as PlanAnswer.Planned;
    }

    private JobLeftOut? LeftOut(ShopAndJob job, List<OrderNow> open) => job.Job.State switch
    {
        OrderState.Asked => new(job.LogName, job.TitleAmong(shop.Jobs), LeftOutJob.Asked),
        OrderState.SetAside => new(job.LogName, job.TitleAmong(shop.Jobs), LeftOutJob.SetAside),
        OrderState.Delivered => new(job.LogName, job.TitleAmong(shop.Jobs), LeftOutJob.Delivered),
        _ => open.Exists(order => order.Read == job) ? null : new(job.LogName, job.TitleAmong(shop.Jobs), LeftOutJob.Done),
    };

    private ToldOrders Told(List<OrderNow> orders, PlanAnswer.Planned? planned, IReadOnlyList<JobLeftOut> leftOut, IReadOnlyList<Measures.WorkTime> left) => new()
    {
        Shop = shop.Shop,
        Today = Today,
        Plan = planned?.Plan,
        LeftOut = leftOut,
        Behind = rates.Behind,
        Orders =
        [
            .. orders.Select((order, place) => new ToldOrder
            {
                Title = order.Title,
                Read = order.Read,
                Marks = order.Marks,
                Start = order.Start,
                Date = order.Date,
                IsPromised = order.IsPromised,
                IsBegun = order.IsBegun,
                Left = left[place],
                Planned = planned!.Plan.Finishes[place],
                ShopDays = planned.Plan.Sessions.Where(session => session.Work.Any(work => string.Equals(work.Order, order.Title, StringComparison.Ordinal))).Select(session => session.Session.Date).Distinct().Count(),
                Forecast = planned.Forecasts[place],
                Sooner = [.. orders.Where((_, other) => planned.Plan.Finishes[other].ToInstant() < planned.Plan.Finishes[place].ToInstant()).Select(other => other.Title)],
                Awaited = [.. planned.Plan.Waits.Where(wait => wait.Awaited is not null && string.Equals(wait.Order, order.Title, StringComparison.Ordinal))],
                Today = Today,
            }),
        ],
    };
}
