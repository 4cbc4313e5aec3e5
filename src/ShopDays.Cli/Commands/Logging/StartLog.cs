using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log start</c>: a task is begun now, or gone on with after a pause.</summary>
internal sealed class StartLog(Screen screen, IClock clock)
{
    private readonly Argument<string?> job = new("JOB") { Description = "The job; left out, the task that was paused last goes on.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Argument<string[]> task = new("TASK") { Description = "The task's mark, its name or words of it.", Arity = ArgumentArity.ZeroOrMore };
    private readonly Option<string?> worker = LogOptions.Worker();
    private readonly Option<bool> quiet = LogOptions.Quiet();
    private readonly PlanOptions plan = new(clock);

    public Command Describe()
    {
        var command = new Command("start", "Begin a task now, or go on with the one that was paused.\nExample: shopdays log start writing-table KDR") { job, task, worker, quiet };
        plan.AddTo(command);
        command.SetAction(Answer);
        return command;
    }

    private int Answer(ParseResult parsed)
    {
        if (LogShop.Read(screen) is not { } shop || shop.WorkerOf(parsed.GetValue(worker), screen) is not { } who)
        {
            return ExitCode.No;
        }

        return Meant(parsed, shop, who) is var (work, tasks) ? Begin(shop, work, tasks, parsed.GetValue(quiet) ? screen.Silent() : screen) : ExitCode.No;
    }

    private (BegunWork Work, JobTasks? Tasks)? Meant(ParseResult parsed, LogShop shop, string who)
    {
        var now = clock.GetCurrentInstant();
        if (parsed.GetValue(job) is not { } named)
        {
            using var log = ShopLog.OpenToRead(shop.Folder);
            var laidAside = log?.Begun.All().Where(one => one.Worker == who && one.PausedAt is not null).MaxBy(one => one.PausedAt);
            if (laidAside is null)
            {
                screen.Error.WriteLine("no task is paused; say which to begin, such as: shopdays log start writing-table KDR");
            }

            return laidAside is null ? null : (laidAside with { Began = now }, null);
        }

        var typed = string.Join(' ', parsed.GetValue(task) ?? []);
        if (typed.Length == 0)
        {
            screen.Error.WriteLine($"no task is named; expected a mark, a name or words of it, such as: shopdays log start {named} KDR");
            return null;
        }

        if (JobTasks.Of(named, shop, plan, parsed, screen) is not { } tasks)
        {
            return null;
        }

        var (found, complaint) = tasks.Find(typed);
        if (found is null)
        {
            screen.Error.WriteLine(complaint);
            return null;
        }

        return (new() { Worker = who, Job = tasks.Job, Task = found.Name, Work = found.Work, Began = now }, tasks);
    }

    private int Begin(LogShop shop, BegunWork meant, JobTasks? tasks, Screen answers)
    {
        using var log = ShopLog.Open(shop.Folder);
        var stopped = StoppedBefore(log, meant, shop);
        var (work, isBegun) = log.Begun.Start(meant);
        if (!isBegun)
        {
            screen.Wrapped(screen.Error, $"{LogPhrases.Plain(work.Worker)} is at '{LogPhrases.Plain(work.Task)}' since {DateWords.At(work.Began.InZone(shop.Zone))}; lay it aside with: shopdays log pause, or end it with: shopdays log done");
            return ExitCode.No;
        }

        var at = DateWords.At(meant.Began.InZone(shop.Zone));
        answers.Wrapped(work.Paused > WorkTime.Zero
            ? $"Going on at {at}: {LogPhrases.Plain(work.Task)}, {WorkTimeText.Write(work.TookBy(meant.Began))} so far."
            : $"Begun at {at}: {LogPhrases.Plain(work.Task)}.");
        if (stopped is not null)
        {
            answers.Wrapped(StoppedWords.Of(stopped));
        }

        if (tasks is not null && ReferenceEquals(answers, screen))
        {
            PassedOverNow.Say(answers, tasks, clock, [work.Task]);
        }

        return ExitCode.Done;
    }

    /// <summary>Where the task was stopped last, or else the job; null where nothing is noted that still holds.</summary>
    private static StoppedNote? StoppedBefore(ShopLog log, BegunWork meant, LogShop shop)
    {
        if (meant.Job is not { } job)
        {
            return null;
        }

        List<RunningWork> running = [.. log.Begun.All().Where(one => one.Job == job).Select(one => new RunningWork(one.Task, one.TookBy(meant.Began), WorkedOn.At(one.PausedAt ?? meant.Began, shop.Zone), one.Stopped))];
        var notes = StoppedNote.Of(log.Of(job), running);
        return notes.FirstOrDefault(note => note.Task == meant.Task) ?? (notes is [var newest, ..] ? newest : null);
    }
}
