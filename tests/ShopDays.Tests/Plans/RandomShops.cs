using CsCheck;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;

namespace ShopDays.Tests.Plans;

/// <summary>
/// Small jobs in small shops, of every kind that the scheduler knows. All can be done but a pair now and then that shares a
/// session, and what is placed too late for its appointment.
/// </summary>
internal static class RandomShops
{
    /// <summary>No session is shorter, so that any task of at most half of it fits with another beside it.</summary>
    private const int ShortestSession = 60;

    /// <summary>A day has a session in each half, or in one, or none: workers who meet are on the same day.</summary>
    private const int HalfDay = 400;

    private static readonly Gen<CompiledCalendar> Calendar =
        from sessions in Gen.Select(Gen.Int[0, 200], Gen.Int[ShortestSession, 150], Gen.Int[0, 40], Gen.Int[0, 2]).Array[40]
        select Sessions(sessions);

    private static readonly Gen<CompiledTask> Task =
        from work in Gen.Select(Gen.Int[1, 30], Gen.Int[0, 2], Gen.Bool, Gen.Int[1, 15])
        from kind in Gen.Select(Gen.Bool, Gen.Bool, Gen.Int[-1, 2], Gen.Int[0, 3])
        from waits in Gen.Select(Gen.Int[0, 300], Gen.Int[0, 500], Gen.Int[0, 2])
        from clamps in Gen.Select(Gen.Int[0, 2], Gen.Int[1, 2]).Array[0, 2]
        from kept in Gen.Select(Gen.Int[0, 400], Gen.Int[-400, 200])
        from bench in Gen.Select(Gen.Int[0, 5], Gen.Int[0, 400], Gen.Int[-400, 200])
        from appointment in Gen.Select(Gen.Int[0, 5], Gen.Int[1, 12_000])
        from air in Gen.Select(Gen.Int[0, 3], Gen.Int[1, 300], Gen.Int[-300, 150])
        select new CompiledTask
        {
            Minutes = kind.Item4 == 0 && work.Item3 ? 8 * work.Item1 : work.Item1,
            Crew = work.Item2,
            IsSplittable = work.Item3,
            LeastPiece = work.Item4,
            EndsInAPiece = work.Item3 && air.Item2 % 2 == 0,
            IsHeavy = kind.Item1,
            IsNoisy = kind.Item2,
            SetupKey = kind.Item3,
            NotBefore = waits.Item3 == 0 ? waits.Item1 : 0,
            WaitAtStart = waits.Item3 == 2 && kind.Item4 == 1 ? waits.Item1 : 0,
            WaitAtEnd = waits.Item3 == 1 ? waits.Item2 : 0,
            StartBy = appointment.Item1 == 0 ? (waits.Item3 == 0 ? waits.Item1 : 0) + appointment.Item2 : CompiledCalendar.Never,
            Place = bench.Item1 is 0 or 1 ? 0 : -1,
            IsDusty = air.Item1 is 0 or 1,
            WetAfter = air.Item1 is 1 or 2 ? air.Item2 : 0,
            WetBefore = air.Item1 is 1 or 2 ? Math.Max(0, air.Item3) : 0,
            Holds =
            [
                .. bench.Item1 == 2 ? [new Hold(0, 0, 1, bench.Item2, Math.Max(0, bench.Item3))] : (Hold[])[],
                .. clamps.DistinctBy(hold => hold.Item1).OrderByDescending(hold => hold.Item1).Select((hold, next) => new Hold(1 + hold.Item1, 3, next == 0 ? hold.Item2 : 1, kept.Item1, Math.Max(0, kept.Item2))),
            ],
        };

