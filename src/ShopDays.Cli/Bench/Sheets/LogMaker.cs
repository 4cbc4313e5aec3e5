using System.Globalization;
using NodaTime;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Bench.Pages;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>Puts together what is logged, an entry of it, and a sheet to be entered.</summary>
/// <param name="shop">The shop, worked out.</param>
/// <param name="kept">The log.</param>
/// <param name="now">The moment.</param>
internal sealed class LogMaker(ShopAtHand shop, LogNow kept, Instant now)
{
    private const int ToAPage = 50;

    private string Today => LogWords.Date.Format(now.InZone(shop.Shop.Zone).Date);

    /// <summary>A page of the log.</summary>
    /// <param name="page">Which, from 1 for the newest; one beyond the last is the last.</param>
    /// <param name="count">How many entries there are.</param>
    public LogListing Page(int page, int count)
    {
        var last = Math.Max(1, (count + ToAPage - 1) / ToAPage);
        var at = Math.Clamp(page, 1, last);
        return new()
        {
            Entries = [.. kept.Look(log => log?.Newest(ToAPage, (at - 1) * ToAPage) ?? []).Select(EntryLinks.Of)],
            Count = count == 0 ? "Nothing is logged yet" : LogPhrases.Count(count),
            Newer = at > 1 ? new(At(at - 1), "Newer") : null,
            Older = at < last ? new(At(at + 1), "Older") : null,
            Sheets = [.. shop.Jobs.Select(job => new Link($"/sheet?job={Uri.EscapeDataString(job.Name)}", job.Title))],
        };
    }

    /// <summary>An entry; null where there never was one of that number.</summary>
    public EntrySheet? Entry(EntryId number)
    {
        var (found, trace) = kept.Look(log => (log?.Find(number), log?.TraceOf(number) ?? []));
        if ((found ?? (trace is [.., var last] ? last.Before : null)) is not { } entry)
        {
            return null;
        }

        return new()
        {
            Number = number.Number,
            Whole = LogPhrases.Of(entry),
            Took = WorkTimeText.Write(entry.Took),
            Date = LogWords.Date.Format(entry.On.Date),
            Today = Today,
            Who = entry.Worker,
            IsFinished = entry.Finished,
            IsOfAJob = entry.Job is not null,
            Setback = LogWords.WordOf(LogWords.Setbacks, entry.Setback),
            Note = entry.Note,
            Stopped = entry.Stopped,
            Odd = shop.Odd.FirstOrDefault(one => one.Judged.Work.Entries.Contains(number)) is { } odd ? $"{char.ToUpperInvariant(odd.Told[0])}{odd.Told[1..]}. Nothing is learned from it until you say what it is; where it was a slip, put the time right below." : "",
            Trace = [.. trace.Select(line => $"{LogWords.WordOf(LogWords.Traces, line.What)} {DateWords.Of(line.At.InZone(shop.Shop.Zone))}{(line.Why.Length == 0 ? "" : $" ({LogPhrases.Plain(line.Why)})")}; before: {LogPhrases.Of(line.Before)}")],
            IsDeleted = found is null,
        };
    }

    /// <summary>A job's tasks: those that are left by the dates for which they are planned, and then the others.</summary>
    public PencilSheet Pencil(JobAtHand job)
    {
        List<(LocalDate Date, string Task)> planned =
        [
            .. (shop.Ahead?.Plan.Sessions ?? [])
                .SelectMany(session => session.Work, (session, work) => (session.Session.Date, Work: work))
                .Where(one => one.Work.Order == job.Title)
                .Select(one => (one.Date, one.Work.Task.Name))
                .DistinctBy(one => one.Name),
        ];
        var names = planned.Select(one => one.Task).ToHashSet(StringComparer.Ordinal);
        return new(
            job.Name,
            job.Title,
            Today,
            [.. planned.GroupBy(one => one.Date).OrderBy(day => day.Key).Select(day => new PencilDay(DateWords.Long(day.Key), [.. day.Select(one => TaskOf(job, one.Task))]))],
            [.. job.Graph.Tasks.Where(task => !names.Contains(task.Name)).Select(task => TaskOf(job, task.Name))]);
    }

    private static PencilTask TaskOf(JobAtHand job, string task) =>
        new(job.Marks.Of(task), task, job.Ranges.TryGetValue(task, out var range) ? WorkTimeText.Write(range.P50) : "");

    private static string At(int page) => string.Create(CultureInfo.InvariantCulture, $"/log?page={page}");
}
