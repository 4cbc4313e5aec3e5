using System.Diagnostics.CodeAnalysis;

namespace ShopDays.Work;

/// <summary>The operations that are known, in the order of the data file, which is the order of printing.</summary>
public sealed class OperationCatalogue
{
    private readonly Dictionary<string, Operation> byName = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Makes a catalogue.</summary>
    /// <exception cref="ArgumentException">Two operations have one name.</exception>
    public OperationCatalogue(IEnumerable<Operation> operations)
    {
        All = [.. operations];
        foreach (var operation in All)
        {
            if (!byName.TryAdd(operation.Name, operation))
            {
                throw new ArgumentException($"the operation '{operation.Name}' is there twice", nameof(operations));
            }
        }
    }

    /// <summary>All of them.</summary>
    public IReadOnlyList<Operation> All { get; }

    /// <summary>Their names.</summary>
    public IEnumerable<string> Names => All.Select(operation => operation.Name);

    /// <summary>The operation of that name.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public Operation this[string name] => TryFind(name, out var operation)
        ? operation
        : throw new KeyNotFoundException($"no operation is called '{name}'");

    /// <summary>
    /// Finds an operation by its name, without regard to case. A remark in brackets does not count, so that
    /// <c>dado (housing)</c> finds <c>dado</c>.
    /// </summary>
    public bool TryFind(string name, [NotNullWhen(true)] out Operation? operation)
    {
        if (byName.TryGetValue(name, out operation))
        {
            return true;
        }

        var bracket = name.IndexOf('(', StringComparison.Ordinal);
        return bracket > 0 && byName.TryGetValue(name[..bracket].Trim(), out operation);
    }

    /// <summary>A catalogue with operations added, or put in the place of those of the same name.</summary>
    public OperationCatalogue With(IEnumerable<Operation> operations)
    {
        var own = operations.ToDictionary(operation => operation.Name, StringComparer.OrdinalIgnoreCase);
        return new([
            .. All.Select(operation => own.Remove(operation.Name, out var replaced) ? replaced : operation),
            .. own.Values,
        ]);
    }
}