    /// <summary>What is left of work that is done: something kept, a wet coat, a heavy morning, a heavy day before it.</summary>
    private static readonly Gen<ShopStanding> Standing =
        from held in Gen.Select(Gen.Int[0, 3], Gen.Int[1, 500], Gen.Int[0, 400], Gen.Int[0, 60], Gen.Int[0, 60])
        select new ShopStanding { Held = [(new Hold(held.Item1, held.Item1 == 0 ? 0 : 3, 1), held.Item2)], WetUntil = held.Item3, HeavyDone = [held.Item4, held.Item4], HeavyDoneBefore = [held.Item5, held.Item5] };

    /// <summary>One worker or two, a bench, three kinds of clamps, up to 12 tasks.</summary>
    public static Gen<ScheduleProblem> Problem { get; } =
        from tasks in Task.Array[1, 12]
        from links in Gen.Select(Gen.Int[0, 11], Gen.Int[0, 11], Gen.Int[0, 400], Gen.Int[0, 7]).Array[0, 14]
        from workers in Calendar.Array[1, 2]
        from shop in Gen.Select(Gen.Int[30, 60], Gen.Int[0, 8], Gen.Int[30, 60])
        from dayAfter in Gen.Select(Gen.Int[0, 2], Gen.Int[0, 40])
        from standing in Gen.OneOf(Gen.Const(ShopStanding.Empty), Gen.Const(ShopStanding.Empty), Standing)
        let crews = tasks.Select(task => task with { Crew = Math.Min(task.Crew, workers.Length) }).ToArray()
        select new ScheduleProblem(crews, Links(links, crews), workers, [1, 1, 1, 2], heavyPerDay: Caps(workers.Length == 1 ? [shop.Item1] : [shop.Item1, shop.Item3], dayAfter.Item1, dayAfter.Item2), changeover: shop.Item2, standing: standing);

    /// <summary>The same work in a shop with nights of its own: what sets takes longer in some spells, and some work is barred in others.</summary>
    public static Gen<ScheduleProblem> WithNights { get; } =
        from problem in Problem
        from spells in Gen.Select(Gen.Int[100, 4000], Gen.Double[0.7, 4]).Array[1, 6]
        from sets in Gen.Int[1, 400].Array[1, 3]
        from cold in Gen.Select(Gen.Int[50, 4000], Gen.Int[50, 3000]).Array[0, 3]
        from picks in Gen.Select(Gen.Int[0, 9], Gen.Int[0, 9], Gen.Int[0, 9], Gen.Int[0, 4]).Array[26]
        select InNights(problem, spells, sets, cold, picks);

    /// <summary>The same work in one order to three, of different weights, with a date or without.</summary>
    public static Gen<ScheduleProblem> WithOrders { get; } =
        from problem in Problem
        from orders in Gen.Select(Gen.Int[1, 3], Gen.Int[0, 9000], Gen.Int[-3000, 3000]).Array[1, 3]
        from of in Gen.Int[0, 2].Array[12]
        select new ScheduleProblem(
            [.. problem.Tasks.Select((task, number) => task with { Order = of[number] % orders.Length })],
            problem.Precedences,
            problem.Workers,
            problem.Capacities,
            problem.HeavyPerDay,
            problem.Changeover,
            problem.Standing,
            [.. orders.Select(order => new CompiledOrder(order.Item2 > 4000 ? order.Item2 : CompiledCalendar.Never, order.Item1, Math.Max(0, order.Item3)))]);

    /// <summary>A random order of a problem's blocks, and a seed for more.</summary>
    public static int[] Order(ScheduleProblem problem, int seed)
    {
        var order = new int[problem.Blocks];
        new ScheduleOrders(problem).Write(order, 0, 1, new Random(seed));
        return order;
    }

    /// <summary>The day after a heavy one is like any other, or as usual, or as each says: one more by so many minutes than a day holds.</summary>
    private static HeavyCaps Caps(int[] each, int dayAfter, int more) => new(each, dayAfter == 0 ? null : [.. each.Select(cap => dayAfter == 1 ? (int?)null : cap + more)]);

