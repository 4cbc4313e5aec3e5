using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Times;

namespace ShopDays.Cli.Commands;

/// <summary>
/// The orders in hand, and perhaps a new one behind them, in one shop. Their tasks are drawn together, so that a course in
/// which the maker is slow is slow for all of them; a new one is drawn into the same courses, which are what they are without it.
/// </summary>
internal sealed class OrdersNow
{
    private readonly Shop shop;
    private readonly IReadOnlyList<OrderNow> orders;
    private readonly int inHand;
    private readonly int seed;
    private readonly int schedules;
    private readonly Progress progress;
    private readonly List<TimeDraws> draws;
    private readonly List<IReadOnlyList<WorkTime>> times;

    /// <summary>Draws the times of all orders.</summary>
    /// <param name="shop">The shop.</param>
    /// <param name="inHand">The orders in hand.</param>
    /// <param name="another">The new one; null for none. There is one order at least.</param>
    /// <param name="model">The rates.</param>
    /// <param name="seed">Where draws and plans draw from.</param>
    /// <param name="schedules">Schedules to look at for each plan.</param>
    /// <param name="progress">Told of each step.</param>
    public OrdersNow(Shop shop, IReadOnlyList<OrderNow> inHand, OrderNow? another, RateModel model, int seed, int schedules, Progress progress)
    {
        (this.shop, this.inHand, this.seed, this.schedules, this.progress) = (shop, inHand.Count, seed, schedules, progress);
        orders = another is null ? inHand : [.. inHand, another];
        var tasks = orders.Sum(order => order.Graph.Tasks.Count);
        draws = progress.During(
            FormattableString.Invariant($"drawing {Workings.Draws} courses of {tasks} tasks of {CountWords.Of(orders.Count, "order")}"),
            () => another is null || inHand.Count == 0 ? Drawn(model, orders) : [.. Drawn(model, inHand), DrawnBehind(model, another)]);
        times = [.. draws.Zip(orders, (drawn, order) => order.TimesBy(model, drawn))];
    }

    /// <summary>A plan of the orders in hand, or what stands against it.</summary>
    public PlanAnswer InHand() => During("", () => PlanMaker.Plan(RequestOf(inHand)));

    /// <summary>Plans of them with the new one, behind them and worked in, or what stands against it.</summary>
    /// <param name="without">What may become of those in hand without it.</param>
    public AnotherOrder WithAnother(IReadOnlyList<FinishForecast> without) => During(" and a new one", () => AnotherOrder.Of(RequestOf(orders.Count), without));

    /// <summary>Hands-on time that is left of each order, each task by its likely time; the new one stands last.</summary>
    public IReadOnlyList<WorkTime> Left => field ??= [.. times.Select(each => each.Aggregate(WorkTime.Zero, (sum, time) => sum + time))];

    private List<TimeDraws> Drawn(RateModel model, IReadOnlyList<OrderNow> together)
    {
        var all = model.Draw([.. together.SelectMany(order => order.Graph.Tasks)], Workings.Draws, seed, [.. together.SelectMany(order => order.Spent)]);
        var split = new List<TimeDraws>();
        var first = 0;
        foreach (var order in together)
        {
            var (from, to) = (first, first + order.Graph.Tasks.Count);
            split.Add(order.Spoiling.On(new([.. all.Minutes.Select(trial => trial[from..to])], seed)));
            first = to;
        }

        return split;
    }

    private TimeDraws DrawnBehind(RateModel model, OrderNow another) => another.Spoiling.On(
        model.DrawBehind([.. orders.Take(inHand).SelectMany(order => order.Graph.Tasks)], another.Graph.Tasks, Workings.Draws, seed));

    private T During<T>(string with, Func<T> plan) => progress.During(FormattableString.Invariant($"planning {CountWords.Of(inHand, "order")}{with}, {schedules} schedules to look at"), plan);

    private PlanRequest RequestOf(int count) => new()
    {
        Orders = [.. Enumerable.Range(0, count).Select(OrderOf)],
        Calendars = [.. shop.Workers.Select(shop.CalendarOf)],
        Limits = shop.Limits,
        Seed = seed,
        Budget = schedules,
        Lengths = shop.Format,
        Progress = new SearchSteps(progress.Now, schedules),
    };

    private OrderInHand OrderOf(int place) => new()
    {
        Name = orders[place].Title,
        Graph = orders[place].Graph,
        Times = times[place],
        Draws = draws[place],
        Start = orders[place].Start,
        Due = orders[place].Date,
        Priority = place < inHand ? orders[place].Read.Job.Priority : 1,
        UnderWay = orders[place].UnderWay,
        GivesWay = place == inHand,
    };
}
