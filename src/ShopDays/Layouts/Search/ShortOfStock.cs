using ShopDays.Parts;

namespace ShopDays.Layouts.Search;

/// <summary>
/// What is done when something has no place: everything is laid out anew with more boards than there are, and those are then
/// used as little as can be. If none of them is needed in the end, everything fits after all; else they are the stock wanted.
/// </summary>
/// <remarks>
/// A panel that lacks one strip is left out whole, so a search that only sees what is left out cannot tell that it is nearly
/// there. With boards to spare every strip has a place, and each that comes back to a board on hand counts.
/// </remarks>
internal sealed class ShortOfStock(LayoutRequest request, IReadOnlyList<Demand> demands)
{
    /// <summary>Boards beyond those that are known to do, so that the first attempts have room.</summary>
    private const int Slack = 1;

    /// <summary>How often the boards on hand are placed anew when the others are given up.</summary>
    private const int RoundsOnHand = 500;

    /// <summary>Jobs of so many parts get all rounds.</summary>
    private const double FullRoundsUpTo = 60;

    /// <summary>How many boards are asked for beyond those reckoned, one by one, until the parts are found to fit.</summary>
    private const int MostAdded = 5;

    /// <summary>Sums of the same volumes in another order differ by less.</summary>
    private const double Hair = 1e-9;

    private readonly MissingStock missing = new(request.AsSold);

    /// <summary>The better of what was found on the boards on hand and what comes of more boards given up again.</summary>
    /// <param name="onHand">What was found on the boards on hand.</param>
    /// <param name="isProved">Whether the stock wanted is tried out, and more of it asked for when the parts do not fit so.</param>
    public Found Better((LayoutProblem Problem, Arrangement Arrangement) onHand, bool isProved = true)
    {
        var (problem, arrangement) = onHand;
        var unplaced = UnplacedOf(onHand);
        var best = (Problem: problem, Arrangement: arrangement);
        var pastHelp = new PastHelp();
        pastHelp.Raise(NumbersOf(problem.Impossible).Where(one => missing.IsPinnedToOne(one.Part)));
        var wanted = WantedFor(unplaced, pastHelp);
        var more = WithSlack(wanted);
        var isPlenty = true;
        for (var attempt = 0; wanted.Count > 0; attempt++)
        {
            var larger = new LayoutProblem(request, demands, PanelStrips.WhenShort(), more);
            var random = new Random(request.Seed + attempt);
            var found = new ArrangementSearch(larger, random).Find(request.Effort, share: ShareOfRounds(larger));
            List<Board> bought = [.. found.Bought.Select(board => larger.Stock[board].Board)];
            var onlyOnHand = GiveUpBought(larger, found, random);
            if (Placed(larger, onlyOnHand) > Placed(best.Problem, best.Arrangement) * (1 + Hair))
            {
                best = (larger, onlyOnHand);
            }

            // What must come from one board and has no room there with boards to spare is not helped by more of them.
            var left = NumbersOf(found);
            if (isPlenty && pastHelp.Raise(left.Where(one => missing.IsPinnedToOne(one.Part))))
            {
                wanted = WantedFor(unplaced, pastHelp);
                more = WithSlack(wanted);
                continue;
            }

            if (pastHelp.WithHope(left).Count > 0 || ValueOf(bought) >= ValueOf(wanted))
            {
                break;
            }

            wanted = bought;
            more = WithoutOne(larger, found);
            isPlenty = false;
        }

        var lacks = pastHelp.WithHope(NumbersOf(best.Arrangement)).Count > 0 || best.Problem.Impossible.Count > 0;
        wanted = !lacks ? [] : isProved && wanted.Count > 0 ? Proved(wanted, pastHelp) : wanted;
        return new Found(best.Problem, best.Arrangement, Kinds(wanted), pastHelp);
    }

    /// <summary>What is left out, each with why more stock is, or is not, a help to it.</summary>
    public IReadOnlyList<Unplaced> WithHelp(IReadOnlyList<Unplaced> unplaced, Found found)
    {
        var withHope = found.PastHelp.WithHope(NumbersOf(unplaced)).Select(one => (one.Part.Name, one.Number)).ToHashSet();
        return [.. unplaced.Select(one => one with { MoreStock = HelpFor(one) })];

        StockHelp HelpFor(Unplaced one) => !withHope.Contains((one.Part.Name, one.Number))
            ? StockHelp.PinnedToABoard
            : missing.IsSold(one.Part) ? StockHelp.Helps : StockHelp.NotSold;
    }

    private static List<Unplaced> UnplacedOf((LayoutProblem Problem, Arrangement Arrangement) found) =>
    [
        .. found.Problem.Impossible,
        .. NumbersOf(found.Arrangement).Select(one => new Unplaced(one.Part, one.Number, found.Problem.WhyUnplaced(one.Part))),
    ];

    private static IReadOnlyList<(Part Part, int Number)> NumbersOf(Arrangement found) =>
        [.. found.Left.SelectMany(blank => blank.Blank.Numbers.Select(number => (blank.Blank.Part, number))).Distinct()];

