using ShopDays.Plans.Scheduling;

namespace ShopDays.Benchmarks;

/// <summary>
/// A commission of furniture as the scheduler sees it, made by a seed: boards sawn out, parts brought to size with a rest in
/// between, joints cut, panels and frames glued up and left for a day, surfaces finished in coats. Sizes are near common
/// practice for hand work, no source.
/// </summary>
internal static class BenchShop
{
    /// <summary>Tasks of the job.</summary>
    public const int Tasks = 300;

    private const int Day = 24 * 60;
    private const int Bench = 0;
    private const int ShortClamps = 1;
    private const int LongClamps = 3;

    /// <summary>One worker, no limits but precedence, waits and sessions.</summary>
    public static ScheduleProblem Plain(int seed) => Make(seed, workers: 1, Limits.None);

    /// <summary>One worker with clamps, a cap on heavy work, quiet hours and set-ups.</summary>
    public static ScheduleProblem WithLimits(int seed) => Make(seed, workers: 1, Limits.Usual);

    /// <summary>The same, with a bench that glue-ups keep, and dust that must not fall on coats.</summary>
    public static ScheduleProblem WithAllLimits(int seed) => Make(seed, workers: 1, Limits.All);

    /// <summary>Two workers, a third of the glue-ups for both.</summary>
    public static ScheduleProblem ForTwo(int seed) => Make(seed, workers: 2, Limits.None);

    /// <summary>A year of evenings of the working week and of two sessions on Saturdays, some of them left out.</summary>
    private static CompiledCalendar Year(Random chance, bool quiet)
    {
        var open = new List<OpenStretch>();
        var still = new List<QuietStretch>();
        for (var day = 0; day < 365; day++)
        {
            var midnight = day * Day;
            if (day % 7 < 5 && chance.Next(10) < 7)
            {
                open.Add(new(midnight + (18 * 60), midnight + (20 * 60) + (15 * chance.Next(0, 5)), day));
                if (quiet)
                {
                    still.Add(new(midnight + (20 * 60), midnight + Day));
                }
            }
            else if (day % 7 == 5)
            {
                open.Add(new(midnight + (9 * 60), midnight + (12 * 60), day));
                open.Add(new(midnight + (13 * 60), midnight + (16 * 60), day));
            }
        }

        return new(open, still);
    }

    private static ScheduleProblem Make(int seed, int workers, Limits limits)
    {
        var chance = new Random(seed);
        var tasks = new List<CompiledTask>();
        var links = new List<CompiledPrecedence>();
        while (tasks.Count < Tasks)
        {
            AddPiece(chance, tasks, links, workers, limits);
        }

        links.RemoveAll(one => one.After >= Tasks);
        return new(
            tasks.Take(Tasks).ToList(),
            links,
            [.. Enumerable.Range(0, workers).Select(_ => Year(chance, limits != Limits.None))],
            limits != Limits.None ? [1, 6, 6, 4, 2] : [],
            limits != Limits.None ? 120 : CompiledCalendar.Never,
            limits != Limits.None ? 5 : 0);
    }

    /// <summary>A piece of furniture: some 30 tasks.</summary>
    private static void AddPiece(Random chance, List<CompiledTask> tasks, List<CompiledPrecedence> links, int workers, Limits limits)
    {
        var sawn = Enumerable.Range(0, 3).Select(_ => Add(Work(20, 70, 1) with { IsHeavy = true, IsNoisy = true, Place = -1 })).ToList();
        var ready = new List<int>();
        for (var part = 0; part < 6; part++)
        {
            var flat = Add(Work(30, 120, 2) with { IsHeavy = true });
            var square = Add(Work(30, 120, 3));
            var joint = Add(Work(30, 150, 4) with { IsNoisy = true });
            After(sawn[part / 2], flat, part % 3 == 0 ? 2 * Day : 0);
            After(flat, square, part % 2 == 0 ? Day : 0);
            After(square, joint, 0);
            ready.Add(joint);
        }

        Hold[] clamps = [new(LongClamps, LongClamps + 1, 2, Day), new(ShortClamps, LongClamps + 1, 4, Day)];
        var dry = Add(Whole(15, 30, 5));
        ready.ForEach(joint => After(joint, dry, 0));
        var glue = Add(Whole(25, 60, 6) with
        {
            Crew = workers > 1 && chance.Next(3) == 0 ? 2 : 1,
            Place = -1,
            Holds = limits switch
            {
                Limits.None => [],
                Limits.Usual => clamps,
                _ => [.. clamps, new(Bench, Bench, 1, chance.Next(2) * 4 * 60)],
            },
        });
        After(dry, glue, 0);
        var clean = Add(Work(20, 60, 7));
        After(glue, clean, Day);
        var smooth = Add(Work(40, 120, 8) with { IsDusty = true });
        After(clean, smooth, 0);
        var last = smooth;
        for (var coat = 0; coat < 3; coat++)
        {
            var next = Add(Whole(20, 45, 9) with { WetAfter = 6 * 60 });
            After(last, next, coat == 0 ? 0 : 12 * 60);
            last = next;
        }

        CompiledTask Work(int least, int most, int key) => Whole(least, most, key) with { IsSplittable = true, LeastPiece = 15 };

        CompiledTask Whole(int least, int most, int key) => new() { Minutes = chance.Next(least, most + 1), SetupKey = limits != Limits.None ? key : -1, Place = limits == Limits.All ? Bench : -1 };

        int Add(CompiledTask task)
        {
            tasks.Add(limits switch
            {
                Limits.None => task with { IsHeavy = false, IsNoisy = false, IsDusty = false, WetAfter = 0 },
                Limits.Usual => task with { IsDusty = false, WetAfter = 0 },
                _ => task,
            });
            return tasks.Count - 1;
        }

        void After(int before, int after, int lag) => links.Add(new(before, after, lag));
    }

    private enum Limits
    {
        None,
        Usual,
        All,
    }
}
