using NodaTime;
using ShopDays.Plans;

namespace ShopDays.Cli.Phrases;

/// <summary>How many trials of a forecast are finished on a date, or in some weeks.</summary>
/// <param name="First">The first date.</param>
/// <param name="Last">The last, included; the same for a single date.</param>
/// <param name="Trials">The trials finished then.</param>
/// <param name="Share">The same out of all trials, 0 to 1.</param>
/// <param name="Marks">What else falls on these dates: the dates that are told, and the due date.</param>
internal sealed record FinishBar(LocalDate First, LocalDate Last, int Trials, double Share, IReadOnlyList<string> Marks)
{
    private const int DaysOfAWeek = 7;

    /// <summary>The bars: a date each where those few dates hold all but the last trial in a hundred, else weeks from Monday on; what is later still stands in the last.</summary>
    /// <param name="forecast">The forecast.</param>
    /// <param name="due">The due date; left out where it is far from all trials.</param>
    /// <param name="zone">The zone of the shop's clock.</param>
    /// <param name="most">Bars at the most.</param>
    /// <returns>The bars in order; none when no trial was finished.</returns>
    public static IReadOnlyList<FinishBar> Of(FinishForecast forecast, LocalDate? due, DateTimeZone zone, int most)
    {
        List<LocalDate> dates = [.. forecast.Finishes.Select(finish => finish.InZone(zone).Date)];
        if (dates.Count == 0)
        {
            return [];
        }

        var (first, last) = SpanOf(dates, due);
        List<(LocalDate Date, string Words)> marks = [.. MarksOf(forecast, due).Where(mark => mark.Date >= first && mark.Date <= last)];
        List<LocalDate> single = [.. dates.Concat(marks.Select(mark => mark.Date)).Where(date => date <= last).Distinct().Order()];
        if (single.Count <= most)
        {
            return [.. single.Select(date => Bar(date, date == single[^1] ? LocalDate.MaxIsoValue : date, date))];
        }

        var monday = first.PlusDays(-(int)first.DayOfWeek + 1);
        var weeks = (Period.DaysBetween(monday, last) / DaysOfAWeek) + 1;
        var step = DaysOfAWeek * ((weeks + most - 1) / most);
        var count = (Period.DaysBetween(monday, last) / step) + 1;
        return [.. Enumerable.Range(0, count).Select(place => monday.PlusDays(place * step)).Select((from, place) => Bar(from, place == count - 1 ? LocalDate.MaxIsoValue : from.PlusDays(step - 1), from.PlusDays(step - 1)))];

        FinishBar Bar(LocalDate from, LocalDate upTo, LocalDate shown)
        {
            var trials = dates.Count(date => date >= from && date <= upTo);
            return new(from, shown, trials, (double)trials / forecast.Trials, [.. marks.Where(mark => mark.Date >= from && mark.Date <= shown).Select(mark => mark.Words), .. upTo > shown && dates[^1] > shown ? (string[])["or later"] : []]);
        }
    }

    /// <summary>A trial in a hundred may be late beyond all others, and a due date far off would press the rest together: both are left out.</summary>
    /// <param name="dates">The dates of the trials' finish, earliest first; at least one.</param>
    /// <param name="due">The due date.</param>
    public static (LocalDate First, LocalDate Last) SpanOf(IReadOnlyList<LocalDate> dates, LocalDate? due)
    {
        var (first, last) = (dates[0], dates[(int)((dates.Count - 1) * 0.99)]);
        var near = Math.Max(14, Period.DaysBetween(first, last) / 2);
        return due is not { } date || date < first.PlusDays(-near) || date > last.PlusDays(near)
            ? (first, last)
            : (LocalDate.Min(first, date), LocalDate.Max(last, date));
    }

    /// <summary>The dates that are told of a forecast, and the due date, in words.</summary>
    public static IReadOnlyList<(LocalDate Date, string Words)> MarksOf(FinishForecast forecast, LocalDate? due) =>
    [
        .. new (ZonedDateTime? At, string Words)[] { (forecast.P50, "as likely as not"), (forecast.P80, "promise"), (forecast.P90, "bad luck") }
            .Where(one => one.At is not null)
            .Select(one => (one.At!.Value.Date, one.Words)),
        .. due is { } date ? ((LocalDate, string)[])[(date, "due")] : [],
    ];
}
