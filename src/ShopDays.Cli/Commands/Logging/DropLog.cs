using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log drop</c>: a task was begun by mistake; nothing is logged of it.</summary>
internal sealed class DropLog(Screen screen, IClock clock)
{
    private readonly Option<string?> task = new("--task") { Description = "Which of several begun tasks: words of its name.", HelpName = "WORDS" };
    private readonly Option<string?> worker = LogOptions.Worker();
    private readonly Option<bool> quiet = LogOptions.Quiet();

    public Command Describe()
    {
        var command = new Command("drop", "Forget that a task was begun, and log nothing of it.\nExample: shopdays log drop") { task, worker, quiet };
        command.SetAction(parsed =>
        {
            if (LogShop.Read(screen) is not { } shop || shop.WorkerOf(parsed.GetValue(worker), screen) is not { } who)
            {
                return ExitCode.No;
            }

            using var log = ShopLog.OpenToRead(shop.Folder);
            if (BegunChoice.Of(log, who, parsed.GetValue(task), screen) is not { } work)
            {
                return ExitCode.No;
            }

            log!.Begun.End(work, null, clock.GetCurrentInstant());
            (parsed.GetValue(quiet) ? screen.Silent() : screen).Wrapped($"Dropped: {LogPhrases.Plain(work.Task)}.");
            return ExitCode.Done;
        });
        return command;
    }
}
