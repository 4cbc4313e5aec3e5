using ShopDays.Parts;

namespace ShopDays.Cli.Files;

/// <summary>Reads the table of species: one timber a row, each group of figures with its source.</summary>
internal static class SpeciesRows
{
    /// <summary>Reads them all.</summary>
    public static SpeciesTable Read() => new(BuiltInRow.ReadAll("species.csv", row => new Species
    {
        Name = row.Text("common_name"),
        BotanicalName = row.Text("botanical_name"),
        Kind = row.OneOf<SpeciesKind>("kind"),
        GreenSpecificGravity = row.Number("sg_green"),
        SpecificGravityAt12 = row.Number("sg_12"),
        DensityAt12 = row.Number("density_12_kg_m3"),
        HardnessPoundsForce = row.Number("hardness_lbf"),
        IsGritty = row.YesNo("gritty"),
        RadialShrinkage = row.Number("shrink_radial_pct"),
        TangentialShrinkage = row.Number("shrink_tangential_pct"),
        VolumetricShrinkage = row.Number("shrink_volumetric_pct"),
        GravitySource = row.Text("sg_source"),
        HardnessSource = row.Text("hardness_source"),
        ShrinkageSource = row.Text("shrinkage_source"),
    }));
}
