namespace ShopDays.Cli.Paper.Setting;

/// <summary>Ways to set the same page, from the roomiest to the closest.</summary>
internal static class Densities
{
    /// <summary>The blocks of the first way in which they stand on one page; null if none lets them.</summary>
    /// <param name="ways">The roomiest first.</param>
    /// <param name="set">Sets the blocks in one of the ways.</param>
    /// <param name="room">The space of a page.</param>
    public static IReadOnlyList<Block>? First<TWay>(IEnumerable<TWay> ways, Func<TWay, IReadOnlyList<Block>> set, Room room) =>
        ways.Select(set).FirstOrDefault(blocks => HeightOf(blocks, room) <= room.Height);

    /// <summary>The height of blocks below each other, in points; distance at the top and at the end does not count.</summary>
    public static double HeightOf(IEnumerable<Block> blocks, Room room)
    {
        var pieces = blocks.SelectMany(block => block.Pieces(room)).SkipWhile(piece => piece.Blank).ToList();
        return pieces.Take(pieces.FindLastIndex(piece => !piece.Blank) + 1).Sum(piece => piece.Height);
    }
}
