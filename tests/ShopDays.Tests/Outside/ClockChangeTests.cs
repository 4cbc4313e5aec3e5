using NodaTime;
using ShopDays.Days;
using ShopDays.Tests.Days;
using Xunit;

namespace ShopDays.Tests.Outside;

[Trait("Source", "IANA time zone database, in the edition that NodaTime carries; the dates of change as the laws of the places fix them; RFC 5545 (2009), 3.3.5: a local time that does not occur is read with the offset before the gap")]
public sealed class ClockChangeTests
{
    [Theory]
    [InlineData("America/New_York", "2027-03-13", 24.0)]
    [InlineData("America/New_York", "2027-03-14", 23.0)]
    [InlineData("America/New_York", "2027-11-07", 25.0)]
    [InlineData("Europe/Berlin", "2027-03-28", 23.0)]
    [InlineData("Europe/Berlin", "2027-10-31", 25.0)]
    [InlineData("Australia/Lord_Howe", "2027-04-04", 24.5)]
    [InlineData("Australia/Lord_Howe", "2027-10-03", 23.5)]
    [InlineData("America/Phoenix", "2027-03-14", 24.0)]
    public void A_day_has_its_real_length(string zone, string date, double hours)
    {
        var day = Shops.Calendar(Shops.At(0, 0, zone), "00:00-24:00").On(Shops.Date(date));
        Assert.Equal(Duration.FromHours(hours), Assert.Single(day.Sessions).Span.Duration);
    }

    [Theory]
    [InlineData("America/New_York", "2027-03-14", "00:00-06:00", 5.0)]
    [InlineData("America/New_York", "2027-11-07", "00:00-06:00", 7.0)]
    [InlineData("Europe/Berlin", "2027-03-28", "01:00-05:00", 3.0)]
    [InlineData("Europe/Berlin", "2027-10-31", "01:00-05:00", 5.0)]
    [InlineData("Australia/Lord_Howe", "2027-04-04", "01:00-04:00", 3.5)]
    [InlineData("Australia/Lord_Howe", "2027-10-03", "01:00-04:00", 2.5)]
    public void A_session_over_the_change_has_its_real_length_less_overhead(string zone, string date, string hours, double real)
    {
        var calendar = Shops.Calendar(Shops.At(0, 0, zone), hours) with { Overhead = Shops.TenAndFifteen };
        var session = Assert.Single(calendar.On(Shops.Date(date)).Sessions);
        Assert.Equal(Duration.FromHours(real), session.Span.Duration);

        // Minutes are held as a double; 25 of them are taken from a whole number of half hours.
        Assert.Equal((real * 60) - 25, session.UsableTime.Minutes, 1e-9);
    }

    [Theory]
    [InlineData("2027-03-14", "02:30-06:00", "2027-03-14T03:30:00-04", "2027-03-14T06:00:00-04")]
    [InlineData("2027-03-14", "00:00-02:30", "2027-03-14T00:00:00-05", "2027-03-14T03:30:00-04")]
    [InlineData("2027-03-14", "00:00-02:00", "2027-03-14T00:00:00-05", "2027-03-14T03:00:00-04")]
    [InlineData("2027-03-14", "02:10-02:55", "2027-03-14T03:10:00-04", "2027-03-14T03:55:00-04")]
    [InlineData("2007-03-11", "02:30-06:00", "2007-03-11T03:30:00-04", "2007-03-11T06:00:00-04")]
    [InlineData("2027-11-07", "01:30-04:00", "2027-11-07T01:30:00-04", "2027-11-07T04:00:00-05")]
    [InlineData("2027-11-07", "00:00-01:30", "2027-11-07T00:00:00-04", "2027-11-07T01:30:00-05")]
    public void A_skipped_time_is_read_by_the_clock_before_the_jump_and_a_doubled_time_is_the_outer_one(string date, string hours, string start, string end)
    {
        var session = Assert.Single(Shops.Calendar(Shops.NewYork, hours).On(Shops.Date(date)).Sessions);
        Assert.Equal(start, session.Start.ToOffsetDateTime().ToString());
        Assert.Equal(end, session.End.ToOffsetDateTime().ToString());
    }

