using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>
/// What is expected of each task in whole minutes: what a plan counts with, what it promises and what progress is held
/// against, so that a plan that is kept to the minute is neither ahead nor behind.
/// </summary>
public static class WholeMinutes
{
    /// <summary>The likely time of each task of a whole job, at its id.</summary>
    /// <param name="whole">The job; of the rest of one the tasks have the minutes that they have in the whole.</param>
    /// <param name="model">The rates.</param>
    public static IReadOnlyList<WorkTime> Of(TaskGraph whole, RateModel model) => Of([.. whole.Tasks.Select(model.LikelyTime)]);

    /// <summary>
    /// Times in whole minutes, each the next one down or up and a minute at the least. What rounding leaves of one is carried
    /// to the next, so that the sum is off by half a minute at the most, however many there are; where many are shorter than
    /// a minute, by what they lack of it and the others could not make up.
    /// </summary>
    /// <remarks>
    /// It is carried from the last to the first: joints, glue-ups and coats come out alike whatever boards the parts are
    /// sawn out of.
    /// </remarks>
    /// <param name="times">The times, in the order of the work.</param>
    public static IReadOnlyList<WorkTime> Of(IReadOnlyList<WorkTime> times)
    {
        var whole = new WorkTime[times.Count];
        var left = 0.0;
        for (var place = times.Count - 1; place >= 0; place--)
        {
            var exact = times[place].Minutes;
            var minutes = Math.Clamp(Math.Floor(exact + left + 0.5), Math.Max(1, Math.Floor(exact)), Math.Max(1, Math.Ceiling(exact)));
            left += exact - minutes;
            whole[place] = WorkTime.FromMinutes(minutes);
        }

        return whole;
    }

    /// <summary>One time by itself, to the nearest minute, one at the least.</summary>
    public static WorkTime Nearest(WorkTime time) => WorkTime.FromMinutes(ProblemCompiler.MinutesOf(time.Minutes));
}
