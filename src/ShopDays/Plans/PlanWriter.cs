using NodaTime;
using ShopDays.Measures;
using ShopDays.Plans.Bounds;
using ShopDays.Plans.Scheduling;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Turns a schedule into a plan: tasks, sessions and the shop's clock in place of numbers.</summary>
internal sealed class PlanWriter(PlanRequest request, OpenHours hours, ScheduleProblem problem)
{
    private readonly WorkInHand work = new(request.Orders);

    /// <summary>Writes the plan.</summary>
    /// <param name="schedule">The schedule.</param>
    /// <param name="tried">How many were looked at.</param>
    /// <param name="whole">The problem with all hours that there are, for what no plan could better.</param>
    public Plan Write(Schedule schedule, int tried, ScheduleProblem whole)
    {
        var bound = BoundProof.Of(request, hours, whole, work);
        var sessions = SessionsOf(schedule);
        return new()
        {
            Sessions = sessions,
            Visits = HelperVisit.In(sessions, request.Calendars[0].Worker),
            HeavyInARow = WorkTime.FromMinutes(new UnbrokenHeavy(problem, Math.Max(1, (int)request.Limits.Bout.Minutes)).In(schedule)),
            Waits = WaitsOf(schedule),
            Begin = hours.At(hours.Begin),
            Finish = hours.At(schedule.Finish),
            Finishes = [.. schedule.Finishes.ToArray().Select(hours.At)],
            LowerBound = new BoundWriter(request, hours, work, hours.At(schedule.Finish).Date).Write(bound),
            ShopDays = schedule.ShopDays,
            Changeovers = schedule.Changeovers,
            Schedules = tried,
        };
    }

    /// <summary>The sessions in which work is done, in order of their beginning, the maker's before a helper's.</summary>
    public IReadOnlyList<PlannedSession> SessionsOf(Schedule schedule)
    {
        var first = new Dictionary<int, int>();
        var last = new Dictionary<int, int>();
        foreach (var piece in schedule.Pieces)
        {
            first[piece.Task] = Math.Min(first.GetValueOrDefault(piece.Task, int.MaxValue), piece.From);
            last[piece.Task] = Math.Max(last.GetValueOrDefault(piece.Task), piece.To);
        }

        return
        [
            .. from piece in schedule.Pieces.ToArray()
               group piece by (piece.Worker, piece.Session) into inSession
               let session = hours.Sessions[inSession.Key.Worker][problem.Workers[inSession.Key.Worker].Source[inSession.Key.Session]]
               orderby session.Start.ToInstant(), inSession.Key.Worker
               select new PlannedSession(session, WorksWithHoning([.. inSession.OrderBy(piece => piece.From)])),
        ];

        IReadOnlyList<PlannedWork> WorksWithHoning(WorkPiece[] pieces) =>
            HoningInSession.In([.. Works(pieces)], [.. pieces.Select(piece => (double)(piece.To - piece.From) / problem.Tasks[piece.Task].Minutes)]);

        IEnumerable<PlannedWork> Works(WorkPiece[] pieces) => pieces.Select((piece, index) => new PlannedWork
        {
            Order = request.Orders[work.Tasks[piece.Task].Order].Name,
            Task = work.Tasks[piece.Task].Task,
            Worker = request.Calendars[piece.Worker].Worker,
            Start = hours.At(piece.From),
            End = hours.At(piece.To),
            HandsOn = WorkTime.FromMinutes(piece.To - piece.From),
            Changeover = index > 0 && problem.Tasks[pieces[index - 1].Task].SetupKey != problem.Tasks[piece.Task].SetupKey
                ? WorkTime.FromMinutes(problem.Changeover)
                : WorkTime.Zero,
            Bouts = problem.Tasks[piece.Task].IsHeavy ? WorkBouts.Of(WorkTime.FromMinutes(piece.To - piece.From), request.Limits.Bout, () => BetweenBouts(piece, pieces, schedule)) : null,
            IsFirstPiece = piece.From == first[piece.Task],
            IsLastPiece = piece.To == last[piece.Task],
        });
    }

    /// <summary>Light work nearest to a piece of heavy work, in its session and of its worker, that may be broken off and could as well be done beside it.</summary>
    private ShopTask? BetweenBouts(WorkPiece heavy, WorkPiece[] session, Schedule schedule) => session
        .Where(piece => work.Tasks[piece.Task].Task is { WorkClass: WorkClass.Light, Crew: 1, IsSplittable: true } && CouldLieBeside(piece, heavy, schedule))
        .OrderBy(piece => piece.From < heavy.From ? heavy.From - piece.To : piece.From - heavy.To)
        .Select(piece => work.Tasks[piece.Task].Task)
        .FirstOrDefault();

