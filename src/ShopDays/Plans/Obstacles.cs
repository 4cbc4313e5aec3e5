using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans.Scheduling;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Looks for what makes a plan impossible before one is tried, so that it can be said in words.</summary>
internal static class Obstacles
{
    /// <summary>What the shop does not have: sessions, people, clamps.</summary>
    public static IReadOnlyList<Unplannable> InTheShop(PlanRequest request, OpenHours hours)
    {
        if (request.Orders.Any(order => order.Graph.Tasks.Count > 0) && hours.Calendars.All(calendar => calendar.Count == 0))
        {
            return [ShutShop.Of(request)];
        }

        return [.. request.Orders.SelectMany(order => order.Graph.Tasks).SelectMany(task => Crew(task, request.Calendars.Count).Concat(Clamps(task, request.Limits, request.Lengths)).Concat(Floor(task, request.Limits, request.Lengths.IsInInches)).Concat(ColdNights.Always(task)))];
    }

    /// <summary>What does not fit into any session of a year.</summary>
    public static IReadOnlyList<Unplannable> InTheHours(PlanRequest request, OpenHours hours, ScheduleProblem problem)
    {
        var longest = new LongestStretches(problem);
        var work = new WorkInHand(request.Orders);
        List<Unplannable> found = [.. work.Tasks.SelectMany((one, number) => Fit(one.Task, problem.Tasks[number], problem.HeavyPerDay.OfCrew(problem.Tasks[number].Crew), longest))];
        return found.Count > 0 ? found : [.. Together(work, problem), .. ColdNights.WithoutSession(work, problem), .. new AppointedTasks(request, hours, problem).WithoutSession()];
    }

    private static IEnumerable<Unplannable> Crew(ShopTask task, int workers)
    {
        if (task.Crew <= workers)
        {
            yield break;
        }

        yield return new(UnplannableKind.CrewTooLarge, task, $"it takes {task.Crew} people, and {workers} work in the shop", $"hours for {task.Crew - workers} more");
    }

    private static IEnumerable<Unplannable> Clamps(ShopTask task, ShopLimits limits, LengthFormat lengths)
    {
        if (ClampShortage.Of(task.Clamps, limits) is not var (reach, needed, there))
        {
            yield break;
        }

        var length = lengths.Write(reach);
        yield return new(UnplannableKind.NotEnoughClamps, task, $"it takes {needed} clamps of {length} or longer, and the shop has {there}", $"{needed - there} more clamps of {length}");
    }

    private static IEnumerable<Unplannable> Floor(ShopTask task, ShopLimits limits, bool inFeet)
    {
        if (FloorShortage.Of(task.Floor, limits) is { } shortage)
        {
            var needed = AreaText.WriteEnough(shortage.Needed, inFeet);
            yield return new(UnplannableKind.FloorTooSmall, task, $"it stands on {needed} of floor, and the shop has {AreaText.Write(shortage.Free, inFeet)} free", $"{needed} of free floor");
        }
    }

    private static IEnumerable<Unplannable> Fit(ShopTask task, CompiledTask plan, int heavyPerDay, LongestStretches longest)
    {
        var inOneGo = plan.IsSplittable ? Math.Min(plan.Minutes, plan.LeastPiece) : plan.Minutes;
        var room = longest.For(plan);
        if (inOneGo <= room)
        {
            yield break;
        }

        var takes = plan.IsSplittable ? $"it is worth beginning for {Words(inOneGo)} at least" : $"it takes {Words(inOneGo)} in one go";
        var split = plan.IsSplittable ? "" : ", or break the task into smaller ones";
        if (plan.IsHeavy && (inOneGo > heavyPerDay || inOneGo <= longest.For(plan with { IsHeavy = false })))
        {
            // Whoever may do more than this has no session that is long enough.
            heavyPerDay = Math.Min(heavyPerDay, room);
            yield return new(UnplannableKind.TooHeavyForADay, task, $"{takes}, and a day has {Words(heavyPerDay)} of heavy work", $"allow {Words(inOneGo)} of heavy work a day{split}");
        }
        else if (plan.IsNoisy && inOneGo <= longest.For(plan with { IsNoisy = false }))
        {
            yield return new(UnplannableKind.QuietHours, task, $"{takes} and is noisy, and outside quiet hours no session has more than {Words(room)}", $"a session with {Words(inOneGo)} outside quiet hours{split}");
        }
        else if (plan.Crew > 1 && inOneGo <= longest.For(plan with { Crew = 1 }))
        {
            yield return new(UnplannableKind.NotTogetherLongEnough, task, $"{takes} for {plan.Crew} people, and in the first year they are there together for {Words(room)} at most", $"sessions that overlap by {Words(inOneGo)}{split}");
        }
        else
        {
            yield return new(UnplannableKind.NoSessionLongEnough, task, $"{takes}, and the longest session has {Words(room)} of work", $"a session with {Words(inOneGo)} of work{split}");
        }
    }

    /// <summary>Tries each set of tasks that belong into one session by itself in an empty shop.</summary>
    private static IEnumerable<Unplannable> Together(WorkInHand work, ScheduleProblem problem)
    {
        var generator = new ScheduleGenerator(problem);
        var schedule = new Schedule(problem.Tasks.Length, problem.Orders.Length);
        for (var block = 0; block < problem.Blocks; block++)
        {
            if (problem.Members(block).Length < 2 || ColdNights.Bar(problem, block) || generator.Generate([block], problem.Minutes.AsSpan(), schedule))
            {
                continue;
            }

            var names = problem.Members(block).ToArray().Select(task => work.Tasks[task].Task.Name);
            var minutes = problem.Members(block).ToArray().Sum(task => problem.Minutes[task]);
            var least = LeastSession.Of(problem, block);
            yield return new(
                UnplannableKind.NoSessionForAllOfThem,
                work.Tasks[problem.Members(block)[^1]].Task,
                $"{string.Join(", ", names)} belong into one session, take {Words(minutes)} together with what waits there are between them, and there is no such session",
                least is { } enough ? $"a session with {Words(enough)} of work, or break the work into smaller tasks" : "break the work into smaller tasks, or shorten the waits between");
        }
    }

    private static string Words(int minutes) => WorkTimeText.Write(WorkTime.FromMinutes(minutes));
}
