using NodaTime;
using ShopDays.Cli.Bench.Now;
using ShopDays.Cli.Bench.Pages;
using ShopDays.Cli.Phrases;
using ShopDays.Measures;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>Puts into words what dries, sets and is waited for.</summary>
/// <param name="shop">The shop, worked out.</param>
/// <param name="now">The moment.</param>
internal sealed class WaitsMaker(ShopAtHand shop, Instant now)
{
    private const int MostFree = 8;
    private const int MostLater = 30;

    /// <summary>The sheet.</summary>
    public WaitsSheet Sheet() => new(
        [.. shop.Planned.SelectMany(Running).OrderBy(one => one.Until).Select(one => one.Card)],
        [.. shop.Planned.SelectMany(Held)],
        [.. Free().Distinct().Take(MostFree)],
        new(
            "Waits to come, as planned",
            [new("what", false), new("from"), new("until")],
            [
                .. (shop.Ahead?.Plan.Waits ?? [])
                    .Where(wait => wait.Start.ToInstant() > now)
                    .Take(MostLater)
                    .Select(wait => (string[])[$"{wait.Reason}{(wait.AfterWhat is { } after ? $", after {after}" : "")}{(shop.Planned.Count > 1 ? $" ({wait.Order})" : "")}", DateWords.When(wait.Start), DateWords.When(wait.End)]),
            ]));

    private IEnumerable<(Instant Until, WaitCard Card)> Running(JobAtHand job)
    {
        var left = job.Standing.Left;
        foreach (var wait in left.UnderWay.Waits.Where(wait => wait.Until > now))
        {
            var then = wait.EndsTheJob
                ? "Then the job is finished."
                : wait.Holds.Count == 0 ? "" : $"Then: {CountWords.Names([.. wait.Holds.Select(id => left.Graph.Tasks[id].Name)], 3)}.";
            yield return (wait.Until, Card($"{wait.Reason}, after {wait.AfterWhat}", job, wait.Start, wait.Until, then));
        }

        foreach (var wait in (shop.Ahead?.Plan.Waits ?? []).Where(wait => wait.Order == job.Title && wait.Awaited is not null && wait.Start.ToInstant() <= now))
        {
            var words = AwaitedWords.InPlan(wait);
            yield return (wait.End.ToInstant(), Card(wait.Reason, job, wait.Start.ToInstant(), wait.End.ToInstant(), char.ToUpperInvariant(words[0]) + words[1..] + "."));
        }
    }

    private WaitCard Card(string what, JobAtHand job, Instant start, Instant until, string then)
    {
        var (whole, left) = (until - start, until - now);
        return new(
            what,
            job.Title,
            $"until {DateWords.When(until.InZone(shop.Shop.Zone))}",
            left <= Duration.Zero ? "over" : $"{Length(left)} to go",
            whole <= Duration.Zero ? 1 : Math.Clamp(1 - (left / whole), 0, 1),
            then);
    }

    private IEnumerable<string> Held(JobAtHand job)
    {
        foreach (var held in job.Standing.Left.UnderWay.Held)
        {
            if (held.ClampsUntil is { } clamps && clamps > now)
            {
                yield return $"The clamps of '{held.By.Name}' stay on until {When(clamps)}.";
            }

            if (held.BenchUntil is { } bench && bench > now)
            {
                yield return $"The bench is taken by '{held.By.Name}' until {When(bench)}.";
            }

            if (held.WetUntil is { } wet && wet > now)
            {
                yield return $"No sawing, planing or sanding near it until {When(wet)}: '{held.By.Name}' is wet.";
            }

            if (held.FloorUntil is { } floor && floor > now)
            {
                yield return $"'{held.By.Name}' stands where it is until {When(floor)}.";
            }
        }
    }

    /// <summary>What is planned before the first of the waits is over: it does not depend on any.</summary>
    private IEnumerable<string> Free()
    {
        var ends = shop.Planned.SelectMany(job => job.Standing.Left.UnderWay.Waits).Select(wait => wait.Until).Where(until => until > now).ToList();
        return ends.Count == 0 || shop.Ahead is not { } ahead
            ? []
            : ahead.Plan.Sessions.SelectMany(session => session.Work).Where(work => work.Start.ToInstant() < ends.Max()).Select(work => $"{work.Task.Name} ({work.Order})");
    }

    private string When(Instant instant) => DateWords.When(instant.InZone(shop.Shop.Zone));

    private static string Length(Duration left) => left >= Duration.FromDays(2)
        ? CountWords.Of((int)Math.Round(left.TotalDays, MidpointRounding.AwayFromZero), "day")
        : WorkTimeText.Write(WorkTime.FromMinutes(left.TotalMinutes));
}
