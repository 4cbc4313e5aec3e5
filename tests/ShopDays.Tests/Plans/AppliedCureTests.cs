using CsCheck;
using NodaTime;
using ShopDays.Days;
using ShopDays.Measures;
using ShopDays.Plans;
using ShopDays.Tests.Days;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Cures are done by the figures in their words, in small shops of all kinds.</summary>
public sealed class AppliedCureTests
{
    private static readonly IsoDayOfWeek[] Days = [IsoDayOfWeek.Monday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Saturday];

    private static readonly Gen<(int From, int Length, IsoDayOfWeek Day)> Hours = Gen.Select(Gen.Int[96, 216], Gen.Int[3, 50], Gen.Int[0, 2], (from, length, day) => (5 * from, 5 * length, Days[day]));

    private static readonly Gen<AJob> Shop =
        from workers in Gen.Select(Hours.Array[1, 2], Gen.Int[0, 3]).Array[1, 2]
        from overhead in Gen.Select(Gen.Int[0, 15], Gen.Int[0, 20], Gen.Int[5, 60])
        from caps in Gen.Select(Gen.Int[20, 150], Gen.Int[20, 150], Gen.Bool)
        from clamps in Gen.Int[0, 6]
        from quiet in Gen.Int[0, 3]
        from tasks in Gen.Select(Gen.Int[5, 200], Gen.Int[1, 2], Gen.Bool, Gen.Bool, Gen.Int[0, 8], Gen.Int[0, 1440]).Array[1, 2]
        from appointments in Gen.Select(Gen.Int[0, 1300], Gen.Int[20, 120], Gen.Int[0, 5])
        select Made(workers, overhead, caps, clamps, quiet, tasks, appointments);

    [Fact]
    public void A_cure_that_is_done_makes_a_plan_or_leads_on_to_something_else_and_one_step_less_does_not() =>
        Shop.Sample(
            job =>
            {
                var request = job.Request() with { Budget = 20 };
                if (PlanMaker.Plan(request) is not PlanAnswer.CannotBePlanned { Reasons: var reasons })
                {
                    return;
                }

                foreach (var about in reasons.GroupBy(reason => reason.Task?.Name).Where(about => about.All(reason => Way(reason) is not null)))
                {
                    string[] ways = [.. about.Select(reason => Way(reason)!)];
                    Assert.DoesNotContain(about.Key, Named(ways.Aggregate(request, (shop, way) => shop.Cured(way))));

                    for (var less = 0; less < ways.Length; less++)
                    {
                        // Hours that several need are said by the one that needs most of them.
                        var shared = reasons.Where(reason => Way(reason) == ways[less]).Select(reason => reason.Task?.Name).ToHashSet();
                        Assert.Contains(Named(ways.Index().Aggregate(request, (shop, way) => shop.Cured(way.Item, way.Index == less ? 1 : 0))), named => shared.Contains(named) || (about.Key is null && named != "nothing"));
                    }
                }
            },
            iter: 400,
            print: Told);

    [Fact]
    public void Hours_that_two_share_are_said_from_door_to_door_and_are_long_enough_to_be_used()
    {
        // Ten minutes to open up and fifteen to sweep; the helper comes for nothing else, and for less than 45 minutes nobody opens up.
        static AJob Job(double minutes) => new AJob()
            .Worker("09:00-12:00", overhead: Shops.TenAndFifteen)
            .With(calendar => calendar with { LeastUseful = WorkTime.FromMinutes(45) })
            .Worker("13:00-15:00", name: "helper", overhead: Shops.TenAndFifteen, days: IsoDayOfWeek.Sunday)
            .With(calendar => calendar with { LeastUseful = WorkTime.FromMinutes(45) })
            .Task("carry", minutes, task => task with { Crew = 2 });
        Is(Job(30), UnplannableKind.NotTogetherLongEnough, "never there together", "maker and helper both there from 09:00 to 10:10 on Mondays, 1 h 10 min from door to door");
        Is(Job(60), UnplannableKind.NotTogetherLongEnough, "never there together", "maker and helper both there from 09:00 to 10:25 on Mondays, 1 h 25 min from door to door");
    }

