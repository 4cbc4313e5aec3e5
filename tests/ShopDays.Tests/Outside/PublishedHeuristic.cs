using System.Collections.Immutable;
using System.Globalization;

namespace ShopDays.Tests.Outside;

/// <summary>What a published method reached on the published problems, from memory: see the README beside the data.</summary>
/// <param name="Authors">Who published it.</param>
/// <param name="Year">When.</param>
/// <param name="Kind">What kind of search it is.</param>
/// <param name="Deviations">Average deviations in percent: the sets in turn, each at 1,000, 5,000 and 50,000 schedules.</param>
internal sealed record PublishedHeuristic(string Authors, int Year, string Kind, ImmutableArray<double> Deviations)
{
    /// <summary>The numbers of schedules that the published table has columns for.</summary>
    public static readonly ImmutableArray<int> Schedules = [1000, 5000, 50000];

    /// <summary>
    /// The best schedules known of the whole set of 480 or 600, in percent above the critical path (from memory); 0 for
    /// J30, which is compared with the optimum.
    /// </summary>
    public static double BestKnownOfWholeSet(string set) => set switch
    {
        "j30" => 0,
        "j60" => 10.37,
        "j120" => 29.10,
        _ => throw new ArgumentOutOfRangeException(nameof(set)),
    };

    /// <summary>The table.</summary>
    public static IReadOnlyList<PublishedHeuristic> All() =>
        [.. File.ReadLines(Path.Combine(PsplibSet.Folder, "heuristics.csv")).Skip(1).Where(line => line.Length > 0).Select(Parse)];

    /// <summary>The average deviation with so many schedules; null when the table has none for that number.</summary>
    public double? On(string set, int schedules) => Schedules.IndexOf(schedules) is >= 0 and var column
        ? Deviations[(PsplibSet.Names.IndexOf(set) * Schedules.Length) + column]
        : null;

    /// <summary>The median of all methods.</summary>
    public static double? Median(string set, int schedules)
    {
        var values = All().Select(one => one.On(set, schedules)).OfType<double>().Order().ToList();
        return values.Count == 0 ? null : (values[(values.Count - 1) / 2] + values[values.Count / 2]) / 2;
    }

    private static PublishedHeuristic Parse(string line)
    {
        var names = line.Split('"');
        var rest = names[2].Split(',');
        return new(names[1], int.Parse(rest[1], CultureInfo.InvariantCulture), rest[2], [.. rest.Skip(3).Select(text => double.Parse(text, CultureInfo.InvariantCulture))]);
    }
}
