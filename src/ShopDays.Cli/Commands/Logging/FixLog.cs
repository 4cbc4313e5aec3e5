using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log fix</c>: something of an entry is put right; what was before stays in its trace.</summary>
internal sealed class FixLog(Screen screen, IClock clock)
{
    private readonly Argument<EntryId> number = LogOptions.Number();
    private readonly Option<WorkTime?> took = LogOptions.Took("The right time at the task.");
    private readonly Option<string?> task = new("--task") { Description = "The right task of its job: mark, name or words.", HelpName = "TASK" };
    private readonly Option<LocalDate?> on = LogOptions.On();
    private readonly Option<string?> finished = new("--finished") { Description = "Whether it finished the task: yes or no." };
    private readonly Option<double?> quantity = LogOptions.Quantity();
    private readonly Option<string?> worker = LogOptions.Worker();
    private readonly Option<string?> note = LogOptions.Note();
    private readonly Option<string?> stopped = LogOptions.Stopped("Where you stopped; an empty text takes it out.");
    private readonly Option<string?> setback = LogOptions.Setback();
    private readonly Option<string?> why = LogOptions.Why();
    private readonly Option<bool> json = LogOptions.Json();
    private readonly Option<bool> quiet = LogOptions.Quiet();
    private readonly PlanOptions plan = new(clock);

    public Command Describe()
    {
        finished.AcceptOnlyFromAmong("yes", "no");
        on.Description = "The right date.";
        worker.Description = "The right worker.";
        quantity.Description = "How much of the unit was done.";
        var command = new Command("fix", "Put something of an entry right; what it was before stays in its trace.\nExample: shopdays log fix 12 --took 50m --why 'read the pencil wrong'")
        {
            number, took, task, on, finished, quantity, worker, note, stopped, setback, why, json, quiet,
        };
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

        if (Who(parsed, shop, out var who) && (parsed.GetValue(on) is not { } date || !shop.IsToCome(date, clock, screen)))
        {
            using var log = ShopLog.OpenToRead(shop.Folder);
            var id = parsed.GetValue(number);
            return log?.Find(id) is { } entry ? Fix(parsed, shop, log, entry, who) : EntryAnswer.SayNone(screen, id);
        }

        return ExitCode.No;
    }

    private bool Who(ParseResult parsed, LogShop shop, out string? who)
    {
        who = parsed.GetValue(worker) is { } typed ? shop.WorkerOf(typed, screen) : null;
        return who is not null || parsed.GetValue(worker) is null;
    }

    private int Fix(ParseResult parsed, LogShop shop, ShopLog log, LogEntry entry, string? who)
    {
        if (entry.Job is null && parsed.GetValue(stopped) is { Length: > 0 })
        {
            screen.Error.WriteLine($"{entry.Id} is work timed by itself, which is not gone on with: --stopped cannot stand with it");
            return ExitCode.No;
        }

        if (Right(parsed, shop, entry) is not { } right)
        {
            return ExitCode.No;
        }

        // What is changed meanwhile by another program and not by this fix stays changed.
        var change = log.Change(
            entry.Id,
            now => now with
            {
                Task = right.Name,
                Work = right.Work,
                Finished = right.Finished,
                Took = parsed.GetValue(took) ?? now.Took,
                On = parsed.GetValue(on) is { } date && date != now.On.Date ? new(date) : now.On,
                Worker = who ?? now.Worker,
                Note = parsed.GetValue(note) ?? now.Note,
                Stopped = parsed.GetValue(stopped) ?? now.Stopped,
                Setback = parsed.GetValue(setback) is { } word ? LogOptions.SetbackOf(word) : now.Setback,
            },
            clock.GetCurrentInstant(),
            parsed.GetValue(why) ?? "");
        if (change is not { } made)
        {
            return EntryAnswer.SayNone(screen, entry.Id);
        }

        if (parsed.GetValue(json))
        {
            JsonAnswer.Write(screen.Out, LogJson.Changed(made.Before, made.After, shop.Zone));
        }
        else if (!parsed.GetValue(quiet))
        {
            EntryAnswer.SayChange(screen, made.Before, made.After);
        }

        return ExitCode.Done;
    }

    /// <summary>Task, work and finish as they should be; the job is asked only where they change.</summary>
    private (string Name, LoggedWork? Work, bool Finished)? Right(ParseResult parsed, LogShop shop, LogEntry entry)
    {
        var isFinished = parsed.GetValue(finished) is { } said ? said == "yes" : entry.Finished;
        var some = parsed.GetValue(quantity);
        var typed = parsed.GetValue(task);
        if (entry.Job is not { } job)
        {
            if (typed is not null || !isFinished)
            {
                screen.Error.WriteLine($"{entry.Id} is work timed by itself: it has no task of a job, and is whole; delete it and add it anew");
                return null;
            }

            return (entry.Task, some is { } number && entry.Work is { } own ? own with { Quantity = number } : entry.Work, true);
        }

        if (typed is null && isFinished == entry.Finished && (some is null || entry.Work is not null))
        {
            return (entry.Task, some is { } number ? entry.Work! with { Quantity = number } : entry.Work, isFinished);
        }

        if (JobTasks.Of(job, shop, plan, parsed, screen) is not { } tasks)
        {
            return null;
        }

        var (found, complaint) = tasks.Find(typed ?? entry.Task);
        if (found is null)
        {
            screen.Error.WriteLine(complaint);
            return null;
        }

        return (found.Name, found.Done(isFinished, some), isFinished);
    }
}