    [Fact]
    public void The_day_is_named_on_which_the_least_more_would_do_and_that_need_not_be_the_longest()
    {
        // On Wednesday ten minutes of dinner are between two sessions.
        var job = new AJob().Worker("09:00-11:00", days: IsoDayOfWeek.Monday)
            .With(calendar => calendar with { Week = new(new Dictionary<IsoDayOfWeek, ShopHours> { [IsoDayOfWeek.Monday] = Shops.Hours("09:00-11:00"), [IsoDayOfWeek.Wednesday] = Shops.Hours("09:00-10:30", "10:40-12:00") }) })
            .Task("glue the carcass", 150);
        Is(job, UnplannableKind.NoSessionLongEnough, "the longest session has 2 h of work", "hours from 09:00 to 12:00 on Wednesdays, 10 min more");
    }

    [Fact]
    public void Hours_of_a_date_of_its_own_are_said_with_the_date()
    {
        var job = new AJob { Extra = Shops.Extra("2027-03-06", "09:00-11:00") }.Worker("09:00-10:00").Task("glue the carcass", 130);
        Is(job, UnplannableKind.NoSessionLongEnough, "the longest session has 2 h of work", "hours from 09:00 to 11:10 on 2027-03-06, 10 min more");
    }

    [Fact]
    public void Hours_that_end_when_the_clock_shows_a_time_twice_are_said_to_end_with_the_second()
    {
        // RFC 5545, 3.3.5: of a time that comes twice the first is meant; New York's clock goes back at 2:00 on 7 November 2027.
        var job = new AJob().Task("watch the kiln", 30, task => task with { Appointed = new(new(2027, 11, 7), new(1, 20)) });
        var cure = Assert.Single(job.Reasons()).Cure;
        Assert.Matches("^hours from 01:\\d\\d to (01:\\d\\d) on 2027-11-07, to the second \\1, after the clock is put back", cure);
        Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(job.Request().Cured(cure.Split(", or ")[0])));
    }

    [Fact]
    public void A_least_session_is_offered_only_where_it_is_enough()
    {
        // Eight minutes hold the planing; they do not hold the glue-up.
        static AJob Job(double minutes) => new AJob().Worker("09:00-09:08").Task("plane", minutes);
        Assert.EndsWith(", or a 'least-session' of 8 min in shop.yaml", Assert.Single(Job(8).Reasons()).Cure, StringComparison.Ordinal);
        Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(Job(8).Request().Cured("a 'least-session' of 8 min")));
        Assert.IsType<PlanAnswer.CannotBePlanned>(PlanMaker.Plan(Job(8).Request().Cured("a 'least-session' of 8 min", less: 1)));
        Is(Job(9), UnplannableKind.NoSessions, "('least-session' in shop.yaml)", "hours from 09:00 to 09:10 on Mondays, 2 min more");
        Is(Job(20), UnplannableKind.NoSessions, "('least-session' in shop.yaml)", "hours from 09:00 to 09:20 on Mondays, 12 min more");
    }

    [Fact]
    public void Only_what_the_maker_writes_can_be_broken_into_smaller_tasks()
    {
        static AJob Job(bool isOwn, params double[] minutes) => minutes.Index().Aggregate(new AJob(), (job, one) => job.Task($"task {one.Index}", one.Item, task => task with { IsOwn = isOwn }));
        Assert.DoesNotContain("smaller", Assert.Single(Job(false, 150).Reasons()).Cure, StringComparison.Ordinal);
        Assert.EndsWith(", or break the task into smaller ones of 2 h at most", Assert.Single(Job(true, 150).Reasons()).Cure, StringComparison.Ordinal);
        Job(true, 120, 30).Plan();
        Assert.Single(Job(true, 121, 29).Reasons());
    }

    [Fact]
    public void A_fixed_task_too_heavy_for_the_one_who_is_there_is_told_with_their_own_cap()
    {
        var job = new AJob { Limits = new() { Workers = 2, HeavyOf = new Dictionary<string, WorkTime> { ["niece"] = WorkTime.FromMinutes(30) } } }
            .Worker("09:00-11:00", days: IsoDayOfWeek.Monday)
            .Worker("09:00-11:00", name: "niece", days: IsoDayOfWeek.Tuesday)
            .Task("fetch the slab", 45, task => task with { WorkClass = WorkClass.Heavy, Appointed = new(new(2027, 3, 2), new(9, 30)) });
        Is(
            job,
            UnplannableKind.AppointmentNotKept,
            "is heavy, and 'heavy-per-day' of niece under 'workers' allows 30 min a day",
            "45 min as 'heavy-per-day' of niece under 'workers', or another time, such as 2027-03-08 09:00");
    }

    [Fact]
    public void An_appointment_across_a_fixed_task_is_named()
    {
        static AJob Job(LocalTime at) => new AJob()
            .Worker("09:00-12:00")
            .With(calendar => calendar with { Appointments = [new("timber delivered", new(2027, 3, 2), Shops.Span("10:00-10:30")), new("meter read", new(2027, 3, 2), Shops.Span("11:30-11:45"))] })
            .Task("client chooses", 60, task => task with { Appointed = new(new(2027, 3, 2), at) });
        Is(
            Job(new(9, 30)),
            UnplannableKind.AppointmentNotKept,
            "and the appointment 'timber delivered' on 2027-03-02, 10:00-10:30, takes that time",
            "move 'timber delivered' of 2027-03-02 to another date, or another time, such as 2027-03-02 10:30");
        Job(new(10, 30)).Plan();
        Assert.Single(Job(new(10, 29)).Reasons());
    }

    [Fact]
    public void Appointments_that_take_all_hours_are_named()
    {
        var job = new AJob { Extra = Shops.Extra("2027-03-06", "09:00-11:00") }
            .Worker("09:00-11:00", days: IsoDayOfWeek.Saturday)
            .With(calendar => calendar with { Week = new(new Dictionary<IsoDayOfWeek, ShopHours>()), Appointments = [new("fair", new(2027, 3, 6), Shops.Span("08:00-12:00"))] })
            .Task("plane", 60);
        Is(job, UnplannableKind.NoSessions, "appointments take all its hours", "move 'fair' of 2027-03-06 to another date");
    }

    /// <summary>It is said in these words, done as said it makes a plan, and with one step less it makes none.</summary>
    private static void Is(AJob job, UnplannableKind kind, string limit, string cure)
    {
        var reason = Assert.Single(job.Reasons());
        Assert.Equal((kind, cure), (reason.Kind, reason.Cure));
        Assert.Contains(limit, reason.Limit, StringComparison.Ordinal);
        var first = cure.Split(", or ")[0];
        Assert.IsType<PlanAnswer.Planned>(PlanMaker.Plan(job.Request().Cured(first)));
        Assert.IsType<PlanAnswer.CannotBePlanned>(PlanMaker.Plan(job.Request().Cured(first, less: 1)));
    }

    /// <summary>The first way out of what is in the way, unless it is to choose another time.</summary>
    private static string? Way(Unplannable reason) =>
        reason.Cure.Split(", or ")[0] is var first && (first.StartsWith("another time", StringComparison.Ordinal) || first.StartsWith("write down", StringComparison.Ordinal)
            || first.StartsWith("no day", StringComparison.Ordinal) || first.Contains("under 'workers': ", StringComparison.Ordinal) || first.StartsWith("agree", StringComparison.Ordinal))
            ? null
            : first;

    private static IEnumerable<string?> Named(PlanRequest request) => PlanMaker.Plan(request) is PlanAnswer.CannotBePlanned { Reasons: var reasons } ? reasons.Select(reason => reason.Task?.Name) : ["nothing"];

    private static string Told(AJob job)
    {
        var request = job.Request() with { Budget = 20 };
        var shop = string.Join("\n", request.Calendars.Select(calendar => $"{calendar.Worker}: {string.Join(", ", Days.Select(day => $"{day} {string.Join(" ", calendar.Week[day].Items)}"))}, quiet {string.Join(" ", calendar.Quiet.Hours)}, {calendar.Overhead.OpenUp}+{calendar.Overhead.SweepUp}, least {calendar.LeastUseful}, {string.Join(" ", calendar.Appointments)}"));
        var tasks = string.Join("\n", request.Orders[0].Graph.Tasks.Select(task => $"{task.Name} {request.Orders[0].Times[task.Id]} x {task.Crew} {task.WorkClass} noisy {task.IsNoisy} at {task.Appointed}"));
        var said = PlanMaker.Plan(request) is PlanAnswer.CannotBePlanned { Reasons: var reasons } ? string.Join("\n", reasons.Select(reason => $"{reason.Task?.Name}: {reason.Limit}; {reason.Cure}")) : "planned";
        return $"{shop}\ncaps {request.Limits.HeavyPerDay} {string.Join(" ", request.Limits.HeavyOf)}\n{tasks}\n{said}";
    }

    private static AJob Made(
        ((int From, int Length, IsoDayOfWeek Day)[] Hours, int)[] workers,
        (int OpenUp, int SweepUp, int Least) overhead,
        (int Shop, int Own, bool HasOwn) caps,
        int clamps,
        int quiet,
        (int Minutes, int Crew, bool Heavy, bool Noisy, int Clamps, int At)[] tasks,
        (int From, int Length, int Day) appointment)
    {
        var job = new AJob
        {
            Limits = new()
            {
                Workers = workers.Length,
                HeavyPerDay = WorkTime.FromMinutes(caps.Shop),
                HeavyOf = caps.HasOwn && workers.Length > 1 ? new Dictionary<string, WorkTime> { ["niece"] = WorkTime.FromMinutes(caps.Own) } : new(),
                Clamps = [new(Length.FromMillimetres(600m), clamps + 1)],
            },
        };
        foreach (var (own, number) in workers.Select((worker, number) => (worker.Hours, number)))
        {
            job.Worker("09:00-10:00", quiet == 0 ? "" : $"{17 + quiet}:00-08:00", number == 0 ? "maker" : "niece", new(WorkTime.FromMinutes(overhead.OpenUp), WorkTime.FromMinutes(overhead.SweepUp)))
                .With(calendar => calendar with
                {
                    LeastUseful = WorkTime.FromMinutes(overhead.Least),
                    Week = new(own.DistinctBy(hours => hours.Day).ToDictionary(hours => hours.Day, hours => Shops.Hours($"{Clock(hours.From)}-{Clock(Math.Min(1440, hours.From + hours.Length))}"))),
                    Appointments = appointment.Day < 3 ? [new("delivery", AJob.Monday.PlusDays(appointment.Day), DayHours.Read($"{Clock(appointment.From)}-{Clock(appointment.From + appointment.Length)}").Value)] : [],
                });
        }

        foreach (var (task, number) in tasks.Select((task, number) => (task, number)))
        {
            job.Task(number == 0 ? "saw" : "glue", task.Minutes, made => made with
            {
                Crew = Math.Min(task.Crew, workers.Length),
                WorkClass = task.Heavy ? WorkClass.Heavy : WorkClass.Light,
                IsNoisy = task.Noisy,
                Clamps = task.Clamps > 2 ? [new(Length.FromMillimetres(600m), task.Clamps)] : [],
                Appointed = number == 0 && task.At % 3 == 0 ? new(AJob.Monday.PlusDays(task.At % 4), new(8 + (task.At % 11), 0)) : null,
            });
        }

        return job;
    }

    private static string Clock(int minute) => FormattableString.Invariant($"{minute / 60:00}:{minute % 60:00}");
}
