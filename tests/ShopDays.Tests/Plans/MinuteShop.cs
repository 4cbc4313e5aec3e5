using ShopDays.Plans.Scheduling;

namespace ShopDays.Tests.Plans;

/// <summary>Where a task goes.</summary>
/// <param name="Task">The task.</param>
/// <param name="Team">Who does it; nobody when it goes on by itself.</param>
/// <param name="Start">The first minute.</param>
/// <param name="End">The end, not included.</param>
/// <param name="Stretches">The stretches of work.</param>
/// <param name="Kept">What it is handed of what it holds.</param>
internal sealed record SlowFit(
    int Task,
    int[] Team,
    int Start,
    int End,
    IReadOnlyList<(int From, int To)> Stretches,
    IReadOnlyList<(int Resource, int From, int To, int Number)> Kept);

/// <summary>
/// What becomes of each single minute in a shop: the slow and plain twin of <see cref="ShopFloor"/>, to be read and believed.
/// </summary>
internal sealed class MinuteShop
{
    private const int Nobody = -1;
    private readonly ScheduleProblem problem;
    private readonly int[][] sessions;
    private readonly int[][] work;
    private readonly HashSet<int>[] quiet;
    private readonly MinuteCounts[] heavy;
    private readonly MinuteCounts[] inUse;
    private readonly MinuteCounts dust = new();
    private readonly MinuteCounts wet = new();

    /// <summary>The shop before the first task, with what is left of work done already.</summary>
    public MinuteShop(ScheduleProblem problem)
    {
        this.problem = problem;
        Minutes = problem.Workers.Where(worker => worker.Count > 0).Select(worker => worker.To[^1]).DefaultIfEmpty().Max();
        sessions = [.. problem.Workers.Select(SessionsOf)];
        work = [.. problem.Workers.Select(_ => Enumerable.Repeat(Nobody, Minutes).ToArray())];
        quiet = [.. problem.Workers.Select(worker => worker.Quiet.SelectMany(still => Enumerable.Range(still.From, still.To - still.From)).ToHashSet())];
        inUse = [.. problem.Capacities.Select(_ => new MinuteCounts())];
        heavy = [.. problem.Workers.Select(_ => new MinuteCounts())];
        foreach (var (worker, done) in problem.Standing.HeavyDone.Take(heavy.Length).Index())
        {
            heavy[worker].Add(0, 1, done);
        }

        foreach (var (worker, done) in problem.Standing.HeavyDoneBefore.Take(heavy.Length).Index())
        {
            heavy[worker].Add(-1, 0, done);
        }

        wet.Add(problem.Standing.Begin, problem.Standing.WetUntil, 1);
        foreach (var (hold, until) in problem.Standing.Held)
        {
            var kept = new List<(int Resource, int From, int To, int Number)>();
            HandOut(hold, problem.Standing.Begin, until, kept);
            Keep(kept, 1);
        }
    }

    /// <summary>Nobody works from here on.</summary>
    public int Minutes { get; }

    /// <summary>The session of a worker's minute; below 0 when he is not there.</summary>
    public int SessionAt(int worker, int minute) => minute < Minutes ? sessions[worker][minute] : Nobody;

    /// <summary>Whether a worker can work on a task for the whole of a minute.</summary>
    public bool CanWork(int worker, int task, int minute)
    {
        if (SessionAt(worker, minute) < 0 || work[worker][minute] != Nobody)
        {
            return false;
        }

        var plan = problem.Tasks[task];
        return HasTurned(worker, plan.SetupKey, minute, -1) && HasTurned(worker, plan.SetupKey, minute, 1)
            && !(plan.IsNoisy && quiet[worker].Contains(minute))
            && !(plan.IsDusty && wet.At(minute) > 0)
            && !(plan.Place >= 0 && inUse[plan.Place].At(minute) >= problem.Capacities[plan.Place]);
    }

    /// <summary>How much heavy work a worker may still do on a day, when some work that is not put in yet does so much on each day.</summary>
    public int HeavyLeft(int worker, int day, Func<int, int> beside) => Math.Min(
        problem.HeavyPerDay.Of(worker) - On(worker, day, beside),
        problem.HeavyPerDay.OfTwoDays(worker) - On(worker, day, beside) - Math.Max(On(worker, day - 1, beside), On(worker, day + 1, beside)));

    private int On(int worker, int day, Func<int, int> beside) => heavy[worker].At(day) + beside(day);

