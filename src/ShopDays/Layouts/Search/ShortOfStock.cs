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

    /// <summary>Sums of the same volumes in another order differ by less.</summary>
    private const double Hair = 1e-9;

    /// <summary>The better of what was found on the boards on hand and what comes of more boards given up again.</summary>
    public Found Better((LayoutProblem Problem, Arrangement Arrangement) onHand)
    {
        var (problem, arrangement) = onHand;
        if (arrangement.Left.Count == 0 && problem.Impossible.Count == 0)
        {
            return new Found(problem, arrangement, []);
        }

        var unplaced = arrangement.Left
            .SelectMany(blank => blank.Blank.Numbers.Select(number => (blank.Blank.Part, Number: number)))
            .Distinct()
            .Select(one => new Unplaced(one.Part, one.Number, problem.WhyUnplaced(one.Part)));
        var wanted = MissingStock.For([.. problem.Impossible, .. unplaced], request);
        var best = (Problem: problem, Arrangement: arrangement);
        var more = WithSlack(wanted);
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

            if (found.Left.Count > 0 || ValueOf(bought) >= ValueOf(wanted))
            {
                break;
            }

            wanted = bought;
            more = WithoutOne(larger, found);
        }

        return new Found(best.Problem, best.Arrangement, Kinds(wanted));
    }

    /// <summary>Some more boards of the kinds wanted.</summary>
    private static IReadOnlyList<Board> WithSlack(IReadOnlyList<Board> wanted) =>
        [.. wanted.GroupBy(KindOf).SelectMany(kind => MissingStock.More(kind.First() with { Line = kind.Key.Line }, kind.Count() + Slack))];

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

    private static Board KindOf(Board board) => board with { Name = "", Line = board.Line, Flaws = [] };

    private List<StockWanted> Kinds(IReadOnlyList<Board> wanted) =>
    [
        .. wanted.GroupBy(KindOf).Select(kind => new StockWanted(kind.Key.Species, kind.Key.Length, kind.Key.Width, kind.Key.Thickness, kind.Count())
        {
            ClearOfFlaws = request.Boards.Any(board => board.Flaws.Count > 0 && KindOf(board) == kind.Key),
        }),
    ];

    private double ValueOf(IReadOnlyList<Board> some) => some.Sum(board => new StockBoard(board, request).Value);
}

/// <summary>A layout and the stock that would do for what it leaves out.</summary>
internal sealed record Found(LayoutProblem Problem, Arrangement Arrangement, IReadOnlyList<StockWanted> Wanted);
