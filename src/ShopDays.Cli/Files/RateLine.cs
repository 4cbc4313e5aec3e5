using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>Reads one line of a shop's own rates into the operation that it changes or makes.</summary>
/// <param name="line">The line.</param>
/// <param name="name">The operation's name.</param>
/// <param name="known">The operation as it was; null for a new one.</param>
/// <param name="cautions">The kinds of caution that may be named.</param>
internal sealed class RateLine(Section line, Field<string> name, Operation? known, IReadOnlyList<string> cautions)
{
    /// <summary>Half and double: the usual spread of a rate between makers, tools and boards (common practice, no source).</summary>
    private const double UsualSpread = 2;

    private const double MostMinutes = 100_000;

    /// <summary>Who spoils every second piece practises first.</summary>
    private const double MostSpoiled = 0.5;

    private static readonly ValueReader<double> Minutes = Values.Number("minutes for one unit", 0.0001, MostMinutes);

    private static readonly ValueReader<PaceGroup> Group = Values.Choice(
        "a pace group",
        ("sawing", PaceGroup.Sawing),
        ("planing", PaceGroup.Planing),
        ("joinery", PaceGroup.Joinery),
        ("assembly", PaceGroup.Assembly),
        ("finishing", PaceGroup.Finishing),
        ("other", PaceGroup.Other));

    private static readonly ValueReader<WorkClass> Class = Values.Choice(
        "a class of work", ("light", WorkClass.Light), ("medium", WorkClass.Medium), ("heavy", WorkClass.Heavy));

