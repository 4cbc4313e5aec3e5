namespace ShopDays.Layouts.Search;

/// <summary>What it costs to carve a place out of a free piece: its timber and the cuts, less what the rests are still worth.</summary>
/// <param name="Money">In money.</param>
/// <param name="CrosscutFirst">Whether the crosscut comes first that way.</param>
internal readonly record struct CarvingCost(double Money, bool CrosscutFirst)
{
    /// <summary>The cheaper order of the two cuts.</summary>
    public static CarvingCost Of(StockBoard stock, Region piece, Region place, double moneyPerMinute)
    {
        var hasEnd = place.Right < piece.Right || place.X > piece.X;
        var hasEdge = place.Top < piece.Top || place.Y > piece.Y;
        var end = place.Right + stock.Kerf;
        var edge = place.Top + stock.Kerf;
        var crosscutFirst = Left(Region.Between(end, piece.Y, piece.Right, piece.Top), Region.Between(piece.X, edge, place.Right, piece.Top))
            - ((hasEnd ? stock.Minutes(CutKind.Crosscut, piece.Width) : 0) * moneyPerMinute)
            - ((hasEdge ? stock.Minutes(CutKind.Rip, place.Length) : 0) * moneyPerMinute);
        var ripFirst = Left(Region.Between(end, piece.Y, piece.Right, place.Top), Region.Between(piece.X, edge, piece.Right, piece.Top))
            - ((hasEnd ? stock.Minutes(CutKind.Crosscut, place.Width) : 0) * moneyPerMinute)
            - ((hasEdge ? stock.Minutes(CutKind.Rip, piece.Length) : 0) * moneyPerMinute);
        return new CarvingCost(stock.ValueOfOffcut(piece) - Math.Max(crosscutFirst, ripFirst), crosscutFirst >= ripFirst);

        double Left(Region behind, Region above) => stock.ValueOfOffcut(behind) + stock.ValueOfOffcut(above);
    }
}
