using CsCheck;
using NodaTime;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Tests.Logbook;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Glue-ups and coats planned in a shop open from 9 to 11 on weekdays, from Monday 1 March 2027 on, that has nights of its own.</summary>
public sealed class ColdNightsTests
{
    private const int Year = 12;

    [Fact]
    public void Nothing_is_glued_whose_setting_would_reach_into_a_month_that_is_too_cold()
    {
        var plan = Glued(Nights(15, (3, 4))).Plan();
        Assert.Equal(new LocalDate(2027, 4, 1), Start(plan, "glue").Date);

        // On Friday 26 February it would lie over the turn of the month.
        var before = Glued(Nights(15, (3, 4)), new LocalDate(2027, 2, 25), 70).Plan();
        Assert.Equal(new LocalDate(2027, 2, 26), Start(before, "glue").Date);
        Assert.Equal(new LocalDate(2027, 4, 1), Start(Glued(Nights(15, (3, 4)), new LocalDate(2027, 2, 26), 130).Plan(), "glue").Date);
    }

    [Fact]
    public void The_plan_says_from_when_to_when_the_cold_keeps_a_task_waiting()
    {
        var wait = Assert.Single(Glued(Nights(15, (3, 4))).Plan().Waits, one => one.Reason.Contains("too cold", StringComparison.Ordinal));
        Assert.Equal("glue: too cold at night for the glue, which needs 10 °C", wait.Reason);
        Assert.Equal("saw", wait.After?.Name);
        Assert.Equal(new LocalDateTime(2027, 4, 1, 0, 0), wait.End.LocalDateTime);
    }

    [Fact]
    public void A_wait_is_as_long_as_its_month_makes_it_and_says_why()
    {
        var plan = Glued(Nights(10)).Plan();
        var wait = Assert.Single(plan.Waits, one => one.After?.Name == "glue");
        Assert.Equal("it hardens (x 2.0 at 10 °C at night)", wait.Reason);
        Assert.Equal(Duration.FromHours(48), wait.End - wait.Start);
        Assert.Equal((2.0, false), (wait.Slowed!.Factor, wait.Slowed.IsInWarmRoom));
        Assert.True(Start(plan, "plane").ToInstant() >= wait.End.ToInstant());
    }

    [Fact]
    public void A_warm_room_that_is_warm_enough_counts_instead_of_the_night()
    {
        var plan = Glued(Nights(4) with { WarmRoom = Temperature.FromCelsius(20) }).Plan();
        Assert.Equal(new LocalDate(2027, 3, 1), Start(plan, "glue").Date);
        Assert.Equal("it hardens (overnight in the warm room)", Assert.Single(plan.Waits, one => one.After?.Name == "glue").Reason);
    }

    [Fact]
    public void Where_it_is_never_warm_enough_the_task_the_temperatures_and_the_cures_are_told()
    {
        var reason = Assert.Single(Glued(Nights(4)).Reasons());
        Assert.Equal((UnplannableKind.TooCold, "glue"), (reason.Kind, reason.Task?.Name));
        Assert.Equal("the glue needs 10 °C until it has set, and the nights never have more than 4 °C where it lies", reason.Limit);
        Assert.Equal("a warm room with 10 °C or more for the nights, or 'cold glue', which sets at 4 °C too", reason.Cure);
    }

    [Fact]
    public void Where_no_session_is_open_when_it_is_warm_enough_the_months_are_told()
    {
        var nights = Nights(15, [.. Enumerable.Range(1, Year).Where(month => month != 7).Select(month => (month, 4.0))]);
        var job = Glued(nights).With(calendar => calendar with { Closed = new(new DateInterval(new(2027, 7, 1), new(2027, 7, 31))) });
        var reason = Assert.Single(job.Reasons());
        Assert.Equal((UnplannableKind.TooCold, "glue"), (reason.Kind, reason.Task?.Name));
        Assert.EndsWith("or a session in July", reason.Cure, StringComparison.Ordinal);
    }

    [Fact]
    public void Clamps_stay_on_for_as_long_as_the_cold_takes()
    {
        var shop = new ShopLimits { Clamps = [new(Length.FromInches(24m), 2)] };
        var nights = Nights(10);
        var clamped = new Wait(Duration.FromHours(15), "clamped", HoldsClamps: true) { Sets = Glue(nights) };
        var plan = new AJob { Limits = shop }
            .Task("glue", 30, task => Setting(task, nights) with { Clamps = [new(Length.FromInches(20m), 2)] })
            .Task("glue another", 30, task => Setting(task, nights) with { Clamps = [new(Length.FromInches(20m), 2)] })
            .Task("plane", 30)
            .Then("glue", "plane", clamped)
            .Then("glue another", "plane", clamped)
            .Plan();
        var starts = new[] { Start(plan, "glue").ToInstant(), Start(plan, "glue another").ToInstant() };
        Assert.True(starts.Max() - starts.Min() >= Duration.FromHours(30) + Duration.FromMinutes(30));
    }

