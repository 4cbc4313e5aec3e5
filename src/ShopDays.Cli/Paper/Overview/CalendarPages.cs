using NodaTime;
using ShopDays.Cli.Paper.Setting;

namespace ShopDays.Cli.Paper.Overview;

/// <summary>
/// The plan at a glance: a line for every date, the sessions as bars along the hours of the day, the waits as upright
/// bars beside them that run on over nights and closed days.
/// </summary>
internal static class CalendarPages
{
    private const double LowestRow = 8.6;
    private const double HighestRow = 20;

    /// <summary>The blocks.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="room">The space of a page.</param>
    public static IEnumerable<Block> Of(PlanPaper plan, Room room)
    {
        yield return new Heading("Calendar", TypeScale.Heading) { BookmarkLevel = 0 };
        yield return StagePattern.Legend(plan.Plan.Sessions.SelectMany(session => session.Work).Select(work => work.Task.Stage));
        var dates = DatesOf(plan);
        // What stands above: the heading, the legend, the hours, and white.
        var height = room.Height - 75;
        var perPage = (int)(height / LowestRow);
        var pages = (dates.Count + perPage - 1) / perPage;
        var share = (dates.Count + pages - 1) / pages;
        var row = Math.Min(HighestRow, height / share);
        foreach (var page in dates.Chunk(share))
        {
            var picture = new CalendarPicture(plan, page, row);
            yield return new Drawing(picture.Height, Meaning.Picture(picture.Description), picture.Draw);
        }

        yield return new Paragraph("Grey dates are closed. Numbers on the waits are those of the list of waits.", TypeScale.Small);
    }

    // From the job's start, or the first work, to whatever ends last; of the rest of a job, from the date that it is planned
    // from. What others owe, or dries, may run since long before: that is on the list of waits.
    private static List<LocalDate> DatesOf(PlanPaper plan)
    {
        LocalDate[] worked = [plan.Job.Start, .. plan.Plan.Sessions.Select(session => session.Session.Date)];
        LocalDate[] ends = [.. worked, plan.Plan.Finish.Date, .. plan.Plan.Waits.Select(wait => wait.End.Date)];
        return [.. new DateInterval(plan.Rest?.From.Date ?? worked.Min(), ends.Max())];
    }
}
