using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>
/// The terms of the rate model. All operations share one pace, one for each pace group and one for each worker beside the
/// maker; each operation and method is a block of its own: a level, and a slope for each property that its time depends on.
/// </summary>
public sealed class RateTerms
{
    private static readonly PaceGroup[] Groups = Enum.GetValues<PaceGroup>();

    private readonly Dictionary<(string Operation, string Method), int> blocks = [];
    private readonly List<Method> methods = [];

    /// <summary>Numbers the terms of a catalogue, in its order.</summary>
    /// <param name="catalogue">The operations.</param>
    /// <param name="others">The workers beside the maker, each with a pace of their own.</param>
    public RateTerms(OperationCatalogue catalogue, IReadOnlyList<string> others)
    {
        Catalogue = catalogue;
        Others = others;
        foreach (var operation in catalogue.All)
        {
            foreach (var method in operation.Methods)
            {
                blocks.Add((operation.Name, method.Name), methods.Count);
                methods.Add(method);
            }
        }
    }

    /// <summary>The catalogue that is numbered.</summary>
    public OperationCatalogue Catalogue { get; }

    /// <summary>The workers beside the maker.</summary>
    public IReadOnlyList<string> Others { get; }

    /// <summary>The method of each block.</summary>
    internal IReadOnlyList<Method> Methods => methods;

    /// <summary>How many terms are shared.</summary>
    internal int Common => 1 + Groups.Length + Others.Count;

    /// <summary>The block of an operation by a method.</summary>
    /// <exception cref="KeyNotFoundException">The catalogue has no such operation or method.</exception>
    internal int Block(Operation operation, Method method) => blocks.TryGetValue((operation.Name, method.Name), out var block)
        ? block
        : throw new KeyNotFoundException($"the rate model knows no '{operation.Name}' by {method.Name}");

    /// <summary>The figures of the shared terms for work of a group by a worker; somebody unknown works at the maker's pace.</summary>
    /// <param name="group">The group.</param>
    /// <param name="worker">Who; null for the maker.</param>
    internal double[] CommonOf(PaceGroup group, string? worker)
    {
        var figures = new double[Common];
        figures[0] = 1;
        figures[1 + Array.IndexOf(Groups, group)] = 1;
        for (var other = 0; other < Others.Count; other++)
        {
            if (string.Equals(Others[other], worker, StringComparison.Ordinal))
            {
                figures[1 + Groups.Length + other] = 1;
            }
        }

        return figures;
    }
}
