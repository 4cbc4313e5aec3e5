using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Plans;

namespace ShopDays.Cli.Paper.Overview;

/// <summary>Waits that are drawn as one bar: they have one reason and run side by side.</summary>
/// <param name="Numbers">Their numbers in the list of waits, from 1: <c>4</c>, <c>4–9</c>, or <c>4+</c> where others begin between them.</param>
/// <param name="Start">When the first begins.</param>
/// <param name="End">When the last is over.</param>
/// <param name="Lane">Which lane it stands in, from 0.</param>
internal sealed record WaitBar(string Numbers, ZonedDateTime Start, ZonedDateTime End, int Lane);

/// <summary>Waits beside each other, each bar in the first lane that is free for all of it.</summary>
internal static class WaitLanes
{
    /// <summary>The bars.</summary>
    /// <param name="waits">In the order in which they begin.</param>
    public static IReadOnlyList<WaitBar> Of(IReadOnlyList<PlannedWait> waits)
    {
        List<Instant> free = [];
        List<WaitBar> bars = [];
        foreach (var (numbers, start, end) in Joined(waits))
        {
            var lane = free.FindIndex(until => until <= start.ToInstant());
            if (lane < 0)
            {
                lane = free.Count;
                free.Add(default);
            }

            free[lane] = end.ToInstant();
            bars.Add(new(Written(numbers), start, end, lane));
        }

        return bars;
    }

    private static List<(List<int> Numbers, ZonedDateTime Start, ZonedDateTime End)> Joined(IReadOnlyList<PlannedWait> waits)
    {
        List<(List<int> Numbers, ZonedDateTime Start, ZonedDateTime End)> joined = [];
        Dictionary<string, int> latest = new(StringComparer.Ordinal);
        for (var order = 0; order < waits.Count; order++)
        {
            var wait = waits[order];
            if (latest.TryGetValue(wait.Reason, out var at) && wait.Start.ToInstant() < joined[at].End.ToInstant())
            {
                var (numbers, start, end) = joined[at];
                joined[at] = ([.. numbers, order + 1], start, end.ToInstant() < wait.End.ToInstant() ? wait.End : end);
            }
            else
            {
                latest[wait.Reason] = joined.Count;
                joined.Add(([order + 1], wait.Start, wait.End));
            }
        }

        return joined;
    }

    private static string Written(List<int> numbers) => numbers.Count switch
    {
        1 => CountWords.Number(numbers[0]),
        _ when numbers[^1] - numbers[0] == numbers.Count - 1 => $"{CountWords.Number(numbers[0])}–{CountWords.Number(numbers[^1])}",
        _ => $"{CountWords.Number(numbers[0])}+",
    };
}
