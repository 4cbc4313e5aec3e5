using ShopDays.Plans.Scheduling;

namespace ShopDays.Tests.Outside;

/// <summary>
/// Small seeded shops for an exact solver: 6 to 14 tasks, one or two workers with sessions on a dozen days and more, waits,
/// work of one stretch and of several, heavy and noisy work, clamps, a bench, coats and dust, changes of set-up. In a third
/// of them the day after a heavy one holds less, in another third nothing is broken off with too little left.
/// </summary>
internal static class SmallWorkshop
{
    private const int Day = 24 * 60;
    private const int Days = 24;

    /// <summary>One bench, two small clamps, two large ones that do for the small ones' work too.</summary>
    private static readonly int[] Capacities = [1, 2, 2];

    /// <summary>The shop of a seed.</summary>
    public static ScheduleProblem Make(int seed)
    {
        var chance = new Random(seed);
        var workers = 1 + (seed % 2);
        var tasks = new CompiledTask[chance.Next(6, 15)];
        for (var task = 0; task < tasks.Length; task++)
        {
            tasks[task] = MakeTask(chance, workers);
            tasks[task] = tasks[task] with { EndsInAPiece = tasks[task].IsSplittable && seed % 3 == 2 };
        }

        return new(
            tasks,
            MakeOrder(chance, tasks),
            [.. Enumerable.Range(0, workers).Select(worker => MakeHours(chance, worker))],
            Capacities,
            heavyPerDay: new HeavyCaps([chance.Next(2) == 0 ? 60 : 90], seed % 3 == 1 ? [null] : null),
            changeover: chance.Next(3) == 0 ? 0 : 5);
    }

    private static CompiledTask MakeTask(Random chance, int workers)
    {
        var isSplittable = chance.Next(3) == 0;
        var isWet = chance.Next(7) == 0;
        return new()
        {
            // A confined task fits before the quiet hour of any session, and under the lesser cap.
            Minutes = isSplittable ? chance.Next(60, 180) : chance.Next(10, 60),
            Crew = chance.Next(12) == 0 ? 0 : workers == 2 && chance.Next(5) == 0 ? 2 : 1,
            IsSplittable = isSplittable,
            LeastPiece = isSplittable ? chance.Next(15, 40) : 1,
            IsHeavy = chance.Next(3) == 0,
            IsNoisy = chance.Next(4) == 0,
            IsDusty = !isWet && chance.Next(3) == 0,
            WetAfter = isWet ? chance.Next(30, 600) : 0,
            SetupKey = chance.Next(4),
            NotBefore = chance.Next(6) == 0 ? chance.Next(4 * Day) : 0,
            WaitAtEnd = chance.Next(5) == 0 ? chance.Next(2 * Day) : 0,
            Place = chance.Next(3) == 0 ? 0 : -1,
            Holds = chance.Next(4) switch
            {
                0 => [new(1, 2, chance.Next(1, 5), chance.Next(300))],
                1 => [new(2, 2, chance.Next(1, 3), chance.Next(Day))],
                _ => [],
            },
        };
    }

    private static List<CompiledPrecedence> MakeOrder(Random chance, CompiledTask[] tasks)
    {
        var order = new List<CompiledPrecedence>();
        for (var after = 1; after < tasks.Length; after++)
        {
            for (var link = chance.Next(3); link > 0; link--)
            {
                var before = chance.Next(after);
                if (!order.Exists(one => one.Before == before && one.After == after))
                {
                    order.Add(new(before, after, chance.Next(3) == 0 ? chance.Next(30, Day) : 0));
                }
            }
        }

        // Somewhere a short piece of work and the next that has to follow it in its session.
        var pair = chance.Next(1, tasks.Length);
        if (chance.Next(2) == 0 && tasks[pair - 1] is { Crew: 1, IsSplittable: false, WetAfter: 0 } && tasks[pair] is { Crew: 1, IsSplittable: false, NotBefore: 0 })
        {
            order.RemoveAll(one => one.Before == pair - 1 && one.After == pair);
            order.RemoveAll(one => one.After == pair);
            order.Add(new(pair - 1, pair, 0, SameSession: true));
        }

        return order;
    }

    private static CompiledCalendar MakeHours(Random chance, int worker)
    {
        var open = new List<OpenStretch>();
        var quiet = new List<QuietStretch>();
        for (var day = 0; day < Days; day++)
        {
            // A helper comes every other day; the last days are there for everybody, so that all can be done.
            if (day % 7 == 6 || (worker == 1 && day % 2 == 0 && day < Days - 6))
            {
                continue;
            }

            if (chance.Next(4) == 0)
            {
                var morning = (day * Day) + 360 + chance.Next(60);
                open.Add(new(morning, morning + chance.Next(40, 90), day));
            }

            var evening = (day * Day) + (17 * 60) + chance.Next(60);
            var end = evening + chance.Next(130, 200);
            open.Add(new(evening, end, day));
            quiet.Add(new(end - chance.Next(10, 60), end + 60));
        }

        return new(open, quiet);
    }
}
