using ShopDays.Parts;

namespace ShopDays.Layouts;

/// <summary>What is on hand once some boards are sawn.</summary>
public static class SawnStock
{
    /// <summary>The boards that are left, and the offcuts kept of sawn ones, which may be sawn in their turn.</summary>
    /// <param name="stock">All the boards of the stock.</param>
    /// <param name="sawn">Those that are sawn, and offcuts that are, each with what was kept of it.</param>
    public static IReadOnlyList<Board> Left(IReadOnlyList<Board> stock, IReadOnlyList<BoardLayout> sawn)
    {
        var gone = sawn.Select(board => board.Board.Name).ToHashSet(StringComparer.Ordinal);
        return
        [
            .. stock
                .Concat(sawn.SelectMany(board => board.Offcuts.Where(offcut => offcut.Name is not null), (board, offcut) => board.AsBoard(offcut, offcut.Name!)))
                .Where(board => !gone.Contains(board.Name)),
        ];
    }

    /// <summary>The number of the next offcut of a board of the stock, from 1: one more than the greatest there is.</summary>
    /// <param name="origin">The board of the stock.</param>
    /// <param name="names">The names of all boards, sawn or not.</param>
    public static int NextRest(string origin, IEnumerable<string> names)
    {
        var lead = origin + " rest ";
        return 1 + names
            .Where(name => name.StartsWith(lead, StringComparison.Ordinal))
            .Select(name => int.TryParse(name.AsSpan(lead.Length), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture, out var number) ? number : 0)
            .DefaultIfEmpty()
            .Max();
    }
}
