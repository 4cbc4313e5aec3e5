using ShopDays.Plans.Scheduling;

namespace ShopDays.Tests.Plans;

/// <summary>
/// What <see cref="ScheduleGenerator"/> promises, done the slow and plain way: each block in turn is placed where its tasks
/// end first, given those already placed, and every minute is asked about by itself.
/// </summary>
internal sealed class MinuteByMinute(ScheduleProblem problem, int[] minutes, bool mayRunOver, int[] begins)
{
    private const int Never = CompiledCalendar.Never;
    private const int Week = 7 * 24 * 60;
    private const int Step = 5;
    private readonly MinuteShop shop = new(problem);
    private readonly SlowFit?[] placed = new SlowFit?[problem.Tasks.Length];

    /// <summary>Where each task goes; null where it has no place.</summary>
    public IReadOnlyList<SlowFit?> Placed => placed;

    /// <summary>What could not be done as it should.</summary>
    public int Overruns { get; private set; }

    /// <summary>The stretches of work of one task.</summary>
    public IEnumerable<WorkPiece> PiecesOf(int task) =>
        from stretch in placed[task]!.Stretches
        from worker in placed[task]!.Team
        let first = placed[task]!.Team[0]
        let day = problem.Workers[first].Day[shop.SessionAt(first, stretch.From)]
        select new WorkPiece(task, worker, shop.SessionAt(worker, stretch.From), day, stretch.From, stretch.To);

    /// <summary>Places every block; false when one has no place before the calendars end.</summary>
    public bool Generate(IEnumerable<int> order) => order.All(block =>
    {
        var members = problem.Members(block).ToArray();
        return members.Length == 1 ? Place(members[0], 0, keepTogether: false) : PlaceTogether(members);
    });

    /// <summary>Tries to place what shares sessions, and tries again later for as long as one of the tasks does not follow in time.</summary>
    private bool PlaceTogether(int[] members)
    {
        var (overruns, notBefore) = (Overruns, 0);
        var giveUpAt = mayRunOver ? Never : members.Min(task => problem.Tasks[task].StartBy);
        while (notBefore < giveUpAt)
        {
            var done = members.TakeWhile(task => Place(task, notBefore, keepTogether: true)).ToList();
            if (done.Count == members.Length)
            {
                return true;
            }

            if (mayRunOver && notBefore == 0)
            {
                giveUpAt = (done.Count == 0 ? 0 : placed[members[0]]!.Start) + Week;
            }

            notBefore = NextAttempt(members[done.Count], done);
            done.ForEach(TakeBack);
            Overruns = overruns;
        }

        if (!mayRunOver)
        {
            return false;
        }

        Overruns++;
        return members.All(task => Place(task, 0, keepTogether: false));
    }

    /// <summary>After whole work the next session is tried; split work could end later in the same one, so it is moved a little.</summary>
    private int NextAttempt(int failed, List<int> done)
    {
        List<int> followed = [.. problem.Precedences.Where(one => one.After == failed && one.SameSession).Select(one => one.Before)];
        return followed.Exists(task => problem.Tasks[task].IsSplittable)
            ? done.Min(task => placed[task]!.Start) + Step
            : followed.Select(SessionEnd).DefaultIfEmpty(Never).Min();
    }

    private bool Place(int task, int notBefore, bool keepTogether)
    {
        var plan = problem.Tasks[task];
        List<CompiledPrecedence> before = [.. problem.Precedences.Where(one => one.After == task)];
        int[] readiness = [notBefore, plan.NotBefore, begins[plan.Order] + plan.WaitAtStart, .. before.Select(ReadyAfter)];
        var ready = readiness.Max();
        var together = before.Where(one => one.SameSession && keepTogether).Select(one => SessionEnd(one.Before)).DefaultIfEmpty(Never).Min();
        var whole = EndsFirst(task, ready, Math.Min(together, plan.StartBy), plan.IsSplittable, plan.LeastPiece, plan.EndsInAPiece);
        var fit = whole;
        if (mayRunOver)
        {
            fit = whole ??= EndsFirst(task, ready, together, plan.IsSplittable, plan.LeastPiece, plan.EndsInAPiece);
            if (!plan.IsSplittable && together == Never && !(whole?.End <= ready + Week))
            {
                // Begun where the planned time would fit, if that gains a week; piece by piece, if it cannot be whole at all.
                var over = EndsFirst(task, ready, Never, isSplittable: true, problem.Minutes[task], endsInAPiece: false);
                fit = over is not null && over.End + Week < (whole?.End ?? Never) ? over
                    : whole ?? EndsFirst(task, ready, Never, isSplittable: true, 1, endsInAPiece: false);
                Overruns += ReferenceEquals(fit, whole) ? 0 : 1;
            }

            Overruns += fit?.Start >= plan.StartBy ? 1 : 0;
        }

        if (fit is not null)
        {
            placed[task] = fit;
            shop.Put(fit, isIn: true);
        }

        return fit is not null;
    }

