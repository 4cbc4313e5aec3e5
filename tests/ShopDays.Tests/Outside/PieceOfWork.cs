using Google.OrTools.Sat;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Tests.Outside;

/// <summary>A time in which a team could work on something without a break.</summary>
internal readonly record struct WorkWindow(int[] Team, int From, int To, int Day, int SessionEnd);

/// <summary>One stretch of a task in an exact solver's model; a task that may be broken off has several, the later ones only if needed.</summary>
internal sealed class PieceOfWork
{
    private readonly Dictionary<int, BoolVar> worked = [];

    private PieceOfWork(int task, IntVar start, IntVar length, IntVar end, BoolVar isThere)
    {
        (Task, Start, Length, End, IsThere) = (task, start, length, end, isThere);
    }

    public int Task { get; }

    public IntVar Start { get; }

    public IntVar Length { get; }

    public IntVar End { get; }

    /// <summary>Whether there is such a stretch.</summary>
    public BoolVar IsThere { get; }

    /// <summary>The times it may lie in, and whether it does.</summary>
    public List<(WorkWindow Window, BoolVar IsIn)> Windows { get; } = [];

    /// <summary>The teams that may do it; none for what goes on by itself.</summary>
    public List<(int[] Team, BoolVar DoesIt)> Who { get; private init; } = [];

    /// <summary>The stretches of a task, one after another. What is not there has no length and lies at the end of the one before.</summary>
    public static PieceOfWork[] Of(CpModel model, ScheduleProblem problem, int task, int horizon)
    {
        var plan = problem.Tasks[task];
        var always = model.NewBoolVar("");
        model.Add(always == 1);
        if (plan.Crew == 0)
        {
            var (from, to) = (model.NewIntVar(0, horizon, ""), model.NewIntVar(0, horizon, ""));
            model.Add(to == from + plan.Minutes);
            return [new(task, from, model.NewConstant(plan.Minutes), to, always)];
        }

        var teams = SetsOf(plan.Crew, problem.Workers.Length).Select(team => (Team: team, DoesIt: model.NewBoolVar(""))).ToList();
        model.AddExactlyOne(teams.Select(team => team.DoesIt));
        var own = new List<PieceOfWork>();
        var most = plan.IsSplittable ? Math.Min(5, 1 + (plan.Minutes / plan.LeastPiece)) : 1;
        for (var number = 0; number < most; number++)
        {
            var piece = new PieceOfWork(task, model.NewIntVar(0, horizon, ""), model.NewIntVar(0, plan.Minutes, ""), model.NewIntVar(0, horizon, ""), number == 0 ? always : model.NewBoolVar("")) { Who = teams };
            own.Add(piece);
            model.Add(piece.End == piece.Start + piece.Length);
            model.Add(piece.Length >= 1).OnlyEnforceIf(piece.IsThere);
            model.Add(piece.Length == 0).OnlyEnforceIf(piece.IsThere.Not());
            foreach (var (team, doesIt) in teams)
            {
                foreach (var window in WindowsOf(problem, team, plan.IsNoisy, horizon))
                {
                    var isIn = model.NewBoolVar("");
                    model.AddImplication(isIn, doesIt);
                    model.Add(piece.Start >= window.From).OnlyEnforceIf(isIn);
                    model.Add(piece.End <= window.To).OnlyEnforceIf(isIn);
                    piece.Windows.Add((window, isIn));
                }
            }

            model.Add(LinearExpr.Sum(piece.Windows.Select(one => one.IsIn)) == piece.IsThere);
            if (number > 0)
            {
                var before = own[number - 1];
                model.AddImplication(piece.IsThere, before.IsThere);
                model.Add(piece.Start >= before.End);
                model.Add(piece.Start == before.End).OnlyEnforceIf(piece.IsThere.Not());

                // Whatever is not the last stretch is worth beginning.
                model.Add(before.Length >= plan.LeastPiece).OnlyEnforceIf(piece.IsThere);
                if (plan.EndsInAPiece)
                {
                    model.Add(piece.Length >= plan.LeastPiece).OnlyEnforceIf(piece.IsThere);
                }
            }
        }

        model.Add(LinearExpr.Sum(own.Select(piece => piece.Length)) == plan.Minutes);
        return [.. own];
    }

    /// <summary>Whether a worker is one of those who do it.</summary>
    public BoolVar WorkedBy(CpModel model, int worker)
    {
        if (!worked.TryGetValue(worker, out var works))
        {
            works = model.NewBoolVar("");
            model.Add(LinearExpr.Sum(Windows.Where(one => one.Window.Team.Contains(worker)).Select(one => one.IsIn)) == works);
            worked[worker] = works;
        }

        return works;
    }

    /// <summary>When everybody of a team is in a session, the quiet hours cut out for noisy work.</summary>
    private static IEnumerable<WorkWindow> WindowsOf(ScheduleProblem problem, int[] team, bool isNoisy, int last)
    {
        WorkWindow? open = null;
        last = Math.Min(last, problem.Workers.Max(worker => worker.To[^1]));
        for (var minute = 0; minute <= last + 1; minute++)
        {
            var sessions = team.Select(worker => SessionAt(problem.Workers[worker], minute)).ToList();
            var canWork = minute < last && sessions.TrueForAll(session => session >= 0) && !(isNoisy && team.Any(worker => problem.Workers[worker].NoiseEndsAt(minute) == minute));
            var sessionEnd = canWork ? team.Zip(sessions).Min(one => problem.Workers[one.First].To[one.Second]) : 0;
            if (open is { } before && (!canWork || before.SessionEnd != sessionEnd))
            {
                yield return before with { To = minute };
                open = null;
            }

            if (canWork)
            {
                open ??= new(team, minute, minute, problem.Workers[team[0]].Day[sessions[0]], sessionEnd);
            }
        }
    }

    private static int SessionAt(CompiledCalendar worker, int minute)
    {
        for (var session = 0; session < worker.Count && worker.From[session] <= minute; session++)
        {
            if (minute < worker.To[session])
            {
                return session;
            }
        }

        return -1;
    }

    private static IEnumerable<int[]> SetsOf(int crew, int workers) =>
        from number in Enumerable.Range(0, 1 << workers)
        where int.PopCount(number) == crew
        select Enumerable.Range(0, workers).Where(worker => (number & (1 << worker)) != 0).ToArray();
}
