using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Calendars;

/// <summary>
/// What of a plan stands in a calendar: its sessions, what a wait leaves to be done, and the dates of its jobs. Nothing of
/// money and nobody's name but the workers' gets there, unless it stands in the title of a job or of a task.
/// </summary>
/// <param name="shop">The shop.</param>
/// <param name="of">What the calendar is of: a job's name, or the orders in hand.</param>
/// <param name="orders">The jobs in it.</param>
internal sealed class PlanEvents(Shop shop, string of, IReadOnlyList<CalendarOrder> orders)
{
    private const int MostKinds = 2;

    // Nobody is called to the bench at night: what is ready then waits for the morning (common practice, no source).
    private static readonly LocalTime Morning = new(7, 0);
    private static readonly LocalTime Night = new(22, 0);

    /// <summary>The events.</summary>
    /// <param name="plan">The plan; null where there is nothing to plan.</param>
    public IReadOnlyList<CalendarEvent> Of(Plan? plan) =>
    [
        .. (plan?.Sessions ?? []).Select(OfSession),
        .. plan is null ? [] : OfWaits(plan),
        .. orders.SelectMany(OfDates),
    ];

    private CalendarEvent OfSession(PlannedSession session)
    {
        var one = session.Session;
        var whose = shop.Workers.Count > 1 ? $" ({one.Worker})" : "";
        return new()
        {
            Uid = EventUid.OfSession(shop, of, one.Start, one.Worker),
            Lines =
            [
                .. Times(one.Start, one.End),
                $"SUMMARY:{ContentLine.Text(string.Join("; ", session.Work.GroupBy(work => work.Order, StringComparer.Ordinal).Select(InShort)) + whose)}",
                $"DESCRIPTION:{ContentLine.Text(string.Join('\n', session.Work.OrderBy(work => work.Start.ToInstant()).Select(WorkInFull)))}",
                $"LOCATION:{ContentLine.Text(shop.Name)}",
            ],
        };
    }

    /// <summary>A job and the work that takes most of its time: <c>Writing table: rip, flatten and more</c>.</summary>
    private string InShort(IGrouping<string, PlannedWork> job)
    {
        string[] kinds =
        [
            .. job
                .GroupBy(work => (work.Task.Timing as TaskTiming.ByOperation)?.Operation.Name ?? work.Task.Name, StringComparer.Ordinal)
                .OrderByDescending(kind => kind.Sum(work => work.HandsOn.Minutes))
                .ThenBy(kind => kind.Key, StringComparer.Ordinal)
                .Select(kind => kind.Key),
        ];
        return $"{OrderOf(job.Key).Title}: {string.Join(", ", kinds.Take(MostKinds))}{(kinds.Length > MostKinds ? " and more" : "")}";
    }

    private string WorkInFull(PlannedWork work)
    {
        var order = OrderOf(work.Order);
        var piece = work.IsLastPiece ? "" : ", not all of it";
        return $"{DateWords.At(work.Start)} {order.Marks.Of(work.Task.Name)} {(orders.Count > 1 ? order.Title + ": " : "")}{work.Task.Name}, {WorkTimeText.Write(work.HandsOn)}{piece}";
    }

    private IEnumerable<CalendarEvent> OfWaits(Plan plan) => plan.Waits
        .Where(wait => wait is { Awaited: null, After: not null })
        .Select(wait => (Wait: wait, What: WantedBy(wait, plan)))
        .Where(one => one.What is not null)
        .GroupBy(one => (one.Wait.Order, one.Wait.After!.Name))
        .SelectMany(waits => waits.OrderBy(one => one.Wait.End.ToInstant()).Select((one, number) => OfWait(one.Wait, number, one.What!)));

    /// <summary>What is to be done when a wait is over, clamps to come off, a coat that takes the next one or may be used; null for a wait that nobody has to know of.</summary>
    private static string? WantedBy(PlannedWait wait, Plan plan)
    {
        var task = wait.After!;
        var on = string.Join(", ", task.Parts.DefaultIfEmpty(task.Name));
        if (wait.HoldsClamps)
        {
            return $"take the clamps off ({on})";
        }

        if (task.Stage != Stage.Finish)
        {
            return null;
        }

        var goesOn = plan.Sessions.SelectMany(session => session.Work).Any(work => work.Order == wait.Order && work.Task.Stage == Stage.Finish && work.Start.ToInstant() >= wait.End.ToInstant() && work.Task.Parts.Intersect(task.Parts).Any());
        return $"{on}: {(goesOn ? "dry, ready for what comes next" : "hard enough for light use")}";
    }

    private CalendarEvent OfWait(PlannedWait wait, int number, string what)
    {
        var order = OrderOf(wait.Order);
        var (at, summary) = (ByDay(wait.End), $"{order.Title}: {what}");
        return new()
        {
            Uid = EventUid.OfWait(shop, order.Job, wait.After!.Name, number),
            Lines =
            [
                CalendarTime.Line("DTSTART", at),
                $"SUMMARY:{ContentLine.Text(summary)}",
                $"DESCRIPTION:{ContentLine.Text($"{wait.Reason}, from {DateWords.When(wait.Start)} to {DateWords.When(wait.End)}, after {wait.After.Name}")}",
                $"LOCATION:{ContentLine.Text(shop.Name)}",
                "TRANSP:TRANSPARENT",
            ],
            Alarm = ["BEGIN:VALARM", "ACTION:DISPLAY", "TRIGGER:PT0S", $"DESCRIPTION:{ContentLine.Text(summary)}", "END:VALARM"],
        };
    }

    private IEnumerable<CalendarEvent> OfDates(CalendarOrder order)
    {
        if (order.Promise is { } promise)
        {
            yield return OfDate(order, "promise", promise, order.IsPromised ? "promised" : "could be promised (four courses in five keep it)");
        }

        if (order.Due is { } due)
        {
            yield return OfDate(order, "due", due, "due");
        }
    }

    private CalendarEvent OfDate(CalendarOrder order, string kind, LocalDate date, string words) => new()
    {
        Uid = EventUid.OfDate(shop, order.Job, kind),
        Lines =
        [
            CalendarTime.Line("DTSTART", date),
            CalendarTime.Line("DTEND", date.PlusDays(1)),
            $"SUMMARY:{ContentLine.Text($"{order.Title}: {words}")}",
            "TRANSP:TRANSPARENT",
        ],
    };

    private CalendarOrder OrderOf(string name) => orders.First(order => string.Equals(order.Name, name, StringComparison.Ordinal));

    /// <summary>Beginning and end; where one of them has to be in universal time, both are.</summary>
    private static string[] Times(ZonedDateTime start, ZonedDateTime end)
    {
        string[] lines = [CalendarTime.Line("DTSTART", start), CalendarTime.Line("DTEND", end)];
        return lines.All(line => CalendarTime.ZoneOf(line) is not null)
            ? lines
            : [$"DTSTART:{CalendarTime.Utc(start.ToInstant())}", $"DTEND:{CalendarTime.Utc(end.ToInstant())}"];
    }

    private static ZonedDateTime ByDay(ZonedDateTime time)
    {
        var date = time.TimeOfDay >= Night ? time.Date.PlusDays(1) : time.Date;
        return time.TimeOfDay >= Night || time.TimeOfDay < Morning ? (date + Morning).InZoneLeniently(time.Zone) : time;
    }
}
