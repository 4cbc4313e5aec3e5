using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans.Scheduling;
using ShopDays.Work;

namespace ShopDays.Plans;

/// <summary>Tasks that are never done for the sake of cold nights.</summary>
internal static class ColdNights
{
    /// <summary>A task after which something sets for which every month is too cold.</summary>
    public static IEnumerable<Unplannable> Always(ShopTask task)
    {
        if (task.Sets is { } setting && IsNeverWarmEnough(setting, out var warmest))
        {
            yield return new(
                UnplannableKind.TooCold,
                task,
                $"{setting.Name} needs {setting.Least} until it has set, and the nights never have more than {warmest} where it lies",
                NightRemarks.Cure(setting, warmest));
        }
    }

    /// <summary>Tasks that have no session in a year when it is warm enough, and would have one otherwise.</summary>
    public static IEnumerable<Unplannable> WithoutSession(WorkInHand work, ScheduleProblem problem)
    {
        for (var block = 0; block < problem.Blocks; block++)
        {
            if (problem.Members(block).ToArray().Any(member => work.Tasks[member].Task.Sets is { } sets && IsNeverWarmEnough(sets, out _)) || !Bar(problem, block))
            {
                continue;
            }

            var task = work.Tasks[problem.Members(block).ToArray().First(member => problem.Tasks[member].TooCold != CompiledNights.Nothing)].Task;
            var setting = task.Sets!;
            yield return new(
                UnplannableKind.TooCold,
                task,
                $"{setting.Name} needs {setting.Least} until it has set, and in the first year no session has room for it in a month with such nights",
                $"{NightRemarks.Cure(setting, setting.Nights.WhereWorkLies(setting.Nights.ColdestMonth))}; or a session in {MonthText.Runs([.. ShopNights.AllMonths.Except(setting.BarredMonths)])}");
        }
    }

    /// <summary>Whether a block finds no place in an empty shop for the sake of cold nights only.</summary>
    public static bool Bar(ScheduleProblem problem, int block) =>
        problem.Members(block).ToArray().Any(member => problem.Tasks[member].TooCold != CompiledNights.Nothing)
        && !CanBeDone(problem, block)
        && CanBeDone(Changed.Tasks(problem, static (task, _) => task with { TooCold = CompiledNights.Nothing }), block);

    private static bool IsNeverWarmEnough(Setting setting, out Temperature warmest) =>
        (warmest = setting.Nights.WhereWorkLies(setting.Nights.WarmestMonth)) < setting.Least;

    private static bool CanBeDone(ScheduleProblem problem, int block) =>
        new ScheduleGenerator(problem).Generate([block], problem.Minutes.AsSpan(), new(problem.Tasks.Length, problem.Orders.Length));
}
