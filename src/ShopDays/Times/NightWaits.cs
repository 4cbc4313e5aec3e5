using NodaTime;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>
/// A job's waits in the nights of its shop, as far as they can be told before there is a plan: as if each began in the month
/// in which the job does, or, where that is too cold for it, in the first month that is not.
/// </summary>
/// <param name="Waits">All of them added up as if none overlapped.</param>
/// <param name="Month">The month in which the job begins, 1 to 12.</param>
/// <param name="AreLater">Whether any of them has to begin in a later month.</param>
public sealed record NightWaits(Duration Waits, int Month, bool AreLater)
{
    private const int MonthsOfAYear = 12;

    /// <summary>Adds them up.</summary>
    /// <param name="graph">The tasks.</param>
    /// <param name="start">When the job begins.</param>
    /// <param name="sum">Adds up the waits of the graph, each as long as it is told.</param>
    /// <returns>Null where nothing sets by the temperature of nights.</returns>
    internal static NightWaits? Of(TaskGraph graph, ZonedDateTime start, Func<Func<Wait, Duration>, Duration> sum)
    {
        List<Setting> settings = [.. graph.Precedences.Select(one => one.Wait?.Sets).Concat(graph.ClosingWaits.Select(one => one.Wait.Sets)).OfType<Setting>().Distinct()];
        return settings.Count == 0
            ? null
            : new(sum(wait => wait.Sets is { } setting ? LengthFrom(wait, BeginOf(setting, start)) : wait.Duration), start.Month, settings.Exists(setting => BeginOf(setting, start) != start));
    }

    private static Duration LengthFrom(Wait wait, ZonedDateTime from) => wait.EndFrom(from) - from;

    /// <summary>The start, or the first day of the first month after it that is not too cold; the start too where every month is.</summary>
    private static ZonedDateTime BeginOf(Setting setting, ZonedDateTime start) => Enumerable.Range(1, MonthsOfAYear - 1)
        .Select(month => start.Zone.AtStartOfDay(start.Date.With(DateAdjusters.StartOfMonth).PlusMonths(month)))
        .Prepend(start)
        .Where(begin => !setting.IsBarredIn(begin.Month))
        .DefaultIfEmpty(start)
        .First();
}
