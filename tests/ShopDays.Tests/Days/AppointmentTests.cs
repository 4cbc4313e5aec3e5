using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using Xunit;

namespace ShopDays.Tests.Days;

public sealed class AppointmentTests
{
    private static readonly LocalDate Tuesday = new(2027, 4, 6);

    [Fact]
    public void An_appointment_inside_a_session_breaks_it_in_two() =>
        Assert.Equal(["08:00-10:00", "11:00-13:00"], With("08:00-13:00", "10:00-11:00").On(Tuesday).Stays());

    [Fact]
    public void The_shop_is_opened_and_swept_once_whatever_comes_between()
    {
        var sessions = (With("08:00-13:00", "10:00-11:00") with { Overhead = Shops.TenAndFifteen }).On(Tuesday).Sessions;
        Assert.Equal([110, 105], sessions.Select(session => session.UsableTime.Minutes));
    }

    [Theory]
    [InlineData("07:00-09:00", "09:00-13:00", 215)]
    [InlineData("12:00-13:00", "08:00-12:00", 215)]
    [InlineData("08:20-09:00", "09:00-13:00", 215)]
    [InlineData("12:00-12:40", "08:00-12:00", 215)]
    public void An_appointment_at_the_end_of_a_session_shortens_it(string at, string left, double usable)
    {
        var day = (With("08:00-13:00", at) with { Overhead = Shops.TenAndFifteen }).On(Tuesday);
        Assert.Equal([left], day.Stays());
        Assert.Equal(usable, Assert.Single(day.Sessions).UsableTime.Minutes);
    }

    [Fact]
    public void What_an_appointment_leaves_that_is_too_short_is_said_so()
    {
        var day = (With("08:00-13:00", "08:20-09:00") with { Overhead = Shops.TenAndFifteen }).On(Tuesday);
        Assert.Equal(
            [("08:00-08:20", UnusedReason.TooShort, null, Duration.FromMinutes(20)), ("08:20-09:00", UnusedReason.Appointment, "timber comes", Duration.FromMinutes(40))],
            day.Unused.Select(one => (one.Hours.ToString(), one.Reason, one.Appointment, one.Left)));
    }

    [Fact]
    public void An_appointment_over_the_whole_session_leaves_none()
    {
        var day = With("08:00-12:00", "07:00-14:00").On(Tuesday);
        Assert.Empty(day.Sessions);
        var unused = Assert.Single(day.Unused);
        Assert.Equal(("07:00-14:00", UnusedReason.Appointment, Duration.FromHours(4)), (unused.Hours.ToString(), unused.Reason, unused.Left));
    }

    [Fact]
    public void Appointments_that_overlap_take_their_time_once()
    {
        var day = With("08:00-14:00", "09:00-11:00", "10:00-12:00").On(Tuesday);
        Assert.Equal(["08:00-09:00", "12:00-14:00"], day.Stays());
        Assert.Equal(2, day.Unused.Length);
    }

    [Theory]
    [InlineData("13:00-14:00")]
    [InlineData("06:00-08:00")]
    public void An_appointment_outside_the_hours_takes_nothing(string at)
    {
        var day = With("08:00-13:00", at).On(Tuesday);
        Assert.Equal(["08:00-13:00"], day.Stays());
        Assert.Empty(day.Unused);
    }

    [Fact]
    public void An_appointment_takes_its_own_date_only() =>
        Assert.Equal(["08:00-13:00"], With("08:00-13:00", "10:00-11:00").On(Tuesday.PlusDays(7)).Stays());

    [Fact]
    public void Over_a_change_of_clocks_an_appointment_takes_real_time()
    {
        // In New York the clock goes from 02:00 to 03:00 on 14 March 2027: of 01:30 to 03:30 one hour is left.
        var spring = Shops.Calendar(Shops.NewYork, "00:00-06:00") with { Appointments = [new("night watch", new(2027, 3, 14), Shops.Span("01:30-03:30"))] };
        var day = spring.On(new(2027, 3, 14));
        Assert.Equal([Duration.FromMinutes(90), Duration.FromMinutes(150)], day.Sessions.Select(session => session.Span.Duration));
        Assert.Equal(Duration.FromHours(1), Assert.Single(day.Unused).Left);

        // On 7 November it goes back from 02:00 to 01:00: the hour from 01:00 to 02:00 is two.
        var autumn = Shops.Calendar(Shops.NewYork, "00:00-06:00") with { Appointments = [new("night watch", new(2027, 11, 7), Shops.Span("01:00-02:00"))] };
        day = autumn.On(new(2027, 11, 7));
        Assert.Equal([Duration.FromHours(1), Duration.FromHours(4)], day.Sessions.Select(session => session.Span.Duration));
        Assert.Equal(Duration.FromHours(2), Assert.Single(day.Unused).Left);
    }

    [Fact]
    public void An_appointment_is_a_span_of_one_date()
    {
        var span = Assert.Single(UnusedSpan.Of(With("08:00-13:00", "10:00-11:00"), Tuesday.PlusDays(-7), Tuesday.PlusDays(7)));
        Assert.Equal(("timber comes", Tuesday, Tuesday, 1), (span.Appointment, span.First, span.Last, span.Dates));
    }

    private static WorkingCalendar With(string hours, params string[] at) => Shops.Calendar(Shops.NewYork, hours) with
    {
        LeastUseful = WorkTime.FromMinutes(45),
        Appointments = [.. at.Select(one => new Appointment("timber comes", Tuesday, Shops.Span(one)))],
    };
}
