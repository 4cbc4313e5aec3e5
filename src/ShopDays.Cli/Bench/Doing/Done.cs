using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using NodaTime;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Commands.Logging;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Measures;

namespace ShopDays.Cli.Bench.Doing;

/// <summary>
/// What is done by tapping: begin, lay aside, end, forget. What is answered is on the disk. A form that comes twice, by a
/// double tap or a line that broke, does its work once.
/// </summary>
internal sealed class Done(ShopFolder folder, ShopKeeper keeper, IClock clock)
{
    /// <summary>The name of the limit on how fast changes may come.</summary>
    public const string Pace = "changes";

    /// <summary>The name of who looks at the pages, as the browser keeps it.</summary>
    public const string WhoName = "bench-who";

    /// <summary>Maps them.</summary>
    public static void Map(WebApplication app)
    {
        var changes = app.MapGroup("").RequireRateLimiting(Pace);
        changes.MapPost("/start", (HttpContext context, Done done) => done.Start(context));
        changes.MapPost("/done", (HttpContext context, Done done) => done.End(context));
        changes.MapPost("/drop", (HttpContext context, Done done) => done.Drop(context));
        changes.MapPost("/who", (HttpContext context, Done done) => done.Choose(context));
    }

    private async Task<IResult> Start(HttpContext context)
    {
        var (shop, fields, who, job, task) = await Read(context);
        if (shop is null || fields.Complaint is not null)
        {
            return Answered.Refused(fields, fields.Complaint ?? Unknown);
        }

        var now = clock.GetCurrentInstant();
        using var log = ShopLog.Open(folder);
        var laidAside = log.Begun.Find(who, job, task);
        if (laidAside is null && shop.Find(job)?.Find(task) is null)
        {
            return Answered.Refused(fields, $"No task of a job in hand is called {QuotedText.Of(task)} now. Load the day's work again.");
        }

        var meant = laidAside ?? new BegunWork { Worker = who, Job = job, Task = task, Work = JobTasks.Loggable(shop.Find(job)!.Find(task)!).Work, Began = now };
        var (work, isBegun) = log.Begun.Start(meant with { Began = now });
        return isBegun || (work.Job == job && work.Task == task)
            ? Answered.Done(context, $"{(laidAside is null ? "Begun" : "Going on")} at {DateWords.At(now.InZone(shop.Shop.Zone))}: {LogPhrases.Plain(task)}.", "/")
            : Answered.Refused(fields, $"{LogPhrases.Plain(who)} is at '{LogPhrases.Plain(work.Task)}' since {DateWords.At(work.Began.InZone(shop.Shop.Zone))}. Pause or end that first.");
    }

    private async Task<IResult> End(HttpContext context)
    {
        var (shop, fields, who, job, task) = await Read(context);
        var how = fields.Choice("how", "done", "half", "pause");
        var end = new TaskEnd { Finished = how == "done", Took = fields.Took(), Setback = fields.Setback(), Note = fields.Note(), Stopped = fields.Stopped() };
        if (shop is null || fields.Complaint is not null)
        {
            return Answered.Refused(fields, fields.Complaint ?? Unknown);
        }

        var now = clock.GetCurrentInstant();
        using var log = ShopLog.Open(folder);
        var key = fields.Once();
        if (log.Begun.Find(who, job, task) is not { } work)
        {
            return log.HasSeen(key)
                ? Answered.Done(context, "It is logged already.", "/")
                : Answered.Refused(fields, $"'{LogPhrases.Plain(task)}' is not begun any more: it was ended or forgotten elsewhere in the meantime.");
        }

        if (how == "pause")
        {
            if (end.Took is not null || end.Note.Length > 0 || end.Setback != Logbook.Setback.None)
            {
                return Answered.Refused(fields, "A pause keeps where you stopped and nothing else. Leave time, note and setback empty until the task is done or half done, or say that it is.");
            }

            // One that is laid aside already stays so; what else the worker is at by now is not meant.
            if (work.PausedAt is null)
            {
                log.Begun.Pause(who, now, end.Stopped);
            }

            return Answered.Done(context, $"Paused at {DateWords.At(now.InZone(shop.Shop.Zone))}: {LogPhrases.Plain(task)}.", "/");
        }

        if (log.HasSeen(key))
        {
            return Answered.Refused(fields, $"This page was sent before, and '{LogPhrases.Plain(task)}' was begun anew since. Load the day's work again, and end it there.");
        }

        if (end.Took is null && WhyNotBelieved(shop, work, now) is { } why)
        {
            return Answered.Refused(fields, why);
        }

        var entry = end.EntryOf(work, now, shop.Shop.Zone);
        return log.Begun.End(work, entry, now, key) is { } number
            ? Answered.Done(context, $"Logged {LogPhrases.Of(entry with { Id = number })}.", "/")
            : Answered.Done(context, "It is logged already.", "/");
    }

