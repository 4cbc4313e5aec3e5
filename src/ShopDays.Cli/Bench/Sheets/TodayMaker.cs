using NodaTime;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Bench.Pages;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>Puts a day's sheet together from what was worked out and what the log says this moment.</summary>
/// <param name="shop">What was worked out.</param>
/// <param name="log">The log now.</param>
/// <param name="who">Whose day.</param>
/// <param name="now">The moment.</param>
internal sealed class TodayMaker(ShopAtHand shop, LogReading log, string who, Instant now)
{
    private const int MostParts = 4;

    private readonly ZonedDateTime here = now.InZone(shop.Shop.Zone);

    /// <summary>The sheet.</summary>
    public TodaySheet Sheet()
    {
        var sessions = Sessions();
        List<LogEntry> done = [.. log.OfDate.Where(entry => entry.Worker == who)];
        return new()
        {
            Date = DateWords.Long(here.Date),
            Who = who,
            AtHand = log.AtHand(who) is { } work ? CardOf(work) : null,
            LaidAside = [.. log.LaidAside(who).Select(CardOf)],
            Stopped = [.. shop.Jobs.Where(StillHolds).Select(job => $"{job.Title}. {StoppedWords.Of(job.Standing.Stopped!, job.Marks)}")],
            Heading = sessions switch
            {
                [] => shop.Ahead is null ? "Nothing is planned" : "Nothing is left to do",
                [var first, ..] when first.Date == here.Date => "Still to do today",
                [var first, ..] => $"Next, {DateWords.Long(first.Date)}",
            },
            Sessions = [.. sessions.Select(one => one.Card)],
            Logged = WorkTimeText.Write(done.Aggregate(WorkTime.Zero, (sum, entry) => sum + entry.Took)),
            Done = [.. done.Select(EntryLinks.Of)],
        };
    }

    /// <summary>A note holds until its job is worked on again, which the log may know already and what was worked out not yet.</summary>
    private bool StillHolds(JobAtHand job) => job.Standing.Stopped is { } note && log.OfDate.All(entry => entry.Job != job.Name || entry.On.Ended is null || entry.On.Ended <= note.On.Ended);

    private BegunCard CardOf(BegunWork work)
    {
        var job = shop.Find(work.Job);
        var task = job?.Find(work.Task);
        var soFar = work.TookBy(now);
        return new(new(work.Worker, work.Job, work.Task), job?.Title ?? work.Job ?? "", task is null ? "" : job!.Marks.Of(task.Name), LogPhrases.Plain(work.Task))
        {
            Minutes = soFar.Minutes,
            Clock = HourWords.Of(soFar),
            SoFar = WorkTimeText.Write(soFar),
            Expected = job is not null && job.Ranges.TryGetValue(work.Task, out var range)
                ? new($"expected {WorkTimeText.Write(range.P50)}, {WorkTimeText.Write(range.P10)} to {WorkTimeText.Write(range.P90)} four times in five", range.P90.Minutes, soFar > range.P90)
                : null,
            Began = DateWords.Of(work.Began.InZone(shop.Shop.Zone)),
            Since = $"since {DateWords.At((work.GoneOn ?? work.Began).InZone(shop.Shop.Zone))}, at {DateWords.At(here)}",
            IsLaidAside = work.PausedAt is not null,
            IsForgotten = Forgotten.Is(shop.Shop, work, now),
            Stopped = LogPhrases.Plain(work.Stopped),
            Pieces = job is null || task is null ? [] : PiecesOf(job, task),
        };
    }

    private List<(LocalDate Date, SessionCard Card)> Sessions()
    {
        var begun = log.Begun.Select(work => (work.Job, work.Task)).ToHashSet();
        var ahead = (shop.Ahead?.Plan.Sessions ?? [])
            .Where(session => session.Session.Worker == who && session.Session.Date >= here.Date)
            .Select(session => (session.Session.Date, Card: CardOf(session, begun)))
            .Where(session => session.Card.Work.Count > 0);
        List<(LocalDate Date, SessionCard Card)> first = [];
        foreach (var session in ahead.TakeWhile(session => first is [] || session.Date == first[0].Date))
        {
            first.Add(session);
        }

        return first;
    }

    private SessionCard CardOf(PlannedSession session, HashSet<(string?, string)> begun)
    {
        List<(JobAtHand Job, PlannedWork Work)> left =
        [
            .. session.Work
                .OrderBy(work => work.Start.ToInstant())
                .Select(work => (shop.Titled(work.Order), work))
                .Where(one => !begun.Contains((one.Item1.Name, one.work.Task.Name)) && !log.IsDone(one.Item1.Name, one.work.Task.Name)),
        ];
        return new(
            $"{DateWords.At(session.Session.WorkStart)} to {DateWords.At(session.Session.WorkEnd)}",
            [.. left.Select(one => CardOf(one.Job, one.Work))],
            [.. Caution.For(left.Select(one => one.Work.Task), BuiltIn.Cautions).Select(caution => $"{caution.Text} ({caution.SaidBy})")]);
    }

    private WorkCard CardOf(JobAtHand job, PlannedWork work)
    {
        var range = job.Ranges[work.Task.Name];
        var share = WorkWords.ShareOf(work, range);
        return new(
            new(who, job.Name, work.Task.Name),
            job.Title,
            job.Marks.Of(work.Task.Name),
            WorkTimeText.Write(work.HandsOn),
            $"{WorkTimeText.Write(range.P10 * share)} to {WorkTimeText.Write(range.P90 * share)} four times in five",
            WorkWords.NoteOf(work, range.P50) ?? "",
            PiecesOf(job, work.Task));
    }

    private static List<Link> PiecesOf(JobAtHand job, ShopTask task) =>
    [
        .. task.Parts.Take(MostParts).Select(part => new Link(PieceAddress.OfPart(job.Name, part), part)),
        .. task.Board is { } board ? (Link[])[new(PieceAddress.OfBoard(job.Name, board), $"board {board}")] : [],
    ];
}
