using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans;

/// <summary>Counts, trial by trial, the sessions of a plan whose work is not done by their end.</summary>
/// <remarks>A trial costs a look at the end of each task, and nothing is allocated. Counts of the same plan add up in any order.</remarks>
internal sealed class SessionRisk
{
    private const int Most = 5;

    private readonly int[] tasks;
    private readonly int[] firstTask;
    private readonly (int Worker, int Source, int End)[] sessions;
    private readonly int[] notDone;
    private readonly int[] slips;
    private readonly int[] heldUp;
    private int trials;

    /// <summary>Prepares the counts.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="plan">Its schedule as planned, all of it placed.</param>
    /// <param name="order">The place of the order whose tasks count.</param>
    public SessionRisk(ScheduleProblem problem, Schedule plan, int order)
    {
        var ending = new SortedDictionary<(int End, int Worker, int Source), List<int>>();
        foreach (var piece in plan.Pieces)
        {
            if (problem.Tasks[piece.Task].Order != order || piece.To != plan.End[piece.Task])
            {
                continue;
            }

            var calendar = problem.Workers[piece.Worker];
            var key = (EndOf(calendar, piece.Session), piece.Worker, calendar.Source[piece.Session]);
            if (!ending.TryGetValue(key, out var some))
            {
                ending.Add(key, some = []);
            }

            some.Add(piece.Task);
        }

        sessions = [.. ending.Keys.Select(key => (key.Worker, key.Source, key.End))];
        tasks = [.. ending.Values.SelectMany(some => some)];
        firstTask = new int[sessions.Length + 1];
        foreach (var (place, some) in ending.Values.Index())
        {
            firstTask[place + 1] = firstTask[place] + some.Count;
        }

        (notDone, slips, heldUp) = (new int[sessions.Length], new int[sessions.Length], new int[tasks.Length]);
    }

    private SessionRisk(SessionRisk like)
    {
        (tasks, firstTask, sessions) = (like.tasks, like.firstTask, like.sessions);
        (notDone, slips, heldUp) = (new int[sessions.Length], new int[sessions.Length], new int[tasks.Length]);
    }

    /// <summary>Counts of the same plan, none yet.</summary>
    public SessionRisk Empty() => new(this);

    /// <summary>Counts a trial of which every task was placed.</summary>
    /// <param name="end">The end of each task.</param>
    public void Count(ReadOnlySpan<int> end)
    {
        trials++;
        var wasLate = false;
        for (var session = 0; session < sessions.Length; session++)
        {
            var isLate = false;
            for (var at = firstTask[session]; at < firstTask[session + 1]; at++)
            {
                if (end[tasks[at]] > sessions[session].End)
                {
                    isLate = true;
                    heldUp[at] += wasLate ? 0 : 1;
                }
            }

            notDone[session] += isLate ? 1 : 0;
            slips[session] += isLate && !wasLate ? 1 : 0;
            wasLate = isLate;
        }
    }

    /// <summary>Adds other counts of the same plan.</summary>
    public void Add(SessionRisk others)
    {
        trials += others.trials;
        Sum(notDone, others.notDone);
        Sum(slips, others.slips);
        Sum(heldUp, others.heldUp);
    }

    /// <summary>The sessions in which the plan slips most often, the first most often of all; five at the most, and none that no trial slips in.</summary>
    public IReadOnlyList<SessionAtRisk> Greatest(OpenHours hours, WorkInHand work) =>
    [
        .. Enumerable.Range(0, sessions.Length)
            .Where(session => slips[session] > 0)
            .OrderByDescending(session => slips[session])
            .ThenBy(session => session)
            .Take(Most)
            .Select(session => new SessionAtRisk(
                hours.Sessions[sessions[session].Worker][sessions[session].Source],
                [
                    .. Enumerable.Range(firstTask[session], firstTask[session + 1] - firstTask[session])
                        .OrderByDescending(at => heldUp[at])
                        .ThenBy(at => at)
                        .Select(at => work.Tasks[tasks[at]].Task),
                ],
                (double)slips[session] / trials,
                (double)notDone[session] / trials)),
    ];

    /// <summary>The end of a session, of which the calendar may hold several stretches.</summary>
    private static int EndOf(CompiledCalendar calendar, int stretch)
    {
        var last = stretch;
        while (last + 1 < calendar.Count && calendar.Source[last + 1] == calendar.Source[stretch])
        {
            last++;
        }

        return calendar.To[last];
    }

    private static void Sum(int[] into, int[] others)
    {
        for (var place = 0; place < into.Length; place++)
        {
            into[place] += others[place];
        }
    }
}
