using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>Whether a species is a broad-leaved or a needle-leaved tree.</summary>
public enum SpeciesKind
{
    /// <summary>A broad-leaved tree.</summary>
    Hardwood,

    /// <summary>A needle-leaved tree.</summary>
    Softwood,
}

/// <summary>A timber and the figures of it that the work needs.</summary>
public sealed record Species
{
    /// <summary>The name in the trade, for example <c>white oak</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The botanical name.</summary>
    public required string BotanicalName { get; init; }

    /// <summary>Hardwood or softwood.</summary>
    public required SpeciesKind Kind { get; init; }

    /// <summary>Specific gravity on oven-dry mass and green volume, 0.1 to 1.4.</summary>
    public required double GreenSpecificGravity { get; init; }

    /// <summary>Specific gravity on oven-dry mass and volume at 12 % moisture, 0.1 to 1.4.</summary>
    public required double SpecificGravityAt12 { get; init; }

    /// <summary>Density in kg/m3 at 12 % moisture, water included, as the table gives it.</summary>
    public required double DensityAt12 { get; init; }

    /// <summary>Side hardness at 12 % moisture in pounds-force (the force that presses in a ball half its width).</summary>
    public required double HardnessPoundsForce { get; init; }

    /// <summary>Whether it holds silica or other stony matter, which dulls an edge in half the time (common practice, no source).</summary>
    public bool IsGritty { get; init; }

    /// <summary>Shrinkage from green to oven-dry across the rings, in percent.</summary>
    public required double RadialShrinkage { get; init; }

    /// <summary>Shrinkage from green to oven-dry along the rings, in percent.</summary>
    public required double TangentialShrinkage { get; init; }

    /// <summary>Shrinkage of volume from green to oven-dry, in percent.</summary>
    public required double VolumetricShrinkage { get; init; }

    /// <summary>Where the specific gravities come from.</summary>
    public required string GravitySource { get; init; }

    /// <summary>Where the hardness comes from.</summary>
    public required string HardnessSource { get; init; }

    /// <summary>Where the shrinkages come from.</summary>
    public required string ShrinkageSource { get; init; }

    /// <summary>
    /// Density in kg/m3 at a moisture content, water included: 1000 G (1 + M/100). Below 30 % the volume swells
    /// with moisture, so G runs between its values at 12 % and green; above, it stays at green.
    /// Source: Wood Handbook (2010), chapter 4, density from specific gravity and moisture; the straight line
    /// between 12 % and 30 % is our simplification. Within 2 % of the tables at 12 %.
    /// </summary>
    public double DensityAt(MoistureContent moisture)
    {
        var share = Math.Min(1, (moisture.Percent - 12) / (30 - 12));
        var gravity = SpecificGravityAt12 + ((GreenSpecificGravity - SpecificGravityAt12) * share);
        return 1000 * gravity * (1 + (moisture.Percent / 100));
    }

    /// <summary>What a volume of this timber weighs at a moisture content.</summary>
    public Mass Weigh(Volume volume, MoistureContent moisture) =>
        Mass.FromKilograms(volume.CubicMetres * DensityAt(moisture));

    /// <summary>Shrinkage of a board's width from green to oven-dry, in percent.</summary>
    public double ShrinkageOf(BoardSawing sawing) => sawing == BoardSawing.Quarter ? RadialShrinkage : TangentialShrinkage;

    /// <summary>What else it is called: its name less what stands in brackets, and the other name in them.</summary>
    public IEnumerable<string> OtherNames
    {
        get
        {
            var open = Name.IndexOf('(', StringComparison.Ordinal);
            var close = Name.IndexOf(')', StringComparison.Ordinal);
            if (open < 0 || close < open)
            {
                yield break;
            }

            var (before, inside, after) = (Name[..open].Trim(), Name[(open + 1)..close].Trim(), Name[(close + 1)..].Trim());
            yield return $"{before} {after}".Trim();

            // Alone a word in brackets is a name only where it tells more than a quality: mahogany (true) is not 'true'.
            yield return $"{inside} {(after.Length > 0 ? after : before)}";
        }
    }

    /// <summary>Whether it is a timber of this name, or a kind of it: swamp white oak is a white oak.</summary>
    public bool IsKindOf(string name) => OtherNames.Append(Name).Any(own =>
        string.Equals(own, name, StringComparison.OrdinalIgnoreCase) || own.EndsWith(" " + name, StringComparison.OrdinalIgnoreCase));

    /// <inheritdoc/>
    public override string ToString() => Name;
}
