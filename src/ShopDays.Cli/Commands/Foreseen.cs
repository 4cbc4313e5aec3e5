using ShopDays.Cli.Files;
using ShopDays.Layouts;
using ShopDays.Plans;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>What stands against a plan of a job and shows before any board is laid out.</summary>
internal static class Foreseen
{
    /// <summary>
    /// The obstacles of all work but sawing, planing and edge-gluing, with the times of the built-in rates; none where the
    /// order of work goes round, which is said elsewhere.
    /// </summary>
    public static IReadOnlyList<Unplannable> In(ShopAndJob read)
    {
        var rates = RateModel.FromPrior(read.Operations);
        var calendars = read.Shop.Workers.Select(read.Shop.CalendarOf).ToList();
        var longest = calendars.Max(calendar => calendar.LongestSession(read.Job.Start)) ?? calendars.Min(calendar => calendar.LeastUseful);
        var nothingLaidOut = LayoutSearch.LayOut(LayoutRequest.For(read.Job with { Parts = [] }, ShopRates.ForLayout(rates, operation => operation.MethodIn(read.Job), null)));
        if (OrderOfWork.Build(read.Job, nothingLaidOut, read.Operations, read.Waits, read.Shop.Limits, longest) is not OrderOfWork.Made { Graph: var graph })
        {
            return [];
        }

        var times = WholeMinutes.Of(graph, rates);
        return PlanMaker.Foresee(new()
        {
            Orders = [new() { Name = read.LogName, Graph = graph, Times = times, Draws = new([[.. times.Select(time => time.Minutes)]], 1), Start = read.Job.Start }],
            Calendars = calendars,
            Limits = read.Shop.Limits,
            Lengths = read.Located.Format,
        });
    }
}
