using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
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
        var record = OnRecord.Of(workings.Read, now);
        var promises = record.Promises;
        var job = new JobNow(workings, graph, record, now);
        if ((promises.Count > 0 ? promises[0] : PromiseThen.Of(workings)) is not { } promise)
        {
            return SayThatThereIsNoPlan(asked, (PlanAnswer.CannotBePlanned)workings.PlanOf(graph));
        }

        var progress = job.Against(promise, workings);
        var told = new ToldProgress
        {
            Read = workings.Read,
            Progress = progress,
            Moved = PromisedThen.Moved(workings, graph, job, progress, promises.Count > 0),
            Stopped = job.Stopped,
            Ahead = job.Ahead as PlanAnswer.Planned,
            Marks = new(graph.Tasks.Select(task => task.Name)),
            IsRecorded = promises.Count > 0,
            Later = [.. promises.Skip(1)],
            Behind = workings.Rates.Behind,
            Now = now,
            SessionsGone = job.SessionsGone,
        };
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
