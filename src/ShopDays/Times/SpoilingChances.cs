using ShopDays.Logbook;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>The chances of spoiling a piece in each operation by each method, as a shop's log has them.</summary>
public sealed class SpoilingChances
{
    private readonly Dictionary<(string Operation, string Method), SpoilingChance> known;

    private SpoilingChances(IEnumerable<SpoilingChance> all)
    {
        All = [.. all];
        known = All.ToDictionary(one => (one.Operation.Name, one.Method.Name));
    }

    /// <summary>All of them, in the order of the catalogue.</summary>
    public IReadOnlyList<SpoilingChance> All { get; }

    /// <summary>Those of the catalogue, before anything is logged.</summary>
    public static SpoilingChances FromPrior(OperationCatalogue catalogue) => Learn(catalogue, [], _ => 1);

    /// <summary>Those that a log makes of the catalogue's.</summary>
    /// <param name="catalogue">The operations.</param>
    /// <param name="runs">Runs of pieces that were done.</param>
    /// <param name="weightOf">How much a run counts by its age, above 0 up to 1.</param>
    public static SpoilingChances Learn(OperationCatalogue catalogue, IReadOnlyList<SpoiledRun> runs, Func<SpoiledRun, double> weightOf)
    {
        var logged = runs.ToLookup(run => (run.Timing.Operation.Name, run.Timing.Method.Name));
        return new(
            from operation in catalogue.All
            from method in operation.Methods
            let own = logged[(operation.Name, method.Name)].Select(run => (Run: run, Weight: weightOf(run))).ToList()
            select new SpoilingChance(operation, method, own.Sum(one => one.Weight * one.Run.Pieces), own.Sum(one => one.Weight * one.Run.Spoiled)));
    }

    /// <summary>The chance in an operation by a method; null for one that is not in the catalogue.</summary>
    public SpoilingChance? Of(Operation operation, Method method) => known.GetValueOrDefault((operation.Name, method.Name));
}
