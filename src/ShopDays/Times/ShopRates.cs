using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Times;

/// <summary>The few rates that a layout is priced with, out of all that the model knows.</summary>
public static class ShopRates
{
    private const double FeetPerMetre = 1 / 0.3048;
    private const double InchesPerMetre = 1 / 0.0254;
    private const double SquareFeetPerSquareMetre = FeetPerMetre * FeetPerMetre;

    /// <summary>Rates of sawing and of planing down, at the centre of what is believed.</summary>
    /// <param name="model">The model.</param>
    /// <param name="methodOf">The method used for an operation in this job.</param>
    /// <param name="hourlyRate">What an hour of the shop is worth; null when the shop does not say.</param>
    public static SawingRates ForLayout(RateModel model, Func<Operation, Method> methodOf, Money? hourlyRate)
    {
        return new()
        {
            Straighten = ByLength("straighten a live edge", FeetPerMetre),
            Rip = ByLength("rip", FeetPerMetre),
            Crosscut = ByLength("crosscut", InchesPerMetre),
            Resaw = Resaw(),
            PlaneDown = PlaneDown(),
            HourlyRate = hourlyRate,
        };

        CutRate ByLength(string name, double unitsPerMetre)
        {
            var (operation, method) = Find(name);
            return new(
                WorkTime.FromMinutes(method.Setup.Minutes * (1 + method.Rest)),
                WorkTime.FromMinutes(model.CentralMinutes(operation, method) * unitsPerMetre),
                model.CentralSlope(operation, method, Covariate.Thickness),
                model.CentralSlope(operation, method, Covariate.Hardness));
        }

        // The kerf's area is length times width, and the width counts once more by its slope.
        CutRate Resaw()
        {
            var (operation, method) = Find("resaw");
            var slope = model.CentralSlope(operation, method, Covariate.Width);
            var reference = method.Slopes.FirstOrDefault(one => one.Covariate == Covariate.Width)?.Reference ?? 1;
            return new(
                WorkTime.FromMinutes(method.Setup.Minutes * (1 + method.Rest)),
                WorkTime.FromMinutes(model.CentralMinutes(operation, method) * FeetPerMetre / 12 * Math.Pow(1 / reference, slope)),
                1 + slope,
                model.CentralSlope(operation, method, Covariate.Hardness));
        }

        PlaneRate PlaneDown()
        {
            var (operation, method) = Find("gauge and thickness face two");
            return new(
                WorkTime.FromMinutes(model.CentralMinutes(operation, method) * SquareFeetPerSquareMetre),
                model.CentralSlope(operation, method, Covariate.Depth),
                model.CentralSlope(operation, method, Covariate.Hardness));
        }

        (Operation Operation, Method Method) Find(string name)
        {
            var operation = model.Terms.Catalogue[name];
            return (operation, methodOf(operation));
        }
    }
}
