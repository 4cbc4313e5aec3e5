using System.Diagnostics.CodeAnalysis;

namespace ShopDays.Parts;

/// <summary>The species that are known, looked up by name without regard to case.</summary>
public sealed class SpeciesTable
{
    private readonly Dictionary<string, Species> byName = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>Makes a table; the order of the rows is kept.</summary>
    /// <exception cref="ArgumentException">Two species have one name.</exception>
    public SpeciesTable(IEnumerable<Species> species)
    {
        All = [.. species];
        foreach (var one in All)
        {
            if (!byName.TryAdd(one.Name, one))
            {
                throw new ArgumentException($"the species '{one.Name}' is there twice", nameof(species));
            }
        }
    }

    /// <summary>All of them, in the order of the data file.</summary>
    public IReadOnlyList<Species> All { get; }

    /// <summary>The names, in the order of the data file.</summary>
    public IEnumerable<string> Names => All.Select(one => one.Name);

    /// <summary>Finds a species by its name in the trade, or by its name less what stands in brackets.</summary>
    public bool TryFind(string name, [NotNullWhen(true)] out Species? species)
    {
        if (byName.TryGetValue(name, out species))
        {
            return true;
        }

        species = All.FirstOrDefault(one => string.Equals(WithoutBrackets(one.Name), name, StringComparison.OrdinalIgnoreCase));
        return species is not null;
    }

    private static string WithoutBrackets(string name)
    {
        var open = name.IndexOf('(', StringComparison.Ordinal);
        var close = name.IndexOf(')', StringComparison.Ordinal);
        return open < 0 || close < open ? name : string.Join(' ', (name[..open] + name[(close + 1)..]).Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }
}
