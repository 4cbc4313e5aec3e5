using ShopDays.Measures;

namespace ShopDays.Layouts.Search;

/// <summary>Reckons what boards cut so cost: by true prices, whatever weighed in the search.</summary>
internal sealed class CostSheet(Worth worth, IReadOnlyList<BoardCutting> cuttings)
{
    /// <param name="sawing">The time of all cuts.</param>
    /// <param name="least">The least that any layout of the blanks costs, in money by the minute of true work.</param>
    public LayoutCost For(WorkTime sawing, Func<double, double> least)
    {
        var blanks = cuttings.SelectMany(cutting => cutting.Blanks, (cutting, placed) => (cutting.Stock, placed.Blank.Blank)).ToList();
        var planing = blanks.Aggregate(WorkTime.Zero, (sum, one) => sum + one.Stock.PlaningTime(one.Blank));
        var joints = LayoutBound.JointsOf(blanks.Select(one => one.Blank));
        return new()
        {
            Timber = Sum(cuttings.Sum(cutting => cutting.Stock.Value)),
            Offcuts = Sum(cuttings.Sum(cutting => cutting.Sequence().ValueOfOffcuts)),
            Sawing = Priced(sawing),
            PlaningDown = Priced(planing),
            GlueEdges = Priced(WorkTime.FromMinutes(LayoutProblem.MinutesPerJoint) * joints),
            Least = new Money((decimal)least((double)worth.Hour.Amount / 60), worth.Hour.Currency).RoundedDown(),
            Hour = worth.Hour.Rounded(),
            HourIsAssumed = worth.HourIsAssumed,
            AssumedBoardFoot = cuttings.Any(cutting => cutting.Stock.Board.Price is null) ? worth.BoardFoot.Rounded() : null,
        };
    }

    private Money Priced(WorkTime time) => Sum(time.Hours * (double)worth.Hour.Amount);

    private Money Sum(double amount) => new Money((decimal)amount, worth.Hour.Currency).Rounded();
}
