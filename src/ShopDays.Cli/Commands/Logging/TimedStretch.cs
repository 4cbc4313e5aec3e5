using System.CommandLine;
using System.Globalization;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>Work timed by itself, outside any job: an operation, how much, and how long it took.</summary>
internal sealed class TimedStretch
{
    private readonly Option<string?> method = new("--method") { Description = "With --timed: how it was done, such as 'band saw'; the shop's usual way unless given.", HelpName = "METHOD" };
    private readonly Option<string?> thickness = new("--thickness") { Description = "With --timed: the thickness of the stock.", HelpName = "LENGTH" };
    private readonly Option<string?> width = new("--width") { Description = "With --timed: the width of the joint or piece.", HelpName = "LENGTH" };
    private readonly Option<string?> depth = new("--depth") { Description = "With --timed: the depth that was cut or taken off.", HelpName = "LENGTH" };
    private readonly Option<string?> species = new("--species") { Description = "With --timed: the timber.", HelpName = "NAME" };
    private readonly Option<double?> setups = LogOptions.Setups();

    private Option[] All => [method, thickness, width, depth, species, setups];

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (var option in All)
        {
            command.Add(option);
        }
    }

    /// <summary>The names of its options that were typed; a task of a job knows all of that itself.</summary>
    public IReadOnlyList<string> Typed(ParseResult parsed) => [.. All.Where(option => parsed.GetResult(option) is { Implicit: false }).Select(option => option.Name)];

    /// <summary>Reads <c>rip 12 ft 20m</c>.</summary>
    /// <param name="words">The words.</param>
    /// <param name="shop">The shop.</param>
    /// <param name="parsed">The options.</param>
    /// <returns>What was done and how long it took, or what is wrong.</returns>
    public (LoggedWork? Work, WorkTime Took, string Complaint) Read(IReadOnlyList<string> words, LogShop shop, ParseResult parsed)
    {
        const string Expected = "expected an operation, how much, and the time, such as: rip 12 ft 20m";
        var at = 1;
        while (at < words.Count - 1 && !TypedNumber.TryRead(words[at], out _))
        {
            at++;
        }

        if (at >= words.Count - 1 || !TypedNumber.TryRead(words[at], out var number) || number <= 0)
        {
            return No($"{QuotedText.Of(string.Join(' ', words))} does not say how much was done; {Expected}");
        }

        if (number > EntryLimits.MostOfAUnit)
        {
            return No(string.Create(CultureInfo.InvariantCulture, $"{QuotedText.Of(words[at])} is more than anybody has done; expected at most {EntryLimits.MostOfAUnit:#,0}"));
        }

        if (LogOptions.ReadTook(words[^1], out var took) is { } fault)
        {
            return No(fault);
        }

        var typed = string.Join(' ', words.Take(at));
        if (!shop.Operations.TryFind(typed, out var operation))
        {
            return No(LogShop.Unknown("operation", typed, [.. shop.Operations.Names], "operations"));
        }

        var (way, noWay) = MethodOf(operation, shop, parsed);
        var (quantity, noQuantity) = Quantity(number, string.Join(' ', words.Skip(at + 1).SkipLast(1)), operation.Unit, shop);
        var (properties, noProperties) = Properties(shop, parsed);
        return (noWay ?? noQuantity ?? noProperties) is { } complaint
            ? No(complaint)
            : (new()
            {
                Operation = operation.Name,
                Method = way!.Name,
                Unit = operation.Unit.Name,
                Quantity = quantity,
                Setups = parsed.GetValue(setups) ?? 1,
                Covariates = properties,
            }, took, "");
    }

    private static (LoggedWork?, WorkTime, string) No(string complaint) => (null, WorkTime.Zero, complaint);

    private (Method?, string?) MethodOf(Operation operation, LogShop shop, ParseResult parsed)
    {
        var wanted = parsed.GetValue(method) ?? shop.Shop.Methods.GetValueOrDefault(operation.Name) ?? operation.Methods[0].Name;
        var found = operation.Methods.FirstOrDefault(one => string.Equals(one.Name, wanted, StringComparison.OrdinalIgnoreCase));
        return (found, found is null ? LogShop.Unknown($"method of '{operation.Name}'", wanted, [.. operation.Methods.Select(one => one.Name)], "methods") : null);
    }

    private static (double, string?) Quantity(double number, string typed, TradeUnit unit, LogShop shop)
    {
        if (typed.Length == 0 || unit.Name.StartsWith(typed, StringComparison.OrdinalIgnoreCase) || string.Equals(unit.Name + "s", typed, StringComparison.OrdinalIgnoreCase))
        {
            return (number, null);
        }

        if (unit.Kind == UnitKind.Length && LengthText.Read(string.Create(CultureInfo.InvariantCulture, $"{number} {typed.Split(' ')[0]}"), shop.Shop.Units) is { IsRead: true, Value: var length })
        {
            return (unit.Of(length), null);
        }

        double? metres = typed.Split(' ')[0] switch { "m2" => 1, "ft2" => 0.3048 * 0.3048, "in2" => 0.0254 * 0.0254, _ => null };
        return unit.Kind == UnitKind.Area && metres is { } each
            ? (number * each / unit.Name.Split(' ')[0] switch { "m2" => 1, _ => 0.3048 * 0.3048 }, null)
            : (0, $"{QuotedText.Of(typed)} does not count this operation; expected {unit.Name}");
    }

    private (Dictionary<Covariate, double>, string?) Properties(LogShop shop, ParseResult parsed)
    {
        var all = new Dictionary<Covariate, double>();
        foreach (var (covariate, option, most) in new[] { (Covariate.Thickness, thickness, LengthValues.Thickest), (Covariate.Width, width, LengthValues.Longest), (Covariate.Depth, depth, LengthValues.Thickest) })
        {
            if (parsed.GetValue(option) is not { } typed)
            {
                continue;
            }

            var read = covariate == Covariate.Thickness ? LengthText.ReadRoughThickness(typed, shop.Shop.Units) : LengthText.Read(typed, shop.Shop.Units);
            if (!read.IsRead)
            {
                return (all, $"{option.Name}: {read.Fault.What}; expected {read.Fault.Expected}");
            }

            if (read.Value <= Length.Zero || read.Value > most)
            {
                return (all, $"{option.Name}: {QuotedText.Of(typed)} cannot be; expected more than zero and at most {shop.Shop.Format.Write(most)}");
            }

            all[covariate] = read.Value.Inches;
        }

        if (parsed.GetValue(species) is { } name)
        {
            if (!BuiltIn.Species.TryFind(name, out var timber))
            {
                return (all, LogShop.Unknown("timber", name, [.. BuiltIn.Species.Names], "timbers"));
            }

            all[Covariate.Hardness] = timber.HardnessPoundsForce;
        }

        return (all, null);
    }
}
