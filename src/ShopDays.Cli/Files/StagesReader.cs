using ShopDays.Prices;

namespace ShopDays.Cli.Files;

/// <summary>Reads the <c>stages</c> in which a price is paid.</summary>
internal static class StagesReader
{
    // So much may be lacking where a maker writes thirds.
    private const decimal Slack = 0.1m;

    private static readonly (string Word, StagePoint Point)[] Points =
        [("order", StagePoint.Order), ("dry fit", StagePoint.DryFit), ("finish", StagePoint.Finish), ("delivery", StagePoint.Delivery)];

    /// <summary>Reads them; the usual ones where none is written.</summary>
    public static IReadOnlyList<StageShare> Read(Section money)
    {
        var seen = new HashSet<StagePoint>();
        var isWhole = true;
        var place = money.Place;
        var stages = money.Lines<StageShare>("stages", "a stage", line =>
        {
            var on = line.Required("on", Values.Choice("when a stage is paid", Points), "order, dry fit, finish or delivery");
            var share = line.Required("share", Values.Percentage, "its share of the price, such as 40%");
            place = line.Place;
            isWhole &= on.IsRead && share.IsRead;
            if (on.IsRead && !seen.Add(on.Value))
            {
                line.Findings.Add(ValueMistakes.SaidTwiceInAList(on.Place, Word(on.Value)));
            }

            return on.IsRead && share.IsRead ? new(on.Value, (decimal)share.Value.Value / 100) : null;
        });
        if (stages.Count == 0)
        {
            return StageShare.Usual;
        }

        var all = stages.Sum(stage => stage.Share) * 100;
        if (isWhole && Math.Abs(all - 100) > Slack)
        {
            money.Findings.Add(MoneyMistakes.StagesAreNotAll(place, all));
        }

        return [.. stages.Where(stage => stage.Share > 0).OrderBy(stage => stage.On)];
    }

    private static string Word(StagePoint point) => Points.First(one => one.Point == point).Word;
}
