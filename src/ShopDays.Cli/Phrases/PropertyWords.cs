using System.Globalization;
using ShopDays.Cli.Files;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>The properties of work in a maker's words.</summary>
internal static class PropertyWords
{
    /// <summary><c>white oak, 1 1/8" thick, 1/8" deep</c>; empty where its time depends on none.</summary>
    /// <param name="at">The properties: inches, lbf for hardness.</param>
    /// <param name="format">How lengths are written.</param>
    /// <param name="timbers">Timbers of the shop, to be named before others of the same hardness.</param>
    public static string Of(IReadOnlyDictionary<Covariate, double> at, LengthFormat format, IReadOnlyList<string> timbers) => string.Join(", ", at
        .OrderBy(one => one.Key == Covariate.Hardness ? -1 : (int)one.Key)
        .Select(one => one.Key switch
        {
            Covariate.Hardness => Timber(one.Value, timbers) is (var name, true) ? name : $"timber as hard as {Timber(one.Value, timbers).Name}",
            Covariate.Thickness => Written(one.Value, format) + " thick",
            Covariate.Depth => Written(one.Value, format) + " deep",
            Covariate.Width => Written(one.Value, format) + " wide",
            _ => throw new System.Diagnostics.UnreachableException(),
        }));

    /// <summary>The timber of a hardness, or the one nearest to it, and whether the shop has named it and it has just that hardness.</summary>
    public static (string Name, bool IsNamed) Timber(double hardness, IReadOnlyList<string> timbers)
    {
        var nearest = BuiltIn.Species.All
            .OrderBy(one => Math.Abs(Math.Log(one.HardnessPoundsForce / hardness)))
            .ThenBy(one => timbers.Contains(one.Name, StringComparer.Ordinal) ? 0 : 1)
            .First();
        return (nearest.Name, timbers.Contains(nearest.Name, StringComparer.Ordinal) && Math.Abs(nearest.HardnessPoundsForce - hardness) < 0.5);
    }

    /// <summary>Inches as a format writes them; less than its smallest step in decimals, rather than as nothing.</summary>
    public static string Written(double inches, LengthFormat format)
    {
        var length = Length.FromInches((decimal)inches);
        return format.IsExact(length) || length > format.Step * 4 ? format.Write(length)
            : format == LengthFormat.Millimetres ? string.Create(CultureInfo.InvariantCulture, $"{length.Millimetres:0.#} mm")
            : string.Create(CultureInfo.InvariantCulture, $"{inches:0.###}\"");
    }
}
