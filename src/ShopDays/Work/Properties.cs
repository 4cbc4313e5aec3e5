using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>The properties of work that its time depends on, in the units of the catalogue: inches and lbf.</summary>
internal static class Properties
{
    /// <summary>Gathers those that are there: a length of zero or null stands for one that is not.</summary>
    public static Dictionary<Covariate, double> Of(
        IEnumerable<Species> species, Length? thickness = null, Length? depth = null, Length? width = null)
    {
        var all = new Dictionary<Covariate, double>();
        Put(Covariate.Thickness, thickness);
        Put(Covariate.Depth, depth);
        Put(Covariate.Width, width);
        if (MeanHardness(species) is { } hardness)
        {
            all[Covariate.Hardness] = hardness;
        }

        return all;

        void Put(Covariate covariate, Length? length)
        {
            if (length is { } given && given > Length.Zero)
            {
                all[covariate] = given.Inches;
            }
        }
    }

    // Times go with powers of hardness, so it is the geometric mean that stands for several timbers.
    private static double? MeanHardness(IEnumerable<Species> species)
    {
        var logs = species.Select(one => Math.Log(one.HardnessPoundsForce)).ToList();
        return logs.Count == 0 ? null : Math.Exp(logs.Average());
    }
}
