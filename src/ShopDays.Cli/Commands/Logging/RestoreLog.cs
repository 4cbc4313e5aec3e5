using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log restore</c>: a deleted entry is put back under its number.</summary>
internal sealed class RestoreLog(Screen screen, IClock clock)
{
    private readonly Argument<EntryId> number = LogOptions.Number();
    private readonly Option<bool> json = LogOptions.Json();
    private readonly Option<bool> quiet = LogOptions.Quiet();

    public Command Describe()
    {
        var command = new Command("restore", "Put a deleted entry back as it was, under its number.\nExample: shopdays log restore 12") { number, json, quiet };
        command.SetAction(parsed =>
        {
            if (LogShop.Read(screen) is not { } shop)
            {
                return ExitCode.No;
            }

            using var log = ShopLog.OpenToRead(shop.Folder);
            var id = parsed.GetValue(number);
            if (log?.Restore(id, clock.GetCurrentInstant(), "") is not { } entry)
            {
                screen.Error.WriteLine($"no entry {id} was deleted");
                return ExitCode.No;
            }

            if (parsed.GetValue(json))
            {
                JsonAnswer.Write(screen.Out, new { Restored = LogJson.Of(entry, shop.Zone) });
            }
            else if (!parsed.GetValue(quiet))
            {
                screen.Wrapped($"Back in the log: {LogPhrases.Of(entry)}.");
            }

            return ExitCode.Done;
        });
        return command;
    }
}
