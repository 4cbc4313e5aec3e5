using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
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
        command.AnswerWith(asked => command.InOrder(asked, made => Answer(asked, made)));
        return command.Command;
    }

    private static int Answer(Question asked, OrderOfWork.Made made)
    {
        var workings = asked.Workings;
        var estimate = JobEstimate.Of(made.Graph, workings.DrawsOf(made.Graph), workings.Read.Shop.Place.Zone.AtStartOfDay(workings.Read.Job.Start));
        var behind = workings.Rates.Behind;
        var without = behind.Timed == 0 ? (TimeRange?)null : workings.PriorTimeOf(made.Graph);
        var faces = workings.FaceSavingsOf(made.Graph);
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, EstimateJson.Of(estimate, without, behind, faces, made.Remarks));
        }
        else
        {
            EstimatePrint.Print(asked.Screen, workings.Read.Job.Name, estimate, without, behind, faces, workings.Read.Located.Format);
            if (MovementWords.Most(Movement.Of(workings.Read.Job, workings.Layout, workings.Read.Waits), workings.Read.Job, workings.Read.Located.Format) is { } most)
            {
                asked.Screen.Wrapped(most);
            }

            RemarkPrint.Print(asked.Screen, made.Remarks);
        }

        return ExitCode.Done;
    }
}
