using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Paper.Overview;

/// <summary>On which dates the trials of the plan were finished: a bar for each date, or each week where there are many.</summary>
internal static class FinishPicture
{
    private const double Foot = 26;
    private const int MostBars = 75;

    /// <summary>The picture.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="tallest">Height of the tallest bar, in points.</param>
    public static Drawing Of(PlanPaper plan, double tallest) => new(tallest + Foot + 20, (page, box) => Draw(page, box, plan, tallest));

    private static void Draw(Surface page, Box box, PlanPaper plan, double tallest)
    {
        var zone = plan.Plan.Finish.Zone;
        var dates = plan.Forecast.Finishes.Select(finish => finish.InZone(zone).Date).ToList();
        var (first, last) = FinishBar.SpanOf(dates, plan.Job.Due);
        var days = Period.DaysBetween(first, last) + 1;
        var step = Math.Max(1, (days + MostBars - 1) / MostBars);
        var counts = new int[(days + step - 1) / step];
        foreach (var date in dates.Where(date => date <= last))
        {
            counts[Period.DaysBetween(first, date) / step]++;
        }

        var top = box.Y + 14;
        var ground = top + tallest;
        var width = Math.Min(16, box.Width / counts.Length);
        var words = step == 1 ? "Finish of the trials, by date" : $"Finish of the trials, by {CountWords.Number(step)} days";
        page.Text(words, box.X, box.Y + 8, TypeScale.Label);
        for (var order = 0; order < counts.Length; order++)
        {
            var height = tallest * counts[order] / counts.Max();
            var promised = plan.Forecast.P80 is { } p80 && first.PlusDays(order * step) <= p80.Date;
            if (height > 0)
            {
                page.Rectangle(new Box(box.X + (order * width), ground - height, Math.Max(0.8, width - 1), height), null, promised ? Fill.Shade(0.25) : Fill.Shade(0.7));
            }
        }

        page.Line(box.X, ground, box.X + (width * counts.Length), ground, Pen.Fine);
        Marks(page, box, ground, date => box.X + (((Period.DaysBetween(first, date) / step) + 0.5) * width), plan, (first, last));
    }

    private static void Marks(Surface page, Box box, double ground, Func<LocalDate, double> place, PlanPaper plan, (LocalDate First, LocalDate Last) shown)
    {
        var marks = FinishBar.MarksOf(plan.Forecast, plan.Job.Due).Where(mark => mark.Date >= shown.First && (mark.Words != "due" || mark.Date <= shown.Last));
        var style = TypeScale.Small with { Size = 8 };
        // On the first of two lines where there is room, otherwise on the second; words never leave the picture.
        double[] taken = [double.NegativeInfinity, double.NegativeInfinity];
        foreach (var group in marks.GroupBy(mark => mark.Date).OrderBy(group => group.Key))
        {
            var words = $"{string.Join(", ", group.Select(mark => mark.Words))} {DateWords.Month(group.Key)}";
            var (x, half) = (place(group.Key), style.WidthOf(words) / 2);
            var middle = Math.Clamp(x, box.X + half, box.Right - half);
            var line = middle - half > taken[0] + 6 ? 0 : 1;
            var left = Math.Max(middle - half, taken[line] + 6);
            page.Line(x, ground, x, ground + 4 + (10 * line), Pen.Fine);
            page.Text(words, left, ground + 12 + (10 * line), style);
            taken[line] = left + (2 * half);
        }
    }
}