    /// <summary>
    /// Whether a piece of work may be done while another is: what comes later has all that it waits for by the beginning of
    /// the other, and nothing that waits for what comes sooner begins before the other's end.
    /// </summary>
    private bool CouldLieBeside(WorkPiece piece, WorkPiece other, Schedule schedule)
    {
        if (piece.From < other.From)
        {
            foreach (var after in problem.After(piece.Task))
            {
                if (schedule.Start[after.After] < problem.ReadyAfter(after, other.To))
                {
                    return false;
                }
            }

            return true;
        }

        foreach (var before in problem.Before(piece.Task))
        {
            if (problem.ReadyAfter(before, schedule.End[before.Before]) > other.From)
            {
                return false;
            }
        }

        return problem.Tasks[piece.Task].NotBefore <= other.From;
    }

    /// <summary>The waits, in order of their beginning.</summary>
    public IReadOnlyList<PlannedWait> WaitsOf(Schedule schedule) =>
        [.. work.Each((order, place) => WaitsOf(order, place, schedule)).Concat(ForWarmth(schedule)).OrderBy(wait => wait.Start.ToInstant()).ThenBy(wait => wait.End.ToInstant())];

    /// <summary>Work that could be done but for the cold waits for warmer nights.</summary>
    private IEnumerable<PlannedWait> ForWarmth(Schedule schedule)
    {
        for (var number = 0; number < problem.Tasks.Length; number++)
        {
            var plan = problem.Tasks[number];
            if (plan.TooCold == CompiledNights.Nothing)
            {
                continue;
            }

            var (ready, after) = (Math.Max(hours.Begin, plan.NotBefore), -1);
            foreach (var one in problem.Before(number))
            {
                var over = problem.ReadyAfter(one, schedule.End[one.Before]);
                (ready, after) = over > ready ? (over, one.Before) : (ready, after);
            }

            foreach (var (from, to) in problem.Nights.Barred[plan.TooCold - 1].Stretches.Where(one => one.To > ready && one.To <= schedule.Start[number]))
            {
                var (order, task) = (work.Tasks[number].Order, work.Tasks[number].Task);
                yield return new(request.Orders[order].Name, after < 0 || work.Tasks[after].Awaited is not null ? null : work.Tasks[after].Task, hours.At(Math.Max(from, ready)), hours.At(to), $"{task.Name}: too cold at night for {task.Sets!.Name}, which needs {task.Sets.Least}");
            }
        }
    }

    private IEnumerable<PlannedWait> WaitsOf(OrderInHand order, int place, Schedule schedule)
    {
        var graph = order.Graph;
        foreach (var (index, one) in graph.Awaited.Index())
        {
            if (!one.HasCome)
            {
                yield return AwaitedOf(order, place, index, schedule);
            }
        }

        foreach (var wait in order.Running)
        {
            yield return new(order.Name, wait.After, wait.Start.InZone(request.Zone), wait.Until.InZone(request.Zone), wait.Reason)
            {
                Sawn = wait.Sawn,
                HoldsClamps = order.UnderWay?.Held.Any(held => held.By.Name == wait.After?.Name && held.ClampsUntil == wait.Until) == true,
            };
        }

        var after = graph.Precedences
            .Where(one => one.Wait is { } wait && wait.Duration > Duration.Zero)
            .Select(one => (Task: one.Before, Wait: one.Wait!))
            .Concat(graph.ClosingWaits.Select(one => (Task: one.After, one.Wait)))
            .GroupBy(one => (one.Task, one.Wait.Reason), one => one.Wait);
        foreach (var wait in after)
        {
            var start = hours.At(schedule.End[work.NumberOf(place, wait.Key.Task)]);
            var longest = wait.MaxBy(one => one.EndFrom(start).ToInstant())!;
            yield return new(order.Name, graph.Tasks[wait.Key.Task], start, longest.EndFrom(start), SlowedWait.Reason(longest, start)) { Slowed = longest.SlowedFrom(start), HoldsClamps = wait.Any(one => one.HoldsClamps) };
        }
    }

    private PlannedWait AwaitedOf(OrderInHand order, int place, int index, Schedule schedule)
    {
        var (one, number) = (order.Graph.Awaited[index], work.NumberOfAwaited(place, index));
        var start = AwaitedTime.AskedAt(order, one, hours) ?? hours.At(schedule.Start[number]);
        var after = one.After.Count == 0 ? null : order.Graph.Tasks[one.After.MaxBy(id => schedule.End[work.NumberOf(place, id)])];
        var late = order.KnownUntil is { } known ? Awaited.DaysLate(one.Decision, start, known) : 0;
        return new(order.Name, after, start, hours.At(schedule.End[number]), one.Decision.What)
        {
            Awaited = new(one, Awaited.EndOf(start, one.Wait.Low), Awaited.EndOf(start, one.Wait.High), late),
        };
    }
}
