using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Work;

/// <summary>What is weighed.</summary>
public enum WeighedKind
{
    /// <summary>A board or slab as it lies there.</summary>
    Board,

    /// <summary>A blank, sawn out.</summary>
    Blank,

    /// <summary>One part, finished.</summary>
    Part,

    /// <summary>What comes out of a glue-up, finished.</summary>
    GlueUp,
}

/// <summary>The weight of one thing.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Name">Its name.</param>
/// <param name="Mass">What it weighs.</param>
/// <param name="IsOverLimit">Whether that is more than one person should lift alone.</param>
public sealed record Weighed(WeighedKind Kind, string Name, Mass Mass, bool IsOverLimit);

/// <summary>Weights of all that is lifted in a job, at the moisture of the boards.</summary>
public static class Weights
{
    /// <summary>Weighs the boards that are still to be cut, their blanks, every part and every glue-up, in that order.</summary>
    public static IReadOnlyList<Weighed> Of(Job job, Layout layout, ShopLimits limits)
    {
        return
        [
            .. layout.ToCut.Select(board => Weigh(WeighedKind.Board, board.Board.Name, board.Board.Weight)),
            .. layout.Boards.SelectMany(board => board.Blanks.Select(blank => Weigh(
                WeighedKind.Blank, blank.Blank.Label, board.Board.Species.Weigh(blank.Region.Area * board.Board.Thickness, board.Board.Moisture)))),
            .. job.Parts.Select(part => Weigh(WeighedKind.Part, part.Name, OfPart(part, layout))),
            .. job.GlueUps.Select(glueUp => Weigh(WeighedKind.GlueUp, glueUp.Name, OfNamed(glueUp.Name, job, layout))),
        ];

        Weighed Weigh(WeighedKind kind, string name, Mass mass) => new(kind, name, mass, limits.IsForTwo(mass));
    }

    /// <summary>One part, finished, at the moisture of the board it comes from, or air-dry.</summary>
    public static Mass OfPart(Part part, Layout layout)
    {
        var from = layout.Boards.FirstOrDefault(board => board.Blanks.Any(blank => blank.Blank.Part.Name == part.Name));
        return part.Species.Weigh(part.Volume, from?.Board.Moisture ?? Board.AirDry);
    }

    /// <summary>
    /// One part, finished, while no layout says which board it comes from: at the moisture of the wettest board of its
    /// timber, or air-dry, so that no lift is made light of.
    /// </summary>
    public static Mass OfPart(Part part, IEnumerable<Board> stock) => part.Species.Weigh(
        part.Volume,
        stock.Where(board => board.Species == part.Species).Select(board => board.Moisture).DefaultIfEmpty(Board.AirDry).Max());

    /// <summary>Some boards together.</summary>
    public static Mass OfBoards(IEnumerable<Board> boards) => boards.Aggregate(Mass.Zero, (sum, board) => sum + board.Weight);

    /// <summary>All pieces of a part, or all that a glue-up joins; zero for a name that is neither.</summary>
    internal static Mass OfNamed(string name, Job job, Layout layout) => Holders.PartsOf(name, job)
        .Aggregate(Mass.Zero, (sum, part) => sum + (OfPart(part, layout) * part.Count));
}