    private static readonly ValueReader<double> Rest = (node, reading) => Values.Percentage(node, reading)
        .Unless(reading.Findings, percent => percent.Share > 1 ? ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, "the share of rest", "0% to 100%") : null)
        .Select(percent => percent.Share);

    private static readonly ValueReader<double> Spoils = (node, reading) => Values.Percentage(node, reading)
        .Unless(reading.Findings, percent => percent.Share > MostSpoiled ? ValueMistakes.NotInRange(node.Place, ((YamlText)node).Value, "the chance of spoiling a piece", "0% to 50%") : null)
        .Select(percent => percent.Share);

    private static readonly (string Word, Covariate Covariate)[] Properties =
        [("thickness", Covariate.Thickness), ("hardness", Covariate.Hardness), ("depth", Covariate.Depth), ("width", Covariate.Width)];

    /// <summary>Reads the rest of the line.</summary>
    /// <returns>The operation with the method put in, and the method's name.</returns>
    public (Operation Operation, string Method) Read()
    {
        var methodName = line.Optional("method", Values.Name("a method, such as band saw")).Or(known?.Methods[0].Name ?? "hand");
        var before = known?.Methods.FirstOrDefault(one => string.Equals(one.Name, methodName, StringComparison.OrdinalIgnoreCase));
        var like = before ?? known?.Methods[0];
        var unit = ReadUnit();
        var own = line.Optional("cautions", Values.OneOrMore(Values.Text("a kind of caution"))).Or([]);
        foreach (var caution in own.Where(one => one.IsRead && !cautions.Contains(one.Value!)))
        {
            line.Findings.Add(RateMistakes.UnknownCaution(caution.Place, caution.Value!, cautions));
        }

        var method = ReadMethod(before?.Name ?? methodName, before, like);
        var operation = new Operation
        {
            Name = known?.Name ?? name.Or(""),
            Unit = new TradeUnit { Name = unit },
            Methods = known is null ? [method]
                : before is null ? [.. known.Methods, method]
                : [.. known.Methods.Select(one => one == before ? method : one)],
            Cautions = own.Count == 0 ? known?.Cautions ?? [] : [.. own.Where(one => one.IsRead).Select(one => one.Value!)],
            Holds = known?.Holds ?? [],
        };
        return (operation, method.Name);
    }

    private string ReadUnit()
    {
        var reader = Values.Name("what is counted, such as ft of cut or mortise");
        if (known is null)
        {
            return line.Required("unit", reader, "what is counted, such as ft of cut or mortise; the operation is new").Or("");
        }

        var unit = line.Optional("unit", reader);
        return unit.Unless(line.Findings, typed => typed == known.Unit.Name || !name.IsRead ? null : RateMistakes.UnitChanged(unit.Place, typed, known.Name, known.Unit.Name)).Or(known.Unit.Name);
    }

    private Method ReadMethod(string methodName, Method? before, Method? like)
    {
        var (low, likely, high) = ReadMinutes(before);
        var ownChance = line.Optional("spoils", Spoils);
        var isSplittable = line.Optional("splittable", Values.YesOrNo, like?.IsSplittable ?? true);
        return new Method
        {
            Name = methodName,
            PaceGroup = OrLike("group", Group, like?.PaceGroup, "a pace group, such as sawing"),
            MinutesPerUnit = likely,
            LowMinutes = low,
            HighMinutes = high,
            Slopes = ReadSlopes(like?.Slopes ?? []),
            Setup = line.Optional("setup", Values.Time, like?.Setup ?? WorkTime.Zero),
            SetupPer = line.Optional("setup-per", Values.Name("what a setup serves, such as run or piece"), like?.SetupPer ?? "run"),
            WorkClass = OrLike("class", Class, like?.WorkClass, "light, medium or heavy"),
            Rest = line.Optional("rest", Rest, like?.Rest ?? 0.1),
            IsNoisy = line.Optional("noisy", Values.YesOrNo, like?.IsNoisy ?? false),
            IsSplittable = isSplittable,
            LeastUseful = line.Optional("least", Values.Time, isSplittable ? like?.LeastUseful ?? WorkTime.FromMinutes(10) : WorkTime.Zero),
            Crew = line.Optional("crew", Values.Whole("a count of people", 1, 10), like?.Crew ?? 1),
            LearningRate = line.Optional("learning", Values.Number("a learning rate", 0.5, 1), like?.LearningRate ?? 1),
            Cautions = like?.Cautions ?? [],
            Edge = before?.Edge,
            SpoilChance = ownChance.Or(like?.SpoilChance ?? 0),
            SpoilSource = ownChance.IsRead ? "the shop's own figures" : like?.SpoilSource ?? "",
            Source = line.Optional("source", Values.Text("where the figures come from"), "the shop's own figures"),
        };
    }

    private T OrLike<T>(string key, ValueReader<T> read, T? like, string expected)
        where T : struct => like is { } usual
        ? line.Optional(key, read, usual)
        : line.Required(key, read, expected + "; the operation is new").Or(default);

    private (double Low, double Likely, double High) ReadMinutes(Method? before)
    {
        if (before is null)
        {
            return line.Required("minutes", Range(1 / UsualSpread, UsualSpread), "minutes for one unit, such as 12 or {low: 8, likely: 12, high: 25}; there is no such rate yet").Or((1, 1, 1));
        }

        // A single figure keeps the built-in spread about it.
        var usual = (before.LowMinutes, before.MinutesPerUnit, before.HighMinutes);
        return line.Optional("minutes", Range(before.LowMinutes / before.MinutesPerUnit, before.HighMinutes / before.MinutesPerUnit), usual);
    }

    private static ValueReader<(double Low, double Likely, double High)> Range(double lowShare, double highShare) => (node, reading) =>
    {
        if (node is not YamlMap)
        {
            return Minutes(node, reading).Select(likely => (likely * lowShare, likely, likely * highShare));
        }

        var section = Section.Open(node, "the minutes", reading)!;
        var low = section.Required("low", Minutes, "minutes that one in twenty beats");
        var likely = section.Required("likely", Minutes, "the usual minutes");
        var high = section.Required("high", Minutes, "minutes that one in twenty exceeds");
        section.Close();
        return low.IsRead && likely.IsRead && high.IsRead
            ? Field<(double Low, double Likely, double High)>.Read(node.Place, (low.Value, likely.Value, high.Value))
                .Unless(reading.Findings, range => range.Low < range.Likely && range.Likely < range.High ? null : RateMistakes.RateOutOfOrder(low.Place))
            : Field<(double, double, double)>.Wrong(node.Place);
    };

    private IReadOnlyList<Slope> ReadSlopes(IReadOnlyList<Slope> usual)
    {
        var own = line.Inner("slopes", "the slopes", slopes => Properties
            .Select(property => slopes.Inner(property.Word, "a slope", slope => new Slope(
                property.Covariate,
                slope.Required("reference", Values.Number("a reference", 0.001, 10_000), "the value at which the minutes hold: inches, or lbf of hardness").Or(1),
                slope.Required("exponent", Values.Number("an exponent", -3, 3), "the exponent on minutes, such as 1.1").Or(0))))
            .OfType<Slope>()
            .ToList()) ?? [];
        return [.. usual.Where(one => own.All(other => other.Covariate != one.Covariate)), .. own];
    }
}
