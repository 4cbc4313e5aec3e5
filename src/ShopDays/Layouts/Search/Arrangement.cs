namespace ShopDays.Layouts.Search;

/// <summary>A layout in the making: which board is cut how, which way each want is sawn, and what has no place yet.</summary>
internal sealed class Arrangement
{
    private readonly LayoutProblem problem;
    private readonly BoardCutting?[] cuttings;
    private readonly bool[] own;
    private readonly Way[] ways;
    private List<WantedBlank> left;
    private int boards;
    private double gluing;

    /// <summary>Nothing cut, everything still to be placed, each want in its plainest way.</summary>
    public Arrangement(LayoutProblem problem)
    {
        this.problem = problem;
        boards = problem.Stock.Count;
        cuttings = new BoardCutting?[boards];
        own = new bool[cuttings.Length];
        ways = [.. problem.Wants.Select(want => want.Ways[0])];
        left = [.. problem.Wants.SelectMany(want => want.Ways[0].Blanks)];
        gluing = Gluing();
    }

    private Arrangement(Arrangement other)
    {
        problem = other.problem;
        boards = other.boards;
        cuttings = [.. other.cuttings];
        own = new bool[cuttings.Length];
        ways = [.. other.ways];
        left = [.. other.left];
        gluing = other.gluing;
    }

    /// <summary>The boards by number; null where one is not cut.</summary>
    public IReadOnlyList<BoardCutting?> Cuttings => cuttings;

    /// <summary>What has no place.</summary>
    public IReadOnlyList<WantedBlank> Left => left;

    /// <summary>How many parts have no place.</summary>
    public int PartsLeft => left.SelectMany(blank => blank.Blank.Numbers.Select(number => (blank.Want, number))).Distinct().Count();

    /// <summary>How many boards may be cut, of the first ones.</summary>
    public int Boards => boards;

    /// <summary>Numbers of the boards that are cut and not on hand.</summary>
    public IEnumerable<int> Bought => Enumerable.Range(problem.OnHand, cuttings.Length - problem.OnHand).Where(board => cuttings[board] is not null);

    /// <summary>How many boards are cut.</summary>
    public int BoardsCut => cuttings.Count(cutting => cutting is not null);

    public Arrangement Copy() => new(this);

    /// <summary>Does without the boards that are not on hand; what they held is to be placed anew, or left out.</summary>
    public void GiveUpBought()
    {
        boards = problem.OnHand;
        for (var board = boards; board < cuttings.Length; board++)
        {
            Clear(board);
        }
    }

    /// <summary>Gives a board back uncut; its blanks are to be placed anew.</summary>
    public void Clear(int board)
    {
        if (cuttings[board] is { } cutting)
        {
            foreach (var (blank, _) in cutting.Blanks)
            {
                left.Add(blank);
            }

            cuttings[board] = null;
        }
    }

    /// <summary>Gives boards back that nothing came to lie in.</summary>
    public void GiveBackEmpty()
    {
        for (var board = 0; board < cuttings.Length; board++)
        {
            if (cuttings[board] is { Blanks.Count: 0 })
            {
                cuttings[board] = null;
            }
        }
    }

    /// <summary>Takes some blanks out of a board, to be placed anew.</summary>
    public void Release(int board, Predicate<WantedBlank> goes)
    {
        var cutting = Own(board);
        foreach (var (blank, _) in cutting.Blanks)
        {
            if (goes(blank))
            {
                left.Add(blank);
            }
        }

        cutting.Release(goes);
        cuttings[board] = cutting.Blanks.Count == 0 ? null : cutting;
    }

    /// <summary>Clears the boards that hold any of these wants.</summary>
    public void Clear(IReadOnlyCollection<Want> wants)
    {
        for (var board = 0; board < cuttings.Length; board++)
        {
            if (cuttings[board]?.Blanks.Any(placed => wants.Contains(placed.Blank.Want)) == true)
            {
                Clear(board);
            }
        }
    }

    /// <summary>Takes these wants out of their boards, whose other blanks stay where they are.</summary>
    public void Release(IReadOnlyCollection<Want> wants)
    {
        for (var board = 0; board < cuttings.Length; board++)
        {
            if (cuttings[board]?.Blanks.Any(placed => wants.Contains(placed.Blank.Want)) == true)
            {
                Release(board, blank => wants.Contains(blank.Want));
            }
        }
    }

    /// <summary>Saws a want in another way; boards that hold it are cleared.</summary>
    public void Choose(Want want, Way way)
    {
        Clear([want]);
        left.RemoveAll(blank => blank.Want == want);
        ways[want.Index] = way;
        gluing = Gluing();
        left.AddRange(way.Blanks);
    }

    public Way WayOf(Want want) => ways[want.Index];

