using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>A job with a claim on the shop's hours, as it stands now.</summary>
internal sealed record OrderNow
{
    /// <summary>What it is called among the others.</summary>
    public required string Title { get; init; }

    /// <summary>The shop and the job.</summary>
    public required ShopAndJob Read { get; init; }

    /// <summary>Its tasks, or those that are left.</summary>
    public required TaskGraph Graph { get; init; }

    /// <summary>What is left of it; null for a piece to be made from the beginning.</summary>
    public RemainingWork? Left { get; init; }

    /// <summary>What may be spoiled in what is left of it.</summary>
    public required SpoilingDraws Spoiling { get; init; }

    /// <summary>From when it is planned, and what still goes on by itself.</summary>
    public required UnderWay UnderWay { get; init; }

    /// <summary>The date with which it begins.</summary>
    public required LocalDate Start { get; init; }

    /// <summary>The date by the end of which it should be finished; null for none.</summary>
    public LocalDate? Date { get; init; }

    /// <summary>Whether that date is the last promise on record; otherwise it is the one in its file.</summary>
    public bool IsPromised { get; init; }

    /// <summary>Whether work of it is logged.</summary>
    public bool IsBegun { get; init; }

    /// <summary>Whether nothing is left to do, nor to wait for, and nothing of it is in anybody's way.</summary>
    public bool IsOver => Graph.Tasks.Count == 0 && UnderWay.Waits.Count == 0 && UnderWay.Held.Count == 0;

    /// <summary>Time that each task has taken already where the log does not say how much is left.</summary>
    public IReadOnlyList<WorkTime> Spent => Left?.Spent ?? [.. Graph.Tasks.Select(_ => WorkTime.Zero)];

    /// <summary>The time that each task is planned with: as if it were planned alone.</summary>
    /// <param name="model">The rates.</param>
    /// <param name="draws">Drawn times of the tasks.</param>
    public IReadOnlyList<WorkTime> TimesBy(RateModel model, TimeDraws draws) => Left?.PlannedTimes(model, draws) ?? WholeMinutes.Of(Graph, model);

    /// <summary>An order in hand.</summary>
    /// <param name="title">What it is called.</param>
    /// <param name="workings">The job.</param>
    /// <param name="graph">Its whole order of work.</param>
    /// <param name="now">The moment.</param>
    public static OrderNow InHand(string title, Workings workings, TaskGraph graph, Instant now)
    {
        var read = workings.Read;
        var zone = read.Shop.Place.Zone;
        var record = OnRecord.Of(read, now);
        var job = new JobNow(workings, graph, record, now);
        var promised = record.Promises.Count == 0 ? null : record.Promises[^1].P80?.InZone(zone).Date;
        return new()
        {
            Title = title,
            Read = read,
            Graph = job.Left.Graph,
            Left = job.Left,
            Spoiling = workings.SpoilingOf(graph, job.Left.Graph),
            // What was heavy today tires nobody on the date with which a later job begins.
            UnderWay = job.Left.UnderWay.From == now ? job.Left.UnderWay : job.Left.UnderWay with { HeavyToday = new Dictionary<string, WorkTime>() },
            Start = read.Job.Start,
            Date = promised ?? read.Job.Due,
            IsPromised = promised is not null,
            IsBegun = job.Standing.IsBegun,
        };
    }

    /// <summary>A piece like one of the shop's jobs, to be made from the beginning and without a date.</summary>
    /// <param name="title">What it is called.</param>
    /// <param name="workings">The job.</param>
    /// <param name="graph">Its whole order of work.</param>
    /// <param name="start">The date with which it begins.</param>
    /// <param name="now">The moment.</param>
    public static OrderNow Another(string title, Workings workings, TaskGraph graph, LocalDate start, Instant now) => new()
    {
        Title = title,
        Read = workings.Read,
        Graph = graph,
        Spoiling = workings.SpoilingOf(graph, graph),
        UnderWay = new() { From = Instant.Max(now, workings.Read.Shop.Place.Zone.AtStartOfDay(start).ToInstant()) },
        Start = start,
    };
}
