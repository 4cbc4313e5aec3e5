using System.Buffers;
using System.Globalization;
using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Yaml;
using ShopDays.Logbook;
using ShopDays.Work;

namespace ShopDays.Cli.Store;

/// <summary>Reads what was done in a row that a maker typed: a task of a job, or an operation timed by itself.</summary>
internal sealed class OwnWork(SheetSettings settings)
{
    private static readonly SearchValues<char> Figures = SearchValues.Create("0123456789.");

    private readonly Findings findings = settings.Reading.Findings;

    /// <summary>Reads it; what is wrong is reported.</summary>
    /// <param name="cells">The row.</param>
    /// <param name="finished">Whether the task was finished.</param>
    public (string? Job, string Task, LoggedWork? Work) Read(SheetCells cells, bool finished)
    {
        if ((cells["mark"] ?? cells["task"]) is { } task)
        {
            return OfJob(cells, task, finished);
        }

        if (cells["operation"] is { } operation)
        {
            return ByItself(cells, operation);
        }

        findings.Add(LogMistakes.NothingToName(cells.Place));
        return default;
    }

    private (string?, string, LoggedWork?) OfJob(SheetCells cells, YamlText task, bool finished)
    {
        if ((cells["job"]?.Value.Trim() ?? settings.Job) is not { } typed)
        {
            findings.Add(LogMistakes.NoJob(cells.Place));
            return default;
        }

        var (job, found, complaint) = settings.FindTask(typed, task.Value);
        if (found is null)
        {
            findings.Add(LogMistakes.TaskNotFound(task.Place, complaint));
            return default;
        }

        var quantity = cells["quantity"] is { } cell && found.Work is { } work ? Quantity(cell, work.Unit) : null;
        if (found.Complaint(quantity) is { } tooMuch)
        {
            findings.Add(LogMistakes.TooMuch(cells.PlaceOf("quantity"), tooMuch));
        }

        return (job, found.Name, found.Done(finished, quantity));
    }

    private (string?, string, LoggedWork?) ByItself(SheetCells cells, YamlText typed)
    {
        if (!settings.Operations.TryFind(typed.Value.Trim(), out var operation))
        {
            findings.Add(LogMistakes.UnknownOperation(typed.Place, typed.Value, [.. settings.Operations.Names]));
            return default;
        }

        if (cells["quantity"] is not { } quantity)
        {
            findings.Add(LogMistakes.NoQuantity(cells.PlaceOf("quantity")));
            return default;
        }

        if (cells["unit"] is { } unit && !IsUnit(unit.Value.Trim(), operation.Unit.Name))
        {
            findings.Add(LogMistakes.OtherUnit(unit.Place, unit.Value, operation.Unit.Name));
        }

        return (null, operation.Name, new()
        {
            Operation = operation.Name,
            Method = MethodIn(cells, operation).Name,
            Unit = operation.Unit.Name,
            Quantity = Quantity(quantity, operation.Unit.Name) ?? 1,
            Setups = cells.Read("setups", Values.Number("a number of setups", 0, 10_000), settings.Reading).Or(1),
            Run = cells.Read("run", Values.Whole("a run of pieces", 1, 10_000), settings.Reading).Or(1),
            Batch = cells.Read("batch", Values.Whole("a batch of pieces", 1, 10_000), settings.Reading).Or(1),
            Covariates = PropertiesIn(cells),
        });
    }

    private Method MethodIn(SheetCells cells, Operation operation)
    {
        var wanted = cells["method"]?.Value.Trim() ?? settings.Methods.GetValueOrDefault(operation.Name) ?? operation.Methods[0].Name;
        if (operation.Methods.FirstOrDefault(one => string.Equals(one.Name, wanted, StringComparison.OrdinalIgnoreCase)) is { } found)
        {
            return found;
        }

        findings.Add(LogMistakes.UnknownMethod(cells.PlaceOf("method"), wanted, operation.Name, [.. operation.Methods.Select(one => one.Name)]));
        return operation.Methods[0];
    }

    private Dictionary<Covariate, double> PropertiesIn(SheetCells cells)
    {
        var all = new Dictionary<Covariate, double>();
        foreach (var (covariate, heading, most) in new[]
        {
            (Covariate.Thickness, "thickness", LengthValues.Thickest),
            (Covariate.Depth, "depth", LengthValues.Thickest),
            (Covariate.Width, "width", LengthValues.Longest),
        })
        {
            if (cells.Read(heading, LengthValues.AboveZero($"a {heading}", most), settings.Reading) is { IsRead: true, Value: var length })
            {
                all[covariate] = length.Inches;
            }
        }

        if (cells.Read("hardness", Values.Number("a hardness", 1, 10_000), settings.Reading) is { IsRead: true, Value: var hardness })
        {
            all[Covariate.Hardness] = hardness;
        }

        if (cells["species"] is { } typed)
        {
            if (settings.Species.TryFind(typed.Value.Trim(), out var species))
            {
                all[Covariate.Hardness] = species.HardnessPoundsForce;
            }
            else
            {
                findings.Add(LogMistakes.UnknownTimber(typed.Place, typed.Value, [.. settings.Species.Names]));
            }
        }

        return all;
    }

    /// <summary>A number above zero, the unit behind it if the maker wrote one.</summary>
    private double? Quantity(YamlText cell, string unit)
    {
        var text = cell.Value.Trim();
        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var whole) && !(whole > 0 && whole <= EntryLimits.MostOfAUnit))
        {
            findings.Add(ValueMistakes.NotInRange(cell.Place, text, "a quantity", string.Create(CultureInfo.InvariantCulture, $"a number of {unit}, above zero and at most {EntryLimits.MostOfAUnit:#,0}")));
            return null;
        }

        var end = text.AsSpan().IndexOfAnyExcept(Figures);
        var (number, rest) = end < 0 ? (text, "") : (text[..end], text[end..].Trim());
        if (!double.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var quantity) || quantity <= 0 || quantity > EntryLimits.MostOfAUnit)
        {
            findings.Add(ValueMistakes.NotANumber(cell.Place, text, $"a number of {unit}, above zero"));
            return null;
        }

        if (rest.Length > 0 && !IsUnit(rest, unit))
        {
            findings.Add(LogMistakes.OtherUnit(cell.Place, text, unit));
        }

        return quantity;
    }

    private static bool IsUnit(string typed, string unit) =>
        unit.StartsWith(typed, StringComparison.OrdinalIgnoreCase) || string.Equals(typed, unit + "s", StringComparison.OrdinalIgnoreCase);
}
