namespace ShopDays.Layouts.Search;

/// <summary>How one board is cut so far, while a layout is being searched for.</summary>
internal sealed class BoardCutting
{
    private readonly Piece root;
    private readonly List<Piece> free = [];
    private readonly List<(WantedBlank Blank, Region Region)> blanks = [];
    private double? cost;

    public BoardCutting(StockBoard stock)
        : this(stock, new Piece(stock.Usable))
    {
    }

    /// <param name="stock">The board.</param>
    /// <param name="root">How its usable place is cut already.</param>
    public BoardCutting(StockBoard stock, Piece root)
    {
        Stock = stock;
        this.root = root;
        List();
    }

    public StockBoard Stock { get; }

    /// <summary>The pieces that nothing is made of yet, nearer ones first.</summary>
    public IReadOnlyList<Piece> Free => free;

    /// <summary>The blanks, nearer ones first.</summary>
    public IReadOnlyList<(WantedBlank Blank, Region Region)> Blanks => blanks;

    /// <summary>Value of the board less that of useful offcuts, sawing at the shop's rate, and what its blanks cost further, in money.</summary>
    public double Cost(LayoutProblem problem, int board) => cost ??= Reckon(problem.MoneyPerMinute, board);

    public BoardCutting Copy() => new(Stock, root.Copy());

    /// <summary>Cuts a place out of a free piece.</summary>
    public Piece Carve(Piece piece, Region place, bool crosscutFirst)
    {
        var carved = piece.Carve(place, Stock.Kerf, crosscutFirst);
        List();
        return carved;
    }

    /// <summary>Makes a free piece a blank of just its size.</summary>
    public void Fill(Piece piece, WantedBlank blank)
    {
        piece.Blank = blank;
        List();
    }

    public void Release(Predicate<WantedBlank> goes)
    {
        root.Release(goes);
        List();
    }

    public CutSequence Sequence() => new(Stock, root);

    private double Reckon(double moneyPerMinute, int board)
    {
        var priced = new CutSequence(Stock, root, written: false);
        var further = 0.0;
        foreach (var (blank, _) in blanks)
        {
            further += blank.CostOn(board);
        }

        return Stock.Value - priced.ValueOfOffcuts + (priced.Minutes * moneyPerMinute) + further;
    }

    private void List()
    {
        free.Clear();
        blanks.Clear();
        root.List(free, blanks);
        cost = null;
    }
}