    [Fact]
    public void Hours_of_which_the_clock_leaves_nothing_are_said_so()
    {
        // 02:50 is read as 03:50, which is after their end.
        var day = Shops.Calendar(Shops.NewYork, "02:50-03:20", "09:00-12:00").On(Shops.Date("2027-03-14"));
        Assert.Equal(["09:00-12:00"], day.Stays());
        var unused = Assert.Single(day.Unused);
        Assert.Equal((Shops.Span("02:50-03:20"), UnusedReason.ClockSkipped), (unused.Hours, unused.Reason));
    }

    [Fact]
    public void Skipped_hours_that_fall_on_others_are_worked_once()
    {
        var sessions = Shops.Calendar(Shops.NewYork, "02:00-02:10", "02:30-02:40", "03:00-03:50").On(Shops.Date("2027-03-14")).Sessions;
        Assert.Equal("2027-03-14T03:00:00-04 to 2027-03-14T03:50:00-04", string.Join("; ", sessions.Select(session => $"{session.Start.ToOffsetDateTime()} to {session.End.ToOffsetDateTime()}")));
    }

    [Theory]
    [InlineData("2027-11-07T05:10:00Z", false)]
    [InlineData("2027-11-07T06:10:00Z", true)]
    [InlineData("2027-11-07T07:10:00Z", false)]
    public void A_clock_that_is_put_back_shows_an_hour_a_second_time(string instant, bool isSecond)
    {
        var time = NodaTime.Text.InstantPattern.ExtendedIso.Parse(instant).Value.InZone(Shops.NewYork.Zone);
        Assert.Equal(isSecond, ClockChange.IsSecondPass(time));
    }

    [Fact]
    public void A_date_that_a_country_left_out_has_no_session()
    {
        // Samoa went from 29 to 31 December 2011 when it moved west of the date line.
        var days = Shops.Calendar(Shops.At(-13.8, -171.8, "Pacific/Apia"), "08:00-12:00");
        var (sessions, unused) = days.Between(Shops.Date("2011-12-29"), Shops.Date("2011-12-31"));
        Assert.Equal([29, 31], sessions.Select(session => session.Date.Day));
        Assert.Equal(UnusedReason.ClockSkipped, Assert.Single(unused).Reason);
    }

    [Theory]
    [InlineData("America/New_York", "2027-11-07", "00:00-01:30", "01:40-04:00")]
    [InlineData("America/Havana", "2027-11-06", "00:00-01:30", "20:00-24:00")]
    [InlineData("America/St_Johns", "2010-11-06", "00:00-02:00", "20:00-23:30")]
    [InlineData("Asia/Beirut", "2027-10-30", "00:00-02:00", "20:00-24:00")]
    public void Doubled_hours_are_not_worked_twice(string zone, string first, string early, string late)
    {
        var calendar = Shops.Calendar(Shops.At(0, 0, zone), early, late);
        var from = Shops.Date(first).PlusDays(-1);
        var (sessions, _) = calendar.Between(from, from.PlusDays(3));
        Assert.NotEmpty(sessions);
        Assert.All(sessions.Zip(sessions.Skip(1)), pair => Assert.True(pair.First.Span.End <= pair.Second.Span.Start));
    }

    [Fact]
    public void Hours_that_run_into_each_other_when_the_clock_is_put_back_are_one_session()
    {
        var day = Shops.Calendar(Shops.NewYork, "00:00-01:30", "01:40-04:00").On(Shops.Date("2027-11-07"));
        Assert.Equal(["00:00-04:00"], day.Stays());
        Assert.Equal(Duration.FromHours(5), day.Sessions[0].Span.Duration);
    }
}
