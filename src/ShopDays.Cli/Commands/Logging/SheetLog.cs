using System.CommandLine;
using System.Diagnostics;
using System.Text;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Plans;
using ShopDays.Work;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log sheet</c>: the tasks of a job as a CSV sheet to be filled in and imported.</summary>
internal sealed class SheetLog(Screen screen, IClock clock)
{
    private readonly Argument<string> job = new("JOB") { Description = "A job's file, or its name in the shop's jobs folder." };
    private readonly Argument<string?> to = new("FILE") { Description = "The CSV file to write; left out, it is printed.", Arity = ArgumentArity.ZeroOrOne };
    private readonly Option<LocalDate?> on = LogOptions.On();
    private readonly Option<bool> quiet = LogOptions.Quiet();
    private readonly PlanOptions plan = new(clock);

    public Command Describe()
    {
        on.Description = "Only the tasks of this day of the plan.";
        var command = new Command("sheet", "Write a sheet of a job's tasks to be filled in, with dates where --on gives one; what stays empty is left out when it is imported.\nExample: shopdays log sheet writing-table times.csv") { job, to, on, quiet };
        plan.AddTo(command);
        command.SetAction(Answer);
        return command;
    }

    private int Answer(ParseResult parsed)
    {
        if (LogShop.Read(screen) is not { } shop || JobTasks.Of(parsed.GetRequiredValue(job), shop, plan, parsed, screen) is not { } tasks)
        {
            return ExitCode.No;
        }

        var date = parsed.GetValue(on);
        if (TasksOn(date, tasks, parsed) is not { } wanted)
        {
            return ExitCode.No;
        }

        var text = new StringBuilder();
        LogCsv.AddRow(text, ["job", "date", "mark", "task", "start", "stop", "took", "done", "note"]);
        foreach (var task in wanted)
        {
            LogCsv.AddRow(text, [tasks.Job, date is { } day ? LogWords.Date.Format(day) : "", tasks.MarkOf(task), task.Name, "", "", "", "", ""]);
        }

        if (parsed.GetValue(to) is not { } file)
        {
            screen.Out.Write(text);
            return ExitCode.Done;
        }

        if (File.Exists(file))
        {
            throw FileTroubleException.Of(file, "is there already, perhaps filled in; give the sheet another name");
        }

        WholeFile.Save(file, Encoding.UTF8.GetBytes(text.ToString()));
        if (!parsed.GetValue(quiet))
        {
            screen.Out.WriteLine($"Written: {file}; fill it in, then: shopdays log import {file}");
        }

        return ExitCode.Done;
    }

    /// <summary>The tasks of a day of the plan, or all; null where there is none on that day, which is complained of.</summary>
    private IReadOnlyList<LoggableTask>? TasksOn(LocalDate? date, JobTasks tasks, ParseResult parsed)
    {
        if (date is not { } day)
        {
            return tasks.All;
        }

        if (tasks.Workings is not { Order: OrderOfWork.Made made } workings)
        {
            screen.Error.WriteLine($"{tasks.Job} cannot be planned as it is; leave --on out to have all of its tasks");
            return null;
        }

        switch (workings.PlanOf(made.Graph))
        {
            case PlanAnswer.Planned planned:
                var names = planned.Plan.Sessions.SelectMany(session => session.Work).Where(work => work.Start.Date == day).Select(work => work.Task.Name).ToHashSet(StringComparer.Ordinal);
                if (names.Count > 0)
                {
                    return [.. tasks.All.Where(task => names.Contains(task.Name))];
                }

                screen.Error.WriteLine($"the plan has no work on {LogWords.Date.Format(day)}");
                return null;
            case PlanAnswer.CannotBePlanned:
                screen.Error.WriteLine($"{tasks.Job} cannot be planned as it is; leave --on out to have all of its tasks");
                return null;
            default:
                throw new UnreachableException();
        }
    }
}
