namespace ShopDays.Layouts.Search;

/// <summary>
/// An arrangement for blanks of which no two ever lie side by side in the boards that may yield them, when those boards are
/// all alike and clear: then only lengths count, and the fewest boards can be looked for in a way of its own.
/// </summary>
/// <param name="Arrangement">Such blanks on as few boards as could be found, the others placed plainly.</param>
/// <param name="IsFull">Whether nothing is left of its boards, so that there is nothing to better.</param>
internal sealed record StickArrangement(Arrangement Arrangement, bool IsFull)
{
    /// <summary>Made for the blanks that are such; null when there are none.</summary>
    /// <param name="problem">What is to be laid out.</param>
    /// <param name="tries">How many ways to fill a board may be tried.</param>
    /// <param name="random">For the order of what is as good.</param>
    public static StickArrangement? Make(LayoutProblem problem, int tries, Random random)
    {
        if (problem.Groups.Count > 0 || problem.Wants.Any(want => want.Ways.Count > 1))
        {
            return null;
        }

        var arrangement = new Arrangement(problem);
        var blanks = arrangement.TakeLeft();
        var kinds = blanks.GroupBy(blank => KindOf(problem, blank)).ToDictionary(kind => kind.Key, kind => kind.ToList());
        var shared = SharedKinds(problem, kinds.GetValueOrDefault(-1, []));
        var placed = new HashSet<WantedBlank>();
        foreach (var (kind, same) in kinds.Where(kind => kind.Key >= 0 && !shared.Contains(kind.Key)))
        {
            if (OnlyEndToEnd(problem.Stock[kind], same) && Place(problem, arrangement, kind, same, new StickFilling(
                (problem.Stock[kind].Usable.Length + problem.Stock[kind].Kerf).EighthMicrometres,
                same.ConvertAll(blank => (blank.Length + problem.Stock[kind].Kerf).EighthMicrometres),
                random), tries))
            {
                placed.UnionWith(same);
            }
        }

        if (placed.Count == 0)
        {
            return null;
        }

        foreach (var blank in blanks.Where(blank => !placed.Contains(blank)))
        {
            arrangement.Leave(blank);
        }

        new BlankPlacer(problem, arrangement, PlacingRules.Plain[0], random).PlaceLeft();
        return new StickArrangement(arrangement, placed.Count == blanks.Count && arrangement.Cuttings.All(cutting => cutting is null || cutting.Free.Count == 0));
    }

    /// <summary>The first of the like boards which alone may yield a blank; -1 when there are several kinds.</summary>
    private static int KindOf(LayoutProblem problem, WantedBlank blank)
    {
        var kinds = Kinds(problem, blank).Take(2).ToList();
        return kinds.Count == 1 ? kinds[0] : -1;
    }

    private static IEnumerable<int> Kinds(LayoutProblem problem, WantedBlank blank) =>
        Enumerable.Range(0, problem.Stock.Count).Where(board => double.IsFinite(blank.CostOn(board))).Select(board => problem.Like[board]).Distinct();

    private static HashSet<int> SharedKinds(LayoutProblem problem, List<WantedBlank> blanks) =>
        [.. blanks.SelectMany(blank => Kinds(problem, blank))];

    private static bool OnlyEndToEnd(StockBoard board, List<WantedBlank> blanks)
    {
        var narrowest = blanks.Select(blank => blank.Width).Order().Take(2).ToList();
        return board.Flaws.Count == 0 && narrowest.Count == 2 && narrowest[0] + narrowest[1] + board.Kerf > board.Usable.Width;
    }

    private static bool Place(LayoutProblem problem, Arrangement arrangement, int kind, List<WantedBlank> blanks, StickFilling filling, int tries)
    {
        List<int> boards = [.. Enumerable.Range(0, problem.Stock.Count).Where(board => problem.Like[board] == kind)];
        if (filling.Fill(tries, boards.Count) is not { } sticks)
        {
            return false;
        }

        foreach (var (board, numbers) in boards.Zip(sticks))
        {
            var cutting = arrangement.Own(board);
            foreach (var blank in numbers.Select(number => blanks[number]).OrderByDescending(blank => blank.Width).ThenByDescending(blank => blank.Length))
            {
                var rest = cutting.Free.First(piece => piece.Region.Length >= blank.Length && piece.Region.Width == cutting.Stock.Usable.Width);
                var place = new Region(rest.Region.X, rest.Region.Y, blank.Length, blank.Width);
                cutting.Fill(cutting.Carve(rest, place, crosscutFirst: true), blank);
            }
        }

        return true;
    }
}
