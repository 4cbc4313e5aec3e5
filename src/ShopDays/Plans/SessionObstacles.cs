using NodaTime;
using ShopDays.Measures;
using ShopDays.Plans.Scheduling;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Work that fits into no session of a year, with the least that would hold it.</summary>
internal sealed class SessionObstacles(PlanRequest request, OpenHours hours, ScheduleProblem problem)
{
    private readonly WorkInHand work = new(request.Orders);
    private readonly LongestStretches longest = new(problem);
    private readonly LongerHours longer = new(request, hours);
    private readonly HeavyMeasure heavy = new(request, problem.HeavyPerDay);

    /// <summary>Tasks that do not fit by themselves; not those that are fixed for a time, which need a session just then.</summary>
    public IReadOnlyList<Unplannable> OfSingleTasks()
    {
        var found = Enumerable.Range(0, problem.Tasks.Length)
            .Where(task => problem.Tasks[task].StartBy == CompiledCalendar.Never)
            .Select(task => (Number: task, Reason: OfTask(task, out var wanted)!, Wanted: wanted))
            .Where(one => one.Reason is not null)
            .ToList();

        // The hours of the one that takes most are enough for others too, as a rule: these need none of their own.
        var others = found.Index().Where(one => one.Item.Wanted is not null).OrderByDescending(one => one.Item.Wanted!.More).ToList();
        while (others.Count > 1)
        {
            var wanted = others[0].Item.Wanted!;
            var cured = wanted.In(request);
            var stretches = new LongestStretches(ProblemCompiler.Compile(cured, OpenHours.FirstYear(cured)));
            foreach (var (place, (number, reason, own)) in others.Skip(1).Where(one => InOneGo(problem.Tasks[one.Item.Number]) <= stretches.For(problem.Tasks[one.Item.Number])).ToList())
            {
                found[place] = (number, reason with { Cure = wanted.Words + reason.Cure[own!.Words.Length..] }, null);
            }

            others = [.. others.Skip(1).Where(one => found[one.Index].Wanted is not null)];
        }

        return [.. found.Select(one => one.Reason)];
    }

    /// <summary>Tasks that belong in one session and do not fit into one together.</summary>
    public IReadOnlyList<Unplannable> OfTasksTogether() => [.. Enumerable.Range(0, problem.Blocks).Select(OfBlock).OfType<Unplannable>()];

    /// <summary>What is wrong with a task.</summary>
    /// <param name="number">The task.</param>
    /// <param name="hoursAlone">The hours that would cure it, where hours alone would and no other way is as good; with them its cure begins.</param>
    private Unplannable? OfTask(int number, out HoursWanted? hoursAlone)
    {
        hoursAlone = null;
        var (task, plan) = (work.Tasks[number].Task, problem.Tasks[number]);
        var inOneGo = InOneGo(plan);
        var most = longest.For(plan);
        if (inOneGo <= most)
        {
            return null;
        }

        var takes = plan.IsSplittable ? $"it is worth beginning for {Words(inOneGo)} at least{Honing(task, plan)}" : $"it takes {Words(inOneGo)} in one go{Honing(task, plan)}";
        var split = CanBeBroken(task, plan, most);
        var light = plan with { IsHeavy = false };
        var room = longest.For(light);
        if (inOneGo <= room)
        {
            var (allowed, raised) = heavy.For(inOneGo, longest.TeamsThereFor(plan, inOneGo))!.Value;
            return new(UnplannableKind.TooHeavyForADay, task, $"{takes}, and {allowed}", raised + split);
        }

        var wanted = longer.InTheYearFrom(Lone([number], one => one with { Minutes = inOneGo, IsSplittable = false }), plan.Crew, EasyStart(number));
        var quieter = plan.IsNoisy && inOneGo <= longest.For(light with { IsNoisy = false }) ? new ShorterQuiet(request, hours, problem).For(plan, inOneGo) : null;
        List<int[]> teams = wanted is not null ? [wanted.TeamOf(request)] : quieter is var (_, still) ? [.. new LongestStretches(still).TeamsThereFor(plan, inOneGo)] : [];
        var (capped, alsoRaised) = plan.IsHeavy && teams.Count > 0 ? heavy.For(inOneGo, teams) ?? ("", "") : ("", "");
        var too = capped.Length > 0 ? $"; besides, {capped}" : "";
        var and = alsoRaised.Length > 0 ? $", and {alsoRaised}" : "";
        hoursAlone = and.Length == 0 && quieter is null ? wanted : null;
        string?[] ways = [wanted is null ? null : wanted.Words + and, quieter is var (less, _) && (wanted is null || and.Length == 0) ? less + and : null];
        var cure = (ways.OfType<string>().Any() ? string.Join(", or ", ways.OfType<string>()) : "no day is long enough for it") + split;
        return plan.IsNoisy && inOneGo <= longest.For(light with { IsNoisy = false })
            ? new(UnplannableKind.QuietHours, task, $"{takes} and is noisy, and outside quiet hours no session has more than {Words(room)}{too}", cure)
            : plan.Crew > 1 && inOneGo <= longest.For(light with { Crew = 1 })
            ? new(UnplannableKind.NotTogetherLongEnough, task, $"{takes} for {plan.Crew} people, and in the first year they are {(room > 0 ? $"there together for {Words(room)} at most" : "never there together")}{too}", cure)
            : new(UnplannableKind.NoSessionLongEnough, task, $"{takes}, and the longest session{(plan.Crew > 1 ? $" for {plan.Crew} people" : "")}{(plan.IsNoisy && problem.Workers.Any(worker => worker.Quiet.Any()) ? " outside quiet hours" : "")} has {Words(room)} of work{too}", cure);
    }

