using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Parts;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "Wood Handbook, Forest Products Laboratory, 2010: Tables 4-3, 5-3b, 5-5b; the rows marked as seen were read on the page, the rest are from memory")]
public sealed class WoodHandbookSpeciesTests
{
    // Table 5-3b (specific gravity and side hardness) and Table 4-3 (shrinkage), 2010.
    [Theory]
    [InlineData("white oak", 0.60, 0.68, 1360, 5.6, 10.5)] // shrinkage: page seen
    [InlineData("black walnut", 0.51, 0.55, 1010, 5.5, 7.8)] // shrinkage: page seen
    [InlineData("American elm", 0.46, 0.50, 830, 4.2, 9.5)] // shrinkage: page seen
    [InlineData("ponderosa pine", 0.38, 0.40, 460, 3.9, 6.2)] // gravity and hardness: page seen
    [InlineData("teak", 0.55, 0.59, 1000, 2.5, 5.8)] // Table 5-5b: hardness and green gravity, page seen
    public void A_species_carries_the_figures_of_the_tables(string name, double green, double dry, double hardness, double radial, double tangential)
    {
        Assert.True(BuiltIn.Species.TryFind(name, out var species));
        Assert.Equal((green, dry, hardness, radial, tangential), (species.GreenSpecificGravity, species.SpecificGravityAt12, species.HardnessPoundsForce, species.RadialShrinkage, species.TangentialShrinkage));
    }

    [Fact]
    public void Density_at_12_percent_agrees_with_the_table_of_density()
    {
        // The table rounds to whole kg/m3 and gravity to two decimals: half of 0.01 in 0.35 is 1.5 %.
        Assert.All(BuiltIn.Species.All, species => Assert.InRange(
            species.DensityAt(MoistureContent.FromPercent(12)) / species.DensityAt12, 0.985, 1.015));
    }

    [Fact]
    public void Every_species_names_the_source_of_each_group_of_figures()
    {
        Assert.True(BuiltIn.Species.All.Count >= 80);
        Assert.All(BuiltIn.Species.All, species => Assert.All(
            [species.GravitySource, species.HardnessSource, species.ShrinkageSource],
            source => Assert.True(source.Length > 15, species.Name)));
    }

    [Fact]
    public void Wood_shrinks_more_along_the_rings_than_across_them()
    {
        // The Handbook, chapter 4: tangential shrinkage is about twice the radial, never less.
        Assert.All(BuiltIn.Species.All, species => Assert.True(species.TangentialShrinkage > species.RadialShrinkage, species.Name));
    }
}

[Trait("Source", "common practice, no source; the fact was in view when the catalogue was made")]
public sealed class SlabWeightTests
{
    [Fact]
    public void An_elm_slab_10_ft_by_16_in_by_2_in_weighs_about_75_lb()
    {
        Assert.True(BuiltIn.Species.TryFind("American elm", out var elm));
        var slab = new Board { Name = "A", Species = elm, Length = Length.FromFeet(10), Width = Length.FromInches(16m), Thickness = Length.FromInches(2m) };
        // Within a tenth: boards of one species differ by more than that among themselves.
        Assert.InRange(slab.Weight.Pounds, 67.5, 82.5);
    }
}
