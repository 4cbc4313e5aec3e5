using NodaTime;
using ShopDays.Cli.Files;

namespace ShopDays.Cli.Bench.Now;

/// <summary>
/// Keeps the shop worked out while pages are looked at: anew in the background whenever its log or its files change. A page
/// is never kept waiting for that, unless it asks to be: what was worked out last is there, with the moment that it is of.
/// One core at most works it out, so that pages have the others.
/// </summary>
internal sealed class ShopKeeper(ShopFolder folder, IClock clock, LogNow log, ShopReckoning reckoning)
{
    private static readonly Duration FilesAreLookedAtEvery = Duration.FromSeconds(1);
    private static readonly Duration PlansGetOldIn = Duration.FromMinutes(10);

    private readonly Lock gate = new();
    private readonly TaskScheduler oneThread = new ConcurrentExclusiveSchedulerPair().ExclusiveScheduler;
    private ShopAtHand? last;
    private StateMark? tried;
    private Task? underWay;
    private (string Stamp, Instant At) files = ("", Instant.MinValue);

    /// <summary>A number that is another one whenever something new was worked out.</summary>
    public long Worked { get; private set; }

    /// <summary>Mistakes of the shop's own files, because of which nothing new was worked out; none where there are none.</summary>
    public IReadOnlyList<Finding> Findings { get; private set; } = [];

    /// <summary>What kept the shop from being worked out; null for nothing.</summary>
    public string? Trouble { get; private set; }

    /// <summary>What was worked out last, if it is of this very moment; otherwise it is begun to be worked out anew.</summary>
    /// <returns>The shop, and whether it is up to date; null where it was never worked out yet.</returns>
    public (ShopAtHand? Shop, bool IsFresh) Now()
    {
        var mark = Mark();
        lock (gate)
        {
            if (last?.From == mark)
            {
                // A file that was put back as it had been has no mistake any more, though nothing is worked out for that.
                (tried, Findings, Trouble) = tried is null ? (tried, Findings, Trouble) : (null, [], null);
                return (last, true);
            }

            // What could not be worked out will not be a moment later either, unless something has changed.
            underWay ??= mark == tried ? null : Queue(() => WorkOut(mark));
            return (last, false);
        }
    }

    /// <summary>The shop as it is now, waited for up to a while; always waited for where it was never worked out yet.</summary>
    /// <param name="patience">How long.</param>
    /// <param name="given">Ends the waiting.</param>
    /// <returns>The shop, and whether it is up to date; null where it cannot be worked out.</returns>
    public async Task<(ShopAtHand? Shop, bool IsFresh)> Within(TimeSpan patience, CancellationToken given)
    {
        using var limit = CancellationTokenSource.CreateLinkedTokenSource(given);
        limit.CancelAfter(patience);
        while (true)
        {
            var (shop, isFresh) = Now();
            Task? awaited;
            lock (gate)
            {
                awaited = underWay;
            }

            if (isFresh || awaited is null || (shop is not null && limit.IsCancellationRequested))
            {
                return (shop, isFresh);
            }

            try
            {
                await awaited.WaitAsync(shop is null ? given : limit.Token).ConfigureAwait(false);
            }
            catch (OperationCanceledException) when (!given.IsCancellationRequested)
            {
                return Now();
            }
        }
    }

    /// <summary>Works something out behind what the shop is worked out for.</summary>
    public async Task<T> Behind<T>(Func<T> work)
    {
        var made = default(T);
        await Queue(() =>
        {
            made = work();
            Worked++;
        }).ConfigureAwait(false);
        return made!;
    }

    private Task Queue(Action work) => Task.Factory.StartNew(work, CancellationToken.None, TaskCreationOptions.DenyChildAttach, oneThread);

    private void WorkOut(StateMark mark)
    {
        try
        {
            var (shop, findings) = reckoning.Of(mark);
            (last, Findings, Trouble) = (shop ?? last, findings, null);
            tried = shop is null ? mark : null;
            Worked++;
            foreach (var job in shop?.Jobs ?? [])
            {
                Queue(() => WorkOutProgress(mark, job));
            }
        }
        catch (FileTroubleException trouble)
        {
            (Trouble, tried) = (trouble.Message, mark);
        }
        finally
        {
            lock (gate)
            {
                underWay = null;
            }
        }
    }

    // What moved a finish takes several plans: it comes after what is to be done next, and not while that is out of date.
    private void WorkOutProgress(StateMark mark, JobAtHand job)
    {
        try
        {
            if (Mark() == mark)
            {
                job.WorkOutProgress();
                Worked++;
            }
        }
        catch (FileTroubleException trouble)
        {
            Trouble = trouble.Message;
        }
    }

    private StateMark Mark()
    {
        var now = clock.GetCurrentInstant();
        lock (gate)
        {
            // A clock that was put back must not keep them from being looked at until it has caught up.
            if (now < files.At || now - files.At > FilesAreLookedAtEvery)
            {
                files = (FileStamps.Of(folder), now);
            }

            return new(log.Number(), files.Stamp, (long)((now - Instant.FromUnixTimeTicks(0)) / PlansGetOldIn));
        }
    }
}