    /// <summary>What a task is handed of what it holds when it goes from one minute to another; null when that is not to be had, or a coat would catch dust.</summary>
    public IReadOnlyList<(int Resource, int From, int To, int Number)>? WhatIsKept(int task, int start, int end)
    {
        var plan = problem.Tasks[task];
        if (plan.TooCold != CompiledNights.Nothing && problem.Nights.Barred[plan.TooCold - 1].Stretches.Any(cold => start < cold.To && end > cold.From))
        {
            return null;
        }

        if (IsCoat(plan) && dust.Most(start - plan.WetBefore, DryFrom(plan, end)) > 0)
        {
            return null;
        }

        var kept = new List<(int Resource, int From, int To, int Number)>();
        return plan.Holds.All(hold => HandOut(hold, start - hold.MinutesBefore, problem.Nights.EndOf(end, hold.MinutesAfter, hold.Sets), kept)) ? kept : null;
    }

    /// <summary>Puts a task into the shop, or takes it out again.</summary>
    public void Put(SlowFit fit, bool isIn)
    {
        var (plan, sign) = (problem.Tasks[fit.Task], isIn ? 1 : -1);
        foreach (var (from, to) in fit.Stretches)
        {
            foreach (var worker in fit.Team)
            {
                Array.Fill(work[worker], isIn ? fit.Task : Nobody, from, to - from);
                var day = problem.Workers[worker].Day[SessionAt(worker, from)];
                heavy[worker].Add(day, day + 1, plan.IsHeavy ? sign * (to - from) : 0);
            }

            dust.Add(from, to, plan.IsDusty ? sign : 0);
            if (plan.Place >= 0)
            {
                inUse[plan.Place].Add(from, to, sign);
            }
        }

        wet.Add(fit.Start - plan.WetBefore, DryFrom(plan, fit.End), IsCoat(plan) ? sign : 0);
        Keep(fit.Kept, sign);
    }

    private int DryFrom(CompiledTask plan, int end) => problem.Nights.EndOf(end, plan.WetAfter, plan.DriesAfter);

    private static bool IsCoat(CompiledTask task) => task.WetBefore + task.WetAfter > 0;

    private int[] SessionsOf(CompiledCalendar worker)
    {
        var found = Enumerable.Repeat(Nobody, Minutes).ToArray();
        for (var session = 0; session < worker.Count; session++)
        {
            Array.Fill(found, session, worker.From[session], worker.To[session] - worker.From[session]);
        }

        return found;
    }

    /// <summary>Whether there is time to turn from or to the work that is next to a minute, before or after it, in its session.</summary>
    private bool HasTurned(int worker, int key, int minute, int step)
    {
        for (var away = 1; away <= problem.Changeover; away++)
        {
            var at = minute + (away * step);
            if (at < 0 || SessionAt(worker, at) != SessionAt(worker, minute))
            {
                return true;
            }

            if (work[worker][at] != Nobody)
            {
                var other = problem.Tasks[work[worker][at]].SetupKey;
                return key < 0 || other < 0 || other == key;
            }
        }

        return true;
    }

    /// <summary>Hands out what one hold asks for, from the first of its row on; what is kept for no time is not needed.</summary>
    private bool HandOut(Hold hold, int from, int to, List<(int Resource, int From, int To, int Number)> kept)
    {
        var missing = from < to ? hold.Count : 0;
        for (var resource = hold.First; resource <= hold.Last; resource++)
        {
            var own = kept.Where(one => one.Resource == resource).Sum(one => one.Number);
            var number = Math.Clamp(problem.Capacities[resource] - own - inUse[resource].Most(from, to), 0, missing);
            kept.Add((resource, from, to, number));
            missing -= number;
        }

        return missing == 0;
    }

    private void Keep(IEnumerable<(int Resource, int From, int To, int Number)> kept, int sign)
    {
        foreach (var (resource, from, to, number) in kept)
        {
            inUse[resource].Add(from, to, sign * number);
        }
    }

    /// <summary>A number for each minute, or day, 0 at first.</summary>
    private sealed class MinuteCounts
    {
        private readonly Dictionary<int, int> counts = [];

        public int At(int minute) => counts.GetValueOrDefault(minute);

        public int Most(int from, int to)
        {
            var most = 0;
            for (var minute = from; minute < to; minute++)
            {
                most = Math.Max(most, At(minute));
            }

            return most;
        }

        public void Add(int from, int to, int number)
        {
            for (var minute = from; minute < to && number != 0; minute++)
            {
                counts[minute] = At(minute) + number;
            }
        }
    }
}
