using System.CommandLine;
using ShopDays.Cli.Json;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log show</c>: one entry with all its figures, and what it was before it was changed.</summary>
internal sealed class ShowLog(Screen screen)
{
    private readonly Argument<EntryId> number = LogOptions.Number();
    private readonly Option<bool> json = LogOptions.Json();

    public Command Describe()
    {
        var command = new Command("show", "Show an entry with all its figures, and what it was before it was changed.\nExample: shopdays log show 12") { number, json };
        command.SetAction(parsed =>
        {
            if (LogShop.Read(screen) is not { } shop)
            {
                return ExitCode.No;
            }

            using var log = ShopLog.OpenToRead(shop.Folder);
            var id = parsed.GetValue(number);
            var entry = log?.Find(id);
            List<(string, NodaTime.Instant, string, LogEntry)> trace = [.. log?.TraceOf(id).Select(line => (LogWords.WordOf(LogWords.Traces, line.What), line.At, line.Why, line.Before)) ?? []];
            if (entry is null && trace.Count == 0)
            {
                return EntryAnswer.SayNone(screen, id);
            }

            if (parsed.GetValue(json))
            {
                JsonAnswer.Write(screen.Out, LogJson.Of(entry, trace, shop.Zone));
                return ExitCode.Done;
            }

            if (entry is null)
            {
                screen.Out.WriteLine($"{id} is deleted; put it back with: shopdays log restore {id}");
            }
            else
            {
                LogPrint.Print(screen, entry, shop.Zone);
            }

            LogPrint.Print(screen, trace, shop.Zone);
            return ExitCode.Done;
        });
        return command;
    }
}
