using NodaTime;
using ShopDays.Cli.Calendars;
using Xunit;

namespace ShopDays.Cli.Tests.Calendars;

[Trait("Source", "RFC 5545 (B. Desruisseaux, 2009), sections 3.8.1.11, 3.8.7.2 and 3.8.7.4")]
public sealed class CalendarUpdateTests
{
    private static readonly Instant Monday = Instant.FromUtc(2027, 3, 1, 8, 0);
    private static readonly Instant Tuesday = Instant.FromUtc(2027, 3, 2, 8, 0);

    [Fact]
    public void A_new_event_begins_with_nought() => Assert.Equal((0, Monday, false), Version(Assert.Single(After([], Monday, Event("a", 10)))));

    /// <summary>3.8.7.4: the sequence counts significant revisions, and 3.8.7.2: without a method the stamp is that of the last revision.</summary>
    [Fact]
    public void An_event_that_says_the_same_keeps_sequence_and_stamp() =>
        Assert.Equal((0, Monday, false), Version(Assert.Single(After(After([], Monday, Event("a", 10)), Tuesday, Event("a", 10)))));

    /// <summary>3.8.7.4: "monotonically incremented each time a significant revision is made".</summary>
    [Fact]
    public void An_event_that_changed_gets_the_next_number() =>
        Assert.Equal((1, Tuesday, false), Version(Assert.Single(After(After([], Monday, Event("a", 10)), Tuesday, Event("a", 11)))));

    /// <summary>3.8.1.11: STATUS:CANCELLED, as a new revision of the event; its reminder is gone.</summary>
    [Fact]
    public void An_event_that_is_not_planned_any_more_is_called_off()
    {
        var cancelled = Assert.Single(After(After([], Monday, Event("a", 10)), Tuesday));
        Assert.Equal((1, Tuesday, true), Version(cancelled));
        Assert.Empty(cancelled.Alarm);
        Assert.Equal((1, Tuesday, true), Version(Assert.Single(After([cancelled], Tuesday + Duration.FromDays(1)))));
    }

    [Fact]
    public void An_event_that_was_called_off_may_come_back() =>
        Assert.Equal((2, Tuesday, false), Version(Assert.Single(After(After(After([], Monday, Event("a", 10)), Monday), Tuesday, Event("a", 10)))));

    [Fact]
    public void What_is_over_is_not_called_off_by_a_plan_of_the_rest() =>
        Assert.Equal((0, Monday, false), Version(Assert.Single(After(After([], Monday, Event("a", 1)), Tuesday))));

    private static (int, Instant, bool) Version(CalendarEvent one) => (one.Sequence, one.Stamp, one.IsCancelled);

    private static IReadOnlyList<CalendarEvent> After(IReadOnlyList<CalendarEvent> before, Instant now, params CalendarEvent[] planned) =>
        CalendarUpdate.Of(before.ToDictionary(one => one.Uid), planned, now);

    private static CalendarEvent Event(string uid, int day) => new()
    {
        Uid = uid,
        Lines = [CalendarTime.Line("DTSTART", Instant.FromUtc(2027, 3, day, 9, 0).InUtc())],
        Alarm = ["BEGIN:VALARM", "ACTION:DISPLAY", "TRIGGER:PT0S", "DESCRIPTION:clamps", "END:VALARM"],
    };
}
