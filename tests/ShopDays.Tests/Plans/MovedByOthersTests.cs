using NodaTime;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Tests.Logbook;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>What came late from others as a cause of a moved finish, in a shop open from 9 to 11 from Monday 1 March 2027 on.</summary>
public sealed class MovedByOthersTests
{
    [Fact]
    public void A_word_that_came_late_keeps_its_days_when_a_session_goes_by_after_it()
    {
        // Expected on Thursday the 4th, it came on Tuesday the 9th; on Wednesday at noon nothing was done with it yet.
        var job = Drawing(asked: AJob.Monday, arrived: new(2027, 3, 9));
        var log = new ALog().Done("draw", 30, 1, 9.5);
        var moved = MovedFinishTests.Moved(job, log, log.Moment(10, 12), MovedFinishTests.Promised(Drawing(asked: AJob.Monday)));
        Assert.Equal([(MoveCause.Awaited, 5), (MoveCause.Sessions, 2)], moved.Moves.Where(one => one.Days != 0).Select(one => (one.Cause, one.Days)));
        Assert.Equal(("client agrees", 5, 0), Came(Assert.Single(moved.Moves, one => one.Arrived is not null)));
    }

    [Fact]
    public void A_word_that_was_asked_for_late_and_came_as_soon_as_expected_is_not_late()
    {
        // Three days after the drawing, which was done a week late: the sessions that went by without it are the cause.
        var log = new ALog().Done("draw", 30, 8, 9.5);
        var moved = MovedFinishTests.Moved(Drawing(arrived: new(2027, 3, 11)), log, log.Moment(11, 6), MovedFinishTests.Promised(Drawing()));
        Assert.Equal([(MoveCause.Sessions, 7)], moved.Moves.Where(one => one.Days != 0).Select(one => (one.Cause, one.Days)));

        var late = MovedFinishTests.Moved(Drawing(arrived: new(2027, 3, 12)), log, log.Moment(12, 6), MovedFinishTests.Promised(Drawing()));
        Assert.Equal([(MoveCause.Awaited, 1), (MoveCause.Sessions, 7)], late.Moves.Where(one => one.Days != 0).Select(one => (one.Cause, one.Days)));
        Assert.Equal(("client agrees", 1, 7), Came(Assert.Single(late.Moves, one => one.Arrived is not null)));
    }

    [Fact]
    public void Each_word_that_came_is_a_cause_by_its_name_in_the_order_in_which_they_came()
    {
        var three = Duration.FromDays(3);
        var wait = new WaitGuess(three, three, three);
        AJob Both(LocalDate? drawing, LocalDate? timber) => new AJob().Task("chalk out", 30).Task("rip", 30).Then("chalk out", "rip")
            .Awaiting("timber", wait, asked: AJob.Monday, arrived: timber, holds: ["rip"])
            .Awaiting("drawing", wait, asked: AJob.Monday, arrived: drawing, holds: ["chalk out"]);
        var log = new ALog();
        var moved = MovedFinishTests.Moved(Both(new(2027, 3, 8), new(2027, 3, 11)), log, log.Moment(11, 6), MovedFinishTests.Promised(Both(null, null)));
        Assert.Equal([("drawing", 4, 4), ("timber", 7, 3)], moved.Moves.Where(one => one.Cause == MoveCause.Awaited).Select(one => (one.Arrived!.One.Name, one.Arrived.DaysLate, one.Days)));

        Assert.Equal(moved.Days, moved.Moves.Sum(one => one.Days));
        Assert.Equal(7, moved.Days);
    }

    private static AJob Drawing(LocalDate? asked = null, LocalDate? arrived = null) => new AJob().Task("draw", 30).Task("chalk out", 30)
        .Awaiting("client agrees", WaitGuess.About(Duration.FromDays(3)), after: ["draw"], asked: asked, arrived: arrived, holds: ["chalk out"]);

    private static (string Name, int DaysLate, int DaysAskedLate) Came(FinishMove move) => (move.Arrived!.One.Name, move.Arrived.DaysLate, move.Arrived.DaysAskedLate);
}
