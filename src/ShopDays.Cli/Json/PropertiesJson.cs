using ShopDays.Work;

namespace ShopDays.Cli.Json;

/// <summary>Properties of work for other programs: lengths in millimetres, hardness in pounds-force.</summary>
internal static class PropertiesJson
{
    private const double MillimetresPerInch = 25.4;

    /// <summary>As an object to be written; a property that is not stated is null.</summary>
    public static object Of(IReadOnlyDictionary<Covariate, double> at) => new
    {
        ThicknessMm = Millimetres(at, Covariate.Thickness),
        DepthMm = Millimetres(at, Covariate.Depth),
        WidthMm = Millimetres(at, Covariate.Width),
        HardnessLbf = at.TryGetValue(Covariate.Hardness, out var hardness) ? Math.Round(hardness, 1, MidpointRounding.AwayFromZero) : (double?)null,
    };

    private static double? Millimetres(IReadOnlyDictionary<Covariate, double> at, Covariate covariate) =>
        at.TryGetValue(covariate, out var inches) ? Math.Round(inches * MillimetresPerInch, 3, MidpointRounding.AwayFromZero) : null;
}
