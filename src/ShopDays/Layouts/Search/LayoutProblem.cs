using ShopDays.Measures;
using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>What is to be laid out on what, with all that the search asks again and again worked out once.</summary>
internal sealed class LayoutProblem
{
    /// <summary>
    /// Hands-on time of one glue edge of a panel: shooting both edges, glue, clamps and cleaning up, so that fewer strips
    /// are preferred (common practice, no source).
    /// </summary>
    public const double MinutesPerJoint = 20;

    private readonly WaysToSaw ways;
    private readonly WaysToSaw onHandOnly;
    private readonly double worthOfAStep;

    /// <param name="request">The boards on hand, and what time and timber are worth.</param>
    /// <param name="demands">The parts that are wanted.</param>
    /// <param name="strips">How freely panels are split.</param>
    /// <param name="more">Boards that are not there but could be bought; none unless given.</param>
    public LayoutProblem(LayoutRequest request, IReadOnlyList<Demand> demands, PanelStrips strips, IReadOnlyList<Board>? more = null)
    {
        var (boards, allowances) = (request.Boards, request.Allowances);
        Allowances = allowances;
        MoneyPerMinute = request.Worth.JudgedPerMinute;
        Progress = request.Progress;
        OnHand = boards.Count;
        List<Board> all = [.. boards, .. more ?? []];
        Stock = [.. all.Select(board => new StockBoard(board, request))];
        Like = [.. all.Select(board => FirstLike(all, board, demands))];
        ways = new WaysToSaw(Stock, allowances, strips);
        onHandOnly = more is null ? ways : new WaysToSaw([.. Stock.Take(OnHand)], allowances, strips);
        var wants = new List<Want>();
        var impossible = new List<Unplaced>();
        foreach (var demand in demands)
        {
            if (ways.WhyNever(demand.Part) is { } reason)
            {
                impossible.AddRange(demand.Numbers.Select(number => new Unplaced(demand.Part, number, reason)));
            }
            else
            {
                wants.AddRange(ways.WantsOf(demand, wants.Count));
            }

            foreach (var panel in demand.Started)
            {
                if (ways.WantOf(demand.Part, panel, wants.Count) is { } want)
                {
                    wants.Add(want);
                }
                else
                {
                    impossible.Add(new Unplaced(demand.Part, panel.Number, ways.WhyNever(demand.Part, panel)));
                }
            }
        }

        Wants = wants;
        HasBestFace = wants.Exists(want => want.Part.IsForBestFace);
        worthOfAStep = Stock.Select(board => board.Value).DefaultIfEmpty().Max();
        Impossible = impossible;
        Groups = [.. wants
            .Where(want => want.Part.Matched is not null)
            .GroupBy(want => want.Part.Matched!, StringComparer.Ordinal)
            .Select(group => new MatchedGroup(group.Key, [.. group], OriginsOf(group.Key, request.Sawn)))];
    }

    public Allowances Allowances { get; }

    /// <summary>The boards on hand, then those that could be bought.</summary>
    public IReadOnlyList<StockBoard> Stock { get; }

    /// <summary>How many boards are on hand.</summary>
    public int OnHand { get; }

    /// <summary>For each board the first that is just like it.</summary>
    public IReadOnlyList<int> Like { get; }

    public IReadOnlyList<Want> Wants { get; }

    /// <summary>The parts that come out of none of these boards, even uncut ones.</summary>
    public IReadOnlyList<Unplaced> Impossible { get; }

    public IReadOnlyList<MatchedGroup> Groups { get; }

    /// <summary>What a minute of work counts for while layouts are compared.</summary>
    public double MoneyPerMinute { get; }

    /// <summary>Told how far the search has come; null when nobody listens.</summary>
    public IProgress<LayoutStep>? Progress { get; }

    /// <summary>Whether any part is for the best face.</summary>
    public bool HasBestFace { get; }

    /// <summary>How many steps the figure of a board is below the best on hand that could give a blank; 0 unless it is for the best face.</summary>
    public int StepsBelowBest(WantedBlank blank, int board) =>
        blank.Blank.Part.IsForBestFace ? Math.Max(0, (blank.BestFigure ??= BestFigure(blank)) - Stock[board].Board.Figure) : 0;

    /// <summary>What such steps count for where a place is chosen, in money: each as much as the dearest board.</summary>
    public double CostOfSteps(WantedBlank blank, int board) => HasBestFace ? StepsBelowBest(blank, board) * worthOfAStep : 0;

    /// <summary>Why a part has no place on the boards on hand.</summary>
    public UnplacedReason WhyUnplaced(Part part, UnplacedReason? otherwise = null) => onHandOnly.WhyNever(part) ?? otherwise ?? new UnplacedReason.NoRoom();

    /// <summary>A way to saw a panel out in strips of given widths, resawn into so many parts.</summary>
    public Way InStrips(Want panel, int parts, IReadOnlyList<Length> widths) => ways.InStrips(panel, parts, widths);

    /// <summary>What a way costs beyond sawing and planing: its glue edges.</summary>
    public double CostOf(Way way) => way.Joints * MinutesPerJoint * MoneyPerMinute;

    private static IReadOnlyList<string> OriginsOf(string group, IReadOnlyList<BoardLayout> sawn) =>
    [
        .. sawn
            .Where(board => board.Blanks.Any(placed => string.Equals(placed.Blank.Part.Matched, group, StringComparison.Ordinal)))
            .Select(board => board.Board.Origin)
            .Distinct(StringComparer.Ordinal),
    ];

    private BoardFigure BestFigure(WantedBlank blank) => Enumerable.Range(0, OnHand)
        .Where(board => double.IsFinite(blank.CostOn(board)))
        .Select(board => Stock[board].Board.Figure)
        .DefaultIfEmpty()
        .Max();

    private static int FirstLike(List<Board> boards, Board board, IReadOnlyList<Demand> demands)
    {
        var first = 0;
        while (!IsLike(boards[first], board))
        {
            first++;
        }

        return first;

        bool IsLike(Board one, Board other) => ReferenceEquals(one, other)
            || (one with { Name = "", Line = one.Line } == other with { Name = "", Line = other.Line } && !IsPinned(one) && !IsPinned(other));

        bool IsPinned(Board one) => !string.Equals(one.Name, one.Line, StringComparison.Ordinal)
            && demands.Any(demand => demand.Part.NotFrom.Append(demand.Part.From).Contains(one.Name, StringComparer.Ordinal));
    }
}

/// <summary>Parts that should come from one board.</summary>
/// <param name="Name">The name that they share.</param>
/// <param name="Wants">What is wanted of them.</param>
/// <param name="Origins">The boards of the stock that others of the group are sawn from already.</param>
internal sealed record MatchedGroup(string Name, IReadOnlyList<Want> Wants, IReadOnlyList<string> Origins);
