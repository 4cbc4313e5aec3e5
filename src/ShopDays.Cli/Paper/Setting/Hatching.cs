namespace ShopDays.Cli.Paper.Setting;

/// <summary>The lines of a hatch over an area. They hang on the page, not on the area, so that areas that touch match.</summary>
internal static class Hatching
{
    /// <summary>The strokes that cover a rectangle; their ends may lie outside it.</summary>
    public static IEnumerable<(Spot From, Spot To)> Strokes(Box area, Hatch hatch, double spacing)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spacing);
        return hatch switch
        {
            Hatch.None => [],
            Hatch.Rising => Slanted(area, spacing, rising: true),
            Hatch.Falling => Slanted(area, spacing, rising: false),
            Hatch.Crossed => Slanted(area, spacing, rising: true).Concat(Slanted(area, spacing, rising: false)),
            Hatch.Level or Hatch.Dots => Multiples(area.Y, area.Bottom, spacing)
                .Select(y => (new Spot(Before(area.X, spacing), y), new Spot(area.Right, y))),
            Hatch.Upright => Multiples(area.X, area.Right, spacing)
                .Select(x => (new Spot(x, area.Y), new Spot(x, area.Bottom))),
            _ => throw new ArgumentOutOfRangeException(nameof(hatch), hatch, null),
        };
    }

    private static IEnumerable<(Spot From, Spot To)> Slanted(Box area, double spacing, bool rising)
    {
        // Lines at 45 degrees keep x + y (rising) or x - y (falling); the step along x is longer than the spacing.
        var step = spacing * Math.Sqrt(2);
        return rising
            ? Multiples(area.X + area.Y, area.Right + area.Bottom, step)
                .Select(sum => (new Spot(sum - area.Bottom, area.Bottom), new Spot(sum - area.Y, area.Y)))
            : Multiples(area.X - area.Bottom, area.Right - area.Y, step)
                .Select(difference => (new Spot(difference + area.Y, area.Y), new Spot(difference + area.Bottom, area.Bottom)));
    }

    private static double Before(double from, double step) => Math.Floor(from / step) * step;

    private static IEnumerable<double> Multiples(double from, double to, double step)
    {
        for (var order = Math.Ceiling(from / step); order * step <= to; order++)
        {
            yield return order * step;
        }
    }
}
