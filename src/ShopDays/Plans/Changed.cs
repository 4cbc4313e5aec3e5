using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans;

/// <summary>A problem like another but for one thing: to find out whether that thing stands in the way.</summary>
internal static class Changed
{
    /// <summary>With other tasks; they keep their numbers.</summary>
    public static ScheduleProblem Tasks(ScheduleProblem problem, Func<CompiledTask, int, CompiledTask> change) =>
        Of(problem, [.. problem.Tasks.Select(change)], problem.Precedences, problem.HeavyPerDay);

    /// <summary>With caps on heavy work that are some minutes at least.</summary>
    public static ScheduleProblem HeavyPerDay(ScheduleProblem problem, int minutes) => HeavyPerDay(problem, problem.HeavyPerDay.AtLeast(minutes));

    /// <summary>With other caps on heavy work.</summary>
    public static ScheduleProblem HeavyPerDay(ScheduleProblem problem, HeavyCaps caps) => Of(problem, problem.Tasks, problem.Precedences, caps);

    /// <summary>With other hours of its workers, who are as many.</summary>
    public static ScheduleProblem Workers(ScheduleProblem problem, IReadOnlyList<CompiledCalendar> workers) =>
        new(problem.Tasks, problem.Precedences, workers, problem.Capacities, problem.HeavyPerDay, problem.Changeover, problem.Standing, problem.Orders, problem.Clock, problem.Nights);

    /// <summary>With other waits; what sets takes its time only where its wait stays as it is.</summary>
    public static ScheduleProblem Waits(ScheduleProblem problem, Func<CompiledPrecedence, int> lag) =>
        Of(problem, problem.Tasks, [.. problem.Precedences.Select(one => one with { Lag = lag(one), Sets = lag(one) == one.Lag && one.Lag > 0 ? one.Sets : CompiledNights.Nothing })], problem.HeavyPerDay);

    /// <summary>With nights in which nothing sets slower than the tables say; what sets sooner in warmth still does.</summary>
    public static ScheduleProblem WithoutCold(ScheduleProblem problem)
    {
        var mild = problem.Nights.WithoutCold();
        return new(
            [.. problem.Tasks.Select(task => task with { WaitAtEnd = Mild(task.WaitAtEnd, task.SetsAtEnd), Holds = [.. task.Holds.Select(hold => hold with { MinutesAfter = Mild(hold.MinutesAfter, hold.Sets) })] })],
            [.. problem.Precedences.Select(one => one with { Lag = Mild(one.Lag, one.Sets) })],
            problem.Workers,
            problem.Capacities,
            problem.HeavyPerDay,
            problem.Changeover,
            problem.Standing,
            problem.Orders,
            problem.Clock,
            mild);

        // A longer wait that goes beside it is no setting.
        int Mild(int minutes, int sets) => sets != CompiledNights.Nothing && minutes == problem.Nights.Settings[sets - 1].Least ? mild.Settings[sets - 1].Least : minutes;
    }

    /// <summary>With nothing but some tasks, which keep what comes between them and are numbered anew; all of one order.</summary>
    /// <param name="problem">The whole.</param>
    /// <param name="tasks">The numbers of the tasks.</param>
    /// <param name="change">What is otherwise about a task, by its number in the whole.</param>
    /// <param name="heavyPerDay">Their caps on heavy work.</param>
    /// <param name="standing">What the shop keeps already; null for an empty shop.</param>
    public static ScheduleProblem Only(ScheduleProblem problem, IReadOnlyList<int> tasks, Func<CompiledTask, int, CompiledTask> change, HeavyCaps heavyPerDay, ShopStanding? standing = null)
    {
        var number = tasks.Index().ToDictionary(one => one.Item, one => one.Index);
        return new(
            [.. tasks.Select(task => change(problem.Tasks[task], task) with { Order = 0 })],
            [.. problem.Precedences.Where(one => number.ContainsKey(one.Before) && number.ContainsKey(one.After)).Select(one => one with { Before = number[one.Before], After = number[one.After] })],
            problem.Workers,
            problem.Capacities,
            heavyPerDay,
            problem.Changeover,
            standing,
            clock: problem.Clock,
            nights: problem.Nights);
    }

    /// <summary>With other dates or weights of its orders.</summary>
    public static ScheduleProblem Orders(ScheduleProblem problem, Func<CompiledOrder, int, CompiledOrder> change) => new(
        problem.Tasks,
        problem.Precedences,
        problem.Workers,
        problem.Capacities,
        problem.HeavyPerDay,
        problem.Changeover,
        problem.Standing,
        [.. problem.Orders.Select(change)],
        problem.Clock,
        problem.Nights);

    private static ScheduleProblem Of(ScheduleProblem problem, IReadOnlyList<CompiledTask> tasks, IReadOnlyList<CompiledPrecedence> precedences, HeavyCaps heavyPerDay) =>
        new(tasks, precedences, problem.Workers, problem.Capacities, heavyPerDay, problem.Changeover, problem.Standing, problem.Orders, problem.Clock, problem.Nights);
}
