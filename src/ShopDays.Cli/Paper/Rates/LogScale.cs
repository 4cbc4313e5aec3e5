using System.Globalization;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Paper.Rates;

/// <summary>A logarithmic axis: equal steps on it are equal factors.</summary>
/// <param name="Low">The value at its beginning, above 0.</param>
/// <param name="High">The value at its end, above <paramref name="Low"/>.</param>
/// <param name="From">The place of its beginning, in points.</param>
/// <param name="To">The place of its end, in points.</param>
internal readonly record struct LogScale(double Low, double High, double From, double To)
{
    private const double LeastDistance = 18;

    /// <summary>Minutes that a clock or a working day would name.</summary>
    private static readonly double[] RoundMinutes = [1.0 / 60, 1.0 / 30, 1.0 / 12, 1.0 / 6, 0.5, 1, 2, 5, 10, 30, 60, 120, 300, 600, 1200, 3000, 6000, 12000, 30000, 60000, 120000, 300000, 600000];

    /// <summary>An axis that holds all values with some room at both ends.</summary>
    public static LogScale Around(IEnumerable<double> values, double from, double to)
    {
        const double Room = 1.12;
        List<double> all = [.. values];
        var (low, high) = (all.Min() / Room, all.Max() * Room);
        return new(low, high, from, to);
    }

    /// <summary>The place of a value.</summary>
    public double Place(double value) => From + ((To - From) * Math.Log(value / Low) / Math.Log(High / Low));

    /// <summary>The place of a value, no further out than the ends.</summary>
    public double PlaceInside(double value) => Place(Math.Clamp(value, Low, High));

    /// <summary>Whether a value lies on the axis.</summary>
    public bool Holds(double value) => value >= Low && value <= High;

    /// <summary>Round minutes on the axis, with their words; never too near to each other.</summary>
    public IReadOnlyList<(double Value, string Words)> TimeTicks() => Spaced(RoundMinutes.Select(minutes => (minutes, WordsOf(minutes))));

    /// <summary>Round figures on the axis: ones, twos and fives of each ten; where that leaves fewer than three, others between them.</summary>
    public IReadOnlyList<(double Value, string Words)> FigureTicks()
    {
        var ticks = Spaced(Figures([1, 2, 5]));
        foreach (var leads in (double[][])[[3, 7], [1.5, 4, 2.5], [1.2, 6, 8, 9]])
        {
            ticks = ticks.Count >= 3 ? ticks : Spaced([.. ticks, .. Figures(leads)]);
        }

        return ticks;
    }

    private IEnumerable<(double Value, string Words)> Figures(double[] leads)
    {
        var (first, last) = ((int)Math.Floor(Math.Log10(Low)), (int)Math.Ceiling(Math.Log10(High)));
        return Enumerable.Range(first, last - first + 1)
            .SelectMany(power => leads.Select(lead => decimal.Round((decimal)(lead * Math.Pow(10, power)), 8, MidpointRounding.AwayFromZero)))
            .Select(value => ((double)value, value.ToString("0.#######", CultureInfo.InvariantCulture)));
    }

    /// <summary>Those on the axis, of two that are too near to each other the earlier in the list; rising.</summary>
    private List<(double Value, string Words)> Spaced(IEnumerable<(double Value, string Words)> ticks)
    {
        var ofThis = this;
        var kept = new List<(double Value, string Words)>();
        foreach (var tick in ticks.Where(Holds))
        {
            if (kept.All(other => Math.Abs(ofThis.Place(tick.Value) - ofThis.Place(other.Value)) >= LeastDistance))
            {
                kept.Add(tick);
            }
        }

        kept.Sort((one, other) => one.Value.CompareTo(other.Value));
        return kept;
    }

    private bool Holds((double Value, string Words) tick) => Holds(tick.Value);

    private static string WordsOf(double minutes) => minutes switch
    {
        < 1 => CountWords.Number((int)Math.Round(minutes * 60, MidpointRounding.AwayFromZero)) + " s",
        < 60 => CountWords.Number((int)minutes) + " min",
        _ => CountWords.Number((int)(minutes / 60)) + " h",
    };
}
