using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>
/// Which boards would do for what is unplaced. Of the kinds that could yield the part which fewest of them could, the
/// likeliest are compared by what as many as are needed would cost; a kind is also tried for just those parts that no
/// cheaper one could yield, with a cheaper kind for the others.
/// </summary>
internal sealed class MissingStock(LayoutRequest request)
{
    /// <summary>Up to so many parts the count is searched for with some care; beyond, it is estimated.</summary>
    private const int FewParts = 60;

    /// <summary>How many kinds of smaller boards are offered beside those that would do.</summary>
    private const int MostSmaller = 2;

    /// <summary>How many kinds are compared by what they would cost.</summary>
    private const int Compared = 3;

    private readonly YardBoards yard = new(request);
    private readonly Dictionary<(string What, Board Kind, string Parts), int> counts = [];

    /// <summary>Boards that would do; none for parts that no board which is sold could yield.</summary>
    /// <param name="unplaced">What they are to yield.</param>
    /// <param name="all">All that is wanted: it tells which panels are started, of which only what they lack is bought for.</param>
    public IReadOnlyList<Board> For(IEnumerable<(Part Part, int Number)> unplaced, IReadOnlyList<Demand> all)
    {
        List<Demand> demands = [.. unplaced.GroupBy(one => one.Part).SelectMany(part => DemandsOf(part.Key, [.. part.Select(one => one.Number)], all))];
        var kinds = Kinds(demands);
        var (chosen, _) = Cover([.. demands.Where(demand => kinds.Exists(kind => kind.Takes(demand)))], kinds, Compared);
        return Numbered(chosen.SelectMany(choice => Enumerable.Repeat(choice.Kind, choice.Count)));
    }

    /// <summary>Whether a yard sells a board that could yield a part.</summary>
    public bool IsSold(Part part) => Kinds([new Demand(Free(part), [1])]).Count > 0;

    /// <summary>Whether a part must come from one board, so that no other helps it.</summary>
    public bool IsPinnedToOne(Part part) => part.From is { } from
        && !request.Boards.Any(board => string.Equals(board.Line, from, StringComparison.Ordinal) && board.Species == part.Species);

    /// <summary>Boards like those on hand of the same timber that cost less than any of these, the cheapest few.</summary>
    public IReadOnlyList<Board> Smaller(IReadOnlyList<Board> wanted) =>
    [
        .. yard.LikeOnHand
            .Where(kind => wanted.Any(board => board.Species == kind.Species))
            .Where(kind => wanted.Where(board => board.Species == kind.Species).All(board => ValueOf(kind) < ValueOf(board)))
            .OrderBy(ValueOf)
            .Take(MostSmaller),
    ];

    /// <summary>Whether boards of a kind could yield a part.</summary>
    public bool CouldTake(Board kind, Part part) => yard.CouldTake(kind, Free(part));

    /// <summary>What a board is worth.</summary>
    public double ValueOf(Board board) => new StockBoard(board, request).Value;

    /// <summary>Whether there are flawed boards on hand that a kind is like.</summary>
    public bool IsLikeFlawed(Board kind) => request.Boards.Any(board => board.Flaws.Count > 0
        && yard.AsSold(board) with { Name = "", Line = kind.Line, Price = null } == kind with { Name = "", Line = kind.Line, Price = null });

    /// <summary>Boards by names that no board on hand has.</summary>
    public static IReadOnlyList<Board> Numbered(IEnumerable<Board> boards) =>
        [.. boards.Select((board, index) => board with { Name = FormattableString.Invariant($"{board.Line} more {index + 1}"), Line = board.Line })];

    /// <summary>A part as it is to be bought for: matched with nothing, and pinned to no one board.</summary>
    private Part Free(Part part) => part with { Matched = null, From = IsPinnedToOne(part) ? null : part.From, NotFrom = Lines(part.NotFrom) };

    /// <summary>The numbers of a part, and for each that is a started panel the strips it lacks, as parts of their own.</summary>
    private IEnumerable<Demand> DemandsOf(Part part, IReadOnlyList<int> numbers, IReadOnlyList<Demand> all)
    {
        var free = Free(part);
        List<StartedPanel> started = [.. all.Where(demand => demand.Part == part).SelectMany(demand => demand.Started).Where(panel => numbers.Contains(panel.Number))];
        List<int> whole = [.. numbers.Except(started.Select(panel => panel.Number))];
        return started
            .Select(panel => new Demand(
                free with { Name = FormattableString.Invariant($"strips of {part.Name} {panel.Number}"), IsPanel = false, Width = new StripWidths(part, request.Allowances).Lacking(panel) - request.Allowances.Width },
                panel.Missing))
            .Prepend(new Demand(free, whole))
            .Where(demand => demand.Numbers.Count > 0);
    }

    /// <summary>Another board like one that is forbidden may do; another of a line that is forbidden may not.</summary>
    private IReadOnlyList<string> Lines(IReadOnlyList<string> names) =>
        [.. names.Where(name => request.Boards.Any(board => string.Equals(board.Line, name, StringComparison.Ordinal)))];

    private List<Kind> Kinds(IReadOnlyList<Demand> demands)
    {
        List<Kind> kinds = [.. yard.LikeOnHand.Select(board => KindOf(board, demands)).Where(kind => kind.Demands.Count > 0)];
        foreach (var demand in demands.Where(demand => !kinds.Exists(kind => kind.Takes(demand))).ToList())
        {
            kinds.AddRange(yard.For(demand.Part).Select(board => KindOf(board, demands)));
        }

        return kinds;
    }

