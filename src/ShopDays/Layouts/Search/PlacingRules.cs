namespace ShopDays.Layouts.Search;

/// <summary>Which blanks are placed first.</summary>
internal enum PlacingOrder
{
    Largest,
    Longest,
    Widest,
    Scarcest,
    AnyHow,
}

/// <summary>Which free piece suits a blank best.</summary>
internal enum PlacingFit
{
    SmallestPiece,
    ClosestSide,
    ClosestLength,
    ClosestWidth,

    /// <summary>Judged by what it costs, not by what it spoils: see <see cref="CarvingCost"/>.</summary>
    LeastMoney,
}

/// <summary>Which way the rest of a piece is cut when a blank is taken from its corner.</summary>
internal enum PlacingSplit
{
    LargestRest,
    CrosscutFirst,
    RipFirst,
    EitherWay,
}

/// <summary>How one attempt at placing blanks goes about it.</summary>
/// <param name="Order">Which blanks come first.</param>
/// <param name="Fit">Which piece suits.</param>
/// <param name="Split">How the rest is cut.</param>
/// <param name="NewBoard">How much taking a new board counts against a place, as a share of the board's value.</param>
/// <param name="Whim">How far chance may move a judgement, 0 for not at all.</param>
internal sealed record PlacingRules(PlacingOrder Order, PlacingFit Fit, PlacingSplit Split, double NewBoard, double Whim)
{
    /// <summary>Rules that leave nothing to chance, the likeliest to do well first.</summary>
    public static IReadOnlyList<PlacingRules> Plain { get; } =
    [
        .. from order in (PlacingOrder[])[PlacingOrder.Scarcest, PlacingOrder.Longest, PlacingOrder.Largest, PlacingOrder.Widest]
           from split in (PlacingSplit[])[PlacingSplit.CrosscutFirst, PlacingSplit.RipFirst, PlacingSplit.LargestRest]
           select new PlacingRules(order, PlacingFit.ClosestSide, split, 1, 0),
    ];

    public static PlacingRules Draw(Random random) => new(
        (PlacingOrder)random.Next(5),
        random.Next(3) == 0 ? PlacingFit.LeastMoney : (PlacingFit)random.Next(4),
        (PlacingSplit)random.Next(4),
        random.NextDouble(),
        random.NextDouble() * 0.5);

    /// <summary>A judgement moved by chance.</summary>
    public double Sway(double judgement, Random random) => Whim == 0 ? judgement : judgement * (1 + (Whim * random.NextDouble()));

    /// <summary>How early a blank is placed; greater is earlier.</summary>
    public double Rank(WantedBlank blank, Random random) => Order switch
    {
        PlacingOrder.Largest => Sway(blank.Area, random),
        PlacingOrder.Longest => Sway(blank.Length.Millimetres * 1e6, random) + blank.Area,
        PlacingOrder.Widest => Sway(blank.Width.Millimetres * 1e7, random) + blank.Area,
        PlacingOrder.Scarcest => Sway(blank.Area / blank.Choices, random),
        PlacingOrder.AnyHow => random.NextDouble(),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    /// <summary>The area that a place in a piece spoils.</summary>
    public double Waste(Region piece, Region place)
    {
        var length = piece.Length.Millimetres;
        var width = piece.Width.Millimetres;
        var beside = length - place.Length.Millimetres;
        var above = width - place.Width.Millimetres;
        return Fit switch
        {
            PlacingFit.SmallestPiece => (length * width) - (place.Length.Millimetres * place.Width.Millimetres),
            PlacingFit.ClosestSide => Math.Min(beside * width, above * length),
            PlacingFit.ClosestLength => beside * width,
            PlacingFit.ClosestWidth or PlacingFit.LeastMoney => above * length,
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>Whether the crosscut comes before the rip.</summary>
    public bool CrosscutsFirst(Region piece, Region place, Random random) => Split switch
    {
        PlacingSplit.CrosscutFirst => true,
        PlacingSplit.RipFirst => false,
        PlacingSplit.EitherWay => random.Next(2) == 0,
        PlacingSplit.LargestRest => (piece.Right - place.Right) * piece.Width >= (piece.Top - place.Top) * piece.Length,
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
