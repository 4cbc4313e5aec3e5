using ShopDays.Plans.Scheduling;

namespace ShopDays.Tests.Plans;

/// <summary>
/// Whether everything that is held in a schedule can be handed out and kept unexchanged. Tries every way of handing
/// out, so it is for small numbers.
/// </summary>
internal static class HoldCheck
{
    private sealed record Kept(int From, int To, Hold Hold);

    public static IEnumerable<string> Faults(ScheduleProblem problem, Schedule schedule)
    {
        var kept = new List<Kept>();
        var places = new List<(int Resource, int From, int To)>();
        for (var task = 0; task < problem.Tasks.Length; task++)
        {
            foreach (var hold in problem.Tasks[task].Holds)
            {
                kept.Add(new(schedule.Start[task] - hold.MinutesBefore, problem.Nights.EndOf(schedule.End[task], hold.MinutesAfter, hold.Sets), hold));
            }
        }

        foreach (var piece in schedule.Pieces.ToArray().DistinctBy(piece => (piece.Task, piece.From)))
        {
            if (problem.Tasks[piece.Task].Place >= 0)
            {
                places.Add((problem.Tasks[piece.Task].Place, piece.From, piece.To));
            }
        }

        var inUse = places.ConvertAll(place => (place.Resource, place.From, place.To, Number: 1));
        if (!CanHandOut(problem, [.. kept.Where(one => one.To > one.From)], 0, inUse))
        {
            yield return "more is held than there is";
        }
    }

    private static bool CanHandOut(ScheduleProblem problem, List<Kept> kept, int next, List<(int Resource, int From, int To, int Number)> inUse) =>
        next == kept.Count || CanHandOut(problem, kept, next, kept[next].Hold.First, kept[next].Hold.Count, inUse);

    private static bool CanHandOut(ScheduleProblem problem, List<Kept> kept, int next, int resource, int missing, List<(int Resource, int From, int To, int Number)> inUse)
    {
        if (missing == 0)
        {
            return CanHandOut(problem, kept, next + 1, inUse);
        }

        var one = kept[next];
        if (resource > one.Hold.Last)
        {
            return false;
        }

        for (var number = Math.Min(missing, Spare(problem, one, resource, inUse)); number >= 0; number--)
        {
            inUse.Add((resource, one.From, one.To, number));
            if (CanHandOut(problem, kept, next, resource + 1, missing - number, inUse))
            {
                return true;
            }

            inUse.RemoveAt(inUse.Count - 1);
        }

        return false;
    }

    /// <summary>What is spare throughout; use only rises where something begins.</summary>
    private static int Spare(ScheduleProblem problem, Kept one, int resource, List<(int Resource, int From, int To, int Number)> inUse)
    {
        var own = inUse.Where(use => use.Resource == resource && use.From < one.To && use.To > one.From).ToList();
        var most = own.Select(use => Math.Max(use.From, one.From)).Select(minute => own.Where(use => use.From <= minute && use.To > minute).Sum(use => use.Number)).DefaultIfEmpty().Max();
        return problem.Capacities[resource] - most;
    }
}
