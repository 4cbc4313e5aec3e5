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

    /// <summary>
    /// Finds a species by its name in the trade, by its name less what stands in brackets, or by the other name in them:
    /// <c>sugar (hard) maple</c> is sugar maple and hard maple. A name that fits several finds none.
    /// </summary>
    public bool TryFind(string name, [NotNullWhen(true)] out Species? species)
    {
        if (byName.TryGetValue(name, out species))
        {
            return true;
        }

        var fitting = All.Where(one => one.OtherNames.Contains(name, StringComparer.OrdinalIgnoreCase)).ToList();
        if (fitting.Count != 1)
        {
            return false;
        }

        species = fitting[0];
        return true;
    }
}
