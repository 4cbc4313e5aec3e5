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
                        Assert.Contains(Named(ways.Index().Aggregate(request, (shop, way) => shop.Cured(way.Item, way.Index == less ? 1 : 0))), named => named == about.Key || (about.Key is null && named != "nothing"));
                    }
                }
            },
            iter: 400,
            print: Told);

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
                Appointed = task.At % 3 == 0 ? new(AJob.Monday.PlusDays(task.At % 4), new(8 + (task.At % 11), 0)) : null,
            });
        }

        return job;
    }

    private static string Clock(int minute) => FormattableString.Invariant($"{minute / 60:00}:{minute % 60:00}");
}
