using ShopDays.Plans.Bounds;
using ShopDays.Plans.Scheduling;
using ShopDays.Plans.Searching;
using ShopDays.Tests.Plans;
using Xunit;

namespace ShopDays.Tests.Outside;

/// <summary>
/// The shops of the seeds 1 to 70, each of which stands in one of the lists here. Left out of the comparison are those
/// whose optimum the solver does not prove within four seconds on two cores: nothing is known of how good their plans are
/// but what our own bound says.
/// </summary>
[Trait("Source", "L. Perron and F. Didier, OR-Tools CP-SAT 9.15, Google, 2025: an exact solver, proven optima of seeded small shops")]
public sealed class SmallWorkshopTests
{
    private const int Seeds = 70;

    private const int Schedules = 2000;

    /// <summary>Within reach and missed: with this many schedules the search ends a tenth late and with ten times as many it does not.</summary>
    private static readonly int[] FoundLater = [69];

    /// <summary>Not proven by the solver in time; 59 ends with our own bound and is the best all the same.</summary>
    private static readonly int[] Unproven = [2, 4, 12, 15, 23, 30, 31, 48, 56, 59, 64];

    /// <summary>
    /// Not to be done at all: work that has to follow in the session of other work needs clamps that the other keeps
    /// until the glue is hard.
    /// </summary>
    private static readonly int[] Impossible = [11, 18];

    /// <summary>
    /// A plan made here does each task as early as the order of work lets it, by whoever ends it first, and goes on with
    /// what it has begun for as long as it can. The best plans of these shops do not: 41 lays down dusty work of two people
    /// after an hour so that a coat is done before quiet hours begin, and the dusty work cannot come after the wet coat. 46
    /// lays down two long tasks early, each for others that may only follow later that day. 61 breaks off heavy work of two
    /// before its cap is used up, so that a long task fits whole into the rest of the helper's session. 10, where the day
    /// after a heavy one holds less, ends a twentieth late; what its best plan does otherwise was not looked into. Ten times
    /// as many schedules come to the same ends.
    /// </summary>
    private static readonly int[] LaidDownEarly = [10, 41, 46, 61];

    public static TheoryData<int> Proven { get; } = [.. Enumerable.Range(1, Seeds).Except([.. Unproven, .. Impossible, .. LaidDownEarly, .. FoundLater])];

    public static TheoryData<int> NotToBeDone { get; } = [.. Impossible];

    public static TheoryData<int> Others { get; } = [.. LaidDownEarly];

    public static TheoryData<int> Slow { get; } = [.. FoundLater];

    [Theory]
    [MemberData(nameof(Proven))]
    public void A_small_shop_is_planned_within_one_percent_of_the_proven_optimum(int seed)
    {
        var (finish, optimum, bound) = Solve(seed, Schedules);

        // 1 % of the time from the origin is what is asked of a search; nothing beats a proven optimum.
        Assert.InRange(finish, optimum, (int)(1.01 * optimum));
        Assert.InRange(bound, 0, optimum);
    }

    [Theory]
    [MemberData(nameof(Slow))]
    public void What_is_missed_at_first_is_found_with_ten_times_as_many_schedules(int seed)
    {
        var (finish, optimum, _) = Solve(seed, 10 * Schedules);
        Assert.InRange(finish, optimum, (int)(1.01 * optimum));
    }

    [Theory]
    [MemberData(nameof(Others))]
    public void Where_work_would_have_to_be_laid_down_half_done_neither_plan_nor_bound_is_on_the_wrong_side(int seed)
    {
        var (finish, optimum, bound) = Solve(seed, Schedules);
        Assert.InRange(finish, optimum, int.MaxValue);
        Assert.InRange(bound, 0, optimum);
    }

    [Theory]
    [MemberData(nameof(NotToBeDone))]
    public void Where_we_find_no_plan_the_solver_proves_that_there_is_none(int seed)
    {
        var problem = SmallWorkshop.Make(seed);
        Assert.Null(new ScheduleSearch(problem, 1).Find(Schedules));
        var (_, isImpossible) = WorkshopModel.BestFinish(problem, problem.Workers.Max(worker => worker.To[^1]), effort: 60);
        Assert.True(isImpossible);
    }

    private static (int Finish, int Optimum, int Bound) Solve(int seed, int schedules)
    {
        var problem = SmallWorkshop.Make(seed);
        var order = new ScheduleSearch(problem, 1).Find(schedules);
        Assert.NotNull(order);
        var schedule = new Schedule(problem.Tasks.Length);
        Assert.True(new ScheduleGenerator(problem).Generate(order, problem.Minutes.AsSpan(), schedule));
        Assert.Empty(ScheduleCheck.Faults(problem, schedule));

        // Far more than it needs.
        var (optimum, _) = WorkshopModel.BestFinish(problem, schedule.Finish, effort: 60);
        Assert.NotNull(optimum);
        return (schedule.Finish, optimum.Value, ScheduleBound.Of(problem).Minute);
    }
}
