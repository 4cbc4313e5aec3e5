using NodaTime;
using ShopDays.Days;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>What is left to do of a job, as a job of its own: its tasks, what still comes before what, and how the shop stands.</summary>
/// <remarks>
/// Work that is done holds nothing back but by its waits, which run from the moment at which it was done. Where something
/// was done before what should have come first, what follows it still comes after that.
/// </remarks>
public sealed record RemainingWork
{
    /// <summary>The tasks that are not done, numbered anew in their order; of one that is begun, what is left where its log says how much.</summary>
    public required TaskGraph Graph { get; init; }

    /// <summary>The whole job.</summary>
    public required TaskGraph Whole { get; init; }

    /// <summary>The id of each of them in the whole job.</summary>
    public required IReadOnlyList<int> Ids { get; init; }

    /// <summary>Time that each has taken already where the log does not say how much is left; zero for all others.</summary>
    public required IReadOnlyList<WorkTime> Spent { get; init; }

    /// <summary>From when it is planned, and what still goes on by itself.</summary>
    public required UnderWay UnderWay { get; init; }

    /// <summary>Tasks that are not done although work that comes after them is, or not begun although that is: skipped, or not written down.</summary>
    public required IReadOnlyList<PassedOver> PassedOver { get; init; }

    /// <summary>What has come from others, in the order of the whole job.</summary>
    public required IReadOnlyList<CameFromOthers> Came { get; init; }

    /// <summary>
    /// What is expected of each task that is left, by its id in the whole job: as likely more as less, in whole minutes. One
    /// that is not begun has the minutes that it has in the whole job; where one is begun and its log does not say how much
    /// is left, that is told by what was spent.
    /// </summary>
    /// <param name="model">The rates.</param>
    /// <param name="draws">Drawn times of what is left.</param>
    /// <exception cref="ArgumentException">The draws are of other tasks.</exception>
    public IReadOnlyDictionary<int, WorkTime> LikelyTimes(RateModel model, TimeDraws draws)
    {
        if (draws.Minutes.Any(trial => trial.Length != Graph.Tasks.Count))
        {
            throw new ArgumentException($"the draws are not those of {Graph.Tasks.Count} tasks", nameof(draws));
        }

        var whole = WholeMinutes.Of(Whole, model);
        return Graph.Tasks.ToDictionary(task => Ids[task.Id], LikelyTime);

        WorkTime LikelyTime(ShopTask task) => (Spent[task.Id] > WorkTime.Zero, ReferenceEquals(task.Timing, Whole.Tasks[Ids[task.Id]].Timing)) switch
        {
            (true, _) => WholeMinutes.Nearest(draws.Of(task.Id).P50),
            (false, true) => whole[Ids[task.Id]],
            (false, false) => WholeMinutes.Nearest(model.LikelyTime(task)),
        };
    }

    /// <summary>The same at the ids of <see cref="Graph"/>: what is left is planned with these times.</summary>
    /// <param name="model">The rates.</param>
    /// <param name="draws">Drawn times of what is left.</param>
    /// <exception cref="ArgumentException">The draws are of other tasks.</exception>
    public IReadOnlyList<WorkTime> PlannedTimes(RateModel model, TimeDraws draws)
    {
        var likely = LikelyTimes(model, draws);
        return [.. Ids.Select(id => likely[id])];
    }

    /// <summary>What is left of a job.</summary>
    /// <param name="whole">The job.</param>
    /// <param name="standing">How far its tasks have come.</param>
    /// <param name="calendars">The workers' calendars: work of which only the date is logged ended with the last session of it.</param>
    /// <param name="start">The date on which the job begins; before anything is done nothing is planned before it.</param>
    /// <param name="now">The moment.</param>
    /// <param name="heavyToday">Heavy work that each worker has done today.</param>
    /// <param name="heavyYesterday">Heavy work that each worker did the day before.</param>
    /// <exception cref="ArgumentException">The standing is another job's.</exception>
    public static RemainingWork Of(TaskGraph whole, JobStanding standing, IReadOnlyList<WorkingCalendar> calendars, LocalDate start, Instant now, IReadOnlyDictionary<string, WorkTime>? heavyToday = null, IReadOnlyDictionary<string, WorkTime>? heavyYesterday = null)
    {
        if (standing.Tasks.Count != whole.Tasks.Count)
        {
            throw new ArgumentException($"{standing.Tasks.Count} standings for {whole.Tasks.Count} tasks", nameof(standing));
        }

        var from = standing.IsBegun ? now : Instant.Max(now, calendars[0].Place.Zone.AtStartOfDay(start).ToInstant());
        List<TaskStanding> open = [.. standing.Tasks.Where(one => one.State != TaskState.Done)];
        var places = open.Index().ToDictionary(one => one.Item.Task.Id, one => one.Index);
        var waits = new EndedWork(whole, standing, calendars, from);
        var awaited = new AwaitedLeft(whole, standing, places, waits, calendars[0].Place.Zone, from);
        return new()
        {
            Graph = new(
                [.. open.Select((one, place) => TaskLeft.Of(one) with { Id = place, Appointed = one.State == TaskState.ToDo ? one.Task.Appointed : null })],
                [.. Precedences(whole, places)],
                awaited.Of(),
                [.. whole.ClosingWaits.Where(wait => places.ContainsKey(wait.After)).Select(wait => wait with { After = places[wait.After] })]),
            Whole = whole,
            Ids = [.. open.Select(one => one.Task.Id)],
            Spent = [.. open.Select(one => one.QuantityDone is null ? one.Spent : WorkTime.Zero)],
            UnderWay = new()
            {
                From = from,
                Known = now,
                Waits = [.. waits.Running(places), .. RestAfterSawing.Running(whole, standing, places, calendars, from, from)],
                Held = waits.Held(),
                HeavyToday = heavyToday ?? new Dictionary<string, WorkTime>(),
                HeavyYesterday = heavyYesterday ?? new Dictionary<string, WorkTime>(),
            },
            PassedOver = Logbook.PassedOver.In(whole, standing),
            Came = awaited.Came(),
        };
    }

    /// <summary>The precedences among what is left, with those that led over work that is done drawn together.</summary>
    private static IEnumerable<Precedence> Precedences(TaskGraph whole, Dictionary<int, int> places)
    {
        var before = whole.Precedences.Where(one => !one.IsForThePlan).ToLookup(one => one.After);
        var behind = new Dictionary<int, IReadOnlyList<(int Before, Wait? Wait)>>();
        var made = new HashSet<(int Before, int After, Wait? Wait)>();
        foreach (var one in whole.Precedences.Where(one => places.ContainsKey(one.Before) && places.ContainsKey(one.After)))
        {
            made.Add((one.Before, one.After, null));
            yield return one with { Before = places[one.Before], After = places[one.After] };
        }

        foreach (var one in whole.Precedences.Where(one => !places.ContainsKey(one.Before) && places.ContainsKey(one.After)))
        {
            foreach (var (earlier, wait) in Behind(one.Before).Where(earlier => made.Add((earlier.Before, one.After, earlier.Wait))))
            {
                yield return new(places[earlier], places[one.After], one.Reason, wait);
            }
        }

        // What sets or dries after work that was passed over does so all the same, whatever came next is done already.
        IReadOnlyList<(int Before, Wait? Wait)> Behind(int done) => behind.TryGetValue(done, out var known)
            ? known
            : behind[done] = [.. before[done].SelectMany(one => places.ContainsKey(one.Before) ? [(one.Before, one.Wait)] : Behind(one.Before)).Distinct()];
    }

}
