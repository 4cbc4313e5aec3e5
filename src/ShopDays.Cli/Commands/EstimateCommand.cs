using System.CommandLine;
using System.Diagnostics;
using ShopDays.Cli.Json;
using ShopDays.Cli.Terminal;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays estimate</c>: how long the work takes, by operation and in all.</summary>
internal sealed class EstimateCommand(Screen screen) : IShopCommand
{
    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, "estimate", "Estimate the hands-on time, with honest ranges.", "shopdays estimate writing-table");
        command.AnswerWith(asked =>
        {
            var workings = asked.Workings;
            if (workings.Missing.Count > 0)
            {
                return command.SayMissing(asked);
            }

            switch (workings.Order)
            {
                case OrderOfWork.GoesRound round:
                    return command.SayGoesRound(asked, round.Names);
                case OrderOfWork.Made made:
                    var estimate = JobEstimate.Of(made.Graph, workings.DrawsOf(made.Graph));
                    if (asked.AsJson)
                    {
                        JsonAnswer.Write(asked.Screen.Out, EstimateJson.Of(estimate, made.Remarks));
                    }
                    else
                    {
                        EstimatePrint.Print(asked.Screen, workings.Read.Job.Name, estimate, workings.Read.Located.Format);
                        RemarkPrint.Print(asked.Screen, made.Remarks);
                    }

                    return ExitCode.Done;
                default:
                    throw new UnreachableException();
            }
        });
        return command.Command;
    }
}