    /// <summary>The blanks of a matched group in the ways now chosen.</summary>
    public IEnumerable<WantedBlank> BlanksOf(MatchedGroup group) => group.Wants.SelectMany(want => ways[want.Index].Blanks);

    /// <summary>A board that may be changed, taken new or copied when another arrangement shares it.</summary>
    public BoardCutting Own(int board)
    {
        if (!own[board] || cuttings[board] is null)
        {
            cuttings[board] = cuttings[board]?.Copy() ?? new BoardCutting(problem.Stock[board]);
            own[board] = true;
        }

        return cuttings[board]!;
    }

    /// <summary>Puts a changed copy of a board in its place.</summary>
    public void Replace(int board, BoardCutting cutting)
    {
        cuttings[board] = cutting;
        own[board] = true;
    }

    /// <summary>Takes what is without a place, to try it.</summary>
    public List<WantedBlank> TakeLeft()
    {
        var taken = left;
        left = [];
        return taken;
    }

    /// <summary>Counts blanks as placed that a board has been given.</summary>
    public void Placed(HashSet<WantedBlank> blanks) => left.RemoveAll(blanks.Contains);

    public void Leave(WantedBlank blank) => left.Add(blank);

    /// <summary>Takes the strips of panels out again of which a strip has no place; says whether there were any.</summary>
    public bool ReleaseBroken()
    {
        var missing = left.SelectMany(blank => blank.Blank.Numbers.Select(number => (blank.Want, number))).ToHashSet();
        var released = false;
        for (var board = 0; board < cuttings.Length; board++)
        {
            if (cuttings[board]?.Blanks.Any(placed => IsBroken(placed.Blank)) != true)
            {
                continue;
            }

            Release(board, IsBroken);
            released = true;
        }

        return released;

        bool IsBroken(WantedBlank blank) => blank.Blank.Strip > 0 && blank.Blank.Numbers.Any(number => missing.Contains((blank.Want, number)));
    }

    /// <summary>How good it is.</summary>
    public LayoutScore Score()
    {
        var leftOut = left.Count == 0 ? 0 : left.SelectMany(blank => blank.Blank.Numbers.Select(number => (blank.Want, number))).Distinct().Sum(one => one.Want.Weight(one.number));
        var money = gluing;
        for (var board = 0; board < cuttings.Length; board++)
        {
            if (cuttings[board] is { } cutting)
            {
                money += cutting.Cost(problem, board);
            }
        }

        return new LayoutScore(leftOut, Bought.Sum(CostOfBuying), NotHonoured(), money);
    }

    private double Gluing() => problem.Wants.Sum(want => problem.CostOf(ways[want.Index]));

    /// <summary>
    /// A board's value, a tenth of it reckoned by how full it is, so that a board which is nearly given up counts less. The
    /// root makes one full and one nearly empty board better than two that are half full.
    /// </summary>
    private double CostOfBuying(int board)
    {
        var cutting = cuttings[board]!;
        var filled = cutting.Blanks.Sum(placed => placed.Blank.Area) / cutting.Stock.Usable.Area.SquareMillimetres;
        return cutting.Stock.Value * (0.9 + (0.1 * Math.Sqrt(filled)));
    }

    /// <summary>Whether a matched group comes from one board and in sequence.</summary>
    public bool Honours(MatchedGroup group) => KeptOf(group) == MatchKept.InSequence;

    private int NotHonoured() => problem.Groups.Sum(group => (int)KeptOf(group)) + (problem.HasBestFace ? StepsBelowBest() : 0);

    private int StepsBelowBest() => Enumerable.Range(0, boards).Sum(board => cuttings[board]?.Blanks.Sum(placed => problem.StepsBelowBest(placed.Blank, board)) ?? 0);

    private MatchKept KeptOf(MatchedGroup group)
    {
        var places = new Dictionary<WantedBlank, (string Origin, string Board, Region Region)>();
        var blanks = BlanksOf(group).ToList();
        var members = blanks.ToHashSet();
        foreach (var cutting in cuttings.OfType<BoardCutting>())
        {
            foreach (var (blank, region) in cutting.Blanks.Where(placed => members.Contains(placed.Blank)))
            {
                places.Add(blank, (cutting.Stock.Board.Origin, cutting.Stock.Board.Name, region));
            }
        }

        if (places.Count < blanks.Count)
        {
            return MatchKept.Spread;
        }

        // What is sawn lies in no sequence with what is not; it can still be of one board.
        return group.Origins.Count == 0
            ? MatchedSequence.Of([.. blanks.Select(blank => places[blank])], problem.Stock[0].Kerf)
            : places.Values.Select(place => place.Origin).Concat(group.Origins).Distinct(StringComparer.Ordinal).Count() == 1 ? MatchKept.InOneBoard : MatchKept.Spread;
    }
}
