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
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays plan</c>: the work in the shop's sessions, the dates that can be promised, and the paper.</summary>
internal sealed class PlanCommand(Screen screen, IClock clock) : IShopCommand
{
    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, clock, "plan", "Plan the work in shop days, and print the paper to pin above the bench.", "shopdays plan writing-table --pdf plan.pdf");
        var pdf = WrittenTo.AFile("--pdf", "Write the plan to this PDF file.");
        var promise = new Option<bool>("--promise") { Description = "Keep what this plan promises in the shop's log, for progress to compare with." };
        command.Command.Add(pdf);
        command.Command.Add(promise);
        command.AnswerWith(asked =>
        {
            WrittenTo.SeeThatItHasAPlace(asked.Parsed.GetValue(pdf));
            return command.InOrder(asked, made => Answer(asked, made, asked.Parsed.GetValue(pdf), asked.Parsed.GetValue(promise)));
        });
        return command.Command;
    }

    private int Answer(Question asked, OrderOfWork.Made made, string? pdf, bool isPromised)
    {
        var job = asked.Workings.Read.Job;
        switch (asked.Workings.PlanOf(made.Graph))
        {
            case PlanAnswer.CannotBePlanned cannot when asked.AsJson:
                JsonAnswer.Write(asked.Screen.Out, PlanJson.Of(cannot));
                return ExitCode.No;

            case PlanAnswer.CannotBePlanned cannot:
                PlanPrint.Print(screen, job.Name, cannot);
                return ExitCode.No;

            case PlanAnswer.Planned planned:
                var today = clock.GetCurrentInstant().InZone(asked.Workings.Read.Shop.Place.Zone).Date;
                var told = new ToldPlan(asked.Workings.Read, asked.Workings.Layout, planned, Caution.For(made.Graph.Tasks, BuiltIn.Cautions), made.Remarks, new(made.Graph.Tasks.Select(task => task.Name)), asked.Workings.Rates.Behind, today)
                {
                    IsBegun = asked.Workings.Rates.EntriesOf(asked.Workings.Read).Count > 0,
                };
                if (pdf is not null)
                {
                    WholeFile.Save(pdf, PlanBook.Set(PaperOf(asked.Workings, made, told)));
                }

                if (isPromised)
                {
                    told = told with { Kept = Keep(asked.Workings, made.Graph, planned) };
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

            default:
                throw new UnreachableException();
        }
    }

    private KeptPromise Keep(Workings workings, TaskGraph graph, PlanAnswer.Planned planned)
    {
        var promise = Promise.Of(workings.Read.LogName, clock.GetCurrentInstant(), planned, graph, workings.Rates.Model, workings.DrawsOf(graph).OfAll());
        using var log = ShopLog.Open(workings.Read.Folder);
        return new(promise, log.Promises.Keep(promise));
    }

    private PlanPaper PaperOf(Workings workings, OrderOfWork.Made made, ToldPlan told) =>
        new()
        {
            Shop = workings.Read.Shop,
            Format = workings.Read.Located.Format,
            Job = workings.Read.Job,
            Layout = workings.Layout,
            Preference = workings.Preference,
            Graph = made.Graph,
            Estimate = JobEstimate.Of(made.Graph, workings.DrawsOf(made.Graph)),
            TaskTimes = workings.TaskTimesOf(made.Graph),
            Plan = told.Answer.Plan,
            Forecast = told.Answer.Forecast,
            Cautions = told.Cautions,
            Remarks = made.Remarks,
            UnusedHours = told.UnusedHours,
            Made = clock.GetCurrentInstant(),
        };
}
