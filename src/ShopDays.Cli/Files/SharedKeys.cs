using ShopDays.Cli.Files.Yaml;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>The keys that a shop file and a job file have in common; what a job says goes before what the shop says.</summary>
internal static class SharedKeys
{
    private static readonly (string Word, LengthUnit Unit)[] Units = [("inch", LengthUnit.Inch), ("mm", LengthUnit.Millimetre), ("cm", LengthUnit.Centimetre)];

    private static readonly (string Word, int Denominator)[] Fractions = [("1/2", 2), ("1/4", 4), ("1/8", 8), ("1/16", 16), ("1/32", 32), ("1/64", 64)];

    /// <summary>Reads <c>units</c> and <c>fraction</c>; what follows in the section is read by them.</summary>
    /// <param name="section">The section of the whole file.</param>
    /// <param name="areRequired">Whether the units must be said.</param>
    public static void ReadUnits(Section section, bool areRequired)
    {
        var reader = Values.Choice("a unit of length", Units);
        var units = areRequired ? section.Required("units", reader, "inch, mm or cm") : section.Optional("units", reader);
        var fraction = section.Optional("fraction", Values.Choice("a fraction of an inch", Fractions));
        var unit = units.Or(section.Reading.Units);
        if (unit != LengthUnit.Inch && fraction.IsWritten && units.IsWritten == units.IsRead)
        {
            section.Findings.Add(ShopMistakes.FractionWithoutInches(fraction.Place));
        }

        section.Reading = section.Reading with
        {
            Units = unit,
            Format = Format(unit, fraction, units.IsRead, section.Reading.Format),
        };
    }

    /// <summary>Reads <c>methods</c>: a method for each operation that is not done by the usual one.</summary>
    public static IReadOnlyDictionary<string, string> Methods(Section section, OperationCatalogue operations) =>
        section.Optional<IReadOnlyDictionary<string, string>>("methods", (node, reading) =>
        {
            if (node is not YamlMap map)
            {
                reading.Findings.Add(ValueMistakes.NotKeys(node.Place, node.Shape, "the methods"));
                return Field<IReadOnlyDictionary<string, string>>.Wrong(node.Place);
            }

            var methods = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
            foreach (var (key, value) in map.Entries)
            {
                var method = Values.Text("a method, such as band saw")(value, reading);
                if (!operations.TryFind(key.Value, out var operation))
                {
                    reading.Findings.Add(ShopMistakes.UnknownOperation(key.Place, key.Value, [.. operations.Names]));
                }
                else if (method.IsRead && MethodOf(operation, method, reading) is { } found)
                {
                    methods[operation.Name] = found.Name;
                }
            }

            return Field<IReadOnlyDictionary<string, string>>.Read(node.Place, methods);
        }).Or(new Dictionary<string, string>());

    /// <summary>Reads <c>allowances</c>; a figure that is not written keeps its usual value.</summary>
    public static Allowances Allowances(Section section, Allowances usual)
    {
        var foot = Length.FromFeet(1);
        return section.Inner("allowances", "the allowances", inner => new Allowances
        {
            Kerf = inner.Optional("kerf", LengthValues.AboveZero("a kerf", Length.FromMillimetres(25m)), usual.Kerf),
            Length = inner.Optional("length", LengthValues.FromZero("extra length", foot), usual.Length),
            Width = inner.Optional("width", LengthValues.FromZero("extra width", foot), usual.Width),
            Strip = inner.Optional("strip", LengthValues.FromZero("extra width of a strip", foot), usual.Strip),
            LiveEdge = inner.Optional("live-edge", LengthValues.FromZero("the loss at a live edge", foot), usual.LiveEdge),
            RoughEdge = inner.Optional("rough-edge", LengthValues.FromZero("the loss at a rough edge", foot), usual.RoughEdge),
            RoughFaces = inner.Optional("rough-faces", LengthValues.FromZero("the loss of rough faces", foot), usual.RoughFaces),
            SkipPlanedFaces = inner.Optional("skip-planed-faces", LengthValues.FromZero("the loss of skip-planed faces", foot), usual.SkipPlanedFaces),
            UsefulLength = inner.Optional("useful-length", LengthValues.FromZero("the length of an offcut", LengthValues.Longest), usual.UsefulLength),
            UsefulWidth = inner.Optional("useful-width", LengthValues.FromZero("the width of an offcut", LengthValues.Widest), usual.UsefulWidth),
        }) ?? usual;
    }

    private static Method? MethodOf(Operation operation, Field<string> typed, Reading reading)
    {
        var method = operation.Methods.FirstOrDefault(one => string.Equals(one.Name, typed.Value, StringComparison.OrdinalIgnoreCase));
        if (method is null)
        {
            reading.Findings.Add(ShopMistakes.UnknownMethod(typed.Place, typed.Value!, operation.Name, [.. operation.Methods.Select(one => one.Name)]));
        }

        return method;
    }

    private static LengthFormat Format(LengthUnit unit, Field<int> fraction, bool unitsAreRead, LengthFormat above) => unit != LengthUnit.Inch
        ? LengthFormat.Millimetres
        : fraction.IsRead ? LengthFormat.Inches(fraction.Value) : unitsAreRead ? LengthFormat.Inches(16) : above;
}
