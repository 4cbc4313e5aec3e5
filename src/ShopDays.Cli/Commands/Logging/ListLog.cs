using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log list</c>: the last entries, the newest at the bottom.</summary>
internal sealed class ListLog(Screen screen, IClock clock)
{
    private const int UsualPage = 20;

    private readonly Option<string?> job = new("--job") { Description = "Only the entries of this job.", HelpName = "JOB" };
    private readonly Option<int?> last = new("--last") { Description = "How many; 20 unless given.", HelpName = "NUMBER" };
    private readonly Option<bool> all = new("--all") { Description = "All of them." };
    private readonly Option<bool> json = LogOptions.Json();

    public Command Describe()
    {
        last.Validators.Add(typed =>
        {
            if (typed.GetValueOrDefault<int?>() is < 1)
            {
                typed.AddError("'--last' needs a number of 1 or more");
            }
        });
        var command = new Command("list", "Show what was logged, the newest last, and what is begun.\nExample: shopdays log list --job writing-table --last 40") { job, last, all, json };
        command.SetAction(Answer);
        return command;
    }

    private int Answer(ParseResult parsed)
    {
        if (LogShop.Read(screen) is not { } shop)
        {
            return ExitCode.No;
        }

        using var log = ShopLog.OpenToRead(shop.Folder);
        var of = parsed.GetValue(job) is { } typed ? Path.GetFileNameWithoutExtension(typed) : null;
        var entries = log?.Last(parsed.GetValue(all) ? int.MaxValue : parsed.GetValue(last) ?? UsualPage, of) ?? [];
        var count = log?.Count(of) ?? 0;
        if (of is not null && count == 0 && !shop.Folder.JobNames().Contains(of, StringComparer.Ordinal))
        {
            screen.Error.WriteLine(LogShop.Unknown("job", of, shop.Folder.JobNames(), "jobs"));
            return ExitCode.No;
        }

        if (parsed.GetValue(json))
        {
            JsonAnswer.Write(screen.Out, LogJson.Of(entries, shop.Zone, count));
            return ExitCode.Done;
        }

        LogPrint.Print(screen, entries, count);
        var now = clock.GetCurrentInstant();
        foreach (var work in log?.Begun.All().Where(one => of is null || one.Job == of) ?? [])
        {
            screen.Wrapped($"{(work.PausedAt is null ? "Begun" : "Paused")}: {LogPhrases.Plain($"{work.Job}, {work.Task}")}, {Measures.WorkTimeText.Write(work.TookBy(now))} so far, by {LogPhrases.Plain(work.Worker)}.", indent: 2);
        }

        return ExitCode.Done;
    }
}
