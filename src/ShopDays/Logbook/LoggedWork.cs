using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Logbook;

/// <summary>What was done, with its figures as they were on the day: the catalogue and the job may have changed since.</summary>
public sealed record LoggedWork
{
    /// <summary>The operation's name.</summary>
    public required string Operation { get; init; }

    /// <summary>The method's name.</summary>
    public required string Method { get; init; }

    /// <summary>The name of the trade's unit that the quantity counts.</summary>
    public required string Unit { get; init; }

    /// <summary>How much of the unit was done in this stretch, or, for one that finishes its task, how much the whole task is; above 0.</summary>
    public required double Quantity { get; init; }

    /// <summary>How many setups it took, 0 or more.</summary>
    public double Setups { get; init; }

    /// <summary>Known time beside the work itself, its rest included.</summary>
    public WorkTime Besides { get; init; }

    /// <summary>How many like pieces were done in the run, at least 1.</summary>
    public int Run { get; init; } = 1;

    /// <summary>How many like pieces the whole job has, at least 1.</summary>
    public int Batch { get; init; } = 1;

    /// <summary>The properties of the work: inches, lbf for hardness; a missing one stands at its reference.</summary>
    public IReadOnlyDictionary<Covariate, double> Covariates { get; init; } = new Dictionary<Covariate, double>();

    /// <summary>Factor on time beyond rates: wild grain, blending of passes; 1 for none.</summary>
    public double Factor { get; init; } = 1;

    /// <summary>
    /// Whether all its figures can be: quantity, factor and properties above zero, setups and what goes besides not below it,
    /// run and batch from 1, and none beyond a thousand millions or below a thousand-millionth, so that no sum, product or
    /// logarithm of them leaves the numbers. A file that somebody wrote into by hand may hold others.
    /// </summary>
    public bool IsPossible =>
        IsMeasure(Quantity)
        && IsMeasure(Factor)
        && Covariates.Values.All(IsMeasure)
        && (Setups == 0 || IsMeasure(Setups))
        && (Besides == WorkTime.Zero || IsMeasure(Besides.Minutes))
        && Run >= 1
        && Batch >= 1;

    /// <summary>Whether a figure is above zero and neither too small nor too large to reckon with.</summary>
    internal static bool IsMeasure(double figure) => figure is >= 1e-9 and <= 1e9;

    /// <summary>What a task's timing says, to be kept with its time.</summary>
    public static LoggedWork Of(TaskTiming.ByOperation timing) => new()
    {
        Operation = timing.Operation.Name,
        Method = timing.Method.Name,
        Unit = timing.Operation.Unit.Name,
        Quantity = timing.Quantity,
        Setups = timing.Setups,
        Besides = timing.Besides,
        Run = timing.Run,
        Batch = timing.Batch,
        Covariates = timing.Covariates,
        Factor = timing.Factor,
    };

    /// <summary>Whether the quantities of two add up: they count one unit of one operation by one method.</summary>
    public bool IsLike(LoggedWork? other) =>
        other is not null
        && string.Equals(Operation, other.Operation, StringComparison.OrdinalIgnoreCase)
        && string.Equals(Method, other.Method, StringComparison.OrdinalIgnoreCase)
        && string.Equals(Unit, other.Unit, StringComparison.Ordinal);

    /// <summary>A part of the work: of its setups, and of what goes besides, it has the same share.</summary>
    /// <param name="quantity">How much of the unit the part is, above 0.</param>
    public LoggedWork Part(double quantity) => this with
    {
        Quantity = quantity,
        Setups = Setups * quantity / Quantity,
        Besides = Besides * (quantity / Quantity),
    };

    /// <summary>The same work as the catalogue knows it now.</summary>
    /// <returns>The timing; null when the catalogue has no such operation or method, or counts it in another unit.</returns>
    public TaskTiming.ByOperation? In(OperationCatalogue catalogue) =>
        catalogue.TryFind(Operation, out var operation)
        && string.Equals(operation.Unit.Name, Unit, StringComparison.Ordinal)
        && operation.Methods.FirstOrDefault(method => string.Equals(method.Name, Method, StringComparison.OrdinalIgnoreCase)) is { } method
            ? new()
            {
                Operation = operation,
                Method = method,
                Quantity = Quantity,
                Setups = Setups,
                Besides = Besides,
                Run = Run,
                Batch = Batch,
                Covariates = Covariates,
                Factor = Factor,
            }
            : null;

    /// <summary>Whether two have the same figures.</summary>
    public bool Equals(LoggedWork? other) =>
        other is not null
        && (Operation, Method, Unit, Quantity, Setups, Besides, Run, Batch, Factor)
            == (other.Operation, other.Method, other.Unit, other.Quantity, other.Setups, other.Besides, other.Run, other.Batch, other.Factor)
        && Covariates.Count == other.Covariates.Count
        && Covariates.All(one => other.Covariates.TryGetValue(one.Key, out var value) && value.Equals(one.Value));

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Operation, Method, Quantity, Batch);
}
