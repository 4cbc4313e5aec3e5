using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log delete</c>: an entry is taken out; its trace stays.</summary>
internal sealed class DeleteLog(Screen screen, IClock clock)
{
    private readonly Argument<EntryId> number = LogOptions.Number();
    private readonly Option<string?> why = LogOptions.Why();
    private readonly Option<bool> json = LogOptions.Json();
    private readonly Option<bool> quiet = LogOptions.Quiet();

    public Command Describe()
    {
        var command = new Command("delete", "Take an entry out of the log; its trace stays, and it can be put back.\nExample: shopdays log delete 12 --why 'logged twice'") { number, why, json, quiet };
        command.SetAction(parsed =>
        {
            if (LogShop.Read(screen) is not { } shop)
            {
                return ExitCode.No;
            }

            using var log = ShopLog.OpenToRead(shop.Folder);
            var id = parsed.GetValue(number);
            if (log?.Delete(id, clock.GetCurrentInstant(), parsed.GetValue(why) ?? "") is not { } entry)
            {
                return EntryAnswer.SayNone(screen, id);
            }

            if (parsed.GetValue(json))
            {
                JsonAnswer.Write(screen.Out, new { Deleted = LogJson.Of(entry, shop.Zone) });
            }
            else if (!parsed.GetValue(quiet))
            {
                screen.Wrapped($"Deleted: {LogPhrases.Of(entry)}. Put it back with: shopdays log restore {id}");
            }

            return ExitCode.Done;
        });
        return command;
    }
}
