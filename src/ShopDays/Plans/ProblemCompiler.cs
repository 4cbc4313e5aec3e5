using System.Collections.Immutable;
using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans.Scheduling;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Makes the problem that is scheduled from the orders in hand, a shop and its hours.</summary>
internal static class ProblemCompiler
{
    private const int Bench = 0;

    /// <summary>Compiles. What the shop has must be enough for each task: <see cref="Obstacles"/> looks for that first.</summary>
    public static ScheduleProblem Compile(PlanRequest request, OpenHours hours)
    {
        var work = new WorkInHand(request.Orders);
        var keys = work.Tasks.Select(one => one.Task.SetupKey).Distinct(StringComparer.Ordinal).Select((key, index) => (key, index)).ToDictionary(StringComparer.Ordinal);
        var nights = new NightsCompiler(hours);
        var clamps = ClampRow.Of(request.Limits);
        int[] floor = request.Limits.Floor is { } free ? [FloorShortage.There(free)] : [];
        var waits = work.Precedences
            .Where(one => one.Wait is not null)
            .Select(one => (Task: one.Before, Wait: one.Wait!))
            .Concat(work.ClosingWaits.Select(one => (Task: one.After, one.Wait)))
            .ToList();
        var after = waits.ToLookup(one => one.Task, one => one.Wait);
        var closing = work.ClosingWaits.ToLookup(one => one.After, one => one.Wait);
        var opening = OpeningOf(request, hours, work);
        var benchMatters = request.Limits.Benches < request.Calendars.Count
            || waits.Exists(one => one.Wait.HoldsBench)
            || request.Orders.Any(order => order.UnderWay?.Held.Any(one => one.BenchUntil is not null) == true);
        var precedences = work.Precedences
            .Select(one => new CompiledPrecedence(one.Before, one.After, one.Wait is null ? 0 : nights.LeastOf(one.Wait, MinutesOf(one.Wait.Duration)), one.SameSession, nights.NumberOf(one.Wait?.Sets, one.Wait?.Duration ?? Duration.Zero)))
            .Concat(work.AroundAwaited.Select(one => new CompiledPrecedence(one.Before, one.After)))
            .ToList();
        var tasks = work.Tasks.Select((one, number) => one.Awaited is { } awaited ? WaitOf(new(request.Orders[one.Order], awaited, hours), one.Order) : TaskOf(one, number)).ToList();
        var problem = Of(tasks);
        var longest = new LongestStretches(problem);

        // A shop of short sessions would not get done what must not be broken off near its end.
        return Of([.. tasks.Select((task, number) => task with { EndsInAPiece = task.IsSplittable && (2 * task.LeastPiece) - 1 <= longest.Of(number) })]);

        ScheduleProblem Of(IReadOnlyList<CompiledTask> all) => new(
            all,
            precedences,
            hours.Calendars,
            [request.Limits.Benches, .. clamps.Counts, .. floor],
            CapsOf(request),
            (int)Math.Ceiling(request.Changeover.Minutes),
            StandingOf(request, hours, clamps),
            [.. request.Orders.Select(order => OrderOf(order, hours))],
            hours.Clock,
            nights.Nights);

        CompiledTask TaskOf(TaskInHand one, int number) => new()
        {
            Minutes = MinutesOf(one.Time.Minutes),
            Order = one.Order,
            Crew = one.Task.Crew,
            IsSplittable = one.Task.IsSplittable,
            LeastPiece = MinutesOf(one.Task.LeastUseful.Minutes),
            IsHeavy = one.Task.WorkClass == WorkClass.Heavy,
            IsNoisy = one.Task.IsNoisy,
            IsDusty = one.Task.IsDusty,
            WetAfter = MinutesOf(one.Task.DustFreeAfter),
            DriesAfter = nights.NumberOf(one.Task.Sets, one.Task.DustFreeAfter),
            TooCold = nights.BarredFor(one.Task),
            SetupKey = keys[one.Task.SetupKey],
            NotBefore = Math.Max(opening[number], hours.DatesOf(one.Task).NotBefore),
            StartBy = Math.Max(0, hours.DatesOf(one.Task).StartBy),
            WaitAtEnd = closing[number].Select(wait => nights.LeastOf(wait, MinutesOf(wait.Duration))).DefaultIfEmpty().Max(),
            SetsAtEnd = nights.NumberOf(closing[number]),
            Place = benchMatters && IsAtBench(one.Task) && !after[number].Any(wait => wait.HoldsBench) ? Bench : -1,
            Holds = [.. HoldsOf(one.Task, [.. after[number]], clamps, floor.Length > 0, nights)],
        };
    }

