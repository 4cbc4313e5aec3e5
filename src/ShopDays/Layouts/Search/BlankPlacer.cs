namespace ShopDays.Layouts.Search;

/// <summary>Places blanks one after the other by the rules of one attempt, matched groups first.</summary>
internal sealed class BlankPlacer(LayoutProblem problem, Arrangement arrangement, PlacingRules rules, Random random)
{
    private readonly bool[] tried = new bool[problem.Stock.Count];
    private readonly List<Region> places = [];

    /// <summary>Places what has no place yet, as far as it goes.</summary>
    public void PlaceLeft()
    {
        PlaceOnce();
        if (arrangement.Left.Count > 0 && arrangement.ReleaseBroken())
        {
            // What a broken panel gave back may serve others; its own strips would only break again.
            var broken = arrangement.Left.Where(blank => blank.Blank.Strip > 0).ToHashSet();
            PlaceOnce(broken);
            arrangement.ReleaseBroken();
        }
    }

    private void PlaceOnce(HashSet<WantedBlank>? without = null)
    {
        var blanks = arrangement.TakeLeft();
        var taken = PlaceGroups(blanks, without);
        if (taken.Count > 0)
        {
            blanks.RemoveAll(taken.Contains);
        }

        var bestFaceFirst = problem.HasBestFace && random.Next(4) > 0;
        var ranks = new double[blanks.Count];
        for (var index = 0; index < ranks.Length; index++)
        {
            var comesFirst = bestFaceFirst && blanks[index].Blank.Part.IsForBestFace;
            ranks[index] = comesFirst ? double.NegativeInfinity : -rules.Rank(blanks[index], random);
        }

        var inOrder = blanks.ToArray();
        Array.Sort(ranks, inOrder);
        foreach (var blank in inOrder)
        {
            if (without?.Contains(blank) == true || !Place(blank))
            {
                arrangement.Leave(blank);
            }
        }
    }

    private bool Place(WantedBlank blank)
    {
        if (Best(blank) is not { } best)
        {
            return false;
        }

        var cutting = arrangement.Own(best.Board);
        var piece = cutting.Free[best.Piece];
        var crosscutFirst = rules.Fit == PlacingFit.LeastMoney
            ? CarvingCost.Of(cutting.Stock, piece.Region, best.Place, problem.MoneyPerMinute).CrosscutFirst
            : rules.CrosscutsFirst(piece.Region, best.Place, random);
        cutting.Fill(cutting.Carve(piece, best.Place, crosscutFirst), blank);
        return true;
    }

    /// <summary>The best place on the boards on hand; when there is none, on those that could be bought.</summary>
    private (int Board, int Piece, Region Place)? Best(WantedBlank blank) =>
        Best(blank, 0, problem.OnHand) ?? Best(blank, problem.OnHand, arrangement.Boards);

    private (int Board, int Piece, Region Place)? Best(WantedBlank blank, int from, int to)
    {
        (int, int, Region)? best = null;
        var least = double.PositiveInfinity;
        Array.Clear(tried);
        for (var board = from; board < to; board++)
        {
            var cost = blank.CostOn(board) + problem.CostOfSteps(blank, board);
            if (double.IsPositiveInfinity(cost))
            {
                continue;
            }

            var stock = problem.Stock[board];
            if (arrangement.Cuttings[board] is not { } cutting)
            {
                // Uncut boards that are alike are judged once.
                if (!tried[problem.Like[board]])
                {
                    tried[problem.Like[board]] = true;
                    Judge(board, 0, stock, stock.Usable, cost + (rules.NewBoard * stock.Value));
                }

                continue;
            }

            for (var piece = 0; piece < cutting.Free.Count; piece++)
            {
                Judge(board, piece, stock, cutting.Free[piece].Region, cost);
            }
        }

        return best;

        void Judge(int board, int piece, StockBoard stock, Region region, double cost)
        {
            if (region.Length < blank.Length || region.Width < blank.Width)
            {
                return;
            }

            if (stock.Flaws.Count == 0)
            {
                Weigh(new Region(region.X, region.Y, blank.Length, blank.Width));
                return;
            }

            stock.ListClearPlaces(region, blank.Length, blank.Width, places);
            foreach (var place in places)
            {
                Weigh(place);
            }

            void Weigh(Region place)
            {
                var timber = rules.Fit == PlacingFit.LeastMoney
                    ? CarvingCost.Of(stock, region, place, problem.MoneyPerMinute).Money
                    : stock.ValuePerArea * (blank.Area + rules.Waste(region, place));
                var judged = rules.Sway(cost + timber, random);
                if (judged < least)
                {
                    least = judged;
                    best = (board, piece, place);
                }
            }
        }
    }

