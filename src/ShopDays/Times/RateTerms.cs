using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>
/// The terms of the rate model and their places in its vectors: one pace, one for each pace group, a level for each
/// operation and method, and a slope for each property that its time depends on.
/// </summary>
public sealed class RateTerms
{
    private static readonly PaceGroup[] Groups = Enum.GetValues<PaceGroup>();

    private readonly Dictionary<(string Operation, string Method), int> levels = [];

    /// <summary>Numbers the terms of a catalogue, in its order.</summary>
    public RateTerms(OperationCatalogue catalogue)
    {
        Catalogue = catalogue;
        var next = 1 + Groups.Length;
        foreach (var operation in catalogue.All)
        {
            foreach (var method in operation.Methods)
            {
                levels.Add((operation.Name, method.Name), next);
                next += 1 + method.Slopes.Count;
            }
        }

        Count = next;
    }

    /// <summary>The catalogue that is numbered.</summary>
    public OperationCatalogue Catalogue { get; }

    /// <summary>How many terms there are.</summary>
    public int Count { get; }

    /// <summary>The place of the pace that all operations share.</summary>
    public static int Pace => 0;

    /// <summary>The place of a group's pace.</summary>
    public static int Group(PaceGroup group) => 1 + Array.IndexOf(Groups, group);

    /// <summary>The place of the level of an operation by a method; its slopes follow it in their own order.</summary>
    /// <exception cref="KeyNotFoundException">The catalogue has no such operation or method.</exception>
    public int Level(Operation operation, Method method) => levels.TryGetValue((operation.Name, method.Name), out var place)
        ? place
        : throw new KeyNotFoundException($"the rate model knows no '{operation.Name}' by {method.Name}");
}
