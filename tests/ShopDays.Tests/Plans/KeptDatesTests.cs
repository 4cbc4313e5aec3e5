using CsCheck;
using NodaTime;
using ShopDays.Plans;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using Xunit;

namespace ShopDays.Tests.Plans;

/// <summary>Dates of several orders, and how many drawn courses of a plan keep them.</summary>
public sealed class KeptDatesTests
{
    private const int Trials = 20;

    /// <summary>Tasks of up to an hour and a half in a shop that is open for two hours a day; some dates are far too near.</summary>
    private static readonly Gen<(int[] Minutes, int[] Kinds, int Due, int Priority)> Job =
        Gen.Select(Gen.Int[5, 90].Array[1, 5], Gen.Int[0, 2].Array[5], Gen.Int[0, 6], Gen.Int[1, 4]);

    private static readonly Gen<PlanRequest> Request =
        from jobs in Job.Array[2, 3]
        from seed in Gen.Int[1, 1000]
        select new AJob().Request() with { Orders = [.. jobs.Select((job, place) => Order($"order {place}", job, seed + place))], Budget = 120, Seed = seed };

    [Fact]
    public void What_dates_lack_never_grows_when_it_is_looked_once_more_neither_by_chance_nor_as_expected()
    {
        var smaller = 0;
        Request.Sample(
            request =>
            {
                var first = AnyOrder(request);
                int[][] others = [RandomShops.Order(first.Problem, request.Seed + 1), RandomShops.Order(first.Problem, request.Seed + 2)];
                var second = first.WithRoomForDates(request, others);
                var (before, after) = (Missing(request, first), Missing(request, second));

                // A date that is broken even if all goes as expected counts as half of the chance that is asked for besides.
                Assert.True(after + (0.4 * Broken(second)) <= before + (0.4 * Broken(first)) + 1e-9, $"{before} became {after}");
                Assert.True(before > 1e-9 || ReferenceEquals(first, second));
                Interlocked.Add(ref smaller, after < before ? 1 : 0);
            },
            iter: 60);
        Assert.True(smaller > 0);
    }

    [Fact]
    public void What_is_missing_is_what_the_forecasts_lack_of_eight_courses_in_ten() =>
        Request.Sample(
            request =>
            {
                var found = AnyOrder(request);
                Assert.Equal(Missing(request, found), new KeptDates(request, new(request, found.Hours), found.Problem, found.Blocks!).Missing, 1e-9);
            },
            iter: 30);

    /// <summary>An order of work that nobody looked for.</summary>
    private static FoundOrder AnyOrder(PlanRequest request)
    {
        var hours = OpenHours.FirstYear(request);
        var problem = ProblemCompiler.Compile(request, hours);
        return new(hours, problem, RandomShops.Order(problem, request.Seed), 1);
    }

    /// <summary>Dates that are broken when all goes as expected, each times its order's weight.</summary>
    private static int Broken(FoundOrder found)
    {
        var schedule = new Schedule(found.Problem.Tasks.Length, found.Problem.Orders.Length);
        Assert.True(new ScheduleGenerator(found.Problem).Generate(found.Blocks, found.Problem.Minutes.AsSpan(), schedule));
        return found.Problem.Orders.Select((order, place) => schedule.Finishes[place] > order.DueBy ? order.Weight : 0).Sum();
    }

    /// <summary>Every course done again by itself, each order's finishes by its date counted.</summary>
    private static double Missing(PlanRequest request, FoundOrder found)
    {
        var schedule = new Schedule(found.Problem.Tasks.Length, found.Problem.Orders.Length);
        var kept = new int[request.Orders.Count];
        for (var trial = 0; trial < Trials; trial++)
        {
            int[] minutes = [.. request.Orders.SelectMany(order => order.Draws.Minutes[trial]).Select(drawn => (int)Math.Max(1, Math.Round(drawn, MidpointRounding.AwayFromZero)))];
            Assert.True(new ScheduleGenerator(found.Problem).Generate(found.Blocks, minutes, schedule, mayRunOver: true));
            for (var order = 0; order < kept.Length; order++)
            {
                kept[order] += request.Orders[order].Due is { } due && found.Hours.At(schedule.Finishes[order]).ToInstant() <= EndOf(due, request) ? 1 : 0;
            }
        }

        return request.Orders.Select((order, place) => order.Due is null ? 0 : order.Priority * Math.Max(0, 0.8 - ((double)kept[place] / Trials))).Sum();
    }

    private static Instant EndOf(LocalDate due, PlanRequest request) => due.PlusDays(1).AtStartOfDayInZone(request.Zone).ToInstant();

    private static OrderInHand Order(string name, (int[] Minutes, int[] Kinds, int Due, int Priority) job, int seed)
    {
        var made = new AJob { Due = job.Due == 6 ? null : AJob.Monday.PlusDays(job.Due) };
        foreach (var (at, minutes) in job.Minutes.Index())
        {
            made.Task($"{name} {at}", minutes, task => task with { IsSplittable = job.Kinds[at] == 2 });
            if (at > 0 && job.Kinds[at] > 0)
            {
                made.Then($"{name} {at - 1}", $"{name} {at}", job.Kinds[at] == 1 ? null : new(Duration.FromHours(10), "it dries"));
            }
        }

        var draws = new Random(seed);
        double[][] courses = [.. Enumerable.Range(0, Trials).Select(_ => job.Minutes.Select(minutes => minutes * (0.7 + (0.6 * draws.NextDouble()))).ToArray())];
        return made.Order(courses) with { Name = name, Priority = job.Priority };
    }
}