    /// <summary>What of a task's time is for honing, in brackets; nothing where nothing is.</summary>
    /// <param name="task">The task.</param>
    /// <param name="plan">The same as it is planned: where it may be broken off, its honings may be in several pieces.</param>
    public static string Honing(ShopTask task, CompiledTask plan) => task.Honed is { } honing
        ? $" ({Words((int)Math.Ceiling(honing.Time.Minutes))} {(plan.IsSplittable ? "of the whole" : "of it")} to hone the {honing.Edge})"
        : "";

    /// <summary>Tries the tasks of a block by themselves in an empty shop.</summary>
    private Unplannable? OfBlock(int block)
    {
        int[] members = [.. problem.Members(block)];
        if (members.Length < 2 || LoneWork.CanBeDone(LoneWork.Of(problem, members, one => one, problem.HeavyPerDay)))
        {
            return null;
        }

        var names = members.Select(task => work.Tasks[task].Task.Name);
        var minutes = members.Sum(task => problem.Minutes[task]);
        var limit = $"{string.Join(", ", names)} belong in one session, take {Words(minutes)} together with what waits there are between them, and ";
        var last = work.Tasks[members[^1]].Task;
        var lone = Lone(members, one => one);
        var heavily = members.Where(task => problem.Tasks[task].IsHeavy).Sum(task => problem.Minutes[task]);
        if (heavily > 0 && LoneWork.CanBeDone(lone))
        {
            var least = Enumerable.Range(1, heavily).FirstOrDefault(cap => LoneWork.CanBeDone(Changed.HeavyPerDay(LoneWork.Of(problem, members, one => one with { NotBefore = 0, StartBy = CompiledCalendar.Never }, problem.HeavyPerDay), cap)), heavily);
            return new(UnplannableKind.TooHeavyForADay, last, $"{limit}{Words(heavily)} of it is heavy work of one day", heavy.Raised(least));
        }

        var wanted = longer.InTheYearFrom(lone, members.Max(task => problem.Tasks[task].Crew), EasyStart(members[0]));
        return new(UnplannableKind.NoSessionForAllOfThem, last, limit + "there is no such session", wanted?.Words ?? "no day is long enough for them: glue it up in stages");
    }

    /// <summary>The work in one piece, or what of it is worth beginning.</summary>
    public static int InOneGo(CompiledTask plan) => plan.IsSplittable ? Math.Min(plan.Minutes, plan.LeastPiece) : plan.Minutes;

    /// <summary>A cure for tasks that the maker writes; the others have no key that would break them up.</summary>
    /// <param name="task">The task.</param>
    /// <param name="plan">The same as it is planned.</param>
    /// <param name="most">The most that fits, in minutes.</param>
    public static string CanBeBroken(ShopTask task, CompiledTask plan, int most) =>
        task.IsOwn && !plan.IsSplittable && most > 0 ? $", or break the task into smaller ones of {Words(most)} at most" : "";

    private ScheduleProblem Lone(IReadOnlyList<int> tasks, Func<CompiledTask, CompiledTask> change) =>
        LoneWork.Of(problem, tasks, task => change(task) with { IsHeavy = false, NotBefore = 0, StartBy = CompiledCalendar.Never }, HeavyCaps.None);

    /// <summary>The date before which a task cannot begin for the sake of what comes before it, were all that work ever so easy.</summary>
    private LocalDate EasyStart(int number)
    {
        var easy = Changed.Tasks(problem, (task, _) => task with { IsSplittable = true, LeastPiece = 1, IsNoisy = false, IsHeavy = false, Crew = Math.Min(1, task.Crew), StartBy = CompiledCalendar.Never });
        var schedule = new Schedule(easy.Tasks.Length, easy.Orders.Length);
        return new ScheduleGenerator(easy).Generate([.. Enumerable.Range(0, easy.Blocks)], easy.Minutes.AsSpan(), schedule) ? hours.At(schedule.Start[number]).Date : hours.First;
    }

    private static string Words(int minutes) => WorkTimeText.Write(WorkTime.FromMinutes(minutes));
}
