using Google.OrTools.Sat;
using ShopDays.Plans.Scheduling;

namespace ShopDays.Tests.Outside;

/// <summary>
/// A small shop's rules, written down for an exact solver from what they mean: who is there when, what may be broken off,
/// what comes before what, what is kept and for how long. It knows nothing of how schedules are made here.
/// </summary>
internal sealed class WorkshopModel
{
    private readonly ScheduleProblem problem;
    private readonly CpModel model = new();
    private readonly int horizon;
    private readonly PieceOfWork[][] pieces;
    private readonly LinearExpr[] starts;
    private readonly LinearExpr[] ends;

    private WorkshopModel(ScheduleProblem problem, int atMost)
    {
        this.problem = problem;
        horizon = atMost + problem.Tasks.Max(task => task.WaitAtEnd + task.WetAfter + task.Holds.Select(hold => hold.MinutesAfter).DefaultIfEmpty().Max()) + 1;
        pieces = [.. problem.Tasks.Select((_, task) => PieceOfWork.Of(model, problem, task, atMost))];
        starts = [.. pieces.Select(own => own[0].Start)];
        ends = [.. pieces.Select(own => own[^1].End)];
        KeepOrder();
        KeepWorkersToOneThing();
        KeepHeavyCap();
        KeepThings();
        KeepDustOffCoats();
    }

