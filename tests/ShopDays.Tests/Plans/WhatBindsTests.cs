using NodaTime;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>What a bound rests on: each limit with the date that would be reached without it, held against a shop that never had it.</summary>
public sealed class WhatBindsTests
{
    private static readonly Wait Overnight = new(Duration.FromHours(20), "it sets");

    [Fact]
    public void Waits_bind_where_work_follows_them_and_without_them_there_is_what_a_job_without_waits_has() =>
        Holds("waits", waits => Sticks(3).Then("stick 0", "stick 1", waits ? Overnight : null).Then("stick 1", "stick 2", waits ? Overnight : null));

    [Fact]
    public void A_cap_on_heavy_work_binds_with_what_there_would_be_without_a_cap() =>
        Holds("heavy work", cap => Sticks(4, task => task with { WorkClass = WorkClass.Heavy }, cap ? new() { HeavyPerDay = WorkTime.FromMinutes(30) } : new()));

    [Fact]
    public void Quiet_hours_bind_with_what_there_would_be_without_quiet() =>
        Holds("noisy work", quiet => Sticks(4, task => task with { IsNoisy = true }).Worker("08:00-12:00", quiet ? "09:00-07:00" : ""));

    [Fact]
    public void One_who_seldom_comes_binds_with_what_there_would_be_if_nobody_had_to_help() =>
        Holds("people together", together => Sticks(1, task => task with { Crew = together ? 2 : 1 }).Worker("08:00-12:00").Worker("08:00-12:00", name: "helper", days: IsoDayOfWeek.Friday));

    [Fact]
    public void A_date_binds_with_what_there_would_be_without_the_date() =>
        Holds("not-before date", date => Sticks(2, task => task.Id == 0 && date ? task with { NotBefore = new(2027, 3, 18) } : task));

    [Fact]
    public void An_appointment_binds_with_what_there_would_be_without_it() =>
        Holds("appointment", fixedFor => Sticks(2, task => task.Id == 1 && fixedFor ? task with { Appointed = new(new(2027, 3, 18), new(9, 30)) } : task));

    [Fact]
    public void Cold_nights_bind_with_what_there_would_be_in_a_shop_heated_through() =>
        Holds("cold nights", cold => Sticks(3).Then("stick 0", "stick 1", Glue(cold)).Then("stick 1", "stick 2", Glue(cold)));

    [Fact]
    public void Nights_that_change_nothing_do_not_bind_and_what_they_cost_is_told_beside_the_waits()
    {
        var mild = Sticks(2).Then("stick 0", "stick 1", Glue(cold: true, degrees: 20)).Plan().LowerBound;
        Assert.DoesNotContain(mild.Binds, one => one.Kind == "cold nights");
        var cold = Sticks(3).Then("stick 0", "stick 1", Glue(cold: true)).Then("stick 1", "stick 2", Glue(cold: true)).Plan().LowerBound;
        Assert.Contains("with nights as warm as the tables of glue and finish", cold.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_nights_cost_as_much_as_all_waits_together_they_are_the_reason()
    {
        // An hour of setting is no day; four days of it are.
        var bound = Sticks(2).Then("stick 0", "stick 1", Glue(cold: true, degrees: -40, minutes: 60)).Plan().LowerBound;
        Assert.Equal("cold nights", bound.Kind);
        Assert.StartsWith("cold nights: ", bound.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_several_that_bind_each_has_a_date_of_its_own_and_the_reason_names_them()
    {
        var bound = Both(date: true, cap: true);
        Assert.Equal(["not-before date", "heavy work"], bound.Binds.Select(one => one.Kind).OrderDescending());
        Assert.Equal(Both(date: false, cap: true).At, Of(bound, "not-before date").Without);
        Assert.Equal(Both(date: true, cap: false).At, Of(bound, "heavy work").Without);
        Assert.Contains("but for the date of \"stick 0\"", bound.Reason, StringComparison.Ordinal);
        Assert.Contains("no cap on heavy work", bound.Reason, StringComparison.Ordinal);

        static PlanBound Both(bool date, bool cap) => Sticks(
            4,
            task => task with { WorkClass = WorkClass.Heavy, NotBefore = date && task.Id == 0 ? new(2027, 3, 8) : null },
            cap ? new() { HeavyPerDay = WorkTime.FromMinutes(30) } : new()).Then("stick 0", "stick 1").Then("stick 0", "stick 2").Then("stick 0", "stick 3").Plan().LowerBound;
    }

    [Fact]
    public void What_is_there_but_in_nobodys_way_does_not_bind()
    {
        // An hour a day of heavy work, and half an hour of it in all; a wait after the first of two that have a day between them anyway.
        var job = new AJob { Limits = new() { HeavyPerDay = WorkTime.FromMinutes(60) } }
            .Task("rip", 30, task => task with { WorkClass = WorkClass.Heavy, IsNoisy = true })
            .Task("fit", 30, task => task with { NotBefore = new(2027, 3, 10) })
            .Then("rip", "fit", Overnight)
            .Worker("08:00-12:00", "20:00-06:00");

        Assert.Equal(["not-before date"], job.Plan().LowerBound.Binds.Select(one => one.Kind));
    }

    private static AJob Sticks(int count, Func<ShopTask, ShopTask>? with = null, ShopLimits? limits = null) =>
        Enumerable.Range(0, count).Aggregate(new AJob { Limits = limits ?? new() }, (job, number) => job.Task($"stick {number}", 30, with));

    /// <summary>A limit binds; it says the date of the shop without it; and in that shop it does not bind.</summary>
    private static void Holds(string kind, Func<bool, AJob> job)
    {
        var (with, without) = (job(true).Plan().LowerBound, job(false).Plan().LowerBound);

        Assert.True(without.At.ToInstant() < with.At.ToInstant());
        Assert.Equal(without.At, Of(with, kind).Without);
        Assert.DoesNotContain(without.Binds, one => one.Kind == kind);
        Assert.All(with.Binds, one => Assert.True(one.Without.ToInstant() < with.At.ToInstant()));
    }

    // A day of setting at 20 degrees C, twice as long ten degrees colder.
    private static Wait Glue(bool cold, double degrees = 5, double minutes = 1440) => new(Duration.FromMinutes(minutes), "it sets")
    {
        Sets = !cold ? null : new()
        {
            Name = "glue",
            Nights = new(Temperature.FromCelsius(degrees), new Dictionary<int, Temperature>()),
            Least = Temperature.FromCelsius(-50),
            IsGlue = true,
        },
    };

    private static BindingLimit Of(PlanBound bound, string kind) => Assert.Single(bound.Binds, one => one.Kind == kind);
}
