using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Looks for what makes a plan impossible before one is tried, so that it can be said in words.</summary>
internal static class Obstacles
{
    /// <summary>What the shop does not have, and what fits into no session of a year: all of it, so that a task is not named again when it is cured.</summary>
    public static IReadOnlyList<Unplannable> Of(PlanRequest request, OpenHours hours)
    {
        if (request.Orders.Any(order => order.Graph.Tasks.Count > 0) && hours.Calendars.All(calendar => calendar.Count == 0))
        {
            return [ShutShop.Of(request, hours)];
        }

        List<ShopTask> tasks = [.. request.Orders.SelectMany(order => order.Graph.Tasks)];
        List<Unplannable> lacking = [.. tasks.SelectMany(task => Clamps(task, request.Limits, request.Lengths).Concat(Floor(task, request.Limits, request.Lengths.IsInInches)).Concat(ColdNights.Always(task)))];

        // What is too little is there at will, so that the hours can be looked at as well.
        var enough = lacking.Count == 0 ? request : request with { Limits = request.Limits with { Clamps = null, Floor = null } };
        var most = tasks.Select(task => task.Crew).DefaultIfEmpty().Max();
        lacking.AddRange(most > request.Calendars.Count ? Crews(enough, most - request.Calendars.Count) : InTheHours(enough, hours));
        return [.. lacking.OrderBy(reason => tasks.FindIndex(task => ReferenceEquals(task, reason.Task)))];
    }

    private static IReadOnlyList<Unplannable> InTheHours(PlanRequest request, OpenHours hours)
    {
        var problem = ProblemCompiler.Compile(request, hours);
        var sessions = new SessionObstacles(request, hours, problem);
        List<Unplannable> found = [.. sessions.OfSingleTasks(), .. ColdNights.WithoutSession(new(request.Orders), problem), .. new AppointedTasks(request, hours, problem).WithoutSession()];
        return found.Count > 0 ? found : sessions.OfTasksTogether();
    }

    /// <summary>Looks at the hours as if there were helpers who have none yet: what they are wanted for says which.</summary>
    private static IEnumerable<Unplannable> Crews(PlanRequest request, int missing)
    {
        var helpers = Enumerable.Range(1, missing).Select(helper => request.Calendars[0] with
        {
            Worker = missing == 1 ? "a helper" : FormattableString.Invariant($"helper {helper}"),
            Week = new(new Dictionary<IsoDayOfWeek, ShopHours>()),
            Extra = ExtraDates.None,
            Appointments = [],
        });
        var helped = request with { Calendars = [.. request.Calendars, .. helpers] };
        return InTheHours(helped, OpenHours.FirstYear(helped)).Select(reason => reason.Task is { } task && task.Crew - request.Calendars.Count is > 0 and var more
            ? new(UnplannableKind.CrewTooLarge, task, $"it takes {task.Crew} people, and {(request.Calendars.Count == 1 ? "1 works" : $"{request.Calendars.Count} work")} in the shop", $"{more} more under 'workers': {reason.Cure}")
            : reason);
    }

    private static IEnumerable<Unplannable> Clamps(ShopTask task, ShopLimits limits, LengthFormat lengths)
    {
        var missing = ClampShortage.Of(task.Clamps, limits);
        if (missing.Count == 0)
        {
            yield break;
        }

        var takes = missing.Select(one => $"{Clamps(one.Needed)} of {lengths.Write(one.Reach)} or longer, and the shop has {(one.Owned == 0 ? "none" : one.Owned)}");
        var more = missing.Select(one => $"{Clamps(one.Missing, "more ")} of {lengths.Write(lengths.RoundedUp(one.Reach))}");
        yield return new(UnplannableKind.NotEnoughClamps, task, $"it takes {string.Join(", and ", takes)}", $"{string.Join(" and ", more)} under 'clamps' in shop.yaml, borrowed ones too");

        static string Clamps(int number, string more = "") => FormattableString.Invariant($"{number} {more}{(number == 1 ? "clamp" : "clamps")}");
    }

    private static IEnumerable<Unplannable> Floor(ShopTask task, ShopLimits limits, bool inFeet)
    {
        if (FloorShortage.Of(task.Floor, limits) is { } shortage)
        {
            var needed = AreaText.WriteEnough(shortage.Needed, inFeet);
            yield return new(UnplannableKind.FloorTooSmall, task, $"it stands on {needed} of floor, and the shop has {AreaText.Write(shortage.Free, inFeet)} free", $"{needed} of free floor");
        }
    }
}
