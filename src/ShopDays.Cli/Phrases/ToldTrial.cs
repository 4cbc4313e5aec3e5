using System.Globalization;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Times.Trials;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>A trial in the trade's words: what to do, how to do it, and how to log it.</summary>
/// <param name="Ranked">The trial and what it is worth.</param>
/// <param name="Shop">The shop.</param>
/// <param name="Format">How lengths are written for this job.</param>
/// <param name="Timbers">The timbers of the job.</param>
internal sealed record ToldTrial(RankedTrial Ranked, Shop Shop, LengthFormat Format, IReadOnlyList<string> Timbers)
{
    /// <summary>How work is tried that the catalogue does not know.</summary>
    private const string OwnWork = "Do it on an offcut as you will in the piece.";

    private TaskTiming.ByOperation Timing => Ranked.Trial.Timing;

    /// <summary>Operation and method: <c>rip</c> by hand, <c>rip, band saw</c>.</summary>
    public string Name => MethodWords.Of(Timing.Operation, Timing.Method);

    /// <summary><c>12 ft of cut</c>, <c>3 mortises</c>.</summary>
    public string Quantity
    {
        get
        {
            var (number, unit) = SawnWords.Of(Timing.Quantity, Timing.Operation.Unit.Name, Format);
            return $"{Number(number)} {(Timing.Operation.Unit.Kind == UnitKind.Count && Timing.Quantity != 1 ? unit + "s" : unit)}";
        }
    }

    /// <summary>The timber and the sizes; empty where its time depends on none.</summary>
    public string At => PropertyWords.Of(Properties, Format, Timbers);

    /// <summary>What to do with the offcut, in a sentence or two.</summary>
    public string How => BuiltIn.Trials.GetValueOrDefault(Timing.Operation.Name, OwnWork);

    /// <summary>The kinds of its cautions.</summary>
    public IReadOnlyList<string> Cautions => [.. Timing.Operation.Cautions.Concat(Timing.Method.Cautions).Distinct(StringComparer.Ordinal)];

    /// <summary>What to type afterwards, with the word TIME where the time goes.</summary>
    public string Command
    {
        get
        {
            var (number, unit) = SawnWords.Of(Timing.Quantity, Timing.Operation.Unit.Name, Format);
            var counted = Timing.Operation.Unit.Kind == UnitKind.Count ? "" : " " + unit.Split(' ')[0];
            return $"shopdays log add --timed {Quoted(Timing.Operation.Name)} {Number(number)}{counted} TIME{MethodOption}{string.Concat(Properties.OrderBy(one => one.Key).Select(Option))} --setups 0";
        }
    }

    /// <summary>Whether an operation can be tried on an offcut: those that the data says how, and a shop's own at saw, plane and joint.</summary>
    public static bool CanBeTried(Operation operation) => BuiltIn.Trials.ContainsKey(operation.Name)
        || (!BuiltIn.Operations.TryFind(operation.Name, out _) && operation.Methods[0].PaceGroup is PaceGroup.Sawing or PaceGroup.Planing or PaceGroup.Joinery);

    private IReadOnlyDictionary<Covariate, double> Properties => Timing.Covariates
        .Where(one => Timing.Method.Slopes.Any(slope => slope.Covariate == one.Key))
        .ToDictionary(one => one.Key, one => one.Value);

    private string MethodOption => Timing.Method.Name == (Shop.Methods.GetValueOrDefault(Timing.Operation.Name) ?? Timing.Operation.Methods[0].Name)
        ? ""
        : $" --method {Quoted(Timing.Method.Name)}";

    private string Option(KeyValuePair<Covariate, double> one) => one.Key switch
    {
        Covariate.Hardness => $" --species {Quoted(PropertyWords.Timber(one.Value, Timbers).Name)}",
        Covariate.Thickness => $" --thickness {Typed(one.Value)}",
        Covariate.Depth => $" --depth {Typed(one.Value)}",
        Covariate.Width => $" --width {Typed(one.Value)}",
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    // Without the inch mark, which a shell would take for the beginning of a text.
    private string Typed(double inches) => Format == LengthFormat.Millimetres
        ? string.Create(CultureInfo.InvariantCulture, $"{inches * 25.4:0.##}mm")
        : string.Create(CultureInfo.InvariantCulture, $"{inches:0.####}in");

    private static string Quoted(string text) => text.All(char.IsAsciiLetterOrDigit) ? text : $"\"{text}\"";

    private static string Number(double number) => number < 1 ? SawnWords.Quantity(number) : number.ToString(number < 10 ? "0.##" : "0.#", CultureInfo.InvariantCulture);
}