    /// <summary>The caps on heavy work, by worker.</summary>
    public static HeavyCaps CapsOf(PlanRequest request)
    {
        List<int> perDay = [.. request.Calendars.Select(calendar => Whole(request.Limits.HeavyPerDayOf(calendar.Worker)))];
        return new(perDay, [.. request.Calendars.Select((calendar, worker) => request.Limits.HeavyInTwoDaysOf(calendar.Worker) is { } two ? Math.Max(perDay[worker], Whole(two)) : (int?)null)]);

        static int Whole(WorkTime time) => Math.Max(1, (int)Math.Floor(time.Minutes));
    }

    /// <summary>What is awaited goes on by itself, whoever works at what.</summary>
    private static CompiledTask WaitOf(AwaitedTime time, int order) => new()
    {
        Minutes = time.Minutes,
        Order = order,
        Crew = 0,
        NotBefore = time.Begin,
        IsByCalendar = time.IsByCalendar,
    };

    /// <summary>The first minute in which each task may begin but for its own date: that of its order, or the end of what holds it back; in which what is awaited runs.</summary>
    public static int[] OpeningOf(PlanRequest request, OpenHours hours, WorkInHand work)
    {
        var waits = work.Each((order, place) => OpeningsOf(order, hours).Select(one => (Task: work.NumberOf(place, one.Task), one.Minute))).ToLookup(one => one.Task, one => one.Minute);
        return
        [
            .. work.Tasks.Select((one, number) => one.Awaited is { } awaited
                ? new AwaitedTime(request.Orders[one.Order], awaited, hours).Begin
                : waits[number].Append(hours.BeginOf(request.Orders[one.Order])).Max()),
        ];
    }

    /// <summary>Tasks of an order, by their ids, that a wait after work that is done holds back, and until when.</summary>
    private static IEnumerable<(int Task, int Minute)> OpeningsOf(OrderInHand order, OpenHours hours) =>
        order.Running.SelectMany(wait => wait.Holds.Select(task => (task, hours.MinuteUpTo(wait.Until))));

    /// <summary>An order is late when it is not finished with the end of its date; it is not finished before a wait at its end that runs already.</summary>
    private static CompiledOrder OrderOf(OrderInHand order, OpenHours hours) => new(
        order.Due is { } due ? hours.MinuteAtEndOf(due) : CompiledCalendar.Never,
        order.Priority,
        order.Running.Where(wait => wait.EndsTheJob).Select(wait => hours.MinuteUpTo(wait.Until)).Append(hours.BeginOf(order)).Max());

