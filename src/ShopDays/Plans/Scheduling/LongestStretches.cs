namespace ShopDays.Plans.Scheduling;

/// <summary>The longest stretch for which a task could be worked on in an otherwise empty shop.</summary>
internal sealed class LongestStretches
{
    private readonly ScheduleProblem problem;
    private readonly TeamHours hours;
    private readonly Dictionary<(int Crew, bool Noisy, bool Heavy), int> known = [];
    private readonly int[] minutes;

    /// <summary>Looks through the calendars, once for each kind of task.</summary>
    public LongestStretches(ScheduleProblem problem)
    {
        this.problem = problem;
        hours = new(problem, new(problem));
        minutes = [.. problem.Tasks.Select(For)];
    }

    /// <summary>The longest stretch for one of the tasks, the cap on heavy work included; 0 when there is none.</summary>
    public int Of(int task) => minutes[task];

    /// <summary>The longest stretch for any task; 0 when there is none.</summary>
    public int For(CompiledTask task)
    {
        var kind = (task.Crew, task.IsNoisy, task.IsHeavy);
        if (known.TryGetValue(kind, out var longest))
        {
            return longest;
        }

        foreach (var team in problem.TeamsOf(task.Crew))
        {
            var stretch = Longest(team, task);
            longest = Math.Max(longest, task.IsHeavy ? Math.Min(stretch, problem.HeavyPerDay.OfTeam(team)) : stretch);
        }

        known[kind] = longest;
        return longest;
    }

    /// <summary>The teams that are there for long enough in one stretch, whatever their caps on heavy work.</summary>
    public IEnumerable<int[]> TeamsThereFor(CompiledTask task, int minutes) => problem.TeamsOf(task.Crew).Where(team => Longest(team, task) >= minutes);

    private int Longest(int[] team, CompiledTask task)
    {
        if (team.Length == 0)
        {
            return CompiledCalendar.Never;
        }

        var longest = 0;
        var terms = new TaskTerms(problem, task);
        for (var minute = 0; hours.TryNext(team, terms, minute, least: 1, out var start, out var end, out _); minute = end)
        {
            longest = Math.Max(longest, end - start);
        }

        return longest;
    }
}
