using ShopDays.Plans.Scheduling;

namespace ShopDays.Plans;

/// <summary>How long a session must be for tasks that belong into one.</summary>
internal static class LeastSession
{
    private const int Day = 24 * 60;
    private const int DaysTried = 4;

    /// <summary>The least minutes of work time with which they can be done, the waits and turns between them included, in an otherwise empty shop whose workers all keep the same hours.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="block">The tasks.</param>
    /// <returns>The minutes; null when a whole day would not do either.</returns>
    public static int? Of(ScheduleProblem problem, int block)
    {
        var (tooShort, enough) = (0, Day);
        if (!Fits(problem, block, enough))
        {
            return null;
        }

        while (enough - tooShort > 1)
        {
            var middle = (tooShort + enough) / 2;
            (tooShort, enough) = Fits(problem, block, middle) ? (tooShort, middle) : (middle, enough);
        }

        return enough;
    }

    private static bool Fits(ScheduleProblem problem, int block, int minutes)
    {
        var hours = new CompiledCalendar([.. Enumerable.Range(0, DaysTried).Select(day => new OpenStretch(day * Day, (day * Day) + minutes, day))], []);
        var other = new ScheduleProblem(
            [.. problem.Tasks.Select(task => task with { NotBefore = 0, StartBy = CompiledCalendar.Never, TooCold = CompiledNights.Nothing })],
            problem.Precedences,
            [.. problem.Workers.Select(_ => hours)],
            problem.Capacities,
            problem.HeavyPerDay,
            problem.Changeover,
            null,
            problem.Orders,
            problem.Clock,
            problem.Nights);
        return new ScheduleGenerator(other).Generate([block], other.Minutes.AsSpan(), new(other.Tasks.Length, other.Orders.Length));
    }
}
