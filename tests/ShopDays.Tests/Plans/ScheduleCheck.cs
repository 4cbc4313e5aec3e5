using ShopDays.Plans.Scheduling;

namespace ShopDays.Tests.Plans;

/// <summary>Looks at a finished schedule minute by minute, knowing the rules and nothing of how it was made.</summary>
internal static class ScheduleCheck
{
    /// <summary>Every rule that is broken, in words; none for a sound schedule.</summary>
    public static IReadOnlyList<string> Faults(ScheduleProblem problem, Schedule schedule, IReadOnlyList<int>? minutes = null)
    {
        var pieces = schedule.Pieces.ToArray();
        return
        [
            .. Enumerable.Range(0, problem.Tasks.Length).SelectMany(task => OfTask(problem, schedule, task, minutes?[task] ?? problem.Tasks[task].Minutes, [.. pieces.Where(piece => piece.Task == task)])),
            .. problem.Precedences.SelectMany(one => OfPrecedence(problem, schedule, one, pieces)),
            .. pieces.SelectMany(piece => OfPiece(problem, piece)),
            .. Enumerable.Range(0, problem.Workers.Length).SelectMany(worker => OfWorker(problem, [.. pieces.Where(piece => piece.Worker == worker).OrderBy(piece => piece.From)])),
            .. OfPlaces(problem, pieces),
            .. OfAir(problem, schedule, pieces),
            .. HoldCheck.Faults(problem, schedule),
            .. OfTotals(problem, schedule, pieces),
        ];
    }

    private static IEnumerable<string> OfTask(ScheduleProblem problem, Schedule schedule, int id, int minutes, WorkPiece[] pieces)
    {
        var task = problem.Tasks[id];
        if (schedule.Start[id] < Math.Max(task.NotBefore, task.WaitAtStart))
        {
            yield return $"{id} begins too early";
        }

        if (schedule.Start[id] >= task.StartBy)
        {
            yield return $"{id} begins too late";
        }

        if (task.TooCold != CompiledNights.Nothing && problem.Nights.Barred[task.TooCold - 1].Stretches.Any(cold => schedule.Start[id] < cold.To && schedule.End[id] > cold.From))
        {
            yield return $"{id} is done in the cold";
        }

        if (task.Crew == 0)
        {
            if (pieces.Length > 0 || schedule.End[id] - schedule.Start[id] != minutes)
            {
                yield return $"{id} goes on by itself for the wrong time";
            }

            yield break;
        }

        var byWorker = pieces.GroupBy(piece => piece.Worker).Select(group => group.OrderBy(piece => piece.From).ToList()).ToList();
        if (byWorker.Count != task.Crew)
        {
            yield return $"{id} has {byWorker.Count} workers, not {task.Crew}";
            yield break;
        }

        foreach (var own in byWorker)
        {
            if (own.Sum(piece => piece.To - piece.From) != minutes)
            {
                yield return $"{id} is not done once";
            }

            if (own[0].From != schedule.Start[id] || own[^1].To != schedule.End[id])
            {
                yield return $"{id} has other ends than its work";
            }

            if (!own.Select(piece => (piece.From, piece.To)).SequenceEqual(byWorker[0].Select(piece => (piece.From, piece.To))))
            {
                yield return $"{id}'s crew is not there together";
            }

            if (!task.IsSplittable && own.Count > 1)
            {
                yield return $"{id} is broken off";
            }

            var left = minutes;
            foreach (var piece in own)
            {
                if (piece.To - piece.From < Math.Min(left, task.LeastPiece))
                {
                    yield return $"{id} has a piece too short to begin";
                }

                left -= piece.To - piece.From;
                if (task.EndsInAPiece && left > 0 && left < task.LeastPiece)
                {
                    yield return $"{id} is broken off with too little left";
                }
            }
        }
    }

    private static IEnumerable<string> OfPrecedence(ScheduleProblem problem, Schedule schedule, CompiledPrecedence one, WorkPiece[] pieces)
    {
        if (schedule.Start[one.After] < problem.Nights.EndOf(schedule.End[one.Before], one.Lag, one.Sets))
        {
            yield return $"{one.After} begins before {one.Before} is over";
        }

        if (!one.SameSession || problem.Tasks[one.Before].Crew == 0)
        {
            yield break;
        }

        var last = pieces.Where(piece => piece.Task == one.Before && piece.To == schedule.End[one.Before]);
        if (last.Any(piece => schedule.Start[one.After] >= problem.Workers[piece.Worker].To[piece.Session]))
        {
            yield return $"{one.After} begins after the session of {one.Before}";
        }
    }

