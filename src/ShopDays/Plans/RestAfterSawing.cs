using NodaTime;
using ShopDays.Days;
using ShopDays.Logbook;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Rests of what came of boards that are recorded as sawn: each runs from the sawing, as far as it is known when that was.</summary>
/// <remarks>
/// The date that is written down with the board is the date of its sawing, and the last of its cuts that the log has on that
/// date says at which moment. Where no date is written down, the last of its cuts in the log says both; where the log has
/// none either, nothing speaks against it that the board has lain for long, and it does not rest.
/// </remarks>
public static class RestAfterSawing
{
    /// <summary>The rests of a whole job that are not over.</summary>
    /// <param name="whole">The job.</param>
    /// <param name="standing">How far it has come by its log.</param>
    /// <param name="calendars">The workers' calendars: sawing of which only the date is known ended with the last session of it.</param>
    /// <param name="from">The moment from which is planned.</param>
    /// <param name="known">The moment up to which anything can have been done.</param>
    public static IReadOnlyList<RunningWait> Running(TaskGraph whole, JobStanding standing, IReadOnlyList<WorkingCalendar> calendars, Instant from, Instant known) =>
        Running(whole, standing, whole.Tasks.ToDictionary(task => task.Id, task => task.Id), calendars, from, known);

    /// <summary>The same of what is left of a job.</summary>
    /// <param name="whole">The job.</param>
    /// <param name="standing">How far it has come by its log.</param>
    /// <param name="places">The place of each task that is left, by its id in the whole job.</param>
    /// <param name="calendars">The workers' calendars.</param>
    /// <param name="from">The moment from which is planned.</param>
    /// <param name="known">The moment up to which anything can have been done.</param>
    internal static IReadOnlyList<RunningWait> Running(TaskGraph whole, JobStanding standing, IReadOnlyDictionary<int, int> places, IReadOnlyList<WorkingCalendar> calendars, Instant from, Instant known) =>
    [
        .. from rest in whole.SawnRests
           where places.ContainsKey(rest.Holds)
           group places[rest.Holds] by (rest.Board, rest.SawnOn, rest.Wait) into alike
           let sawn = SawnOn(alike.Key.Board, alike.Key.SawnOn, standing)
           where sawn is not null
           let start = EndedWork.EndOf(sawn.Value, calendars, known)
           let until = start + alike.Key.Wait.Duration
           where until > @from
           select new RunningWait(null, start, until, alike.Key.Wait.Reason, [.. alike.Distinct()], EndsTheJob: false) { Sawn = alike.Key.Board },
    ];

    private static WorkedOn? SawnOn(string board, LocalDate? written, JobStanding standing)
    {
        List<WorkedOn> logged =
        [
            .. standing.Strays
                .Where(stray => SawingOut.IsCutOf(stray.Task, board) && (written is null || stray.Last.Date == written))
                .Select(stray => stray.Last)
                .OrderBy(last => last.Date).ThenBy(last => last.Ended is null).ThenBy(last => last.Ended),
        ];
        return logged.Count > 0 ? logged[^1] : written is { } date ? new WorkedOn(date) : null;
    }
}
