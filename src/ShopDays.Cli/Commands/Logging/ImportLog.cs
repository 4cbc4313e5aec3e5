using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log import</c>: a filled-in sheet, or an export of a log, is put into the log.</summary>
internal sealed class ImportLog(Screen screen, IClock clock)
{
    private readonly Argument<string> file = new("FILE")
    {
        Description = "A CSV file with a row of headings, in any order: job, mark or task, date, took (or start and stop), done, quantity, note, worker, setback; for work outside a job operation, method, quantity, unit, thickness, depth, width, species.",
    };

    private readonly Option<string?> job = new("--job") { Description = "The job of rows that name none.", HelpName = "JOB" };
    private readonly Option<LocalDate?> on = LogOptions.On();
    private readonly Option<bool> json = LogOptions.Json();
    private readonly Option<bool> quiet = LogOptions.Quiet();
    private readonly PlanOptions plan = new(clock);

    public Command Describe()
    {
        on.Description = "The date of rows without one.";
        var command = new Command("import", "Put a filled-in sheet or an export into the log: all of it, or nothing where it has mistakes; nothing twice.\nExample: shopdays log import times.csv") { file, job, on, json, quiet };
        plan.AddTo(command);
        command.SetAction(Answer);
        return command;
    }

    private int Answer(ParseResult parsed)
    {
        if (LogShop.Read(screen) is not { } shop)
        {
            return ExitCode.No;
        }

        var path = parsed.GetRequiredValue(file);
        var findings = new Findings();
        var jobs = new Dictionary<string, (JobTasks? Tasks, string Trouble)>(StringComparer.Ordinal);
        var (rows, empty) = LogSheet.Read(SourceFile.Read(path, path, LogCsv.List.LargestBytes), SettingsOf(shop, parsed, findings, jobs));
        if (!findings.AreNone)
        {
            var all = findings.InOrder();
            LogShop.SayMistakes(screen, all);
            if (parsed.GetValue(json) && !parsed.GetValue(quiet))
            {
                JsonAnswer.Write(screen.Out, RefusalJson.Of(all));
            }

            return ExitCode.No;
        }

        var imported = rows.Count == 0 ? new Imported([], 0, 0) : Put(shop, rows);
        if (parsed.GetValue(json) && !parsed.GetValue(quiet))
        {
            JsonAnswer.Write(screen.Out, new { Added = imported.Added.Select(entry => LogJson.Of(entry, shop.Zone)), imported.AlreadyThere, Empty = empty, Odd = OddNow.Numbers(OddNow.Of(shop, clock, imported.Added)) });
        }
        else if (!parsed.GetValue(quiet))
        {
            screen.Wrapped($"{LogPhrases.Count(imported.Added.Count)} logged{Range(imported)}{Rest(imported.AlreadyThere, "in the log already")}{Rest(empty, "not filled in")}.");
            foreach (var tasks in jobs.Values.Select(one => one.Tasks).OfType<JobTasks>().DistinctBy(one => one.Job))
            {
                PassedOverNow.Say(screen, tasks, clock, imported.Added.Where(entry => string.Equals(entry.Job, tasks.Job, StringComparison.Ordinal)).Select(entry => entry.Task));
            }

            OddNow.Say(screen, OddNow.Of(shop, clock, imported.Added));
        }

        return ExitCode.Done;
    }

    private static Imported Put(LogShop shop, IReadOnlyList<SheetRow> rows)
    {
        using var log = ShopLog.Open(shop.Folder);
        return LogImport.Into(log, rows);
    }

    private static string Range(Imported imported) => imported.Added switch
    {
        [] => "",
        [var only] => $", number {only.Id}",
        [var first, .., var last] when last.Id.Number - first.Id.Number == imported.Added.Count - 1 => $", numbers {first.Id} to {last.Id}",
        _ => "",
    };

    private static string Rest(int count, string what) => count == 0 ? "" : $"; {CountWords.Of(count, "row")} {what}";

    private SheetSettings SettingsOf(LogShop shop, ParseResult parsed, Findings findings, Dictionary<string, (JobTasks? Tasks, string Trouble)> jobs) =>
        new()
        {
            Reading = new() { Findings = findings, Units = shop.Shop.Units, Format = shop.Shop.Format },
            Zone = shop.Zone,
            Today = shop.Today(clock),
            Workers = [.. shop.Shop.Workers.Select(worker => worker.Name)],
            Operations = shop.Operations,
            Species = BuiltIn.Species,
            Methods = shop.Shop.Methods,
            Job = parsed.GetValue(job),
            Date = parsed.GetValue(on),
            FindTask = (named, typed) =>
            {
                if (!jobs.TryGetValue(named, out var known))
                {
                    known = TasksOf(named, shop, parsed);
                    jobs.Add(named, known);
                }

                var (found, complaint) = known.Tasks?.Find(typed) ?? (null, known.Trouble);
                return (known.Tasks?.Job ?? named, found, complaint);
            },
        };

    private (JobTasks? Tasks, string Trouble) TasksOf(string job, LogShop shop, ParseResult parsed)
    {
        try
        {
            return (JobTasks.Of(job, shop, plan, parsed, screen), $"the tasks of {QuotedText.Of(job)} are not known");
        }
        catch (FileTroubleException trouble)
        {
            // A job that is not there is a mistake in the sheet, told at its place with the others.
            return (null, trouble.Message);
        }
    }
}