    private static IEnumerable<string> OfPiece(ScheduleProblem problem, WorkPiece piece)
    {
        var calendar = problem.Workers[piece.Worker];
        if (piece.From < calendar.From[piece.Session] || piece.To > calendar.To[piece.Session])
        {
            yield return $"{piece.Task} is done outside its session";
        }

        if (piece.Day != calendar.Day[piece.Session])
        {
            yield return $"{piece.Task} is on the wrong day";
        }

        if (problem.Tasks[piece.Task].IsNoisy && Enumerable.Range(piece.From, piece.To - piece.From).Any(minute => calendar.NoiseEndsAt(minute) == minute))
        {
            yield return $"{piece.Task} is noisy in quiet hours";
        }
    }

    private static IEnumerable<string> OfWorker(ScheduleProblem problem, WorkPiece[] pieces)
    {
        foreach (var (first, second) in pieces.Zip(pieces.Skip(1)))
        {
            if (second.From < first.To)
            {
                yield return $"{first.Task} and {second.Task} are done at the same time by one worker";
            }

            if (first.Session == second.Session && Turns(problem, first, second) && second.From < first.To + problem.Changeover)
            {
                yield return $"no time to turn from {first.Task} to {second.Task}";
            }
        }

        foreach (var day in pieces.Where(piece => problem.Tasks[piece.Task].IsHeavy).GroupBy(piece => piece.Day))
        {
            if (day.Sum(piece => piece.To - piece.From) > problem.HeavyPerDay.Of(pieces[0].Worker))
            {
                yield return $"day {day.Key} is too heavy";
            }

            var next = pieces.Where(piece => problem.Tasks[piece.Task].IsHeavy && piece.Day == day.Key + 1).Sum(piece => piece.To - piece.From);
            if (next > 0 && day.Sum(piece => piece.To - piece.From) + next > problem.HeavyPerDay.OfTwoDays(pieces[0].Worker))
            {
                yield return $"day {day.Key} and the next are too heavy";
            }
        }
    }

    private static IEnumerable<string> OfPlaces(ScheduleProblem problem, WorkPiece[] pieces)
    {
        var taken = new Dictionary<(int Place, int Minute), int>();
        foreach (var piece in pieces.DistinctBy(piece => (piece.Task, piece.From)).Where(piece => problem.Tasks[piece.Task].Place >= 0))
        {
            for (var minute = piece.From; minute < piece.To; minute++)
            {
                var key = (problem.Tasks[piece.Task].Place, minute);
                taken[key] = taken.GetValueOrDefault(key) + 1;
            }
        }

        foreach (var (key, number) in taken)
        {
            if (number > problem.Capacities[key.Place])
            {
                yield return $"more than {problem.Capacities[key.Place]} work at place {key.Place}";
            }
        }
    }

    private static IEnumerable<string> OfAir(ScheduleProblem problem, Schedule schedule, WorkPiece[] pieces) =>
        from coat in Enumerable.Range(0, problem.Tasks.Length)
        where problem.Tasks[coat].WetAfter > 0 || problem.Tasks[coat].WetBefore > 0
        from piece in pieces
        where piece.Task != coat && problem.Tasks[piece.Task].IsDusty
            && piece.From < problem.Nights.EndOf(schedule.End[coat], problem.Tasks[coat].WetAfter, problem.Tasks[coat].DriesAfter) && schedule.Start[coat] - problem.Tasks[coat].WetBefore < piece.To
        select $"dust of {piece.Task} falls on {coat}";

    private static IEnumerable<string> OfTotals(ScheduleProblem problem, Schedule schedule, WorkPiece[] pieces)
    {
        var finish = Enumerable.Range(0, problem.Tasks.Length).Select(task => problem.Nights.EndOf(schedule.End[task], problem.Tasks[task].WaitAtEnd, problem.Tasks[task].SetsAtEnd)).DefaultIfEmpty().Max();
        if (schedule.Finish != finish)
        {
            yield return "the finish is not that of the last task and wait";
        }

        if (schedule.ShopDays != pieces.Select(piece => piece.Day).Distinct().Count())
        {
            yield return "shop days are counted wrongly";
        }

        if (schedule.CallDays != pieces.Where(piece => piece.Worker > 0).Select(piece => piece.Day).Distinct().Count())
        {
            yield return "days on which somebody is called in are counted wrongly";
        }

        var turns = pieces.GroupBy(piece => (piece.Worker, piece.Session)).Sum(session =>
        {
            var own = session.OrderBy(piece => piece.From).ToList();
            return own.Zip(own.Skip(1)).Count(pair => Turns(problem, pair.First, pair.Second));
        });
        if (schedule.Changeovers != turns)
        {
            yield return $"{turns} changeovers are counted as {schedule.Changeovers}";
        }
    }

    private static bool Turns(ScheduleProblem problem, WorkPiece first, WorkPiece second)
    {
        var (before, after) = (problem.Tasks[first.Task].SetupKey, problem.Tasks[second.Task].SetupKey);
        return before >= 0 && after >= 0 && before != after;
    }
}
