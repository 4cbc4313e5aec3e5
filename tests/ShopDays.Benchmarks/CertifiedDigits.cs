using System.Globalization;
using ShopDays.Tests.Outside;

namespace ShopDays.Benchmarks;

/// <summary>How many digits of certified regressions the program's own regression reproduces with a flat prior.</summary>
internal static class CertifiedDigits
{
    public static int Print()
    {
        Console.WriteLine("digits that agree with the certified values, 15 at the most; the least over all terms of a set");
        Console.WriteLine("set        rows terms | coefficients  their deviations  residual deviation");
        foreach (var name in CertifiedRegression.Names)
        {
            var certified = CertifiedRegression.Read(name);
            var (coefficients, deviations, residual) = certified.Solve();
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{name,-10} {certified.Rows.Count,4} {certified.Coefficients.Count,5} | {Least(coefficients, certified.Coefficients),12:0.0} {Least(deviations, certified.Deviations),17:0.0} {CertifiedRegression.DigitsOf(residual, certified.ResidualDeviation),19:0.0}"));
        }

        return 0;
    }

    private static double Least(IEnumerable<double> found, IEnumerable<double> certified) =>
        found.Zip(certified, CertifiedRegression.DigitsOf).Min();
}
