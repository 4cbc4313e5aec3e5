using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log done</c>: the task at hand is finished, or half done, and its time is logged.</summary>
internal sealed class DoneLog(Screen screen, IClock clock)
{
    private readonly Option<string?> task = new("--task") { Description = "Which of several begun tasks: words of its name.", HelpName = "WORDS" };
    private readonly Option<bool> half = new("--half") { Description = "It is not finished: it goes on another day." };
    private readonly Option<double?> quantity = LogOptions.Quantity();
    private readonly Option<WorkTime?> took = LogOptions.Took("The time at the task, where the clock is not to be believed.");
    private readonly Option<LocalDate?> on = LogOptions.On();
    private readonly Option<string?> worker = LogOptions.Worker();
    private readonly Option<string?> note = LogOptions.Note();
    private readonly Option<string?> stopped = LogOptions.Stopped();
    private readonly Option<string?> setback = LogOptions.Setback();
    private readonly Option<bool> json = LogOptions.Json();
    private readonly Option<bool> quiet = LogOptions.Quiet();

    public Command Describe()
    {
        on.Description = "The date; unless given that of now, or, with --took, that on which it was begun.";
        var command = new Command("done", "End the task at hand and log its time: from start to now, less what was paused.\nExample: shopdays log done --note 'blade was dull' --setback dull-edge")
        {
            task, half, quantity, took, on, worker, note, stopped, setback, json, quiet,
        };
        command.SetAction(Answer);
        return command;
    }

    private int Answer(ParseResult parsed)
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

        var now = clock.GetCurrentInstant();
        if (parsed.GetValue(took) is null && !IsBelieved(work, now, shop))
        {
            return ExitCode.No;
        }

        if (parsed.GetValue(on) is { } date && shop.IsToCome(date, clock, screen))
        {
            return ExitCode.No;
        }

        if (new LoggableTask(work.Task, work.Work).Complaint(parsed.GetValue(quantity)) is { } complaint)
        {
            screen.Error.WriteLine(complaint);
            return ExitCode.No;
        }

        var entry = new TaskEnd
        {
            Finished = !parsed.GetValue(half),
            Quantity = parsed.GetValue(quantity),
            Took = parsed.GetValue(took),
            On = parsed.GetValue(on),
            Setback = LogOptions.SetbackOf(parsed.GetValue(setback)),
            Note = parsed.GetValue(note) ?? "",
            Stopped = parsed.GetValue(stopped),
        }.EntryOf(work, now, shop.Zone);
        if (log!.Begun.End(work, entry, now) is not { } number)
        {
            screen.Error.WriteLine("that task was ended by another program in the meantime; nothing was logged");
            return ExitCode.No;
        }

        Say(parsed, shop, entry with { Id = number });
        return ExitCode.Done;
    }

    private bool IsBelieved(BegunWork work, Instant now, LogShop shop)
    {
        var time = work.TookBy(now);
        if (TaskEnd.CanBe(time))
        {
            return true;
        }

        var why = time < TaskEnd.ShortestStretch ? "no time has gone by" : $"that would be {WorkTimeText.Write(time)}";
        screen.Wrapped(screen.Error, $"'{LogPhrases.Plain(work.Task)}' was begun {DateWords.Of(work.Began.InZone(shop.Zone))}, and {why}; say how long it took with: shopdays log done --took 50m, or forget it with: shopdays log drop");
        return false;
    }

    private void Say(ParseResult parsed, LogShop shop, LogEntry entry)
    {
        if (parsed.GetValue(quiet))
        {
            return;
        }

        if (parsed.GetValue(json))
        {
            JsonAnswer.Write(screen.Out, LogJson.Of(entry, shop.Zone, OddNow.Numbers(OddNow.Of(shop, clock, [entry]))));
        }
        else
        {
            screen.Wrapped(LogPhrases.Of(entry));
            OddNow.Say(screen, OddNow.Of(shop, clock, [entry]));
        }
    }
}
