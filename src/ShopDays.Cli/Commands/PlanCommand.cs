using System.CommandLine;
using System.Diagnostics;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
using ShopDays.Cli.Paper;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays plan</c>: the work in the shop's sessions, the dates that can be promised, and the paper.</summary>
internal sealed class PlanCommand(Screen screen, IClock clock) : IShopCommand
{
    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, clock, "plan", "Plan the work in shop days, and print the paper to pin above the bench.", "shopdays plan writing-table --pdf plan.pdf").ThatPlans();
        var pdf = WrittenTo.AFile("--pdf", "Write the plan to this PDF file.");
        var whole = new Option<bool>("--whole") { Description = "Plan the whole job from its start, though work of it is done or its start is past." };
        var promise = new Option<bool>("--promise") { Description = "Keep what this plan promises in the shop's log, for progress to compare with." };
        command.Command.Add(pdf);
        command.Command.Add(promise);
        command.Command.Add(whole);
        command.AnswerWith(asked =>
        {
            WrittenTo.SeeThatItHasAPlace(asked.Parsed.GetValue(pdf));
            return command.InOrder(asked, made => Answer(new(asked, made, RestOf(asked, made, asked.Parsed.GetValue(whole))) { Known = asked.Parsed.GetValue(whole) ? null : clock.GetCurrentInstant() }, asked.Parsed.GetValue(pdf), asked.Parsed.GetValue(promise)));
        });
        return command.Command;
    }

    private int Answer(WorkToPlan work, string? pdf, bool isPromised)
    {
        var asked = work.Asked;
        switch (work.Answer)
        {
            case PlanAnswer.CannotBePlanned cannot when asked.AsJson:
                JsonAnswer.Write(asked.Screen.Out, PlanJson.Of(cannot));
                return ExitCode.No;

            case PlanAnswer.CannotBePlanned cannot:
                PlanPrint.Print(screen, asked.Workings.Read.Job.Name, cannot);
                return ExitCode.No;

            case PlanAnswer.Planned planned:
                return Tell(work, ToldOf(work, planned), pdf, isPromised);

            default:
                throw new UnreachableException();
        }
    }

    private int Tell(WorkToPlan work, ToldPlan told, string? pdf, bool isPromised)
    {
        var asked = work.Asked;
        if (told.Rest is { IsDone: true } && !asked.AsJson)
        {
            asked.Screen.Wrapped($"{asked.Workings.Read.Job.Name}: nothing is left to plan; every task is done. When, and what it took: shopdays progress {asked.Workings.Read.LogName}");
            return ExitCode.Done;
        }

        if (pdf is not null)
        {
            WholeFile.Save(pdf, PlanBook.Set(work.Paper(told, clock.GetCurrentInstant())));
        }

        if (isPromised)
        {
            told = told with { Kept = Keep(asked.Workings, work.Promise(clock.GetCurrentInstant(), told.Answer)) };
        }

        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, PlanJson.Of(told));
            return ExitCode.Done;
        }

        PlanPrint.Print(asked.Screen, told);
        if (pdf is not null)
        {
            asked.Screen.Out.WriteLine();
            asked.Screen.Out.WriteLine($"Written: {pdf}");
        }

        return ExitCode.Done;
    }

    /// <summary>The job as it stands where its rest is to be planned: when work of it is logged or goes on, or its start is past.</summary>
    private JobNow? RestOf(Question asked, OrderOfWork.Made made, bool isWhole)
    {
        var (read, now) = (asked.Workings.Read, clock.GetCurrentInstant());
        var record = OnRecord.Of(read, now);
        var isLate = read.Job.Start < now.InZone(read.Shop.Place.Zone).Date;
        return !isWhole && (isLate || record.Running.Count > 0 || asked.Workings.Rates.EntriesOf(read).Count > 0)
            ? new JobNow(asked.Workings, made.Graph, record, now)
            : null;
    }

    private ToldPlan ToldOf(WorkToPlan work, PlanAnswer.Planned planned)
    {
        var (workings, graph) = (work.Asked.Workings, work.Made.Graph);
        var today = clock.GetCurrentInstant().InZone(workings.Read.Shop.Place.Zone).Date;
        return new(workings.Read, workings.Layout, planned, Caution.For(work.Graph.Tasks, BuiltIn.Cautions), work.Made.Remarks, new(graph.Tasks.Select(task => task.Name)), workings.Rates.Behind, today)
        {
            Budget = workings.Schedules,
            IsBegun = workings.Rates.EntriesOf(workings.Read).Count > 0,
            Rest = work.Rest?.Told(workings, graph),
        };
    }

    private static KeptPromise Keep(Workings workings, Promise promise)
    {
        using var log = ShopLog.Open(workings.Read.Folder);
        return new(promise, log.Promises.Keep(promise));
    }
}
