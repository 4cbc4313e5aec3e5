using NodaTime;
using ShopDays.Logbook;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>What the rest of a job still waits for from others.</summary>
/// <param name="whole">The whole job.</param>
/// <param name="standing">How far its tasks have come.</param>
/// <param name="places">The place of each task that is left, by its id in the whole job.</param>
/// <param name="done">When what is done was done.</param>
/// <param name="zone">The zone of the shop's clock.</param>
/// <param name="from">From when the rest is planned.</param>
internal sealed class AwaitedLeft(TaskGraph whole, JobStanding standing, IReadOnlyDictionary<int, int> places, EndedWork done, DateTimeZone zone, Instant from)
{
    /// <summary>All that is still waited for, with what of it is left.</summary>
    public IReadOnlyList<Awaited> Of()
    {
        var isWanted = Wanted();
        var left = new List<Awaited>();
        var placeOf = new Dictionary<int, int>();
        for (var at = 0; at < whole.Awaited.Count; at++)
        {
            if (!isWanted[at])
            {
                continue;
            }

            var one = whole.Awaited[at];
            placeOf[at] = left.Count;
            left.Add(one with
            {
                After = [.. one.After.Where(places.ContainsKey).Select(id => places[id])],
                AfterOthers = [.. one.AfterOthers.Where(placeOf.ContainsKey).Select(other => placeOf[other])],
                AfterByOrder = [.. one.AfterByOrder.Where(places.ContainsKey).Select(id => places[id])],
                AfterOthersByOrder = [.. one.AfterOthersByOrder.Where(placeOf.ContainsKey).Select(other => placeOf[other])],
                Holds = [.. one.Holds.Where(places.ContainsKey).Select(id => places[id])],
                Since = one.Decision.Asked is null && one.After.Count + one.AfterOthers.Count > 0 && !one.After.Any(places.ContainsKey) && !one.AfterOthers.Any(placeOf.ContainsKey) ? AskedSince(one.After, one.AfterOthers) : null,
            });
        }

        return left;
    }

    /// <summary>What has come, on its date or, where only work that waited for it says so, on no known one.</summary>
    public IReadOnlyList<CameFromOthers> Came() =>
    [
        .. whole.Awaited.Where(one => !one.Decision.IsDrying && HasCome(one)).Select(one => new CameFromOthers(one, one.Decision.Arrived, AskedOn(one))),
    ];

    private LocalDate? AskedOn(Awaited one) => one.Decision.Asked
        ?? (one.AfterByOrder.Count + one.AfterOthersByOrder.Count > 0 && !one.AfterByOrder.Any(places.ContainsKey) ? AskedSince(one.AfterByOrder, one.AfterOthersByOrder).InZone(zone).Date : null);

    /// <summary>What has not come, and holds something back, be it by another.</summary>
    private bool[] Wanted()
    {
        var isWanted = new bool[whole.Awaited.Count];
        for (var at = isWanted.Length - 1; at >= 0; at--)
        {
            var holdsBack = whole.Awaited[at].Holds.Any(places.ContainsKey);
            for (var later = at + 1; later < isWanted.Length && !holdsBack; later++)
            {
                holdsBack = isWanted[later] && whole.Awaited[later].AfterOthers.Contains(at);
            }

            isWanted[at] = holdsBack && !HasCome(whole.Awaited[at]);
        }

        return isWanted;
    }

    /// <summary>What was waited for has come when its date is past, or when any of the work that it held back is begun.</summary>
    private bool HasCome(Awaited one) => one.Decision.Arrived is { } date
        ? zone.AtStartOfDay(date).ToInstant() <= from
        : one.Holds.Any(id => standing.Tasks[id].State != TaskState.ToDo);

    /// <summary>When all was done and had come that it waits for to be asked for; what came on no known date says nothing.</summary>
    private Instant AskedSince(IReadOnlyList<int> after, IReadOnlyList<int> others)
    {
        var known = after.Select(done.EndOf)
            .Concat(others.Select(other => whole.Awaited[other].Decision.Arrived).OfType<LocalDate>().Select(date => zone.AtStartOfDay(date).ToInstant()))
            .ToList();
        return known.Count == 0 ? from : known.Max();
    }
}
