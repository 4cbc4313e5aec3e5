namespace ShopDays.Work.Materials;

/// <summary>How far an adhesive or a finish goes.</summary>
public sealed record Coverage
{
    /// <summary>Its name in the table of waits.</summary>
    public required string Of { get; init; }

    /// <summary>What it is measured in: litres, or kilograms of what is sold by weight.</summary>
    public required CoverageMeasure Measure { get; init; }

    /// <summary>Square metres that one litre or kilogram covers once at the least, above 0.</summary>
    public required double Low { get; init; }

    /// <summary>Square metres that it covers once at the most, not below <see cref="Low"/>.</summary>
    public required double High { get; init; }

    /// <summary>Where the figures come from.</summary>
    public required string Source { get; init; }
}

/// <summary>How a thing that is spread is measured.</summary>
public enum CoverageMeasure
{
    /// <summary>By volume, in litres.</summary>
    Litres,

    /// <summary>By weight, in kilograms.</summary>
    Kilograms,
}
