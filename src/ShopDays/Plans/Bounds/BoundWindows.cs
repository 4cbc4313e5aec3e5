using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans.Bounds;

/// <summary>When teams could work in an empty shop, and how late a task can begin there to be done by some minute.</summary>
internal sealed class BoundWindows
{
    private readonly ScheduleProblem problem;
    private readonly Dictionary<(int Crew, bool IsNoisy), List<OpenStretch>[]> known = [];

    /// <summary>Looks through the calendars of all teams that are needed.</summary>
    public BoundWindows(ScheduleProblem problem)
    {
        this.problem = problem;
        foreach (var kind in problem.Tasks.Where(task => task.Crew > 0).Select(task => (task.Crew, task.IsNoisy)).Distinct())
        {
            known[kind] = [.. problem.TeamsOf(kind.Crew).Select(team => Of([.. team.Select(worker => problem.Workers[worker])], kind.IsNoisy))];
        }
    }

    /// <summary>The last minute at which a task can begin to be done by another; -1 when there is none.</summary>
    public int LatestStart(int task, int by)
    {
        var plan = problem.Tasks[task];
        if (plan.Crew == 0)
        {
            return Math.Max(-1, by - plan.Minutes);
        }

        var latest = -1;
        foreach (var windows in known[(plan.Crew, plan.IsNoisy)])
        {
            latest = Math.Max(latest, plan.IsSplittable ? InPieces(windows, plan, by) : InOnePiece(windows, plan, by));
        }

        return latest;
    }

    /// <summary>The stretches in which all of some workers are there, one session of each at a time, the quiet hours of all cut out where noise is asked for.</summary>
    public static List<OpenStretch> Of(CompiledCalendar[] team, bool isNoisy)
    {
        var found = new List<OpenStretch>();
        var quiet = isNoisy ? team.SelectMany(member => member.Quiet).OrderBy(still => still.From).ToList() : [];
        var session = new int[team.Length];
        while (Enumerable.Range(0, team.Length).All(member => session[member] < team[member].Count))
        {
            var (from, to, ends) = (0, CompiledCalendar.Never, 0);
            for (var member = 0; member < team.Length; member++)
            {
                from = Math.Max(from, team[member].From[session[member]]);
                if (team[member].To[session[member]] < to)
                {
                    (to, ends) = (team[member].To[session[member]], member);
                }
            }

            if (from < to)
            {
                Add(new(from, to, team[0].Day[session[0]]));
            }

            session[ends]++;
        }

        return found;

        void Add(OpenStretch open)
        {
            foreach (var still in quiet.Where(still => still.From < open.To && still.To > open.From))
            {
                if (still.From > open.From)
                {
                    found.Add(open with { To = still.From });
                }

                open = open with { From = Math.Max(open.From, still.To) };
            }

            if (open.From < open.To)
            {
                found.Add(open);
            }
        }
    }

    private static int InOnePiece(List<OpenStretch> windows, CompiledTask plan, int by)
    {
        for (var window = LastBeginningBefore(windows, by); window >= 0; window--)
        {
            var start = Math.Min(by, windows[window].To) - plan.Minutes;
            if (start >= windows[window].From)
            {
                return start;
            }
        }

        return -1;
    }

    private int InPieces(List<OpenStretch> windows, CompiledTask plan, int by)
    {
        var (left, day, today, done) = (plan.Minutes, -1, 0, 0);
        for (var window = LastBeginningBefore(windows, by); window >= 0; window--)
        {
            var (from, to, ofDay) = windows[window];
            if (ofDay != day)
            {
                today = plan.IsHeavy ? Math.Min(problem.HeavyPerDay.OfCrew(plan.Crew), problem.HeavyPerDay.OfCrewInTwoDays(plan.Crew) - (ofDay == day - 1 ? done : 0)) : CompiledCalendar.Never;
                (day, done) = (ofDay, 0);
            }

            var end = Math.Min(by, to);
            var work = Math.Min(Math.Min(end - from, today), left);
            (left, today, done) = (left - work, today - work, done + work);
            if (left == 0)
            {
                return end - work;
            }
        }

        return -1;
    }

    private static int LastBeginningBefore(List<OpenStretch> windows, int minute)
    {
        var (low, high) = (0, windows.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = windows[middle].From < minute ? (middle + 1, high) : (low, middle);
        }

        return low - 1;
    }
}
