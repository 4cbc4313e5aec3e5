using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>How much the width of a part will move over the year where the piece will stand.</summary>
/// <param name="Part">The part.</param>
/// <param name="Sawing">How the boards that it comes from lie; plain when any of them does.</param>
/// <param name="Made">Between what moistures its boards will have when it is brought to size.</param>
/// <param name="Shrinks">By how much it will be narrower at its driest, 0 or more.</param>
/// <param name="Swells">By how much it will be wider at its dampest, 0 or more.</param>
public sealed record Movement(Part Part, BoardSawing Sawing, MoistureRange Made, Length Shrinks, Length Swells)
{
    /// <summary>Narrower parts are not listed, panels always are: 4 in, below which it is less than a hair in a room (common practice, no source).</summary>
    public static Length Wide { get; } = Length.FromInches(4.0);

    /// <summary>Green wood does not move until it has dried to this: its fibres are full.</summary>
    private const double FibreSaturation = 30;

    /// <summary>From the narrowest to the widest that it will be.</summary>
    public Length InAll => Shrinks + Swells;

    /// <summary>
    /// The change of a width between two moistures: width x (M1 - M2) x S / 30 / 100, S the shrinkage from green to
    /// oven-dry in percent.
    /// Source: Wood Handbook (2010), chapter 13 (from memory); good from 6 to 14 %.
    /// </summary>
    /// <returns>What it shrinks by from the first to the second; below zero when it swells.</returns>
    public static Length Change(Species species, BoardSawing sawing, Length width, MoistureContent from, MoistureContent to)
    {
        var points = Math.Min(FibreSaturation, from.Percent) - Math.Min(FibreSaturation, to.Percent);
        return Length.FromMillimetres(width.Millimetres * points * species.ShrinkageOf(sawing) / FibreSaturation / 100);
    }

    /// <summary>Of the wide parts and panels of a job, those that do move.</summary>
    /// <param name="job">The job.</param>
    /// <param name="layout">Where the parts come from; null before there is a layout: then all boards that may give a part count.</param>
    /// <param name="waits">The table with the days of air-drying.</param>
    public static IReadOnlyList<Movement> Of(Job job, Layout? layout, WaitTable waits) =>
    [
        .. job.Parts
            .Where(part => part.IsPanel || part.Width >= Wide)
            .Select(part => Of(part, BoardsOf(part, job, layout), job, waits))
            .OfType<Movement>(),
    ];

    private static Movement? Of(Part part, List<Board> boards, Job job, WaitTable waits)
    {
        if (boards.Count == 0)
        {
            return null;
        }

        var sawing = boards.Any(board => board.Sawing == BoardSawing.Plain) ? BoardSawing.Plain : BoardSawing.Quarter;
        var made = boards.Select(board => MadeAt(board, job, waits)).Order().ToList();
        var shrinks = Change(part.Species, sawing, part.Width, made[^1], job.Home.Driest);
        var swells = Change(part.Species, sawing, part.Width, job.Home.Dampest, made[0]);
        return new(part, sawing, new(made[0], made[^1]), Length.Max(Length.Zero, shrinks), Length.Max(Length.Zero, swells));
    }

    /// <summary>The moisture of a board when its parts may be brought to size: at the start of the work, or once it is ready.</summary>
    private static MoistureContent MadeAt(Board board, Job job, WaitTable waits)
    {
        var dryness = Dryness.Of(board, job.Air, job.Start, waits);
        return dryness.ExpectedOn(dryness.Likely is { } ready && ready > job.Start ? ready : job.Start, job.Air, waits);
    }

    private static List<Board> BoardsOf(Part part, Job job, Layout? layout)
    {
        var used = layout?.Boards.Where(board => board.Blanks.Any(placed => placed.Blank.Part.Name == part.Name)).Select(board => board.Board).ToList() ?? [];
        return used.Count > 0 ? used : [.. job.Boards.Where(board => board.Species == part.Species && part.MayComeFrom(board))];
    }
}
