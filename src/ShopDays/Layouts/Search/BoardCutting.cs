namespace ShopDays.Layouts.Search;

/// <summary>How one board is cut so far, while a layout is being searched for.</summary>
internal sealed class BoardCutting
{
    private readonly Piece root;
    private readonly List<Piece> free = [];
    private double? cost;

    public BoardCutting(StockBoard stock)
        : this(stock, new Piece(stock.Usable))
    {
    }

    private BoardCutting(StockBoard stock, Piece root)
    {
        Stock = stock;
        this.root = root;
        FindFree();
    }

    public StockBoard Stock { get; }

    /// <summary>The pieces that nothing is made of yet, nearer ones first.</summary>
    public IReadOnlyList<Piece> Free => free;

    /// <summary>The blanks, nearer ones first.</summary>
    public IReadOnlyList<(WantedBlank Blank, Region Region)> Blanks
    {
        get
        {
            var blanks = new List<(WantedBlank, Region)>();
            root.Visit(piece =>
            {
                if (piece.Blank is { } blank)
                {
                    blanks.Add((blank, piece.Region));
                }
            });
            return blanks;
        }
    }

    /// <summary>Value of the board less that of useful offcuts, sawing at the shop's rate, and what its blanks cost further, in money.</summary>
    public double Cost(LayoutProblem problem, int board) => cost ??= Reckon(problem.MoneyPerMinute, board);

    public BoardCutting Copy() => new(Stock, root.Copy());

    /// <summary>Cuts a place out of a free piece.</summary>
    public Piece Carve(Piece piece, Region place, bool crosscutFirst)
    {
        var carved = piece.Carve(place, Stock.Kerf, crosscutFirst);
        FindFree();
        return carved;
    }

    /// <summary>Makes a free piece a blank of just its size.</summary>
    public void Fill(Piece piece, WantedBlank blank)
    {
        piece.Blank = blank;
        free.Remove(piece);
        cost = null;
    }

    public void Release(Predicate<WantedBlank> goes)
    {
        root.Release(goes);
        FindFree();
    }

    public CutSequence Sequence() => new(Stock, root);

    private double Reckon(double moneyPerMinute, int board)
    {
        var sequence = Sequence();
        var minutes = sequence.Cuts.Sum(cut => Stock.Minutes(cut.Kind, cut.Length));
        return Stock.Value - sequence.Left.Sum(Stock.ValueOfOffcut) + (minutes * moneyPerMinute) + Blanks.Sum(placed => placed.Blank.CostOn(board));
    }

    private void FindFree()
    {
        free.Clear();
        root.Visit(piece =>
        {
            if (piece.IsFree)
            {
                free.Add(piece);
            }
        });
        cost = null;
    }
}
