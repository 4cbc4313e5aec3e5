using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Prices;

/// <summary>The timber of one species that a job takes: whole boards, as they are bought.</summary>
/// <param name="Species">The timber.</param>
/// <param name="Boards">How many boards are cut.</param>
/// <param name="Bought">Their volume.</param>
/// <param name="InThePiece">What of it is in the finished parts, spare ones not counted.</param>
/// <param name="Used">The price of that.</param>
/// <param name="Lost">The price of the rest: kerfs, shavings, offcuts.</param>
public sealed record TimberLine(Species Species, int Boards, Volume Bought, Volume InThePiece, Money Used, Money Lost);

/// <summary>A board more of a species, should one fail.</summary>
/// <param name="Species">The timber.</param>
/// <param name="Like">The board of the stock that it is like.</param>
/// <param name="Price">Its price.</param>
public sealed record SpareBoard(Species Species, string Like, Money Price);

/// <summary>
/// What the timber of a job costs: the boards that its layout cuts, at their prices, and what of it stays in the piece. With
/// a layout nothing has to be guessed as a factor of waste.
/// </summary>
public sealed record TimberBill
{
    /// <summary>By species, in the order of the stock.</summary>
    public required IReadOnlyList<TimberLine> Lines { get; init; }

    /// <summary>What all the boards cost, rounded once; the lines add up to it.</summary>
    public required Money Total { get; init; }

    /// <summary>Boards more, should one fail; may be empty.</summary>
    public required IReadOnlyList<SpareBoard> Spares { get; init; }

    /// <summary>What a board foot is reckoned at on boards that bear no price; null where all bear one.</summary>
    public required Money? AssumedBoardFoot { get; init; }

    /// <summary>Reckons it.</summary>
    /// <param name="layout">Where the parts come out of which boards. What is sawn already counts like what is still to be cut.</param>
    /// <param name="spares">How many boards more are bought of each species, should one fail; the cheapest that is cut says what one costs.</param>
    public static TimberBill Of(Layout layout, int spares)
    {
        // An offcut was paid for with its board.
        var assumed = layout.Cost.AssumedBoardFoot ?? layout.Cost.Hour * HoursPerBoardFoot;
        var bought = layout.Boards.Where(board => board.Board.CutFrom is null).ToList();
        var total = Money.Sum(bought.Select(PriceOf), assumed.Currency).Rounded();
        var species = layout.Boards.Select(board => board.Board.Species).Distinct().ToList();
        List<TimberLine> lines = [.. species.Select(LineOf)];
        decimal[] weights = [.. lines.SelectMany(line => (decimal[])[line.Used.Amount, line.Lost.Amount])];
        if (weights.Sum() > 0)
        {
            var shares = total.SharedOut(weights);
            lines = [.. lines.Select((line, at) => line with { Used = shares[2 * at], Lost = shares[(2 * at) + 1] })];
        }

        return new()
        {
            Lines = lines,
            Total = total,
            Spares = [.. species.SelectMany(one => Enumerable.Range(0, spares), (one, _) => SpareOf(one)).OfType<SpareBoard>()],
            AssumedBoardFoot = bought.Exists(board => board.Board.Price is null) ? assumed.Rounded() : null,
        };

        Money PriceOf(BoardLayout board) => board.Board.Price ?? assumed * (decimal)board.Board.Volume.BoardFeet;

        TimberLine LineOf(Species one)
        {
            var boards = bought.Where(board => board.Board.Species == one).ToList();
            var volume = boards.Aggregate(Volume.Zero, (sum, board) => sum + board.Board.Volume);
            var inThePiece = layout.Boards.Where(board => board.Board.Species == one).SelectMany(board => board.Blanks).Aggregate(Volume.Zero, (sum, placed) => sum + InThePieceOf(placed.Blank));
            var price = Money.Sum(boards.Select(PriceOf), assumed.Currency);
            var used = volume == Volume.Zero ? price * 0 : price * (decimal)Math.Min(1, inThePiece / volume);
            return new(one, boards.Count, volume, inThePiece, used, price - used);
        }

        SpareBoard? SpareOf(Species one) => bought.Where(board => board.Board.Species == one).MinBy(board => PriceOf(board).Amount) is { } like
            ? new(one, like.Board.Name, PriceOf(like).Rounded())
            : null;
    }

    /// <summary>As a layout reckons boards without a price where the shop gives its rate (common practice, no source).</summary>
    private const decimal HoursPerBoardFoot = 0.1m;

    /// <summary>What of a blank is in the piece at its final size; of spare parts nothing.</summary>
    private static Volume InThePieceOf(Blank blank)
    {
        var wanted = blank.Numbers.Count(number => number <= blank.Part.Count);
        return blank.Part.Volume * wanted / Math.Max(1, blank.Strips);
    }
}
