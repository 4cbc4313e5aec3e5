using System.Diagnostics;
using System.Globalization;
using ShopDays.Cli.Files;
using ShopDays.Plans;
using ShopDays.Plans.Scheduling;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Benchmarks;

/// <summary>
/// How long 10,000 courses of a job take on all cores, by a model that has learned and by one that has not: their times drawn, and
/// what is spoiled, their schedules made, and both. The tasks are likely to take what the shop's problem says.
/// </summary>
internal static class ForecastTimes
{
    private const int Trials = 10_000;
    private const int Logged = 1_000;
    private const int Rounds = 11;

    public static void Print(ScheduleProblem problem, int[] order)
    {
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{Trials:N0} courses on {Environment.ProcessorCount} cores, drawing included, limit 0.15 s; seconds, the least of {Rounds} rounds"));
        var prior = RateModel.FromPrior(BuiltIn.Operations);
        Row("nothing logged", problem, order, prior);
        Row($"{Logged} times logged", problem, order, prior.Learn(LearnTimes.Log(Logged), LearnTimes.How));
    }

    private static void Row(string what, ScheduleProblem problem, int[] order, RateModel model)
    {
        var tasks = TasksOf(problem, model);
        var spoiling = new SpoilingDraws("a job", MadeAgain.Unknown, tasks, model, SpoilingChances.FromPrior(BuiltIn.Operations));
        int[] trials = [.. Enumerable.Range(0, Trials)];
        var finishes = new int[Trials];
        var (drawing, spoils, scheduling, together) = (double.MaxValue, double.MaxValue, double.MaxValue, double.MaxValue);
        for (var round = 0; round < Rounds; round++)
        {
            var watch = Stopwatch.StartNew();
            var draws = model.Draw(tasks, Trials, round);
            var courses = draws.Minutes;
            var drawn = watch.Elapsed.TotalSeconds;
            draws = spoiling.On(draws);
            var spoiled = watch.Elapsed.TotalSeconds - drawn;
            TrialRuns.Run(problem, order, trials, Write, (trial, schedule, _) => finishes[trial] = schedule.Finish);
            var all = watch.Elapsed.TotalSeconds;
            (drawing, spoils, scheduling, together) = (Math.Min(drawing, drawn), Math.Min(spoils, spoiled), Math.Min(scheduling, all - drawn - spoiled), Math.Min(together, all));

            void Write(int trial, int[] minutes)
            {
                var course = courses[trial];
                for (var task = 0; task < minutes.Length; task++)
                {
                    minutes[task] = ProblemCompiler.MinutesOf(course[task]);
                }

                foreach (var rework in draws.Reworks![trial])
                {
                    minutes[rework.DoneIn] += (int)(rework.Minutes + 0.5);
                }
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-20} {together:0.000}   drawing {drawing:0.000}, spoiled pieces {spoils:0.000}, schedules {scheduling:0.000}"));
    }

    /// <summary>Work at all operations of the catalogue in turn, as much of each as is likely to take the problem's minutes.</summary>
    private static List<ShopTask> TasksOf(ScheduleProblem problem, RateModel model)
    {
        var ways = BuiltIn.Operations.All.SelectMany(operation => operation.Methods.Select(method => (operation, method))).ToList();
        return [.. problem.Minutes.Select((minutes, id) => Sized(id, minutes))];

        ShopTask Sized(int id, int minutes)
        {
            var (operation, method) = ways[id % ways.Count];
            var one = new TaskTiming.ByOperation { Operation = operation, Method = method, Quantity = 1, Setups = 0 };
            return new()
            {
                Id = id,
                Name = FormattableString.Invariant($"{operation.Name} {id}"),
                Stage = Stage.Sawing,
                Timing = one with { Quantity = minutes / model.BeliefOf(one).Median.Minutes },
                WorkClass = method.WorkClass,
            };
        }
    }
}
