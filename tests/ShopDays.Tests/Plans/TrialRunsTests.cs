using System.Collections.Concurrent;
using ShopDays.Plans;
using ShopDays.Plans.Scheduling;
using Xunit;

namespace ShopDays.Tests.Plans;

public sealed class TrialRunsTests
{
    private static readonly ScheduleProblem TwoTasks = new(
        [new CompiledTask { Minutes = 30 }, new CompiledTask { Minutes = 20 }],
        [new CompiledPrecedence(0, 1, 0)],
        [new CompiledCalendar([new(0, 480, 0), new(1440, 1920, 1)], [])],
        []);

    [Fact]
    public async Task A_caller_that_has_one_thread_takes_no_other_and_gets_what_all_cores_give()
    {
        var (everywhere, _) = Finishes();
        using var end = new CancellationTokenSource();
        var (alone, threads) = await Task.Factory.StartNew(Finishes, end.Token, TaskCreationOptions.None, new ConcurrentExclusiveSchedulerPair().ExclusiveScheduler);

        Assert.Equal(everywhere, alone);
        Assert.Single(threads);
    }

    private static (int[] Finishes, IEnumerable<int> Threads) Finishes()
    {
        var finishes = new int[2000];
        var threads = new ConcurrentDictionary<int, bool>();
        TrialRuns.Run(
            TwoTasks,
            [0, 1],
            [.. Enumerable.Range(0, finishes.Length)],
            (trial, minutes) =>
            {
                threads[Environment.CurrentManagedThreadId] = true;
                (minutes[0], minutes[1]) = (1 + (trial % 300), 10);
            },
            (trial, schedule, _) => finishes[trial] = schedule.Finish);
        return (finishes, threads.Keys);
    }
}