    private void TakeBack(int task)
    {
        shop.Put(placed[task]!, isIn: false);
        placed[task] = null;
    }

    private int ReadyAfter(CompiledPrecedence one) => problem.Nights.EndOf(placed[one.Before]!.End, one.Lag, one.Sets);

    /// <summary>The end of the session in which a task ends, of a crew's sessions the first.</summary>
    private int SessionEnd(int task)
    {
        var fit = placed[task]!;
        return fit.Team.Select(worker => problem.Workers[worker].To[shop.SessionAt(worker, fit.End - 1)]).DefaultIfEmpty(Never).Min();
    }

    /// <summary>Of all teams the one that is done first, the first of these where several are.</summary>
    private SlowFit? EndsFirst(int task, int ready, int startBy, bool isSplittable, int leastPiece, bool endsInAPiece) => problem
        .TeamsOf(problem.Tasks[task].Crew)
        .Select(team => FirstThatKeeps(team, task, ready, startBy, isSplittable, leastPiece, endsInAPiece))
        .Where(fit => fit is not null)
        .MinBy(fit => fit!.End);

    /// <summary>A team begins as soon as it can, and again a minute later for as long as not all can be kept that the task holds.</summary>
    private SlowFit? FirstThatKeeps(int[] team, int task, int ready, int startBy, bool isSplittable, int leastPiece, bool endsInAPiece)
    {
        for (var minute = ready; minute < startBy; minute++)
        {
            var stretches = team.Length == 0 ? [] : Stretches(team, task, minute, startBy, isSplittable, leastPiece, endsInAPiece);
            if (stretches is null)
            {
                return null;
            }

            var start = team.Length == 0 ? minute : stretches[0].From;
            var end = team.Length == 0 ? minute + minutes[task] : stretches[^1].To;
            if (shop.WhatIsKept(task, start, end) is { } kept)
            {
                return new(task, team, start, end, stretches, kept);
            }

            // Until then it would begin at the same minute.
            minute = start;
        }

        return null;
    }

    /// <summary>Work that goes on whenever it can, for as long as it can, if it can for long enough; null when it is not begun in time or not done before the calendars end.</summary>
    private List<(int From, int To)>? Stretches(int[] team, int task, int ready, int startBy, bool isSplittable, int leastPiece, bool endsInAPiece)
    {
        var stretches = new List<(int From, int To)>();
        var left = minutes[task];
        for (var minute = ready; left > 0; minute++)
        {
            if (minute >= shop.Minutes || (stretches.Count == 0 && minute >= startBy))
            {
                return null;
            }

            var room = Room(team, task, minute, left, stretches);
            if (room < left && (!isSplittable || room < leastPiece || (endsInAPiece && left < 2 * leastPiece)))
            {
                continue;
            }

            // What is left over must be worth beginning too.
            room = endsInAPiece && left - room is > 0 and var rest && rest < leastPiece ? left - leastPiece : room;
            if (room > 0)
            {
                stretches.Add((minute, minute + room));
                left -= room;
                minute += room - 1;
            }
        }

        return stretches;
    }

    /// <summary>For how many minutes, up to some, a whole team can work from a minute on without leaving its sessions.</summary>
    private int Room(int[] team, int task, int minute, int most, List<(int From, int To)> before)
    {
        foreach (var worker in team)
        {
            if (!shop.CanWork(worker, task, minute))
            {
                return 0;
            }

            if (problem.Tasks[task].IsHeavy)
            {
                most = Math.Min(most, shop.HeavyLeft(worker, DayAt(worker, minute), day => before.Where(one => DayAt(worker, one.From) == day).Sum(one => one.To - one.From)));
            }
        }

        var room = 0;
        while (room < most && team.All(worker => shop.SessionAt(worker, minute + room) == shop.SessionAt(worker, minute) && shop.CanWork(worker, task, minute + room)))
        {
            room++;
        }

        return room;
    }

    private int DayAt(int worker, int minute) => problem.Workers[worker].Day[shop.SessionAt(worker, minute)];
}
