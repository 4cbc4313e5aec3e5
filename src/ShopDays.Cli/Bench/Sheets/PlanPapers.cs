using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using NodaTime;
using ShopDays.Cli.Bench.Doors;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Paper;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>The plan of a job on paper, as <c>shopdays plan JOB --pdf</c> writes it. One is set at a time, and kept until something changes.</summary>
internal sealed class PlanPapers(ShopKeeper keeper, IClock clock) : IDisposable
{
    private readonly SemaphoreSlim turn = new(1);
    private (string Job, StateMark From, byte[] Book)? last;

    /// <summary>Maps it.</summary>
    public static void Map(WebApplication app) => app.MapGet("/job/plan.pdf", (HttpContext context, PlanPapers papers, string? job) => papers.Answer(context, job));

    /// <inheritdoc/>
    public void Dispose() => turn.Dispose();

    private async Task Answer(HttpContext context, string? name)
    {
        var (shop, _) = await keeper.Within(TimeSpan.FromSeconds(10), context.RequestAborted);
        if (shop?.Find(name) is not { } job)
        {
            await Door.Refuse(context, StatusCodes.Status404NotFound, "There is no such job in hand.");
            return;
        }

        byte[]? made;
        await turn.WaitAsync(context.RequestAborted);
        try
        {
            if (last is not { } known || known.Job != job.Name || known.From != shop.From)
            {
                last = await Task.Run(() => Set(job)) is { } book ? (job.Name, shop.From, book) : null;
            }

            // Taken within the turn: whoever comes next may be after another job.
            made = last?.Book;
        }
        finally
        {
            turn.Release();
        }

        if (made is null)
        {
            await Door.Refuse(context, StatusCodes.Status409Conflict, "It cannot be planned as it is; the day's page says why.");
            return;
        }

        context.Response.ContentType = "application/pdf";
        context.Response.Headers.ContentDisposition = $"inline; filename*=UTF-8''{Uri.EscapeDataString(job.Name)}.pdf";
        await context.Response.Body.WriteAsync(made, context.RequestAborted);
    }

    private byte[]? Set(JobAtHand job)
    {
        var now = clock.GetCurrentInstant();
        var workings = job.Workings.ForPaper();
        if (workings.Order is not OrderOfWork.Made made)
        {
            return null;
        }

        var work = new WorkToPlan(workings, made, WorkToPlan.RestOf(workings, made, now)) { Known = now };
        return work.Answer is PlanAnswer.Planned planned ? PlanBook.Set(work.Paper(work.Told(planned, now), now)) : null;
    }
}
