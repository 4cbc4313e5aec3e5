using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>The rate of an operation by a method at stated properties: what the catalogue says, and what is believed now.</summary>
public sealed record OperationRate
{
    /// <summary>The operation.</summary>
    public required Operation Operation { get; init; }

    /// <summary>The method.</summary>
    public required Method Method { get; init; }

    /// <summary>The properties it holds for; those that its time depends on, and no others.</summary>
    public required IReadOnlyDictionary<Covariate, double> At { get; init; }

    /// <summary>The time for one unit before any time was logged, rest included.</summary>
    public required TimeBelief Prior { get; init; }

    /// <summary>The time for one unit as it is believed now: the rate itself, on an average day, not a single task's luck.</summary>
    public required TimeBelief Learned { get; init; }

    /// <summary>Times of it that were learned from.</summary>
    public required int Entries { get; init; }

    /// <summary>Times of it that are held out until the maker has said what they are.</summary>
    public required int HeldOut { get; init; }

    /// <summary>The rates of a catalogue, in its order.</summary>
    /// <param name="model">What is known now.</param>
    /// <param name="asked">Properties that are asked for; where one is not given, it is that of the most ordinary of the times logged, or the catalogue's reference.</param>
    public static IReadOnlyList<OperationRate> All(RateModel model, IReadOnlyDictionary<Covariate, double> asked)
    {
        var catalogue = model.Terms.Catalogue;
        var prior = RateModel.FromPrior(catalogue);
        var log = model.Log.ToLookup(one => (one.Work.Timing.Operation.Name, one.Work.Timing.Method.Name));
        return
        [
            .. from operation in catalogue.All
               from method in operation.Methods
               let times = log[(operation.Name, method.Name)].ToList()
               let one = OneUnit(operation, method, AtOf(method, times, asked))
               select new OperationRate
               {
                   Operation = operation,
                   Method = method,
                   At = one.Covariates,
                   Prior = prior.RateOf(one),
                   Learned = model.RateOf(one),
                   Entries = times.Count(time => !time.IsHeldOut),
                   HeldOut = times.Count(time => time.IsHeldOut),
               },
        ];
    }

    /// <summary>The rate as another model has it, at the same properties.</summary>
    public TimeBelief By(RateModel model) => model.RateOf(OneUnit(Operation, Method, At));

    /// <summary>The time for one unit at these properties that a logged time comes to: what it was off by is kept.</summary>
    /// <param name="model">The model whose slopes carry it over.</param>
    /// <param name="judged">A time of this operation and method.</param>
    public WorkTime OfEntry(RateModel model, JudgedWork judged) =>
        By(model).Median * (judged.Work.Took / model.RateOf(judged.Work.Timing).Median);

    /// <summary>How much the pace of operations that nothing was logged of differs from the catalogue's: above 1 when they take longer.</summary>
    /// <param name="model">What is known now.</param>
    public static IReadOnlyList<(PaceGroup Group, double Factor)> Paces(RateModel model) =>
    [
        .. All(model, new Dictionary<Covariate, double>())
            .Where(rate => rate is { Entries: 0, HeldOut: 0 })
            .GroupBy(rate => rate.Method.PaceGroup)
            .Select(group => (group.Key, group.First().Learned.Median / group.First().Prior.Median)),
    ];

    private static TaskTiming.ByOperation OneUnit(Operation operation, Method method, IReadOnlyDictionary<Covariate, double> at) => new()
    {
        Operation = operation,
        Method = method,
        Quantity = 1 / Batch.MeanFactor(1, method.LearningRate),
        Setups = 0,
        Covariates = at,
    };

    private static Dictionary<Covariate, double> AtOf(Method method, List<JudgedWork> times, IReadOnlyDictionary<Covariate, double> asked)
    {
        var usual = Ordinary(method, times);
        return method.Slopes.ToDictionary(
            slope => slope.Covariate,
            slope => asked.TryGetValue(slope.Covariate, out var wanted) ? wanted : usual.TryGetValue(slope.Covariate, out var value) ? value : slope.Reference);
    }

    /// <summary>The properties of that time of the log which lies nearest to the middle of all: a real board rather than a mean of boards.</summary>
    private static IReadOnlyDictionary<Covariate, double> Ordinary(Method method, List<JudgedWork> times)
    {
        if (times.Count == 0)
        {
            return new Dictionary<Covariate, double>();
        }

        var middles = method.Slopes.Select(slope => times.Select(time => LogOf(time, slope)).Order().ElementAt(times.Count / 2)).ToList();
        return times.MinBy(time => method.Slopes.Select((slope, at) => Math.Abs(LogOf(time, slope) - middles[at])).Sum())!.Work.Timing.Covariates;
    }

    private static double LogOf(JudgedWork time, Slope slope) =>
        time.Work.Timing.Covariates.TryGetValue(slope.Covariate, out var value) ? Math.Log(value / slope.Reference) : 0;
}