    private static IEnumerable<(Part Part, int Number)> NumbersOf(IEnumerable<Unplaced> unplaced) => unplaced.Select(one => (one.Part, one.Number));

    private IReadOnlyList<Board> WantedFor(List<Unplaced> unplaced, PastHelp pastHelp) => missing.For(pastHelp.WithHope(NumbersOf(unplaced)), demands);

    /// <summary>The boards, and as many more of them as it takes until the parts are found to fit when the boards lie among those on hand.</summary>
    private IReadOnlyList<Board> Proved(IReadOnlyList<Board> wanted, PastHelp pastHelp)
    {
        for (var more = 0; more < MostAdded; more++)
        {
            wanted = [.. wanted.GroupBy(KindOf).SelectMany(kind => kind)];
            var left = LeftWith(wanted, pastHelp);
            var kind = wanted.Where(board => left.Exists(part => missing.CouldTake(board, part))).MinBy(missing.ValueOf);
            if (kind is null)
            {
                break;
            }

            wanted = MissingStock.Numbered([.. wanted, kind]);
        }

        return wanted;
    }

    /// <summary>The parts that are left out when boards lie among those on hand, but for those that no board helps.</summary>
    private List<Part> LeftWith(IReadOnlyList<Board> boards, PastHelp pastHelp)
    {
        var bought = request with { Boards = [.. request.Boards, .. boards], Progress = null };
        bought = bought with { Worth = Worth.Of(bought) };
        var found = LayoutSearch.Arrange(bought, demands, HasAllWithHope);
        return HasAllWithHope(found.Arrangement)
            ? []
            : [.. pastHelp.WithHope(NumbersOf(UnplacedOf(InBoth(new ShortOfStock(bought, demands).Better(found, isProved: false))))).Select(one => one.Part).Distinct()];

        bool HasAllWithHope(Arrangement arrangement) => pastHelp.WithHope(NumbersOf(arrangement)).Count == 0;

        static (LayoutProblem Problem, Arrangement Arrangement) InBoth(Found found) => (found.Problem, found.Arrangement);
    }

    /// <summary>Some more boards of the kinds wanted, and a few smaller ones that may take the place of a large one.</summary>
    private IReadOnlyList<Board> WithSlack(IReadOnlyList<Board> wanted) => MissingStock.Numbered(
        wanted.GroupBy(KindOf).SelectMany(kind => Enumerable.Repeat(kind.First(), kind.Count() + Slack)).Concat(missing.Smaller(wanted)));

    /// <summary>The boards bought but the one that is used least.</summary>
    private static List<Board> WithoutOne(LayoutProblem problem, Arrangement found)
    {
        var bought = found.Bought.ToList();
        var least = bought.Count == 0 ? -1 : bought.MinBy(board => found.Cuttings[board]!.Blanks.Sum(placed => placed.Blank.Area));
        return [.. bought.Where(board => board != least).Select(board => problem.Stock[board].Board)];
    }

    private static Arrangement GiveUpBought(LayoutProblem problem, Arrangement found, Random random)
    {
        var onHand = found.Copy();
        onHand.GiveUpBought();
        onHand.ReleaseBroken();
        new BlankPlacer(problem, onHand, PlacingRules.Plain[0], random).PlaceLeft();
        return new ArrangementSearch(problem, random).Improve(onHand, (int)(RoundsOnHand * ShareOfRounds(problem)));
    }

    /// <summary>A round takes as long as the job is large: a large one gets fewer, so that the answer does not take many times as long.</summary>
    private static double ShareOfRounds(LayoutProblem problem) => Math.Min(1, FullRoundsUpTo / problem.Wants.Sum(want => want.Numbers.Count));

    /// <summary>What has a place, spares counted less.</summary>
    private static double Placed(LayoutProblem problem, Arrangement arrangement) =>
        problem.Wants.Sum(want => want.Numbers.Sum(want.Weight)) - arrangement.Score().LeftOut;

    private static Board KindOf(Board board) => board with { Name = board.Line, Line = board.Line };

    private List<StockWanted> Kinds(IReadOnlyList<Board> wanted) =>
        [.. wanted.GroupBy(KindOf).Select(kind => new StockWanted(kind.Key, kind.Count()) { ClearOfFlaws = missing.IsLikeFlawed(kind.Key) })];

    private double ValueOf(IReadOnlyList<Board> some) => some.Sum(missing.ValueOf);
}

/// <summary>A layout and the stock that would do for what it leaves out.</summary>
/// <param name="Problem">What was laid out.</param>
/// <param name="Arrangement">How.</param>
/// <param name="Wanted">The stock.</param>
/// <param name="PastHelp">How many of each part no stock helps, since they must come from one board.</param>
internal sealed record Found(LayoutProblem Problem, Arrangement Arrangement, IReadOnlyList<StockWanted> Wanted, PastHelp PastHelp);
