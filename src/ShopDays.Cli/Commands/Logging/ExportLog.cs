using System.CommandLine;
using System.Text;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log export</c>: everything in the log as CSV, from which an equal log can be made.</summary>
internal sealed class ExportLog(Screen screen)
{
    private readonly Argument<string?> to = new("FILE") { Description = "The CSV file to write; left out, it is printed.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<bool> quiet = LogOptions.Quiet();

    public Command Describe()
    {
        var command = new Command("export", "Write the whole log as CSV, with what was corrected and deleted; importing it gives an equal log.\nExample: shopdays log export log-2027.csv") { to, quiet };
        command.SetAction(parsed =>
        {
            using var log = ShopLog.OpenToRead(ShopFolder.MustFindFrom(Directory.GetCurrentDirectory()));
            var (entries, traces) = log?.Everything() ?? ([], []);
            var text = LogCsv.Write(entries, traces);
            if (parsed.GetValue(to) is not { } file)
            {
                screen.Out.Write(text);
                return ExitCode.Done;
            }

            WholeFile.Save(file, Encoding.UTF8.GetBytes(text));
            if (!parsed.GetValue(quiet))
            {
                screen.Out.WriteLine($"Written: {file}, {LogPhrases.Count(entries.Count)}");
            }

            return ExitCode.Done;
        });
        return command;
    }
}
