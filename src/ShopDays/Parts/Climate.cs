using ShopDays.Measures;

namespace ShopDays.Parts;

/// <summary>The air in which timber is stacked.</summary>
/// <param name="Temperature">Its temperature.</param>
/// <param name="Humidity">Its relative humidity, 0 to 100 %.</param>
public sealed record Climate(Temperature Temperature, Percent Humidity)
{
    /// <summary>
    /// The moisture that timber comes to when it is left in this air long enough.
    /// Source: Wood Handbook (2010), eq. 4-5; form and coefficients from memory, confirmed by the handbook's own worked
    /// value. It departs from the handbook's tables by 0.13 points on average and by 0.9 at most (Forest Products
    /// Society, abstract of a comparison of such formulas).
    /// </summary>
    public MoistureContent Equilibrium
    {
        get
        {
            var t = Temperature.Fahrenheit;
            var w = 330 + (0.452 * t) + (0.00415 * t * t);
            var k = 0.791 + (0.000463 * t) - (0.000000844 * t * t);
            var k1 = 6.34 + (0.000775 * t) - (0.0000935 * t * t);
            var k2 = 1.09 + (0.0284 * t) - (0.0000904 * t * t);
            var kh = k * Math.Min(1, Humidity.Share);
            var dissolved = kh / (1 - kh);
            var bound = ((k1 * kh) + (2 * k1 * k2 * kh * kh)) / (1 + (k1 * kh) + (k1 * k2 * kh * kh));
            return MoistureContent.FromPercent(Math.Max(0, 1800 / w * (dissolved + bound)));
        }
    }
}