    private async Task<IResult> Drop(HttpContext context)
    {
        var (shop, fields, who, job, task) = await Read(context);
        if (shop is null || fields.Complaint is not null)
        {
            return Answered.Refused(fields, fields.Complaint ?? Unknown);
        }

        using var log = ShopLog.Open(folder);
        if (log.Begun.Find(who, job, task) is { } work)
        {
            log.Begun.End(work, null, clock.GetCurrentInstant());
        }

        return Answered.Done(context, $"Forgotten, and nothing logged: {LogPhrases.Plain(task)}.", "/");
    }

    private async Task<IResult> Choose(HttpContext context)
    {
        var fields = new Fields(await context.Request.ReadFormAsync(context.RequestAborted));
        var who = fields.Name("who");
        if (keeper.Now().Shop?.Shop.Shop.Workers.Any(worker => worker.Name == who) != true)
        {
            return Answered.Refused(fields, $"Nobody in the shop is called {QuotedText.Of(who)}.");
        }

        context.Response.Cookies.Append(WhoName, who, new() { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", MaxAge = TimeSpan.FromDays(400), IsEssential = true });
        return Answered.Done(context, $"The pages are {LogPhrases.Plain(who)}'s now.", PageBefore(context) ?? fields.Name("back"));
    }

    /// <summary>The page that a form was sent from, with what was asked of it, where the browser says so; null where it does not, or where it is none of this program's.</summary>
    private static string? PageBefore(HttpContext context) =>
        Uri.TryCreate(context.Request.Headers.Referer.ToString(), UriKind.Absolute, out var page) && $"{page.Scheme}://{page.Authority}".Equals($"{context.Request.Scheme}://{context.Request.Host}", StringComparison.OrdinalIgnoreCase)
            ? page.PathAndQuery
            : null;

    /// <summary>A stretch that ran on for longer than anybody works, or that was over in a moment, is asked about and not counted.</summary>
    private static string? WhyNotBelieved(ShopAtHand shop, BegunWork work, Instant now)
    {
        var time = work.TookBy(now);
        return Forgotten.Is(shop.Shop, work, now) || time > TaskEnd.LongestStretch
            ? $"'{LogPhrases.Plain(work.Task)}' was begun {DateWords.Of(work.Began.InZone(shop.Shop.Zone))}, and that would be {WorkTimeText.Write(time)}. Say how long it took, or that it was begun by mistake."
            : time < TaskEnd.ShortestStretch ? $"'{LogPhrases.Plain(work.Task)}' was begun just now, and no time has gone by. Say how long it took, or wait half a minute." : null;
    }

    private const string Unknown = "The shop's files have mistakes; the day's page says which. Nothing can be logged from here until they are put right.";

    private async Task<(ShopAtHand? Shop, Fields Fields, string Who, string? Job, string Task)> Read(HttpContext context)
    {
        var fields = new Fields(await context.Request.ReadFormAsync(context.RequestAborted));
        var (shop, _) = await keeper.Within(TimeSpan.Zero, context.RequestAborted);
        var who = fields.Name("who");
        var known = shop?.Shop.Shop.Workers.Select(worker => worker.Name).ToList() ?? [];
        if (shop is not null && who.Length > 0 && !known.Contains(who))
        {
            fields.Complain($"Nobody in the shop is called {QuotedText.Of(who)}.");
        }

        return (shop, fields, who.Length > 0 ? who : known.FirstOrDefault() ?? "", fields.Name("job") is { Length: > 0 } job ? job : null, fields.Name("task"));
    }
}
