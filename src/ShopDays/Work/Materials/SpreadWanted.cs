using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work.Materials;

/// <summary>An adhesive or a finish that a job takes.</summary>
/// <param name="Name">Its name in the table of waits.</param>
/// <param name="Surface">What is covered, every coat counted.</param>
/// <param name="Coverage">How far it goes; null where that is not known.</param>
public sealed record SpreadWanted(string Name, Area Surface, Coverage? Coverage)
{
    /// <summary>Coats of a finish, the most on any surface; 1 for an adhesive.</summary>
    public int Coats { get; init; } = 1;

    /// <summary>How much is used at the least, in litres or kilograms; null where that is not known.</summary>
    public double? Least => Coverage is { } known ? Surface.SquareMetres / known.High : null;

    /// <summary>How much is used at the most; what stays in the brush and the tin is not in it.</summary>
    public double? Most => Coverage is { } known ? Surface.SquareMetres / known.Low : null;
}

/// <summary>Reckons how much is spread in a job.</summary>
internal sealed class SpreadReckoning(Job job, Layout layout, OperationCatalogue operations, WaitTable waits, IReadOnlyDictionary<string, Coverage> coverages)
{
    /// <summary>The adhesives of its panels and glue-ups.</summary>
    public IReadOnlyList<SpreadWanted> Adhesives()
    {
        var lines = new GlueLines(job, layout, operations);
        return
        [
            .. job.Parts.Where(part => part.IsPanel).Select(part => (Panels.AdhesiveFor(job, waits, part).Name, Surface: lines.OfPanel(part)))
                .Concat(job.GlueUps.Select(glueUp => (waits.TryFindAdhesive(glueUp.Adhesive, out var found) ? found.Name : glueUp.Adhesive, Surface: lines.OfGlueUp(glueUp))))
                .GroupBy(one => one.Item1, StringComparer.Ordinal)
                .Select(alike => Wanted(alike.Key, alike.Aggregate(Area.Zero, (sum, one) => sum + one.Surface), 1))
                .Where(one => one.Surface > Area.Zero),
        ];
    }

    /// <summary>The finishes with all their coats.</summary>
    public IReadOnlyList<SpreadWanted> Finishes() =>
    [
        .. job.Finishes
            .Select(work => (Name: waits.TryFindFinish(work.Finish, out var found) ? found.Name : work.Finish, Surface: Surface(work) * work.Coats, work.Coats))
            .GroupBy(one => one.Name, StringComparer.Ordinal)
            .Select(alike => Wanted(alike.Key, alike.Aggregate(Area.Zero, (sum, one) => sum + one.Surface), alike.Max(one => one.Coats))),
    ];

    private Area Surface(FinishWork work) => work.On.SelectMany(name => Finishing.ShownParts(job, name)).Distinct().Aggregate(Area.Zero, (sum, part) => sum + Finishing.ShownArea(part, withInside: true));

    private SpreadWanted Wanted(string name, Area surface, int coats) => new(name, surface, coverages.GetValueOrDefault(name)) { Coats = coats };
}