    /// <summary>All that work that is done keeps, whichever order it is of.</summary>
    private static ShopStanding StandingOf(PlanRequest request, OpenHours hours, ClampRow clamps)
    {
        List<UnderWay> underWay = [.. request.Orders.Select(order => order.UnderWay).OfType<UnderWay>()];
        List<StillHeld> held = [.. underWay.SelectMany(one => one.Held)];
        return new()
        {
            Begin = hours.Begin,
            Held =
            [
                .. held
                    .Where(one => one.BenchUntil is not null)
                    .Select(one => (new Hold(Bench, Bench, 1), hours.MinuteUpTo(one.BenchUntil!.Value))),
                .. held
                    .Where(_ => clamps.AreCounted)
                    .SelectMany(one => one.Clamps.OrderByDescending(clamp => clamp.Reach), (one, clamp) => (Clamp: clamp, Until: hours.MinuteUpTo(one.ClampsUntil!.Value)))
                    .Select(one => (OnClamps(one.Clamp, clamps), one.Until)),
                .. held
                    .Where(one => one.FloorUntil is not null && request.Limits.Floor is not null)
                    .Select(one => (OnFloor(one.By, clamps), hours.MinuteUpTo(one.FloorUntil!.Value))),
            ],
            WetUntil = held.Select(one => one.WetUntil).OfType<Instant>().Select(hours.MinuteUpTo).Append(0).Max(),
            HeavyDone = HeavyIn(one => one.HeavyToday),
            HeavyDoneBefore = HeavyIn(one => one.HeavyYesterday),
        };

        ImmutableArray<int> HeavyIn(Func<UnderWay, IReadOnlyDictionary<string, WorkTime>> done) =>
            underWay.Count == 0 ? [] : [.. request.Calendars.Select(calendar => underWay.Max(one => (int)Math.Ceiling(done(one).GetValueOrDefault(calendar.Worker).Minutes)))];
    }

    private static Hold OnClamps(ClampsHeld held, ClampRow clamps, (int Minutes, int Sets) after = default) =>
        new(Bench + 1 + clamps.FirstThatReaches(held.Reach), Bench + clamps.Counts.Length, held.Count, after.Minutes, Sets: after.Sets);

    private static Hold OnFloor(ShopTask task, ClampRow clamps, (int Minutes, int Sets) after = default) =>
        new(Bench + 1 + clamps.Counts.Length, Bench + 1 + clamps.Counts.Length, FloorShortage.Wanted(task.Floor), after.Minutes, Sets: after.Sets);

    /// <summary>Hands-on minutes to the nearest whole one, 1 at least: some of a job's times come out longer, others shorter, and their sum stays.</summary>
    public static int MinutesOf(double minutes) => Math.Max(1, (int)(Math.Min(minutes, CompiledCalendar.Never) + 0.5));

    /// <summary>
    /// Planing, joints, assembly and finish are done at a bench; sawing out on trestles, the rest on paper or outside
    /// (common practice, no source).
    /// </summary>
    private static bool IsAtBench(ShopTask task) => task.Stage is Stage.Dimensioning or Stage.Joinery or Stage.Assembly or Stage.Finish;

    private static IEnumerable<Hold> HoldsOf(ShopTask task, IReadOnlyList<Wait> waits, ClampRow clamps, bool floorIsShort, NightsCompiler nights)
    {
        if (waits.Any(wait => wait.HoldsBench))
        {
            var (minutes, sets) = LongestOf(waits.Where(wait => wait.HoldsBench), nights);
            yield return new(Bench, Bench, 1, minutes, Sets: sets);
        }

        if (floorIsShort && task.Floor > Area.Zero)
        {
            yield return OnFloor(task, clamps, LongestOf(waits.Where(wait => wait.HoldsFloor), nights));
        }

        if (!clamps.AreCounted)
        {
            yield break;
        }

        var onClamps = LongestOf(waits.Where(wait => wait.HoldsClamps), nights);
        foreach (var held in task.Clamps.OrderByDescending(held => held.Reach))
        {
            yield return OnClamps(held, clamps, onClamps);
        }
    }

    /// <summary>The longest of some waits: its minutes at least, and what sets in it.</summary>
    private static (int Minutes, int Sets) LongestOf(IEnumerable<Wait> waits, NightsCompiler nights)
    {
        List<Wait> all = [.. waits];
        return (all.Select(wait => nights.LeastOf(wait, MinutesOf(wait.Duration))).DefaultIfEmpty().Max(), nights.NumberOf(all));
    }

    /// <summary>A wait in whole minutes, 0 or more.</summary>
    public static int MinutesOf(Duration wait) => (int)Math.Ceiling(Math.Min(wait.TotalMinutes, CompiledCalendar.Never));
}
