using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log pause</c>: the task at hand is laid aside; what follows does not count.</summary>
internal sealed class PauseLog(Screen screen, IClock clock)
{
    private readonly Option<string?> worker = LogOptions.Worker();
    private readonly Option<string?> stopped = LogOptions.Stopped();
    private readonly Option<bool> quiet = LogOptions.Quiet();

    public Command Describe()
    {
        var command = new Command("pause", "Lay the task at hand aside; it goes on with: shopdays log start.\nExample: shopdays log pause --stopped 'two tenons sawn, gauge still set'") { worker, stopped, quiet };
        command.SetAction(parsed =>
        {
            if (LogShop.Read(screen) is not { } shop || shop.WorkerOf(parsed.GetValue(worker), screen) is not { } who)
            {
                return ExitCode.No;
            }

            using var known = ShopLog.OpenToRead(shop.Folder);
            var now = clock.GetCurrentInstant();
            if (known?.Begun.Pause(who, now, parsed.GetValue(stopped)) is not { } work)
            {
                screen.Error.WriteLine("no task is begun; begin one with: shopdays log start JOB TASK");
                return ExitCode.No;
            }

            (parsed.GetValue(quiet) ? screen.Silent() : screen).Wrapped($"Paused at {DateWords.At(now.InZone(shop.Zone))}: {LogPhrases.Plain(work.Task)}, {WorkTimeText.Write(work.TookBy(now))} so far.{(work.Stopped.Length == 0 ? "" : $" Where you stopped: {LogPhrases.Plain(work.Stopped)}")}");
            return ExitCode.Done;
        });
        return command;
    }
}