    private HashSet<WantedBlank> PlaceGroups(List<WantedBlank> blanks, HashSet<WantedBlank>? without)
    {
        HashSet<WantedBlank> taken = [];
        if (problem.Groups.Count == 0 || without is not null || (problem.Stock.Count > problem.OnHand && random.Next(4) == 0))
        {
            return taken;
        }

        var here = blanks.ToHashSet();
        foreach (var group in problem.Groups)
        {
            var members = arrangement.BlanksOf(group).ToList();
            if (members.TrueForAll(here.Contains) && PlaceTogether(members, group.Origins))
            {
                taken.UnionWith(members);
            }
        }

        return taken;
    }

    /// <summary>Places all on one board: in sequence where any has room for that, else anywhere in one.</summary>
    private bool PlaceTogether(List<WantedBlank> members, IReadOnlyList<string> origins)
    {
        List<int> candidates =
        [
            .. Enumerable.Range(0, arrangement.Boards)
                .Where(board => members.TrueForAll(blank => double.IsFinite(blank.CostOn(board))))
                .Select(board => (Board: board, Cost: CostTogether(board)))
                .OrderBy(candidate => candidate.Board >= problem.OnHand)
                .ThenByDescending(candidate => origins.Contains(problem.Stock[candidate.Board].Board.Origin))
                .ThenBy(candidate => candidate.Cost)
                .Select(candidate => candidate.Board),
        ];
        var beside = random.Next(2) == 0;
        List<WantedBlank> largestFirst = [.. members.OrderByDescending(blank => blank.Length).ThenByDescending(blank => blank.Width)];
        return candidates.Exists(board => PlaceOn(board, cutting => GroupBlock.TryPlace(cutting, members, beside) || GroupBlock.TryPlace(cutting, members, !beside)))
            || candidates.Exists(board => PlaceOn(board, cutting => ScatterOn(cutting, largestFirst)));

        bool PlaceOn(int board, Predicate<BoardCutting> place)
        {
            var cutting = arrangement.Cuttings[board]?.Copy() ?? new BoardCutting(problem.Stock[board]);
            var isPlaced = place(cutting);
            if (isPlaced)
            {
                arrangement.Replace(board, cutting);
            }

            return isPlaced;
        }

        double CostTogether(int board)
        {
            var opening = arrangement.Cuttings[board] is null ? problem.Stock[board].Value : 0;
            return rules.Sway(members.Sum(blank => blank.CostOn(board) + problem.CostOfSteps(blank, board)) + opening, random);
        }
    }

    private bool ScatterOn(BoardCutting cutting, List<WantedBlank> members)
    {
        foreach (var blank in members)
        {
            var place = cutting.Free
                .SelectMany(piece => cutting.Stock.ClearPlaces(piece.Region, blank.Length, blank.Width), (piece, region) => (Piece: piece, Region: region))
                .OrderBy(found => rules.Waste(found.Piece.Region, found.Region))
                .FirstOrDefault();
            if (place.Piece is null)
            {
                return false;
            }

            cutting.Fill(cutting.Carve(place.Piece, place.Region, rules.CrosscutsFirst(place.Piece.Region, place.Region, random)), blank);
        }

        return true;
    }
}