    [Fact]
    public void Nights_at_which_nothing_is_slower_give_the_same_plan_as_a_heated_shop()
    {
        var (heated, same) = (Glued(null).Plan(), Glued(Nights(20)).Plan());
        Assert.Equal(heated.Finish, same.Finish);
        Assert.Equal(heated.LowerBound.At, same.LowerBound.At);
        Assert.Equal(heated.Waits.Select(wait => (wait.Start, wait.End, wait.Reason)), same.Waits.Select(wait => (wait.Start, wait.End, wait.Reason)));
    }

    [Fact]
    public void Of_work_that_is_done_the_wait_runs_on_as_slowly()
    {
        var request = Glued(Nights(10)).Request();
        var log = new ALog().Done("saw", 20, 1, 9.5).Done("glue", 60, 1, 10.5);
        var graph = request.Orders[0].Graph;
        var left = RemainingWork.Of(graph, JobStanding.Of(graph, log.Entries), request.Calendars, AJob.Monday, log.Moment(1, 10.75));
        var wait = Assert.Single(left.UnderWay.Waits);
        Assert.Equal(log.Moment(3, 10.5), wait.Until);
        Assert.Equal("it hardens (x 2.0 at 10 °C at night)", wait.Reason);
    }

    [Fact]
    public void No_plan_glues_in_the_cold_and_none_finishes_before_that_of_a_warmer_year() =>
        Gen.Select(Gen.Int[2, 24].Array[Year], Gen.Int[0, 8], Gen.Int[0, 364]).Sample((year, colder, day) =>
        {
            var start = new LocalDate(2027, 1, 1).PlusDays(day);
            var (warm, cold) = (PlanOf(0), PlanOf(colder));
            if (warm is null)
            {
                Assert.Null(cold);
                return;
            }

            foreach (var (plan, by) in new[] { (warm, 0), (cold, colder) }.Where(one => one.Item1 is not null))
            {
                var glued = plan!.Sessions.SelectMany(session => session.Work).Single(one => one.Task.Name == "glue").End;
                var set = Assert.Single(plan.Waits, one => one.After?.Name == "glue").End;
                Assert.All(Enumerable.Range(0, (set.Date - glued.Date).Days + 1).Select(glued.Date.PlusDays).Where(date => date != set.Date || set.TimeOfDay > LocalTime.Midnight), date => Assert.True(year[date.Month - 1] - by >= 10));
            }

            Assert.True(cold is null || warm.Finish.ToInstant() <= cold.Finish.ToInstant());

            Plan? PlanOf(int by) => PlanMaker.Plan(Glued(new(Temperature.FromCelsius(20), year.Index().ToDictionary(one => one.Index + 1, one => Temperature.FromCelsius(one.Item - by))), start).Request()) is PlanAnswer.Planned planned ? planned.Plan : null;
        }, iter: 40);

    private static AJob Glued(ShopNights? nights, LocalDate? start = null, double saw = 20) => new AJob { Start = start ?? AJob.Monday }
        .Worker("09:00-11:00")
        .Task("saw", saw, task => task with { IsSplittable = true })
        .Task("glue", 60, task => Setting(task, nights))
        .Task("plane", 30)
        .Then("saw", "glue")
        .Then("glue", "plane", new(Duration.FromHours(24), "it hardens") { Sets = Glue(nights) });

    private static ShopTask Setting(ShopTask task, ShopNights? nights) => task with { Sets = Glue(nights), SetsFor = Duration.FromHours(24) };

    private static Setting? Glue(ShopNights? nights) => nights is null ? null : new()
    {
        Name = "the glue",
        Nights = nights,
        Least = Temperature.FromCelsius(10),
        IsGlue = true,
        Others = [("cold glue", Temperature.FromCelsius(3))],
    };

    private static ShopNights Nights(double usual, params (int Month, double Celsius)[] months) =>
        new(Temperature.FromCelsius(usual), months.ToDictionary(one => one.Month, one => Temperature.FromCelsius(one.Celsius)));

    private static ZonedDateTime Start(Plan plan, string task) => plan.Sessions.SelectMany(session => session.Work).First(one => one.Task.Name == task).Start;
}
