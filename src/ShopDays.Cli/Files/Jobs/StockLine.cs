using ShopDays.Parts;

namespace ShopDays.Cli.Files.Jobs;

/// <summary>One line of the stock: a board, or several alike.</summary>
/// <param name="Name">The letter chalked on them.</param>
/// <param name="Board">What all of them are.</param>
/// <param name="Count">How many.</param>
internal sealed record StockLine(Field<string> Name, Board Board, int Count)
{
    /// <summary>The boards: marked A for one, A1 to A5 for five.</summary>
    public IEnumerable<Board> Boards => Count == 1
        ? [Board]
        : Enumerable.Range(1, Count).Select(number => Board with { Name = FormattableString.Invariant($"{Board.Name}{number}"), Line = Board.Name });
}
