using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Terminal;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays progress</c>: how far a job has come, and when it will be finished, against what was promised.</summary>
internal sealed class ProgressCommand(Screen screen, IClock clock) : IShopCommand
{
    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, clock, "progress", "Say how far a job has come by its log, and when it will be finished, against what was promised.", "shopdays progress writing-table").ThatPlans();
        command.AnswerWith(asked => command.InOrder(asked, made => Answer(asked, made.Graph)));
        return command.Command;
    }

    private int Answer(Question asked, TaskGraph graph)
    {
        var workings = asked.Workings;
        var now = clock.GetCurrentInstant();
        var job = new JobNow(workings, graph, OnRecord.Of(workings.Read, now), now);
        if (ProgressNow.Of(workings, graph, job, now) is not { } told)
        {
            return SayThatThereIsNoPlan(asked, (PlanAnswer.CannotBePlanned)workings.PlanOf(graph));
        }

        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, ProgressJson.Of(told));
        }
        else
        {
            ProgressPrint.Print(asked.Screen, told);
        }

        return job.Ahead is PlanAnswer.CannotBePlanned cannot ? SayWhatStandsAgainst(workings, cannot) : ExitCode.Done;
    }

    private int SayThatThereIsNoPlan(Question asked, PlanAnswer.CannotBePlanned cannot)
    {
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, PlanJson.Of(cannot));
        }

        return SayWhatStandsAgainst(asked.Workings, cannot);
    }

    private int SayWhatStandsAgainst(Workings workings, PlanAnswer.CannotBePlanned cannot)
    {
        PlanPrint.Print(screen, workings.Read.Job.Name, cannot);
        return ExitCode.No;
    }
}