    private Kind KindOf(Board board, IReadOnlyList<Demand> demands)
    {
        var stock = new StockBoard(board, request);
        return new Kind(board, stock.Value, stock.ValuePerArea, [.. demands.Where(demand => yard.CouldTake(board, demand.Part))]);
    }

    private (IReadOnlyList<(Board Kind, int Count)> Chosen, double Value) Cover(IReadOnlyList<Demand> demands, List<Kind> kinds, int compared)
    {
        if (demands.Count == 0)
        {
            return ([], 0);
        }

        var hardest = demands.MinBy(demand => (kinds.Count(kind => kind.Takes(demand)), -demand.Part.Volume.CubicMillimetres))!;
        return kinds
            .Where(kind => kind.Takes(hardest))
            .Select(kind => (Kind: kind, Takes: kind.Of(demands)))
            .OrderBy(choice => choice.Kind.Value * Guess(choice.Kind, choice.Takes) / choice.Takes.Sum(demand => demand.Part.Volume.CubicMillimetres * demand.Numbers.Count))
            .Take(compared)
            .SelectMany(choice => WithAll(choice.Kind, choice.Takes))
            .MinBy(choice => choice.Value);

        IEnumerable<(IReadOnlyList<(Board, int)> Chosen, double Value)> WithAll(Kind kind, IReadOnlyList<Demand> takes)
        {
            yield return With(kind, takes);
            List<Demand> only = [.. takes.Where(demand => !kinds.Exists(other => other.ValuePerArea < kind.ValuePerArea && other.Takes(demand)))];
            if (only.Count > 0 && only.Count < takes.Count)
            {
                yield return With(kind, only);
            }
        }

        (IReadOnlyList<(Board, int)> Chosen, double Value) With(Kind kind, IReadOnlyList<Demand> takes)
        {
            var count = CountOf(kind, takes);
            var rest = Cover([.. demands.Except(takes)], kinds, 1);
            return ([(kind.Board, count), .. rest.Chosen], (kind.Value * count) + rest.Value);
        }
    }

    /// <summary>How many boards, at a first guess.</summary>
    private int Guess(Kind kind, IReadOnlyList<Demand> takes)
    {
        var key = KeyOf("guess", kind, takes);
        if (!counts.TryGetValue(key, out var count))
        {
            var (area, most) = Needs(kind, takes);
            var usable = new StockBoard(kind.Board, request).Usable.Area.SquareMillimetres;
            var plenty = Math.Min(most, 4 + (int)(2 * area / usable));
            count = Tried(kind, takes, plenty) ?? Tried(kind, takes, most) ?? most;
            counts.Add(key, count);
        }

        return count;
    }

    private int CountOf(Kind kind, IReadOnlyList<Demand> takes)
    {
        var count = Guess(kind, takes);
        if (takes.Sum(demand => demand.Numbers.Count) > FewParts)
        {
            return count;
        }

        var key = KeyOf("count", kind, takes);
        if (!counts.TryGetValue(key, out var least))
        {
            least = Math.Max(1, (int)(Needs(kind, takes).Area / new StockBoard(kind.Board, request).Usable.Area.SquareMillimetres));
            while (count > least && Searched(kind, takes, count - 1) is { } fewer)
            {
                count = fewer;
            }

            counts.Add(key, least = count);
        }

        return least;
    }

    private (double Area, int Blanks) Needs(Kind kind, IReadOnlyList<Demand> takes)
    {
        var problem = new LayoutProblem(request with { Boards = [kind.Board], Progress = null }, takes, PanelStrips.Usual());
        return (problem.Wants.Sum(want => want.Ways.Min(way => way.Blanks.Sum(blank => blank.Area))), problem.Wants.Sum(want => want.Ways[0].Blanks.Count));
    }

    /// <summary>How many of so many boards are cut when blanks are placed once; null when one has no place.</summary>
    private int? Tried(Kind kind, IReadOnlyList<Demand> takes, int count)
    {
        var problem = new LayoutProblem(request with { Boards = Numbered(Enumerable.Repeat(kind.Board, count)), Progress = null }, takes, PanelStrips.Usual());
        var arrangement = new Arrangement(problem);
        new BlankPlacer(problem, arrangement, PlacingRules.Plain[0], new Random(request.Seed)).PlaceLeft();
        return CutOf(arrangement);
    }

    /// <summary>The same after a short search.</summary>
    private int? Searched(Kind kind, IReadOnlyList<Demand> takes, int count) => CutOf(LayoutSearch.Arrange(
        request with { Boards = Numbered(Enumerable.Repeat(kind.Board, count)), Effort = LayoutEffort.Quick, Progress = null }, takes, found => found.Left.Count == 0).Arrangement);

    private static int? CutOf(Arrangement arrangement) =>
        arrangement.Left.Count == 0 ? arrangement.Cuttings.Count(cutting => cutting is not null) : null;

    private static (string What, Board Kind, string Parts) KeyOf(string what, Kind kind, IReadOnlyList<Demand> takes) =>
        (what, kind.Board, string.Join('|', takes.Select(demand => demand.Part.Name)));

    /// <summary>A kind of board with what it could yield.</summary>
    private sealed record Kind(Board Board, double Value, double ValuePerArea, HashSet<Demand> Demands)
    {
        public bool Takes(Demand demand) => Demands.Contains(demand);

        public IReadOnlyList<Demand> Of(IReadOnlyList<Demand> demands) => [.. demands.Where(Takes)];
    }
}
