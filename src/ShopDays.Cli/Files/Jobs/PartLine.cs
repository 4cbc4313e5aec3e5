using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>One part as written, from a job file or a parts list, before its timber is settled.</summary>
/// <param name="Name">The name.</param>
/// <param name="Size">The finished size.</param>
/// <param name="Species">The timber; not written when all the stock is of one.</param>
/// <param name="From">The stock line that it must come from.</param>
/// <param name="Place">Where the part begins.</param>
/// <param name="Rest">Everything else; its name, size and species are settled later.</param>
internal sealed record PartLine(Field<string> Name, Field<Size> Size, Field<Species> Species, Field<string> From, Place Place, PartDetails Rest);

/// <summary>What may be said of a part beyond name, size and timber.</summary>
internal sealed record PartDetails
{
    public int Count { get; init; } = 1;

    public bool IsPanel { get; init; }

    public (PartEnds Ends, double Angle) Ends { get; init; }

    public IReadOnlySet<PartSurface> Shows { get; init; } = new HashSet<PartSurface>();

    public IReadOnlyDictionary<PartSurface, Field<SurfaceStandard>> Surfaces { get; init; } = new Dictionary<PartSurface, Field<SurfaceStandard>>();

    public int Spare { get; init; }

    public string? Matched { get; init; }

    public bool IsForBestFace { get; init; }

    public IReadOnlyList<Field<string>> NotFrom { get; init; } = [];
}
