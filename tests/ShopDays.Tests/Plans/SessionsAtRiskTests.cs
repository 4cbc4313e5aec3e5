using ShopDays.Plans;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Sessions that a plan slips in, in a shop open from 9 to 11.</summary>
public sealed class SessionsAtRiskTests
{
    [Fact]
    public void When_every_trial_goes_as_planned_no_session_is_at_risk() =>
        Assert.Empty(ThreeDays().Planned([[100, 100, 100], [90, 100, 80]]).Forecast.SessionsAtRisk);

    [Fact]
    public void A_session_is_at_risk_by_the_share_of_trials_in_which_its_work_is_not_done_by_its_end()
    {
        // Monday's task is too long for its session in one trial of four, Tuesday's in two others.
        var risks = ThreeDays().Planned([[100, 100, 100], [130, 60, 60], [100, 130, 60], [100, 140, 60]]).Forecast.SessionsAtRisk;
        Assert.Equal([(AJob.Monday.PlusDays(1), 0.5), (AJob.Monday, 0.25)], risks.Select(one => (one.Session.Date, one.Slips)));
        Assert.Equal(["plane"], risks[0].Ends.Select(task => task.Name));
    }

    [Fact]
    public void A_plan_slips_where_it_was_on_time_before_and_is_late_in_all_that_follows()
    {
        var risk = Assert.Single(ThreeDays().Planned([[240, 120, 120], [100, 100, 100]]).Forecast.SessionsAtRisk);
        Assert.Equal((AJob.Monday, 0.5, 0.5), (risk.Session.Date, risk.Slips, risk.NotDone));
    }

    [Fact]
    public void Work_that_caught_up_can_slip_again_and_both_sessions_count()
    {
        var risks = ThreeDays().Planned([[130, 60, 140]]).Forecast.SessionsAtRisk;
        Assert.Equal([AJob.Monday, AJob.Monday.PlusDays(2)], risks.Select(one => one.Session.Date));
    }

    [Fact]
    public void The_task_that_held_the_session_up_most_often_is_named_first()
    {
        var job = new AJob().Task("saw", 50).Task("plane", 50).Then("saw", "plane");
        var risk = Assert.Single(job.Planned([[50, 90], [50, 95], [50, 50]]).Forecast.SessionsAtRisk);
        Assert.Equal(["plane", "saw"], risk.Ends.Select(task => task.Name));
    }

    [Fact]
    public void Five_are_told_at_the_most()
    {
        var job = new AJob();
        for (var day = 0; day < 8; day++)
        {
            job.Task(FormattableString.Invariant($"task {day}"), 100);
        }

        for (var day = 1; day < 8; day++)
        {
            job.Then(FormattableString.Invariant($"task {day - 1}"), FormattableString.Invariant($"task {day}"));
        }

        // In trial n only the task of day n takes longer than its session, and the next makes up for it.
        var trials = Enumerable.Range(0, 7).Select(late => Enumerable.Range(0, 8).Select(day => day == late ? 130.0 : day == late + 1 ? 60 : 100).ToArray()).ToList();
        Assert.Equal(5, job.Planned(trials).Forecast.SessionsAtRisk.Count);
    }

    [Fact]
    public void Each_order_has_its_own()
    {
        var one = new AJob().Task("saw", 100);
        var other = new AJob().Task("plane", 100);
        var request = one.Request([[130], [100]]);
        request = request with { Orders = [request.Orders[0] with { Due = AJob.Monday }, other.Order([[100], [100]]) with { Name = "another" }] };
        var forecasts = Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(request)).Forecasts;
        Assert.Equal(["saw"], Assert.Single(forecasts[0].SessionsAtRisk).Ends.Select(task => task.Name));
        Assert.All(forecasts[1].SessionsAtRisk, risk => Assert.Equal(["plane"], risk.Ends.Select(task => task.Name)));
    }

    private static AJob ThreeDays() => new AJob().Task("saw", 100).Task("plane", 100).Task("wax", 100).Then("saw", "plane").Then("plane", "wax");
}