    /// <summary>The earliest finish that there is.</summary>
    /// <param name="problem">The shop and its work.</param>
    /// <param name="atMost">A finish that can be had, after which nothing is looked for.</param>
    /// <param name="effort">How much the solver may do, in its own measure of work, near a second of an idle machine; a busy one only takes longer.</param>
    /// <returns>The proven optimum; none when the solver could not prove one in time. And whether it proved that there is no such schedule.</returns>
    public static (int? Optimum, bool IsImpossible) BestFinish(ScheduleProblem problem, int atMost, double effort)
    {
        var whole = new WorkshopModel(problem, atMost);
        var finish = whole.model.NewIntVar(0, atMost, "finish");
        for (var task = 0; task < problem.Tasks.Length; task++)
        {
            whole.model.Add(finish >= whole.ends[task] + problem.Tasks[task].WaitAtEnd);
        }

        whole.model.Minimize(finish);
        using var solver = new CpSolver { StringParameters = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"num_workers:2 random_seed:1 max_deterministic_time:{effort}") };
        var status = solver.Solve(whole.model);
        return (status == CpSolverStatus.Optimal ? (int)solver.Value(finish) : null, status == CpSolverStatus.Infeasible);
    }

    private void KeepOrder()
    {
        for (var task = 0; task < problem.Tasks.Length; task++)
        {
            model.Add(starts[task] >= problem.Tasks[task].NotBefore);
        }

        foreach (var one in problem.Precedences)
        {
            model.Add(starts[one.After] >= ends[one.Before] + one.Lag);
            if (!one.SameSession)
            {
                continue;
            }

            var own = pieces[one.Before];
            for (var piece = 0; piece < own.Length; piece++)
            {
                foreach (var (window, isIn) in own[piece].Windows)
                {
                    ILiteral[] isLast = piece + 1 < own.Length ? [isIn, own[piece + 1].IsThere.Not()] : [isIn];
                    model.Add(starts[one.After] <= window.SessionEnd - 1).OnlyEnforceIf(isLast);
                }
            }
        }
    }

    /// <summary>Nobody does two things at once, and turning from one set-up to another takes its time.</summary>
    private void KeepWorkersToOneThing()
    {
        for (var worker = 0; worker < problem.Workers.Length; worker++)
        {
            var own = pieces.SelectMany(piece => piece).Where(piece => piece.Who.Count > 0).Select(piece => (Piece: piece, Works: piece.WorkedBy(model, worker))).ToList();
            model.AddNoOverlap(own.Select(one => model.NewOptionalIntervalVar(one.Piece.Start, one.Piece.Length, one.Piece.End, one.Works, "")));
            if (problem.Changeover == 0)
            {
                continue;
            }

            for (var one = 0; one < own.Count; one++)
            {
                for (var other = one + 1; other < own.Count; other++)
                {
                    var (first, second) = (own[one].Piece, own[other].Piece);
                    if (problem.Tasks[first.Task].SetupKey == problem.Tasks[second.Task].SetupKey)
                    {
                        continue;
                    }

                    // Sessions of one worker are further apart than that, so it need not be asked which session it is.
                    var comesFirst = model.NewBoolVar("");
                    model.Add(second.Start >= first.End + problem.Changeover).OnlyEnforceIf([comesFirst, own[one].Works, own[other].Works]);
                    model.Add(first.Start >= second.End + problem.Changeover).OnlyEnforceIf([comesFirst.Not(), own[one].Works, own[other].Works]);
                }
            }
        }
    }

    private void KeepHeavyCap()
    {
        var heavy = pieces.SelectMany(piece => piece).Where(piece => problem.Tasks[piece.Task].IsHeavy && piece.Who.Count > 0).ToList();
        for (var worker = 0; worker < problem.Workers.Length; worker++)
        {
            var byDay = new Dictionary<int, List<LinearExpr>>();
            foreach (var piece in heavy)
            {
                foreach (var (window, isIn) in piece.Windows.Where(one => one.Window.Team.Contains(worker)))
                {
                    var done = model.NewIntVar(0, problem.HeavyPerDay.Of(worker), "");
                    model.Add(done >= piece.Length).OnlyEnforceIf(isIn);
                    byDay.TryAdd(window.Day, []);
                    byDay[window.Day].Add(done);
                }
            }

            foreach (var (day, done) in byDay)
            {
                model.Add(LinearExpr.Sum(done) <= problem.HeavyPerDay.Of(worker));
                model.Add(LinearExpr.Sum(done.Concat(byDay.GetValueOrDefault(day + 1, []))) <= problem.HeavyPerDay.OfTwoDays(worker));
            }
        }
    }

    /// <summary>Clamps, and the bench while somebody works at it.</summary>
    private void KeepThings()
    {
        var inUse = problem.Capacities.Select(capacity => model.AddCumulative(capacity)).ToArray();
        for (var task = 0; task < problem.Tasks.Length; task++)
        {
            var plan = problem.Tasks[task];
            foreach (var hold in plan.Holds)
            {
                var kept = model.NewIntVar(0, horizon, "");
                var interval = model.NewIntervalVar(starts[task], kept, ends[task] + hold.MinutesAfter, "");
                var taken = Enumerable.Range(hold.First, hold.Last - hold.First + 1).Select(thing => (Thing: thing, Number: model.NewIntVar(0, problem.Capacities[thing], ""))).ToList();
                model.Add(LinearExpr.Sum(taken.Select(one => one.Number)) == hold.Count);
                foreach (var (thing, number) in taken)
                {
                    inUse[thing].AddDemand(interval, number);
                }
            }

            foreach (var piece in pieces[task].Where(piece => plan.Place >= 0 && piece.Who.Count > 0))
            {
                inUse[plan.Place].AddDemand(model.NewOptionalIntervalVar(piece.Start, piece.Length, piece.End, piece.IsThere, ""), 1);
            }
        }
    }

    private void KeepDustOffCoats()
    {
        for (var coat = 0; coat < problem.Tasks.Length; coat++)
        {
            if (problem.Tasks[coat].WetAfter == 0)
            {
                continue;
            }

            foreach (var piece in pieces.SelectMany(piece => piece).Where(piece => piece.Task != coat && piece.Who.Count > 0 && problem.Tasks[piece.Task].IsDusty))
            {
                var dustFirst = model.NewBoolVar("");
                model.Add(piece.End <= starts[coat]).OnlyEnforceIf([dustFirst, piece.IsThere]);
                model.Add(piece.Start >= ends[coat] + problem.Tasks[coat].WetAfter).OnlyEnforceIf([dustFirst.Not(), piece.IsThere]);
            }
        }
    }
}
