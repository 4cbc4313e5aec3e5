using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;

namespace ShopDays.Cli.Paper.Boards;

/// <summary>The cuts of a board one below the other, to be followed with a saw.</summary>
internal static class CutTable
{
    private static readonly Column[] Columns =
    [
        Column.Fixed("", 9),
        Column.Fixed("Cut", 16, Align.Right),
        Column.Fixed("", 46),
        Column.Shared("On the board", 1.22),
        Column.Shared("On the piece in hand", 1.6),
        Column.Fixed("Long", 50, Align.Right),
        Column.Shared("Comes free", 1.3),
    ];

    /// <summary>The table.</summary>
    /// <param name="layout">How the board is cut.</param>
    /// <param name="wording">How lengths are written.</param>
    /// <param name="isClose">Whether it is set as closely as can still be read.</param>
    public static Table Of(BoardLayout layout, Wording wording, bool isClose = false) =>
        new(Columns, [.. layout.Cuts.OrderBy(cut => cut.Order).Select(cut => RowOf(cut, layout, wording))], TypeScale.Body with { Size = isClose ? 8 : 8.5 }) { Distance = 7, Padding = isClose ? 0.5 : 1.3 };

    private static Row RowOf(Cut cut, BoardLayout layout, Wording wording) => Row.Of(
        new TickCell(),
        CountWords.Number(cut.Order),
        CutWords.Of(cut.Kind),
        $"{wording.Length(cut.At)} from the {CutWords.MeasuredFrom(cut.Kind)}",
        InHand(cut, layout, wording),
        wording.Length(cut.Length),
        cut.Frees);

    private static string InHand(Cut cut, BoardLayout layout, Wording wording)
    {
        if (cut.Of == Region.Whole(layout.Board))
        {
            return "the whole board";
        }

        var piece = wording.Sides(cut.Of.Length, cut.Of.Width);
        return cut.Kind switch
        {
            CutKind.Crosscut => $"{piece}, at {wording.Length(cut.At - cut.Of.X)}",
            CutKind.Rip or CutKind.Straighten => $"{piece}, at {wording.Length(cut.At - cut.Of.Y)}",
            CutKind.Resaw => piece,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }
}
