using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Paper.Overview;

/// <summary>On which dates the trials of the plan were finished: a bar for each date, or for each few days where there are many.</summary>
internal sealed class FinishPicture
{
    private const double Head = 14;
    private const double Tick = 4;
    private const double LineHeight = 10;
    private const double White = 8;
    private const int MostBars = 75;
    private const double WidestBar = 16;
    private const double WidestPlace = 40;

    private static readonly TextStyle Style = TypeScale.Small with { Size = 8 };

    private readonly PlanPaper plan;
    private readonly LocalDate first;
    private readonly int step;
    private readonly int[] counts;
    private readonly double place;
    private readonly IReadOnlyList<(double X, string Words)> marks;
    private readonly MarkLabels labels;

    private FinishPicture(PlanPaper plan, double width)
    {
        this.plan = plan;
        var zone = plan.Plan.Finish.Zone;
        var dates = plan.Forecast.Finishes.Select(finish => finish.InZone(zone).Date).ToList();
        (first, var last) = FinishBar.SpanOf(dates, plan.Job.Due);
        var days = Period.DaysBetween(first, last) + 1;
        step = Math.Max(1, (days + MostBars - 1) / MostBars);
        counts = new int[(days + step - 1) / step];
        foreach (var date in dates.Where(date => date <= last))
        {
            counts[Period.DaysBetween(first, date) / step]++;
        }

        place = Math.Min(WidestPlace, width / counts.Length);
        marks =
        [
            .. FinishBar.MarksOf(plan.Forecast, plan.Job.Due)
                .Where(mark => mark.Date >= first && mark.Date <= last)
                .GroupBy(mark => Period.DaysBetween(first, mark.Date) / step)
                .OrderBy(bar => bar.Key)
                .Select(bar => ((bar.Key + 0.5) * place, string.Join(", ", bar.GroupBy(mark => mark.Date).OrderBy(day => day.Key).Select(day => $"{string.Join(", ", day.Select(mark => mark.Words))} {DateWords.Month(day.Key)}")))),
        ];
        labels = MarkLabels.Of([.. marks.Select(mark => (mark.X, Style.WidthOf(mark.Words)))], 0, width);
    }

    /// <summary>The picture.</summary>
    /// <param name="plan">The plan; some of its trials were finished.</param>
    /// <param name="tallest">Height of the tallest bar, in points.</param>
    /// <param name="width">Width of the text, in points.</param>
    public static Drawing Of(PlanPaper plan, double tallest, double width)
    {
        var picture = new FinishPicture(plan, width);
        return new(Head + tallest + Tick + (LineHeight * picture.labels.Lines) + White, Meaning.Picture(picture.Description), (page, box) => picture.Draw(page, box, tallest));
    }

    private string Description
    {
        get
        {
            var most = counts.Index().MaxBy(bar => bar.Item);
            var (from, until) = (first.PlusDays(most.Index * step), first.PlusDays((most.Index * step) + step - 1));
            return $"Bars: on which dates the {CountWords.Of(plan.Forecast.Trials, "trial")} of the plan were finished, from {DateWords.Long(first)} on. Most, {CountWords.Number(most.Item)}, on {DateWords.Long(from)}{(step == 1 ? "" : $" or in the days to {DateWords.Long(until)}")}. "
                + $"Marked: {string.Join("; ", marks.Select(mark => mark.Words))}.";
        }
    }

    private void Draw(Surface page, Box box, double tallest)
    {
        var ground = box.Y + Head + tallest;
        var bar = Math.Min(WidestBar, place);
        page.Text(step == 1 ? "Finish of the trials, by date" : $"Finish of the trials, by {CountWords.Number(step)} days", box.X, box.Y + 8, TypeScale.Label);
        foreach (var (order, count) in counts.Index().Where(one => one.Item > 0))
        {
            var height = tallest * count / counts.Max();
            var promised = plan.Forecast.P80 is { } p80 && first.PlusDays(order * step) <= p80.Date;
            page.Rectangle(new Box(box.X + (order * place) + ((place - bar) / 2), ground - height, Math.Max(0.8, bar - 1), height), null, promised ? Fill.Shade(0.25) : Fill.Shade(0.7));
        }

        page.Line(box.X, ground, box.X + (place * counts.Length), ground, Pen.Fine);
        foreach (var (mark, label) in marks.Zip(labels.Labels))
        {
            var line = LineHeight * label.Line;
            page.Line(box.X + mark.X, ground, box.X + mark.X, ground + Tick + line, Pen.Fine);
            page.Text(mark.Words, box.X + label.Left, ground + Tick + 8 + line, Style);
        }
    }
}
