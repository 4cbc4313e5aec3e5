using System.Globalization;
using ShopDays.Measures;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Phrases;

/// <summary>Which way a rate is read.</summary>
internal enum RatePer
{
    /// <summary>How much in a minute: sawing.</summary>
    Minute,

    /// <summary>How much in an hour: faces.</summary>
    Hour,

    /// <summary>Minutes for one of it: joints, and slow work by length.</summary>
    Each,
}

/// <summary>How the trade reads a rate: <c>1.2 ft/min</c>, <c>12 ft2/h</c>, <c>16 min each</c>.</summary>
/// <param name="Per">Which way.</param>
/// <param name="Unit">Its name, such as <c>ft/min</c>.</param>
/// <param name="Share">How many of that name's unit one unit of the catalogue is.</param>
internal sealed record RateReading(RatePer Per, string Unit, double Share)
{
    /// <summary>Length that takes longer than so many minutes a foot is read the other way.</summary>
    private const double SlowestPerMinute = 1.4;

    /// <summary>The reading of an operation in the units that a shop writes in; it depends on the catalogue alone, so that it never changes by learning.</summary>
    public static RateReading Of(OperationRate rate, LengthFormat format)
    {
        var unit = rate.Operation.Unit;
        var (share, named) = SawnWords.Of(1, unit.Name, format);
        var first = named.Split(' ')[0];
        return unit.Kind switch
        {
            UnitKind.Length when rate.Method.MinutesPerUnit * unit.Of(Length.FromInches(12m)) <= SlowestPerMinute => new(RatePer.Minute, first + "/min", share),
            UnitKind.Length => new(RatePer.Each, "min/" + first, share),
            UnitKind.Area => new(RatePer.Hour, first + "/h", share),
            _ => new(RatePer.Each, "min each", 1),
        };
    }

    /// <summary>The figure of a time for one unit of the catalogue.</summary>
    public double Figure(WorkTime each) => Per switch
    {
        RatePer.Minute => Share / each.Minutes,
        RatePer.Hour => Share * 60 / each.Minutes,
        _ => each.Minutes / Share,
    };

    /// <summary>The middle.</summary>
    public double Middle(TimeBelief belief) => Figure(belief.Median);

    /// <summary>The 80 % range, the smaller figure first.</summary>
    public (double Low, double High) Range80(TimeBelief belief)
    {
        var (one, other) = (Figure(belief.At(0.1)), Figure(belief.At(0.9)));
        return (Math.Min(one, other), Math.Max(one, other));
    }

    /// <summary>Two or three figures that count: <c>0.016</c>, <c>0.84</c>, <c>1.2</c>, <c>16</c>, <c>160</c>.</summary>
    public static string Write(double figure) => figure.ToString(
        figure switch { < 0.00995 => "G2", < 0.0995 => "0.000", < 0.995 => "0.00", < 9.95 => "0.0", _ => "0" },
        CultureInfo.InvariantCulture);

    /// <summary>The middle, without its unit: <c>1.2</c>.</summary>
    public string Write(TimeBelief belief) => Write(Middle(belief));

    /// <summary><c>0.9 to 1.3</c>.</summary>
    public string WriteRange(TimeBelief belief)
    {
        var (low, high) = Range80(belief);
        return $"{Write(low)} to {Write(high)}";
    }
}
