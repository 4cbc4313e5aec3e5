using System.CommandLine;
using System.Diagnostics;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
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
        var files = new PlanFiles();
        var whole = new Option<bool>("--whole") { Description = "Plan the whole job from its start, though work of it is done or its start is past." };
        var promise = new Option<bool>("--promise") { Description = "Keep what this plan promises in the shop's log, for progress to compare with." };
        files.AddTo(command.Command);
        command.Command.Add(promise);
        command.Command.Add(whole);
        command.AnswerWith(asked =>
        {
            var findings = new Findings();
            var wanted = files.Look(asked.Parsed, asked.Workings.Read.LogName, findings);
            if (!findings.AreNone)
            {
                return SayNotWritten(asked, findings.InOrder());
            }

            var isWhole = asked.Parsed.GetValue(whole);
            return command.InOrder(asked, made => Answer(asked, WorkOf(asked.Workings, made, isWhole), wanted, asked.Parsed.GetValue(promise)));
        });
        return command.Command;
    }

    private WorkToPlan WorkOf(Workings workings, OrderOfWork.Made made, bool isWhole)
    {
        var now = clock.GetCurrentInstant();
        return isWhole ? new(workings, made, null) : new(workings, made, WorkToPlan.RestOf(workings, made, now)) { Known = now };
    }

    private int Answer(Question asked, WorkToPlan work, PlanFiles.Wanted files, bool isPromised)
    {
        switch (work.Answer)
        {
            case PlanAnswer.CannotBePlanned cannot when asked.AsJson:
                JsonAnswer.Write(asked.Screen.Out, PlanJson.Of(cannot));
                return ExitCode.No;

            case PlanAnswer.CannotBePlanned cannot:
                PlanPrint.Print(screen, asked.Workings.Read.Job.Name, cannot);
                return ExitCode.No;

            case PlanAnswer.Planned planned:
                return Tell(asked, work, work.Told(planned, clock.GetCurrentInstant()), files, isPromised);

            default:
                throw new UnreachableException();
        }
    }

    private int Tell(Question asked, WorkToPlan work, ToldPlan told, PlanFiles.Wanted files, bool isPromised)
    {
        var now = clock.GetCurrentInstant();
        if (told.Rest is { IsDone: true } && !asked.AsJson)
        {
            asked.Screen.Wrapped($"{asked.Workings.Read.Job.Name}: nothing is left to plan; every task is done. When, and what it took: shopdays progress {asked.Workings.Read.LogName}");
            LayoutPrint.PrintWritten(asked.Screen, files.SaveCalendar(told, OnRecord.Of(told.Read, now), now));
            return ExitCode.Done;
        }

        List<string> written = [.. files.Save(work.Paper(told, now), () => work.Price)];
        if (isPromised)
        {
            told = told with { Kept = Keep(asked.Workings, work.Promise(now, told.Answer)) };
        }

        written.AddRange(files.SaveCalendar(told, OnRecord.Of(told.Read, now), now));
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, PlanJson.Of(told));
            return ExitCode.Done;
        }

        PlanPrint.Print(asked.Screen, told);
        LayoutPrint.PrintWritten(asked.Screen, written);
        return ExitCode.Done;
    }

    private int SayNotWritten(Question asked, IReadOnlyList<Finding> findings)
    {
        foreach (var finding in findings)
        {
            screen.Located(screen.Error, finding.Place.ToString(), finding.Message);
        }

        screen.Error.WriteLine("nothing was planned or written");
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, RefusalJson.Of(findings));
        }

        return ExitCode.No;
    }

    private static KeptPromise Keep(Workings workings, Promise promise)
    {
        using var log = ShopLog.Open(workings.Read.Folder);
        return new(promise, log.Promises.Keep(promise));
    }
}
