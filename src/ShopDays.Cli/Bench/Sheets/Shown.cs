using System.Globalization;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using NodaTime;
using ShopDays.Cli.Bench.Doing;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Bench.Pages;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>The pages: what was worked out and what the log says this moment, made into a page on each look.</summary>
internal sealed class Shown(ShopKeeper keeper, LogNow log, IClock clock)
{
    /// <summary>How long the page after a change waits for what follows from it.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(3);

    private readonly RatesKept rates = new(keeper);
    private readonly DrawingsKept drawings = new();
    private readonly SheetsKept sheets = new();

    /// <summary>Maps them.</summary>
    public static void Map(WebApplication app)
    {
        app.MapGet("/", (HttpContext context, Shown shown) => shown.Page(context, shown.Today));
        app.MapGet("/job", (HttpContext context, Shown shown, string? job) => shown.Page(context, (shop, head) => shown.OfJob(shop, head, job)));
        app.MapGet("/piece", (HttpContext context, Shown shown, string? job, string? part, string? board) => shown.Page(context, (shop, head) => shown.OfPiece(shop, head, job, part, board)));
        app.MapGet("/waits", (HttpContext context, Shown shown) => shown.Page(context, shown.Waits));
        app.MapGet("/rates", (HttpContext context, Shown shown) => shown.Page(context, (shop, head) => shown.Rates(context, shop, head)));
        app.MapGet("/log", (HttpContext context, Shown shown, string? page) => shown.Page(context, (shop, head) => new RazorComponentResult<LogPage>(new { Head = head, Log = shown.Listing(shop, PageOf(page)) })));
        app.MapGet("/log/{number:long:min(1)}", (HttpContext context, Shown shown, long number) => shown.Page(context, (shop, head) => shown.Entry(shop, number) is { } entry ? (IResult)new RazorComponentResult<EntryPage>(new { Head = head, Entry = entry }) : None()));
        app.MapGet("/sheet", (HttpContext context, Shown shown, string? job) => shown.Page(context, (shop, head) => shop.Find(job) is { } one ? (IResult)new RazorComponentResult<PencilPage>(new { Head = head, Pencil = shown.MakerOf(shop).Pencil(one) }) : None()));
    }

    /// <summary>The page that is asked for; the first where that is none.</summary>
    private static int PageOf(string? typed) => int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out var page) ? page : 1;

    private static RazorComponentResult<Refusal> None() => new RazorComponentResult<Refusal>(new { Why = "There is no such job, piece or entry now.", IsMissing = true }) { StatusCode = StatusCodes.Status404NotFound };

    private IResult OfJob(ShopAtHand shop, PageHead head, string? name)
    {
        var job = name is not null ? shop.Find(name) : shop.Jobs is [var first, ..] ? first : null;
        return job is null && name is not null ? None() : (IResult)new RazorComponentResult<JobPage>(new { Head = head, Job = job is null ? null : Kept(shop, $"job {job.Name}", () => new JobMaker(shop).Sheet(job)) });
    }

    private IResult OfPiece(ShopAtHand shop, PageHead head, string? name, string? part, string? board)
    {
        if (shop.Find(name) is not { } job)
        {
            return None();
        }

        var maker = new PieceMaker(NowIn(shop), job, drawings);
        var sheet = part is not null ? Kept(shop, $"part\n{part}\n{name}", () => maker.OfPart(part))
            : board is not null ? Kept(shop, $"board\n{board}\n{name}", () => maker.OfBoard(board))
            : null;
        return sheet is not null
            ? new RazorComponentResult<PiecePage>(new { Head = head, Piece = sheet })
            : None();
    }

    private RazorComponentResult<WaitsPage> Waits(ShopAtHand shop, PageHead head) => new(new { Head = head, Waits = new WaitsMaker(shop, clock.GetCurrentInstant()).Sheet() });

    private async Task<IResult> Rates(HttpContext context, ShopAtHand shop, PageHead head)
    {
        var (sheet, at) = await rates.Of(shop, context.RequestAborted);
        return new RazorComponentResult<RatesPage>(new { Head = at == shop.At ? head : head with { WorkedOutAt = DateWords.At(at.InZone(shop.Shop.Zone)) }, Rates = sheet });
    }

    private LogListing Listing(ShopAtHand shop, int page) => Kept(shop, FormattableString.Invariant($"log {page}"), () => MakerOf(shop).Page(page, NowIn(shop).Count))!;

    private EntrySheet? Entry(ShopAtHand shop, long number) => Kept(shop, FormattableString.Invariant($"entry {number}"), () => MakerOf(shop).Entry(new(number)));

    private T? Kept<T>(ShopAtHand shop, string what, Func<T?> make)
        where T : class => sheets.Of(shop, keeper.Worked, NowIn(shop), what, make);

    private LogMaker MakerOf(ShopAtHand shop) => new(shop, log, clock.GetCurrentInstant());

    private LogReading NowIn(ShopAtHand shop) => log.Read(clock.GetCurrentInstant().InZone(shop.Shop.Zone).Date);

    private Task<IResult> Page(HttpContext context, Func<ShopAtHand, PageHead, IResult> show) => Page(context, (shop, head) => Task.FromResult(show(shop, head)));

    private async Task<IResult> Page(HttpContext context, Func<ShopAtHand, PageHead, Task<IResult>> show)
    {
        var said = Said(context);
        var (shop, isFresh) = await keeper.Within(said is null ? TimeSpan.Zero : Patience, context.RequestAborted);
        if (shop is null)
        {
            return new RazorComponentResult<Unread>(new { Why = Why() }) { StatusCode = StatusCodes.Status503ServiceUnavailable };
        }

        var workers = shop.Shop.Shop.Workers.Select(worker => worker.Name).ToList();
        return await show(shop, new(shop.Shop.Shop.Name, Who(context, workers), workers, said, Notes(shop))
        {
            WorkedOutAt = isFresh ? null : DateWords.At(shop.At.InZone(shop.Shop.Zone)),
        });
    }

    private RazorComponentResult<Today> Today(ShopAtHand shop, PageHead head)
    {
        var now = clock.GetCurrentInstant();
        return new(new { Head = head, Day = new TodayMaker(shop, NowIn(shop), head.Who, now).Sheet() });
    }

    private IReadOnlyList<string> Notes(ShopAtHand shop) =>
    [
        .. Why(),
        .. shop.Unplanned.Select(job => $"{job.Name} cannot be planned as it is: {string.Join("; ", job.Why)}"),
        .. shop.Against.Count == 0 ? [] : (string[])[$"What is left cannot be planned: {string.Join("; ", shop.Against)}"],
    ];

    private IReadOnlyList<string> Why() =>
    [
        .. keeper.Findings.Select(finding => $"{finding.Place}: {finding.Message}"),
        .. keeper.Trouble is { } trouble ? (string[])[trouble] : [],
    ];

    private static string Who(HttpContext context, List<string> workers)
    {
        var kept = context.Request.Cookies[Done.WhoName] ?? "";
        return workers.Contains(kept) ? kept : workers[0];
    }

    private static string? Said(HttpContext context)
    {
        if (context.Request.Cookies[Answered.SaidName] is not { Length: > 0 and < 4000 } kept)
        {
            return null;
        }

        context.Response.Cookies.Delete(Answered.SaidName);
        return kept;
    }
}
