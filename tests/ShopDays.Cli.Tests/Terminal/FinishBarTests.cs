using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Plans;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

public sealed class FinishBarTests
{
    private static readonly DateTimeZone Zone = DateTimeZoneProviders.Tzdb["Europe/London"];
    private static readonly LocalDate Thursday = new(2027, 4, 1);

    private static readonly int[] ThreeInFour = [.. Enumerable.Repeat(0, 300), .. Enumerable.Repeat(5, 100)];

    [Fact]
    public void A_few_dates_have_a_bar_each_and_days_without_a_trial_have_none()
    {
        var bars = FinishBar.Of(Forecast(ThreeInFour), null, Zone, 14);
        Assert.Equal([(Thursday, 300, 0.75), (Thursday.PlusDays(5), 100, 0.25)], bars.Select(bar => (bar.First, bar.Trials, bar.Share)));
        Assert.Equal([["as likely as not"], ["promise", "bad luck"]], bars.Select(bar => bar.Marks));
    }

    [Fact]
    public void The_due_date_has_its_place_though_no_trial_is_finished_on_it() =>
        Assert.Equal(["due"], FinishBar.Of(Forecast(ThreeInFour), Thursday.PlusDays(2), Zone, 14).Single(bar => bar.Trials == 0).Marks);

    [Fact]
    public void A_due_date_far_off_is_left_out() =>
        Assert.DoesNotContain(FinishBar.Of(Forecast(ThreeInFour), Thursday.PlusDays(60), Zone, 14), bar => bar.Marks.Contains("due"));

    [Fact]
    public void Many_dates_are_drawn_together_to_weeks_from_Monday_on_and_no_trial_is_lost()
    {
        var bars = FinishBar.Of(Forecast([.. Enumerable.Range(0, 40)]), Thursday.PlusDays(44), Zone, 14);
        Assert.InRange(bars.Count, 5, 14);
        Assert.All(bars, bar => Assert.Equal(IsoDayOfWeek.Monday, bar.First.DayOfWeek));
        Assert.Equal(40, bars.Sum(bar => bar.Trials));
        Assert.All((string[])["as likely as not", "promise", "bad luck", "due"], mark => Assert.Single(bars, bar => bar.Marks.Contains(mark)));
        Assert.EndsWith(", by weeks from Monday on", FinishSketch.Title(bars, 40), StringComparison.Ordinal);
    }

    [Fact]
    public void The_latest_trials_of_all_stand_in_the_last_bar()
    {
        var bars = FinishBar.Of(Forecast([.. Enumerable.Repeat(0, 199), 300]), null, Zone, 14);
        Assert.Equal(200, Assert.Single(bars).Trials);
        Assert.Contains("or later", bars[0].Marks);
    }

    [Fact]
    public void Without_a_finished_trial_there_are_no_bars() => Assert.Empty(FinishBar.Of(Forecast([]), null, Zone, 14));

    [Fact]
    public void Lines_fit_the_width_and_the_most_has_the_longest_bar()
    {
        var lines = FinishSketch.Lines(FinishBar.Of(Forecast([.. Enumerable.Repeat(0, 900), .. Enumerable.Repeat(2, 100)]), Thursday, Zone, 14), 80).ToList();
        Assert.All(lines, line => Assert.InRange(line.Length, 0, 80));
        Assert.True(lines[0].Count(letter => letter == '█') > 4 * lines[1].Count(letter => letter == '█'));
        Assert.StartsWith("  Thu 1 Apr 2027 ", lines[0], StringComparison.Ordinal);
    }

    [Fact]
    public void A_date_without_a_trial_has_no_share_and_one_with_all_of_them_not_the_whole()
    {
        var lines = FinishSketch.Lines(FinishBar.Of(Forecast([.. Enumerable.Repeat(0, 100)]), Thursday.PlusDays(2), Zone, 14), 80).ToList();
        Assert.Contains(" over 99 %  as likely as not", lines[0], StringComparison.Ordinal);
        Assert.DoesNotContain('%', lines[1]);
    }

    private static FinishForecast Forecast(int[] days)
    {
        ZonedDateTime? At(double share) => days.Length == 0 ? null : EveningOf(days[(int)Math.Ceiling(share * days.Length) - 1]);
        return new()
        {
            P50 = At(0.5),
            P80 = At(0.8),
            P90 = At(0.9),
            ChanceOfDue = null,
            Deciding = [],
            Finishes = [.. days.Select(day => EveningOf(day).ToInstant())],
            Trials = days.Length,
            Unfinished = 0,
            Overruns = 0,
            Seed = 1,
        };
    }

    private static ZonedDateTime EveningOf(int days) => (Thursday.PlusDays(days) + new LocalTime(17, 0)).InZoneStrictly(Zone);
}
