using NodaTime;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Commands.Logging;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Layouts;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Bench.Now;

/// <summary>
/// Works the shop out from its files and its log. Layouts are kept as long as what they are made from is the same: finding
/// one takes longer than all else, and the marks of tasks hang on it. So is what was learned, which a task that is only begun does not change.
/// </summary>
/// <param name="folder">The shop's folder.</param>
/// <param name="clock">Tells the moment.</param>
internal sealed class ShopReckoning(ShopFolder folder, IClock clock)
{
    private const int Seed = 1;

    private readonly Dictionary<string, (string From, Layout Layout)> layouts = new(StringComparer.Ordinal);
    private readonly Dictionary<string, (string From, Lazy<Promise?> Promise)> unrecorded = new(StringComparer.Ordinal);
    private readonly RatesLearned learned = new(folder);
    private readonly Progress silent = new(TextWriter.Null, isVerbose: false, isTerminal: false, width: 80, TimeProvider.System);

    /// <summary>Works it out.</summary>
    /// <param name="from">What it stands for.</param>
    /// <returns>The shop; its mistakes instead where its own files have some.</returns>
    /// <exception cref="FileTroubleException">A file or the log cannot be read.</exception>
    public (ShopAtHand? Shop, IReadOnlyList<Finding> Findings) Of(StateMark from)
    {
        var now = clock.GetCurrentInstant();
        var findings = new Findings();
        var operations = RatesFile.OperationsIn(folder, findings);
        if (ShopFile.Read(folder.Read(ShopFolder.ShopFileName), operations, findings).Shop is not { } read || !findings.AreNone)
        {
            return (null, findings.InOrder());
        }

        var shop = new LogShop(folder, read, operations);
        var rates = learned.Of(read, operations, from.Files, now.InZone(read.Place.Zone).Date);
        var unplanned = new List<UnplannedJob>();
        List<ShopAndJob> inHand = [.. folder.JobNames().Select(name => ReadJob(name, now, unplanned)).OfType<ShopAndJob>().Where(job => job.Job.State == OrderState.InHand)];
        List<JobAtHand> jobs =
        [
            .. inHand
                .Select(job => AtHand(job, job.TitleAmong(inHand), rates, now, unplanned))
                .OfType<JobAtHand>()
                .OrderBy(job => job.Read.Job.Due ?? LocalDate.MaxIsoValue)
                .ThenBy(job => job.Title, StringComparer.Ordinal),
        ];
        var (ahead, against) = Planned(read, [.. jobs.Where(job => !job.IsOver)], rates, now);
        return (new() { From = from, Shop = shop, At = now, Rates = rates, Jobs = jobs, Unplanned = unplanned, Odd = OddTime.In(rates.Model), Ahead = ahead, Against = against }, []);
    }

    private ShopAndJob? ReadJob(string name, Instant now, List<UnplannedJob> unplanned)
    {
        var reading = ShopAndJob.Read(Path.Combine(folder.Jobs, name + ShopFolder.JobFileEnding), folder.Path, now);
        if (reading.Read is null)
        {
            unplanned.Add(new(name, [.. reading.Findings.Select(finding => $"{finding.Place}: {finding.Message}")]));
        }

        return reading.Read;
    }

    private JobAtHand? AtHand(ShopAndJob job, string title, LearnedRates rates, Instant now, List<UnplannedJob> unplanned)
    {
        var workings = LaidOut(job, rates);
        var why = workings switch
        {
            { Missing: { Count: > 0 } missing } => missing.Select(one => $"no board yields {one.Part.Name}: {UnplacedWords.Why(one, job.Located.Format)}"),
            { Order: OrderOfWork.GoesRound round } => [$"the order of work goes round: {string.Join(", ", round.Names)}"],
            _ => [],
        };
        unplanned.AddRange(why.Any() ? [new(job.LogName, [.. why])] : []);
        return workings is { Missing.Count: 0, Order: OrderOfWork.Made { Graph: var graph } }
            ? new(title, workings, graph, new(workings, graph, OnRecord.Of(job, now), now), Unrecorded(workings))
            : null;
    }

    // What would have been promised of a job hangs on what was known before its first entry alone.
    private Lazy<Promise?> Unrecorded(Workings workings)
    {
        var read = workings.Read;
        var from = FormattableString.Invariant($"{FileStamps.Of(folder, read.LogName)}\n{workings.Rates.CountBefore(read)} of the log");
        if (!unrecorded.TryGetValue(read.LogName, out var known) || known.From != from)
        {
            unrecorded[read.LogName] = known = (from, new(() => PromiseThen.Of(workings)));
        }

        return known.Promise;
    }

    private Workings LaidOut(ShopAndJob job, LearnedRates rates)
    {
        var from = FormattableString.Invariant($"{FileStamps.Of(folder, job.LogName)}\n{rates.CountBefore(job)} of the log");
        var known = layouts.TryGetValue(job.LogName, out var last) && last.From == from ? last.Layout : null;
        var workings = new Workings(job, Seed, LayoutEffort.Normal, LayoutPreference.AsPriced, rates, silent) { KnownLayout = known };
        layouts[job.LogName] = (from, workings.Layout);
        return workings;
    }

    private (PlanAnswer.Planned? Ahead, IReadOnlyList<string> Against) Planned(Shop shop, List<JobAtHand> open, LearnedRates rates, Instant now)
    {
        if (open.Count == 0)
        {
            return (null, []);
        }

        List<OrderNow> orders = [.. open.Select(job => OrderNow.InHand(job.Title, job.Workings, job.Graph, now))];
        var answer = new OrdersNow(shop, orders, null, rates.Model, Seed, Workings.UsualSchedules, silent).InHand();
        return (answer as PlanAnswer.Planned, answer is PlanAnswer.CannotBePlanned cannot ? [.. cannot.Reasons.Select(ObstacleWords.Of)] : []);
    }
}
