using NodaTime;
using ShopDays.Days;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Tests.Days;
using ShopDays.Tests.Logbook;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class DatedWorkTests
{
    [Fact]
    public void A_task_does_not_begin_before_its_date()
    {
        var plan = new AJob().Task("drill", 30, task => task with { NotBefore = new(2027, 3, 4) }).Plan();
        Assert.Equal(new LocalDateTime(2027, 3, 4, 9, 0), Work(plan, "drill").Start.LocalDateTime);
    }

    [Fact]
    public void An_appointed_task_begins_at_its_time_and_other_work_goes_round_it()
    {
        var plan = new AJob()
            .Task("client chooses", 30, task => task with { Appointed = new(new(2027, 3, 2), new(9, 45)) })
            .Task("plane", 300, task => task with { IsSplittable = true })
            .Plan();
        Assert.Equal(new LocalDateTime(2027, 3, 2, 9, 45), Work(plan, "client chooses").Start.LocalDateTime);
        Assert.Equal(new LocalDateTime(2027, 3, 3, 10, 40), plan.Finish.LocalDateTime);
    }

    [Fact]
    public void A_task_with_a_date_alone_is_done_on_that_date()
    {
        var plan = new AJob()
            .Task("glass is fitted", 60, task => task with { Appointed = new(new(2027, 3, 3)) })
            .Task("plane", 90)
            .Task("wax", 30)
            .Then("plane", "glass is fitted")
            .Then("glass is fitted", "wax")
            .Plan();
        Assert.Equal(new LocalDate(2027, 3, 3), Work(plan, "glass is fitted").Start.Date);
    }

    [Fact]
    public void The_bound_names_the_appointment_or_the_date_that_holds()
    {
        Assert.Equal(
            ("appointment", "an appointment: \"client chooses\" is fixed for Tue 2 Mar, 09:45, and takes until then"),
            Bound(new AJob().Task("client chooses", 30, task => task with { Appointed = new(new(2027, 3, 2), new(9, 45)) })));
        Assert.Equal(
            ("appointment", "an appointment: \"glass is fitted\" is fixed for Wed 3 Mar, and the row of 2 tasks from there to \"wax\" takes until then; it would be Tue 2 Mar but for the date of \"glass is fitted\", or Wed 3 Mar with no waits"),
            Bound(new AJob().Task("glass is fitted", 30, task => task with { Appointed = new(new(2027, 3, 3)) }).Task("wax", 30).Then("glass is fitted", "wax", Sets)));
        Assert.Equal(
            ("not-before date", "a date: \"drill\" does not begin before Thu 4 Mar, and takes until then"),
            Bound(new AJob().Task("drill", 30, task => task with { NotBefore = new(2027, 3, 4) })));
    }

    [Fact]
    public void What_would_make_the_bound_the_same_date_is_told_with_one_date_and_another_year_with_its_number()
    {
        Assert.EndsWith(
            "; it would be Tue 2 Mar but for the date of \"glass is fitted\" or with no waits",
            Bound(new AJob().Task("glass is fitted", 30, task => task with { NotBefore = new(2027, 3, 2) }).Task("wax", 30).Then("glass is fitted", "wax", Sets)).Reason,
            StringComparison.Ordinal);
        Assert.EndsWith(
            "; it would be Thu 31 Dec 2026 but for the date of \"glass is fitted\", or Mon 4 Jan with no waits",
            Bound(new AJob { Start = new(2026, 12, 30) }.Task("glass is fitted", 30, task => task with { NotBefore = new(2027, 1, 4) }).Task("wax", 30).Then("glass is fitted", "wax", Sets)).Reason,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_date_before_which_there_are_no_hours_holds_nothing()
    {
        // From Saturday on there is no session before Monday.
        var job = new AJob { Start = new(2027, 3, 6) }.Task("drill", 30, task => task with { NotBefore = new(2027, 3, 8) });
        Assert.Equal("single task", Bound(job).Kind);
    }

    [Fact]
    public void The_bound_of_one_task_speaks_of_that_task()
    {
        Assert.Equal(("single task", "a single task: \"plane\" takes until then, even with nothing else to do"), Bound(new AJob().Task("plane", 30)));
        Assert.Equal(("waits", "waits: \"coat\" with the wait after it takes until then, even with nothing else to do"), Bound(new AJob().Task("coat", 30).Closing("coat", Sets)));
        Assert.Equal(("waits", "waits: \"buy oak\" with the wait before it takes until then, even with nothing else to do; it waits for the client's word: the client agrees"), Bound(new AJob().Task("buy oak", 30).Opening("the client agrees", Duration.FromDays(3), "buy oak")));
    }

    [Fact]
    public void A_row_of_work_without_waits_is_no_wait() =>
        Assert.Equal(
            ("row of work", "a row of work: 2 tasks from \"rip\" to \"glue\", one after another, take until then, even with nothing else to do"),
            Bound(new AJob().Task("rip", 70).Task("glue", 60).Then("rip", "glue")));

    [Fact]
    public void An_appointed_time_is_that_of_the_shops_clock_on_both_sides_of_a_change()
    {
        // New York: 14 March 2027, 02:00 becomes 03:00.
        foreach (var date in new[] { new LocalDate(2027, 3, 12), new(2027, 3, 15) })
        {
            var plan = new AJob { Start = new(2027, 3, 8) }.Task("client chooses", 30, task => task with { Appointed = new(date, new(9, 45)) }).Plan();
            Assert.Equal(date + new LocalTime(9, 45), Work(plan, "client chooses").Start.LocalDateTime);
        }
    }

    [Fact]
    public void What_is_begun_is_not_held_to_its_appointment_any_more()
    {
        var request = new AJob().Task("client chooses", 30, task => task with { Appointed = new(new(2027, 3, 2), new(9, 45)) }).Request();
        Assert.Null(Left(request, new ALog().Went("client chooses", 10, 2, 10), 3, 10).Graph.Tasks[0].Appointed);
        Assert.NotNull(Left(request, new ALog(), 3, 10).Graph.Tasks[0].Appointed);
    }

    [Fact]
    public void What_stands_in_clamps_of_work_that_is_done_still_takes_its_floor()
    {
        var request = TwoAssemblies(2.69).Request();
        var left = Left(request, new ALog().Done("glue the base", 30, 1, 9.5), 1, 9.5);
        Assert.Equal(new ALog().Moment(1, 21.5), Assert.Single(left.UnderWay.Held).FloorUntil);
        Assert.Equal(new LocalDate(2027, 3, 3), Finish(PlanMaker.Plan(Of(request, left))).Date);

        request = TwoAssemblies(2.7).Request();
        Assert.Equal(new LocalDate(2027, 3, 2), Finish(PlanMaker.Plan(Of(request, left))).Date);
    }

    [Fact]
    public void A_two_person_task_gathers_on_the_helpers_morning()
    {
        var plan = new AJob()
            .Worker("09:00-11:00")
            .Worker("09:00-11:00", name: "helper")
            .With(calendar => calendar with { Week = new(new Dictionary<IsoDayOfWeek, ShopHours>()), Extra = Shops.Extra("2027-03-05", "09:30-11:00") })
            .Task("plane", 60)
            .Task("carry", 30, task => task with { Crew = 2 })
            .Plan();
        Assert.Equal(new LocalDateTime(2027, 3, 5, 9, 30), Work(plan, "carry").Start.LocalDateTime);
    }

    [Fact]
    public void Two_assemblies_that_do_not_stand_side_by_side_wait_for_each_other()
    {
        Assert.Equal(new LocalDate(2027, 3, 2), Finish(PlanMaker.Plan(TwoAssemblies(2.7).Request())).Date);
        Assert.Equal(new LocalDate(2027, 3, 3), Finish(PlanMaker.Plan(TwoAssemblies(2.69).Request())).Date);
    }

    private static AJob TwoAssemblies(double floor) => new AJob { Limits = new() { Floor = Area.FromSquareMetres(floor) } }
        .Task("glue the base", 30, task => task with { Floor = Area.FromSquareMetres(1.5) })
        .Task("glue the case", 30, task => task with { Floor = Area.FromSquareMetres(1.2) })
        .Task("plane the base", 30)
        .Task("plane the case", 30)
        .Then("glue the base", "plane the base", Sets)
        .Then("glue the case", "plane the case", Sets);

    private static LocalDateTime Finish(PlanAnswer answer) => Assert.IsType<PlanAnswer.Planned>(answer).Plan.Finish.LocalDateTime;

    private static RemainingWork Left(PlanRequest request, ALog log, int day, double hour) =>
        RemainingWork.Of(request.Orders[0].Graph, JobStanding.Of(request.Orders[0].Graph, log.Entries), request.Calendars, request.Orders[0].Start, log.Moment(day, hour));

    private static PlanRequest Of(PlanRequest whole, RemainingWork left) => whole with
    {
        Orders =
        [
            whole.Orders[0] with
            {
                Graph = left.Graph,
                Times = [.. left.Ids.Select(id => whole.Orders[0].Times[id])],
                Draws = new([left.Ids.Select(id => whole.Orders[0].Times[id].Minutes).ToArray()], 7),
                UnderWay = left.UnderWay,
            },
        ],
    };

    private static Wait Sets => new(Duration.FromHours(12), "it sets", HoldsFloor: true);

    private static (string Kind, string Reason) Bound(AJob job)
    {
        var bound = job.Plan().LowerBound;
        return (bound.Kind, bound.Reason);
    }

    private static PlannedWork Work(Plan plan, string task) => plan.Sessions.SelectMany(session => session.Work).First(work => work.Task.Name == task && work.IsFirstPiece);
}
