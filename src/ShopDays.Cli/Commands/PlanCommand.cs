using System.CommandLine;
using System.Diagnostics;
using ShopDays.Cli.Json;
using ShopDays.Cli.Terminal;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays plan</c>: the work in the shop's sessions, the dates that can be promised, and the paper.</summary>
internal sealed class PlanCommand(Screen screen) : IShopCommand
{
    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, "plan", "Plan the work in shop days, and print the paper to pin above the bench.", "shopdays plan writing-table --pdf plan.pdf");
        var pdf = new Option<string?>("--pdf") { Description = "Write the plan to this PDF file.", HelpName = "FILE" };
        command.Command.Add(pdf);
        command.AnswerWith((parsed, workings, asJson) =>
        {
            if (workings.Missing.Count > 0)
            {
                return command.SayMissing(workings);
            }

            return workings.Order switch
            {
                OrderOfWork.GoesRound round => command.SayGoesRound(workings, round.Names),
                OrderOfWork.Made made => Answer(workings, made, asJson, parsed.GetValue(pdf)),
                _ => throw new UnreachableException(),
            };
        });
        return command.Command;
    }

    private int Answer(Workings workings, OrderOfWork.Made made, bool asJson, string? pdf)
    {
        switch (workings.PlanOf(made.Graph))
        {
            case PlanAnswer.CannotBePlanned cannot:
                if (asJson)
                {
                    JsonAnswer.Write(screen.Out, PlanJson.Of(cannot));
                }
                else
                {
                    PlanPrint.Print(screen, workings.Read.Job.Name, cannot);
                }

                return ExitCode.No;

            case PlanAnswer.Planned planned:
                var cautions = PlanCautions.For(made.Graph.Tasks);
                if (asJson)
                {
                    JsonAnswer.Write(screen.Out, PlanJson.Of(planned, workings.Read.Job.Due, cautions, made.Remarks));
                }
                else
                {
                    PlanPrint.Print(screen, workings.Read.Job.Name, workings.Read.Job.Due, planned, cautions, made.Remarks);
                }

                return ExitCode.Done;

            default:
                throw new UnreachableException();
        }
    }
}
