using ShopDays.Parts;
using ShopDays.Work;
using ShopDays.Work.Materials;

namespace ShopDays.Cli.Files;

/// <summary>What the program knows without being told: its own data files, each read once, when first asked for.</summary>
public static class BuiltIn
{
    private static readonly Lazy<SpeciesTable> LazySpecies = new(SpeciesRows.Read);
    private static readonly Lazy<OperationCatalogue> LazyOperations = new(OperationRows.Read);
    private static readonly Lazy<WaitTable> LazyWaits = new(WaitRows.Read);
    private static readonly Lazy<IReadOnlyList<Caution>> LazyCautions = new(CautionRows.Read);
    private static readonly Lazy<IReadOnlyDictionary<string, Coverage>> LazyCoverages = new(CoverageRows.Read);
    private static readonly Lazy<IReadOnlyDictionary<string, string>> LazyTrials = new(TrialRows.Read);

    /// <summary>The species, in the order of the file.</summary>
    /// <exception cref="InvalidDataException">A row is broken: a bug.</exception>
    public static SpeciesTable Species => LazySpecies.Value;

    /// <summary>The operations, in the order of the file.</summary>
    /// <exception cref="InvalidDataException">A row is broken: a bug.</exception>
    public static OperationCatalogue Operations => LazyOperations.Value;

    /// <summary>Adhesives, finishes and rests, in the order of the file.</summary>
    /// <exception cref="InvalidDataException">A row is broken: a bug.</exception>
    public static WaitTable Waits => LazyWaits.Value;

    /// <summary>The cautions by kind of work, in the order of the file; the last goes with everything.</summary>
    /// <exception cref="InvalidDataException">A row is broken: a bug.</exception>
    public static IReadOnlyList<Caution> Cautions => LazyCautions.Value;

    /// <summary>How an operation is tried on an offcut, by its name; one that is no use by itself is not there.</summary>
    /// <exception cref="InvalidDataException">A row is broken: a bug.</exception>
    public static IReadOnlyDictionary<string, string> Trials => LazyTrials.Value;

    /// <summary>How far each adhesive and finish goes, by its name.</summary>
    /// <exception cref="InvalidDataException">A row is broken: a bug.</exception>
    public static IReadOnlyDictionary<string, Coverage> Coverages => LazyCoverages.Value;
}
