using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>What would have been promised of a job for which no promise is on record.</summary>
internal static class PromiseThen
{
    /// <summary>
    /// The promise of the whole job, no board sawn yet, planned from its start by what the log held when the first entry of
    /// the job was written down. Where that cannot be planned any more, of the job as it is now, and failing that by the
    /// rates of now.
    /// </summary>
    /// <returns>The promise; null when the job cannot be planned at all.</returns>
    public static Promise? Of(Workings workings)
    {
        var then = workings.Rates.Before(workings.Read);
        return Planned(workings.BeforeSawing(then)) ?? Planned(workings.By(then)) ?? Planned(workings);
    }

    private static Promise? Planned(Workings then)
    {
        if (then.Missing.Count > 0 || then.Order is not OrderOfWork.Made { Graph: var graph } || then.PlanOf(graph.AsKnownOn(then.Read.Job.Start)) is not PlanAnswer.Planned planned)
        {
            return null;
        }

        var start = then.Read.Shop.Place.Zone.AtStartOfDay(then.Read.Job.Start).ToInstant();
        return Promise.Of(then.Read.LogName, start, planned, graph, then.Rates.Model, then.DrawsOf(graph).OfAll());
    }
}
