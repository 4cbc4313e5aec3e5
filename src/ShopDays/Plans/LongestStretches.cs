namespace ShopDays.Plans;

/// <summary>The longest stretch for which each task could be worked on in an otherwise empty shop.</summary>
internal sealed class LongestStretches
{
    private readonly int[] minutes;

    /// <summary>Looks through the calendars, once for each kind of task.</summary>
    public LongestStretches(ScheduleProblem problem)
    {
        var floor = new ShopFloor(problem);
        var known = new Dictionary<(int Crew, bool Noisy, bool Heavy), int>();
        minutes = new int[problem.Tasks.Length];
        for (var task = 0; task < minutes.Length; task++)
        {
            var plan = problem.Tasks[task];
            var kind = (plan.Crew, plan.IsNoisy, plan.IsHeavy);
            if (!known.TryGetValue(kind, out var longest))
            {
                foreach (var team in problem.TeamsFor(task)) longest = Math.Max(longest, Longest(floor, team, plan));
                known[kind] = plan.IsHeavy && plan.Crew > 0 ? Math.Min(longest, problem.HeavyPerDay) : longest;
            }

            minutes[task] = known[kind];
        }
    }

    /// <summary>The longest stretch for a task; 0 when there is none.</summary>
    public int Of(int task) => minutes[task];

    private static int Longest(ShopFloor floor, int[] team, CompiledTask task)
    {
        if (team.Length == 0) return CompiledCalendar.Never;
        var longest = 0;
        for (var minute = 0; floor.TryNext(team, task, minute, out var start, out var end, out _); minute = end) longest = Math.Max(longest, end - start);
        return longest;
    }
}
