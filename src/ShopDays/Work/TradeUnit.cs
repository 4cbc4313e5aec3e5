using ShopDays.Measures;

namespace ShopDays.Work;

/// <summary>What a trade unit measures.</summary>
public enum UnitKind
{
    /// <summary>Pieces, joints, ends: counted.</summary>
    Count,

    /// <summary>Length.</summary>
    Length,

    /// <summary>Area.</summary>
    Area,
}

/// <summary>What the quantity of an operation counts, as the trade counts it.</summary>
public sealed record TradeUnit
{
    /// <summary>
    /// The unit's name. Its first word says what it measures: <c>in</c>, <c>ft</c>, <c>mm</c>, <c>m</c> a length,
    /// <c>ft2</c>, <c>m2</c> an area (<c>ft of cut</c>, <c>ft2 of face</c>); any other word is counted (<c>mortise</c>).
    /// </summary>
    public required string Name { get; init; }

    /// <summary>What it measures.</summary>
    public UnitKind Kind => FirstWord switch
    {
        "in" or "ft" or "mm" or "m" => UnitKind.Length,
        "ft2" or "m2" => UnitKind.Area,
        _ => UnitKind.Count,
    };

    private string FirstWord => Name.Split(' ')[0];

    /// <summary>How many of it a length makes.</summary>
    /// <exception cref="InvalidOperationException">It does not measure length.</exception>
    public double Of(Length length) => FirstWord switch
    {
        "in" => length.Inches,
        "ft" => length.Feet,
        "mm" => length.Millimetres,
        "m" => length.Millimetres / 1000,
        _ => throw new InvalidOperationException($"'{Name}' does not measure length"),
    };

    /// <summary>How many of it an area makes.</summary>
    /// <exception cref="InvalidOperationException">It does not measure area.</exception>
    public double Of(Area area) => FirstWord switch
    {
        "ft2" => area.SquareFeet,
        "m2" => area.SquareMillimetres / 1e6,
        _ => throw new InvalidOperationException($"'{Name}' does not measure area"),
    };

    /// <inheritdoc/>
    public override string ToString() => Name;
}
