using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using NodaTime;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Commands.Logging;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Bench.Doing;

/// <summary>What is written down afterwards, and put right: nothing is lost by it, since what an entry was before stays in its trace.</summary>
internal sealed class Corrections(ShopFolder folder, ShopKeeper keeper, IClock clock)
{
    /// <summary>Maps them.</summary>
    public static void Map(WebApplication app)
    {
        var changes = app.MapGroup("").RequireRateLimiting(Done.Pace);
        changes.MapPost("/sheet", (HttpContext context, Corrections one) => one.Enter(context));
        changes.MapPost("/log/{number:long:min(1)}/fix", (HttpContext context, Corrections one, long number) => one.Fix(context, new(number)));
        changes.MapPost("/log/{number:long:min(1)}/delete", (HttpContext context, Corrections one, long number) => one.Change(context, new(number), (log, id, now, why) => log.Delete(id, now, why), "Deleted"));
        changes.MapPost("/log/{number:long:min(1)}/restore", (HttpContext context, Corrections one, long number) => one.Change(context, new(number), (log, id, now, why) => log.Restore(id, now, why), "Put back"));
        changes.MapPost("/log/{number:long:min(1)}/keep", (HttpContext context, Corrections one, long number) => one.Judge(context, new(number), Standing.Kept));
        changes.MapPost("/log/{number:long:min(1)}/unusual", (HttpContext context, Corrections one, long number) => one.Judge(context, new(number), Standing.Unusual));
    }

    private async Task<IResult> Enter(HttpContext context)
    {
        var form = await context.Request.ReadFormAsync(context.RequestAborted);
        var fields = new Fields(form);
        var (shop, _) = await keeper.Within(TimeSpan.Zero, context.RequestAborted);
        if (shop?.Find(fields.Name("job")) is not { } job)
        {
            return Answered.Refused(fields, fields.Complaint ?? "This job is not in hand, or cannot be planned, any more.");
        }

        var today = shop.Shop.Today(clock);
        var on = fields.On(today) ?? today;
        var who = fields.Name("who");
        if (shop.Shop.Shop.Workers.All(worker => worker.Name != who))
        {
            fields.Complain($"Nobody in the shop is called {QuotedText.Of(who)}.");
        }

        var entries = new List<LogEntry>();
        foreach (var task in job.Graph.Tasks)
        {
            var mark = job.Marks.Of(task.Name);
            if (fields.Took($"took-{mark}", $"{mark} {LogPhrases.Plain(task.Name)}") is not { } took)
            {
                continue;
            }

            var loggable = JobTasks.Loggable(task);
            var finished = form[$"half-{mark}"].Count == 0;
            entries.Add(new() { Job = job.Name, Task = task.Name, Work = loggable.Done(finished, null), Took = took, On = new(on), Worker = who, Finished = finished });
        }

        if (fields.Complaint is { } complaint)
        {
            return Answered.Refused(fields, complaint);
        }

        if (entries.Count == 0)
        {
            return Answered.Refused(fields, "No time stands behind any task: there is nothing to log.");
        }

        using var log = ShopLog.Open(folder);
        var added = log.AddSheet(fields.Once(), entries, clock.GetCurrentInstant());
        return Answered.Done(context, added ? $"Logged {LogPhrases.Count(entries.Count)} of {DateWords.Of(on)}." : "They are logged already.", "/log");
    }

    private async Task<IResult> Fix(HttpContext context, EntryId number)
    {
        var fields = new Fields(await context.Request.ReadFormAsync(context.RequestAborted));
        var (shop, _) = await keeper.Within(TimeSpan.Zero, context.RequestAborted);
        using var log = ShopLog.OpenToRead(folder);
        if (shop is null || log?.Find(number) is not { } entry)
        {
            return Answered.Refused(fields, $"There is no entry {number}.");
        }

        var took = fields.Took();
        var on = fields.On(shop.Shop.Today(clock));
        var worker = fields.Name("worker");
        var isFinished = entry.Job is null ? entry.Finished : fields.Choice("finished", entry.Finished ? "yes" : "no", "yes", "no") == "yes";
        var (setback, note, stopped, why) = (fields.Setback(), fields.Note(), fields.Stopped(), fields.Why());
        if (worker.Length > 0 && worker != entry.Worker && shop.Shop.Shop.Workers.All(one => one.Name != worker))
        {
            fields.Complain($"Nobody in the shop is called {QuotedText.Of(worker)}.");
        }

        if (fields.Complaint is { } complaint)
        {
            return Answered.Refused(fields, complaint);
        }

        // Half of a task says nothing of how much of it was done, unless that was said.
        var work = isFinished == entry.Finished ? entry.Work : shop.Find(entry.Job)?.Find(entry.Task) is { } task ? JobTasks.Loggable(task).Done(isFinished, null) : entry.Work;
        var change = log.Change(
            number,
            was => was with
            {
                // Typed back as it is shown, to the minute, a time stays what it was to the second.
                Took = took is { } time && WorkTimeText.Write(time) != WorkTimeText.Write(was.Took) ? time : was.Took,
                On = on is { } date && date != was.On.Date ? new(date) : was.On,
                Worker = worker.Length > 0 ? worker : was.Worker,
                Work = work,
                Finished = isFinished,
                Setback = setback,
                Note = note,
                Stopped = stopped ?? was.Stopped,
            },
            clock.GetCurrentInstant(),
            why);
        return change is { } made
            ? Answered.Done(context, LogPhrases.Changes(made.Before, made.After) is { Count: > 0 } changes ? $"Put right: {string.Join("; ", changes)}." : "Nothing of it was changed.", At(number))
            : Answered.Refused(fields, $"There is no entry {number} any more.");
    }

    private async Task<IResult> Change(HttpContext context, EntryId number, Func<ShopLog, EntryId, Instant, string, LogEntry?> change, string said)
    {
        var fields = new Fields(await context.Request.ReadFormAsync(context.RequestAborted));
        var why = fields.Why();
        if (fields.Complaint is { } complaint)
        {
            return Answered.Refused(fields, complaint);
        }

        using var log = ShopLog.OpenToRead(folder);
        return log is not null && change(log, number, clock.GetCurrentInstant(), why) is { } entry
            ? Answered.Done(context, $"{said}: {LogPhrases.Of(entry)}.", At(number))
            : Answered.Done(context, $"There is nothing to be done about entry {number.ToString()} any more.", "/log");
    }

    private async Task<IResult> Judge(HttpContext context, EntryId number, Standing standing)
    {
        var fields = new Fields(await context.Request.ReadFormAsync(context.RequestAborted));
        using var log = ShopLog.OpenToRead(folder);
        return log?.Change(number, entry => entry with { Standing = standing }, clock.GetCurrentInstant(), fields.Why()) is { } change
            ? Answered.Done(context, $"{LogPhrases.Of(change.After)}: {LogPhrases.Of(standing)}.", At(number))
            : Answered.Refused(fields, $"There is no entry {number}.");
    }

    private static string At(EntryId number) => string.Create(CultureInfo.InvariantCulture, $"/log/{number.Number}");
}
