using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>How a job stands against its promise, with all that is told about it.</summary>
internal sealed record ToldProgress
{
    /// <summary>The shop and the job.</summary>
    public required ShopAndJob Read { get; init; }

    /// <summary>How it stands.</summary>
    public required JobProgress Progress { get; init; }

    /// <summary>The plan of what is left, with its forecast; null when none can be made.</summary>
    public required PlanAnswer.Planned? Ahead { get; init; }

    /// <summary>How far the finish moved since it was promised, and why; null when that cannot be said.</summary>
    public MovedFinish? Moved { get; init; }

    /// <summary>Where the maker stopped last; null where nothing is noted that still holds.</summary>
    public StoppedNote? Stopped { get; init; }

    /// <summary>The marks of its tasks.</summary>
    public required TaskMarks Marks { get; init; }

    /// <summary>Whether the promise is on record; otherwise it is what would have been promised.</summary>
    public required bool IsRecorded { get; init; }

    /// <summary>Promises on record since the first, in order.</summary>
    public required IReadOnlyList<Promise> Later { get; init; }

    /// <summary>What its times come from.</summary>
    public required TimesBehind Behind { get; init; }

    /// <summary>The moment.</summary>
    public required Instant Now { get; init; }

    /// <summary>Working time of all sessions from the job's start until now.</summary>
    public required WorkTime SessionsGone { get; init; }

    /// <summary>The zone of the shop's clock.</summary>
    public DateTimeZone Zone => Read.Shop.Place.Zone;

    /// <summary>What made the difference.</summary>
    public IReadOnlyList<DifferenceRow> Differences => field ??= DifferenceRow.Of(Progress, Marks);

    /// <summary>Why the finish moved, that first which moved it most.</summary>
    public IReadOnlyList<MovedRow> Why => field ??= Moved is null ? [] : MovedRow.Of(Moved, Progress, Marks, Zone);

    /// <summary>When all was done, waits at the end included; null while anything is left.</summary>
    public LocalDate? FinishedOn => Progress.IsDone
        ? Progress.Left.UnderWay.Waits.Where(wait => wait.EndsTheJob).Select(wait => wait.Until.InZone(Zone).Date)
            .Concat(Progress.Standing.Tasks.Select(one => one.Last!.Value.Date))
            .DefaultIfEmpty(Now.InZone(Zone).Date)
            .Max()
        : null;

    /// <summary>Whether nothing is left to forecast: all is done, and no wait goes on.</summary>
    public bool IsOver => FinishedOn <= Now.InZone(Zone).Date;

    /// <summary>The job at one glance.</summary>
    public string Glance => $"{Read.Job.Name}: {(Progress.IsDone ? Finished() : $"{Pace()}; {Promised} {DateOf(Progress.Promise.P80)}, {Outlook()}.")}";

    /// <summary>How far its tasks are ahead or behind, without the dates that follow from it; as <see cref="Glance"/> when it is finished.</summary>
    public string PaceNow => Progress.IsDone ? Glance : $"{Read.Job.Name}: {Pace()}.";

    /// <summary>What else should be known, each a sentence.</summary>
    public IReadOnlyList<string> Notes => [.. AwaitedWords.OfLate(Ahead?.Plan.Waits ?? []), .. OfThePromise(), .. OfTheLog()];

    /// <summary>A date by the shop's clock.</summary>
    public string DateOf(Instant? instant) => instant is { } known ? DateWords.Of(known.InZone(Zone).Date) : "not within the years looked at";

    private string Promised => IsRecorded ? "promised" : "would have been promised";

    private string Pace() => HourWords.WholeMinutes(Progress.Difference) switch
    {
        _ when !Progress.Standing.IsBegun => "nothing is logged yet",
        0 => "as promised to the minute",
        < 0 => $"ahead by {WorkTimeText.Write(Progress.Difference * -1)} at the bench",
        > 0 => $"behind by {WorkTimeText.Write(Progress.Difference)} at the bench",
    };

    private string Outlook() => Ahead is null ? "and the rest cannot be planned now" : $"now {DateOf(Ahead.Forecast.P80?.ToInstant())}{DaysApart()}";

    private string DaysApart() => (Progress.Promise.P80, Ahead?.Forecast.P80) is ({ } promised, { } now)
        ? Period.DaysBetween(promised.InZone(Zone).Date, now.Date) switch
        {
            0 => ", as promised",
            < 0 and var days => $", {CountWords.Of(-days, "day")} earlier",
            > 0 and var days => $", {CountWords.Of(days, "day")} later",
        }
        : "";

    private string Finished()
    {
        var range = Progress.Promise.HandsOn;
        var difference = HourWords.WholeMinutes(Progress.Difference);
        var than = difference == 0 ? "as promised" : $"{WorkTimeText.Write(WorkTime.FromMinutes(Math.Abs(difference)))} {(difference < 0 ? "less" : "more")} than its tasks were promised";
        return $"finished {DateWords.Of(FinishedOn!.Value)}, {Promised} {DateOf(Progress.Promise.P80)}. It took {HourWords.Of(Progress.Now)}, {than} (the range was {HourWords.Of(range.P10)} to {HourWords.Of(range.P90)}).";
    }

    private IEnumerable<string> OfThePromise()
    {
        if (!IsRecorded)
        {
            yield return $"No promise is on record: this is against what a plan from the job's start would have promised by what was known then.{(Progress.IsDone ? "" : $" Keep one with: shopdays plan {Read.LogName} --promise")}";
        }

        foreach (var later in Later)
        {
            yield return $"Promised again on {DateOf(later.Made)}: {DateOf(later.P80)}.";
        }
    }

    private IEnumerable<string> OfTheLog()
    {
        if (SessionsGone > WorkTime.Zero && !Progress.IsDone)
        {
            yield return $"The sessions since the start, {DateWords.Of(Read.Job.Start)}, had {HourWords.Of(SessionsGone)} to work in; {HourWords.Of(Progress.Spent)} is logged.";
        }

        if (PassedOverWords.Of(Progress.Left.PassedOver, Marks, Read.LogName) is { } passed)
        {
            yield return passed;
        }

        var strays = Progress.Standing.Strays;
        if (strays.Count > 0)
        {
            yield return $"Logged and not in the job as it is now: {CountWords.Names([.. strays.Select(stray => $"{stray.Task} ({HourWords.Of(stray.Spent)})")], 4)}. The time counts as spent.";
        }

        var unlogged = Progress.Changes.Where(one => one.Kind == ChangeKind.SawnUnlogged).ToList();
        if (unlogged.Count > 0)
        {
            yield return $"{CountWords.Of(unlogged.Count, "task")} of boards that are sawn {(unlogged.Count == 1 ? "has" : "have")} no time in the log and {(unlogged.Count == 1 ? "counts" : "count")} as promised, {HourWords.Of(JobProgress.Sum(unlogged, one => one.Spent))}.";
        }
    }
}
