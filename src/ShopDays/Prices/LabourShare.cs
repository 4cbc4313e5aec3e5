using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Prices;

/// <summary>Kinds of hours that a price is made of, in the usual order of the work.</summary>
public enum LabourKind
{
    /// <summary>At the saw.</summary>
    Sawing,

    /// <summary>Planing to size.</summary>
    Planing,

    /// <summary>Joints.</summary>
    Joinery,

    /// <summary>Gluing and fitting together.</summary>
    Assembly,

    /// <summary>Smoothing and coats.</summary>
    Finishing,

    /// <summary>Drawing, fetching timber, fitting what is bought, and all else.</summary>
    Other,

    /// <summary>Work away from the shop, to which the maker travels.</summary>
    Delivery,

    /// <summary>What is done again where a piece is spoiled, as on average.</summary>
    DoneAgain,
}

/// <summary>The hands-on time of one kind within the hours that are priced.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Minutes">Whole minutes, above 0.</param>
public sealed record LabourShare(LabourKind Kind, long Minutes)
{
    /// <summary>
    /// The time that all work takes as likely as not, shared out among its kinds as their times are on average. The middles of
    /// the kinds themselves would not add up to the middle of all.
    /// </summary>
    /// <param name="job">The job.</param>
    /// <param name="graph">Its tasks.</param>
    /// <param name="draws">Drawn courses of them, with what is done again.</param>
    /// <returns>Kinds with a minute at least, in their order; their minutes add up to the middle of all work to the minute.</returns>
    public static IReadOnlyList<LabourShare> Of(Job job, TaskGraph graph, TimeDraws draws)
    {
        var away = job.Work.Where(task => task.PaidKilometres > 0).Select(task => task.Name).ToHashSet(StringComparer.Ordinal);
        var means = new decimal[Enum.GetValues<LabourKind>().Length];
        foreach (var task in graph.Tasks)
        {
            means[(int)KindOf(task, away)] += (decimal)draws.Minutes.Average(trial => trial[task.Id]);
        }

        means[(int)LabourKind.DoneAgain] += draws.Reworks is { } reworks ? (decimal)reworks.Average(trial => trial.Sum(one => one.Minutes)) : 0;
        return means.Sum() == 0
            ? []
            : [.. LargestRemainder.Share(WholeMinutes(draws.OfAll().P50), means).Select((minutes, kind) => new LabourShare((LabourKind)kind, minutes)).Where(share => share.Minutes > 0)];
    }

    /// <summary>A time to the whole minute, halves away from zero, as it is printed and priced.</summary>
    public static long WholeMinutes(WorkTime time) => (long)Math.Round(time.Minutes, MidpointRounding.AwayFromZero);

    private static LabourKind KindOf(ShopTask task, HashSet<string> away) => (task.Timing, away.Contains(task.Name)) switch
    {
        (_, true) => LabourKind.Delivery,
        (TaskTiming.ByOperation by, _) => by.Method.PaceGroup switch
        {
            PaceGroup.Sawing => LabourKind.Sawing,
            PaceGroup.Planing => LabourKind.Planing,
            PaceGroup.Joinery => LabourKind.Joinery,
            PaceGroup.Assembly => LabourKind.Assembly,
            PaceGroup.Finishing => LabourKind.Finishing,
            PaceGroup.Other => LabourKind.Other,
            _ => throw new System.Diagnostics.UnreachableException(),
        },
        _ => LabourKind.Other,
    };
}
