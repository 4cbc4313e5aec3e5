using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;
using ShopDays.Times.Trials;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays trial</c>: which short timed trials would narrow a job's estimate the most.</summary>
internal sealed class TrialCommand(Screen screen, IClock clock) : IShopCommand
{
    private const int Most = 5;

    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, clock, "trial", "Say which short timed trials on offcuts would narrow the estimate most, and how to do them.", "shopdays trial writing-table");
        command.AnswerWith(asked => command.InOrder(asked, made => Answer(asked, made.Graph)));
        return command.Command;
    }

    private static int Answer(Question asked, TaskGraph graph)
    {
        var workings = asked.Workings;
        var standing = JobStanding.Of(graph, workings.Rates.EntriesOf(workings.Read));
        List<ShopTask> left = [.. standing.Tasks.Where(one => one.State != TaskState.Done).Select(one => one.Task)];
        var told = new ToldTrials
        {
            Read = workings.Read,
            Advice = TrialAdvice.For(workings.Rates.Model, left, ToldTrial.CanBeTried, Most),
            IsBegun = left.Count < graph.Tasks.Count,
            Behind = workings.Rates.Behind,
        };
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, TrialJson.Of(told));
        }
        else
        {
            TrialPrint.Print(asked.Screen, told);
        }

        return ExitCode.Done;
    }
}
