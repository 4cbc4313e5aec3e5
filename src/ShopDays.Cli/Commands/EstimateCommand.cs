using System.CommandLine;
using System.Diagnostics;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Terminal;
using ShopDays.Times;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays estimate</c>: how long the work takes, by operation and in all.</summary>
internal sealed class EstimateCommand(Screen screen, IClock clock) : IShopCommand
{
    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new JobCommand(screen, clock, "estimate", "Estimate the hands-on time, with honest ranges.", "shopdays estimate writing-table");
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
                    var behind = workings.Rates.Behind;
                    var without = behind.Timed == 0 ? (TimeRange?)null : workings.Rates.Prior.Draw(made.Graph.Tasks, Workings.Draws, workings.Seed).OfAll();
                    if (asked.AsJson)
                    {
                        JsonAnswer.Write(asked.Screen.Out, EstimateJson.Of(estimate, without, behind, made.Remarks));
                    }
                    else
                    {
                        EstimatePrint.Print(asked.Screen, workings.Read.Job.Name, estimate, without, behind, workings.Read.Located.Format);
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
