using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Files;

/// <summary>Reads the <c>edges</c> of <c>rates.yaml</c>: how long a shop's own edges last, and what honing them takes.</summary>
internal static class EdgeLines
{
    private static readonly ValueReader<double> Minutes = Values.Number("minutes of cutting that an edge lasts", 1, 10_000);

    /// <summary>What takes longer is grinding a new bevel (common practice, no source).</summary>
    private static readonly WorkTime LongestHoning = WorkTime.FromMinutes(60);

    /// <summary>Reads them.</summary>
    /// <param name="section">The rates.</param>
    /// <param name="operations">The operations, those of the shop among them.</param>
    /// <returns>What is changed of each edge, by its name.</returns>
    public static IReadOnlyDictionary<string, Func<CuttingEdge, CuttingEdge>> Read(Section section, OperationCatalogue operations)
    {
        var known = operations.All.SelectMany(operation => operation.Methods).Select(method => method.Edge).OfType<CuttingEdge>().DistinctBy(edge => edge.Name).ToList();
        string[] names = [.. known.Select(edge => edge.Name)];
        var changes = new Dictionary<string, Func<CuttingEdge, CuttingEdge>>(StringComparer.Ordinal);
        section.Lines<object>("edges", "an edge", line =>
        {
            var name = line.Required("edge", Values.Name("an edge, such as plane irons"), "an edge, such as plane irons");
            name = name.Unless(line.Findings, typed => names.Contains(typed, StringComparer.OrdinalIgnoreCase) ? null : RateMistakes.UnknownEdge(name.Place, typed, names));
            var edge = name.IsRead ? known.First(one => string.Equals(one.Name, name.Value, StringComparison.OrdinalIgnoreCase)) : known[0];
            if (name.IsRead && changes.ContainsKey(edge.Name))
            {
                line.Findings.Add(RateMistakes.EdgeTwice(name.Place, edge.Name));
            }

            var lasts = line.Optional("minutes", Minutes);
            var minutes = lasts.IsRead ? lasts.Value : edge.MinutesEach;
            var atATime = line.Optional("at-a-time", Values.Whole("a count of edges", 1, 20), edge.AtATime);
            var honing = line.Optional("honing", ShopSections.SomeTime("the time to hone an edge"));
            if (honing.IsWritten && name.IsRead && !edge.IsHoned)
            {
                line.Findings.Add(RateMistakes.EdgeIsNotHoned(honing.Place, edge.Name, edge.SharpenedBy));
            }

            honing = honing.Unless(line.Findings, time => time > LongestHoning ? RateMistakes.HoningTooLong(honing.Place, time)
                : edge.IsHoned && time.Minutes > minutes ? RateMistakes.HoningOutlastsEdge(honing.Place, time, WorkTime.FromMinutes(minutes))
                : null);
            if (name.IsRead && !honing.IsWritten && edge.TimeToSharpen(operations) is var sharpening && sharpening.Minutes > minutes)
            {
                _ = lasts.Unless(line.Findings, _ => RateMistakes.SharpeningOutlastsEdge(lasts.Place, edge, sharpening, WorkTime.FromMinutes(minutes)));
            }

            changes[edge.Name] = one => one with { MinutesEach = minutes, AtATime = atATime, HoningEach = honing.IsRead ? honing.Value : null, Source = "the shop's own figures" };
            return edge;
        });
        return changes;
    }

    /// <summary>An operation with the shop's own edges.</summary>
    public static Operation Changed(Operation operation, IReadOnlyDictionary<string, Func<CuttingEdge, CuttingEdge>> edges) => operation with
    {
        Methods = [.. operation.Methods.Select(method => method.Edge is { } edge && edges.TryGetValue(edge.Name, out var change) ? method with { Edge = change(edge) } : method)],
    };
}
