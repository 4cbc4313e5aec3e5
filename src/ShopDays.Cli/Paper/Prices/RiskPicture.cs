using ShopDays.Cli.Paper.Overview;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Measures;

namespace ShopDays.Cli.Paper.Prices;

/// <summary>At each price the chance of earning less than the shop's rate, as a curve; the quoted price, the least one and the cost stand above it.</summary>
/// <param name="told">The price.</param>
/// <param name="width">How wide it is, in points.</param>
/// <param name="height">How high the field of the curve is, in points.</param>
internal sealed class RiskPicture(ToldPrice told, double width, double height)
{
    private const double Left = 34;
    private const double LineOfMarks = 12;
    private const double Foot = 28;
    private const double LeastBetween = 8;
    private const int Steps = 160;
    private const int Fifths = 5;

    private static readonly TextStyle Small = new(8.5, Weight.Regular, 0.2);
    private static readonly Pen[] MarkPens = [new(1.4), new(1, 0, Dash.Dashed), new(1, 0.2, Dash.Dotted)];

    private readonly (Money From, Money To) span = RiskRow.SpanOf(told.Risk, told.Marks);

    /// <summary>The picture.</summary>
    public Drawing Drawn()
    {
        var marks = told.Marks.Index().OrderBy(mark => mark.Item.Price.Amount).Select(mark => (X: At(mark.Item.Price), Words: $"{mark.Item.Mark}: {MoneyWords.Of(mark.Item.Price)}", Pen: MarkPens[mark.Index])).ToList();
        var labels = MarkLabels.Of([.. marks.Select(mark => (mark.X, Small.WidthOf(mark.Words)))], 0, width);
        var head = (LineOfMarks * labels.Lines) + 4;
        var picture = new Picture();
        DrawAxes(picture, head);
        DrawCurve(picture, head);
        foreach (var (mark, label) in marks.Zip(labels.Labels))
        {
            picture.Line(mark.X, TopOf(label), mark.X, head + height, mark.Pen);
        }

        // Words that stand where another mark goes up are not struck through.
        foreach (var (mark, label) in marks.Zip(labels.Labels))
        {
            picture.Rectangle(new Box(label.Left - 1, TopOf(label) - LineOfMarks + 1, Small.WidthOf(mark.Words) + 2, LineOfMarks - 1), null, Fill.Shade(1));
            picture.Text(mark.Words, label.Left, TopOf(label) - 2, Small);
        }

        return new(head + height + Foot, Meaning.Picture(Description), (page, box) => page.Draw(picture, new(box.X, box.Y)));

        double TopOf(MarkLabels.Label label) => head - 4 - (LineOfMarks * label.Line);
    }

    private string Description =>
        $"A curve: the chance that an hour earns less than {MoneyWords.Of(told.Risk.Rate)} goes from {ChanceWords.Of(told.Risk.Curve(span.From, span.To, Steps)[0].Chance)} at a price of {MoneyWords.Of(span.From)} to {ChanceWords.Of(told.Risk.Curve(span.From, span.To, Steps)[^1].Chance)} at {MoneyWords.Of(span.To)}, both before tax. Marked on it: {string.Join("; ", told.Marks.OrderBy(mark => mark.Price.Amount).Select(mark => $"{mark.Mark}, {MoneyWords.Of(mark.Price)}"))}.";

    private double At(Money price) => span.To.Amount == span.From.Amount
        ? Left
        : Left + ((width - Left) * (double)((price.Amount - span.From.Amount) / (span.To.Amount - span.From.Amount)));

    private void DrawAxes(Picture picture, double head)
    {
        for (var fifth = 0; fifth <= Fifths; fifth++)
        {
            var y = head + (height * (Fifths - fifth) / Fifths);
            picture.Line(Left, y, width, y, fifth == 0 ? Pen.Fine : new Pen(0.4, 0.8));
            picture.Text($"{CountWords.Number(fifth * 100 / Fifths)} %", Left - 5, y + 3, Small, Align.Right);
        }

        var step = RiskRow.StepOf((span.To - span.From).Amount, span.From.Currency);
        if (At(span.From + new Money(step, span.From.Currency)) - Left < Small.WidthOf(MoneyWords.Of(span.To)) + LeastBetween)
        {
            step *= 2;
        }

        for (var price = decimal.Ceiling(span.From.Amount / step) * step; price <= span.To.Amount; price += step)
        {
            var money = new Money(price, span.From.Currency);
            var words = MoneyWords.Of(money);
            picture.Line(At(money), head + height, At(money), head + height + 3, Pen.Fine);
            picture.Text(words, Math.Clamp(At(money), Left + (Small.WidthOf(words) / 2), width - (Small.WidthOf(words) / 2)), head + height + 13, Small, Align.Centre);
        }

        picture.Text("price before tax", width, head + height + 24, Small, Align.Right);
    }

    private void DrawCurve(Picture picture, double head)
    {
        var curve = told.Risk.Curve(span.From, span.To, Steps);
        foreach (var (from, to) in curve.Zip(curve.Skip(1)))
        {
            picture.Line(At(from.Price), head + (height * (1 - from.Chance)), At(to.Price), head + (height * (1 - to.Chance)), new Pen(2));
        }
    }
}