    private static ScheduleProblem InNights(ScheduleProblem problem, (int Length, double Factor)[] spells, int[] sets, (int Gap, int Length)[] cold, (int Hold, int End, int Coat, int Cold)[] picks)
    {
        int[] begins = [.. spells.Select((_, spell) => spells.Take(spell).Sum(one => one.Length))];
        double[] factors = [.. spells.Select(one => one.Factor)];
        CompiledSetting[] settings = [.. sets.Select(minutes => new CompiledSetting(begins, factors, minutes))];
        var barred = new List<(int From, int To)>();
        foreach (var (gap, length) in cold)
        {
            var from = barred.Select(one => one.To).LastOrDefault() + gap;
            barred.Add((from, from + length));
        }

        return new(
            [.. problem.Tasks.Select((task, number) => task with
            {
                SetsAtEnd = Number(picks[number].End),
                WaitAtEnd = Number(picks[number].End) == 0 ? task.WaitAtEnd : Least(picks[number].End),
                DriesAfter = task.WetAfter > 0 ? Number(picks[number].Coat) : 0,
                WetAfter = task.WetAfter > 0 && Number(picks[number].Coat) > 0 ? Least(picks[number].Coat) : task.WetAfter,
                TooCold = picks[number].Cold == 0 ? 1 : 0,
                Holds = [.. task.Holds.Select(hold => Number(picks[number].Hold) == 0 ? hold : hold with { Sets = Number(picks[number].Hold), MinutesAfter = Least(picks[number].Hold) })],
            })],
            [.. problem.Precedences.Select((one, number) => one.SameSession || Number(picks[12 + number].Hold) == 0 ? one : one with { Sets = Number(picks[12 + number].Hold), Lag = Least(picks[12 + number].Hold) })],
            problem.Workers,
            problem.Capacities,
            problem.HeavyPerDay,
            problem.Changeover,
            problem.Standing,
            nights: new([.. settings], [new([.. barred])]));

        int Number(int pick) => pick < settings.Length ? pick + 1 : CompiledNights.Nothing;

        int Least(int pick) => settings[pick].Least;
    }

    private static CompiledCalendar Sessions((int Gap, int Length, int Quiet, int Kind)[] sessions)
    {
        var open = new List<OpenStretch>();
        var quiet = new List<QuietStretch>();
        for (var half = 0; half < sessions.Length; half++)
        {
            var (gap, length, still, kind) = sessions[half];
            if (kind == 0)
            {
                continue;
            }

            var from = (half * HalfDay) + gap;
            open.Add(new(from, from + length, half / 2));

            // Quiet at the end of a session only, so that its beginning is left for noise.
            if (still > 0 && length - still >= 50)
            {
                quiet.Add(new(from + length - still, from + length));
            }
        }

        // Long common sessions at the end, on days of their own and apart, so that everything can be done at last.
        for (var more = 0; more < 60; more++)
        {
            open.Add(new(20_000 + (more * 1000), 20_400 + (more * 1000), 200 + (2 * more)));
        }

        return new(open, quiet);
    }

    private static List<CompiledPrecedence> Links((int One, int Other, int Lag, int Kind)[] links, CompiledTask[] tasks)
    {
        var found = new List<CompiledPrecedence>();
        foreach (var (one, other, lag, kind) in links)
        {
            var before = Math.Min(one, other);
            var after = kind == 0 ? before + 1 : Math.Max(one, other);
            if (before == after || after >= tasks.Length)
            {
                continue;
            }

            // Work that shares a session: one task and the next, neither of them in another such pair.
            var together = kind == 0 && tasks[before].Crew > 0 && tasks[after].Crew > 0
                && !found.Exists(link => link.SameSession && (link.Before == before || link.After == before || link.Before == after || link.After == after));
            found.Add(new(before, after, together ? 0 : kind == 6 ? (1 + (lag / 150)) * 24 * 60 : lag * (kind % 2), together));
        }

        return found;
    }
}
