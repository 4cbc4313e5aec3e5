using System.Runtime.CompilerServices;
using System.Text;
using Microsoft.AspNetCore.Components;
using ShopDays.Cli.Files;
using ShopDays.Cli.Paper.Svg;
using ShopDays.Layouts;

namespace ShopDays.Cli.Bench.Sheets;

/// <summary>The drawings of boards, each made once for as long as its layout is the one that is sawn by.</summary>
internal sealed class DrawingsKept
{
    private readonly ConditionalWeakTable<BoardLayout, Kept> drawings = [];

    /// <summary>The drawing of a board.</summary>
    /// <param name="board">The board.</param>
    /// <param name="place">Which of the drawings on its page, from 0: what is named within them must differ.</param>
    /// <param name="read">Its shop and job.</param>
    public MarkupString Of(BoardLayout board, int place, ShopAndJob read)
    {
        if (drawings.TryGetValue(board, out var known) && known.Place == place)
        {
            return known.Drawing;
        }

        var drawing = new MarkupString(Encoding.UTF8.GetString(BoardDrawings.Of(FormattableString.Invariant($"board-{place}"), board, read.Shop.Allowances, read.Located.Format)));
        drawings.AddOrUpdate(board, new(place, drawing));
        return drawing;
    }

    private sealed record Kept(int Place, MarkupString Drawing);
}
