using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
using ShopDays.Cli.Terminal;

namespace ShopDays.Cli.Commands;

/// <summary><c>shopdays check</c>: every mistake in the files of a job, or what they hold.</summary>
internal sealed class CheckCommand(Screen screen, IClock clock) : IShopCommand
{
    private readonly Argument<string> job = new("JOB") { Description = "A job's file, or its name in the shop's jobs folder." };
    private readonly Option<bool> json = new("--json") { Description = "Print the answer for other programs." };
    private readonly Option<bool> quiet = new("--quiet", "-q") { Description = "Print nothing but mistakes, and those on the error stream." };

    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new Command("check", "Look for mistakes in the files of a shop and a job, all of them at once.\nExample: shopdays check writing-table") { job, json, quiet };
        command.SetAction(parsed =>
        {
            var reading = ShopAndJob.Read(parsed.GetRequiredValue(job), Directory.GetCurrentDirectory(), clock.GetCurrentInstant());
            var foreseen = reading.Read is { } read && !parsed.GetValue(quiet) ? Foreseen.In(read) : [];
            if (parsed.GetValue(quiet))
            {
                foreach (var finding in reading.Findings)
                {
                    screen.Located(screen.Error, finding.Place.ToString(), finding.Message);
                }
            }
            else if (parsed.GetValue(json))
            {
                JsonAnswer.Write(screen.Out, CheckJson.Of(reading, foreseen, clock.GetCurrentInstant()));
            }
            else
            {
                CheckPrint.Print(screen, reading, foreseen, clock.GetCurrentInstant());
            }

            return reading.Read is null ? ExitCode.No : ExitCode.Done;
        });
        return command;
    }
}
