using System.CommandLine;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;
using ShopDays.Measures;
using ShopDays.Work;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>The tasks of a job by name and mark: those of its plan, and those that the log has seen.</summary>
internal sealed class JobTasks
{
    private const int MostOffered = 6;
    private const int LongestMarkTyped = 4;

    private readonly IReadOnlyList<LoggableTask> planned;
    private readonly IReadOnlyList<LoggableTask> seen;
    private readonly TaskMarks marks;
    private readonly Lazy<TaskMarks> formerMarks;

    private JobTasks(string job, IReadOnlyList<LoggableTask> planned, IReadOnlyList<LoggableTask> seen)
    {
        (Job, this.planned, this.seen) = (job, planned, seen);
        marks = new(Names);
        formerMarks = new(() => new(Names.SelectMany(FormerNames.Of)));
    }

    /// <summary>The job, by the name of its file without ending.</summary>
    public string Job { get; }

    /// <summary>The tasks in the order of work.</summary>
    public IReadOnlyList<LoggableTask> All => planned.Count > 0 ? planned : seen;

    /// <summary>The workings of the job; null where it cannot be planned any more.</summary>
    public Workings? Workings { get; private init; }

    private IEnumerable<string> Names => All.Select(task => task.Name);

    /// <summary>
    /// Gathers them. Where the job cannot be planned any more, because its timber is gone or its file has mistakes, the log's
    /// own tasks must do, and that is said.
    /// </summary>
    /// <returns>The tasks; null where there are none, which has been complained of.</returns>
    /// <exception cref="FileTroubleException">There is no such job, and the log has none either.</exception>
    public static JobTasks? Of(string typed, LogShop shop, PlanOptions options, ParseResult parsed, Screen screen)
    {
        var job = Path.GetFileNameWithoutExtension(typed);
        var seen = Seen(shop, job);
        ShopAndJobReading reading;
        try
        {
            reading = ShopAndJob.Read(typed, Directory.GetCurrentDirectory());
        }
        catch (FileTroubleException) when (seen.Count > 0 && !shop.Folder.JobNames().Contains(job, StringComparer.Ordinal))
        {
            screen.Error.WriteLine($"{job} has no file any more; its tasks are those that the log has seen");
            return new(job, [], seen);
        }

        if (reading.Read is { } read && options.Workings(parsed, read, screen) is { Order: OrderOfWork.Made made } workings)
        {
            return new(job, [.. made.Graph.Tasks.Select(Loggable)], seen) { Workings = workings };
        }

        foreach (var finding in reading.Findings)
        {
            screen.Located(screen.Error, finding.Place.ToString(), finding.Message);
        }

        screen.Error.WriteLine(seen.Count > 0
            ? $"{job} cannot be planned as it is; its tasks are those that the log has seen"
            : $"{job} cannot be planned as it is, so its tasks are not known; nothing was logged");
        return seen.Count > 0 ? new(job, [], seen) : null;
    }

    /// <summary>The mark of a task.</summary>
    public string MarkOf(LoggableTask task) => marks.Of(task.Name);

    /// <summary>Whether a word is the mark of one task.</summary>
    public bool IsMark(string word) => marks.Find(word) is [_] || ByFormerMark(word) is not null;

    /// <summary>
    /// Finds a task by its name, its mark, or words that only it has; failing these, by the name or the mark that paper of an
    /// older version has for it.
    /// </summary>
    /// <param name="typed">What was typed.</param>
    /// <returns>The task; null, and the complaint, where none or several fit.</returns>
    public (LoggableTask? Task, string Complaint) Find(string typed)
    {
        var text = typed.Trim();
        if (All.Concat(seen).FirstOrDefault(task => string.Equals(task.Name, text, StringComparison.OrdinalIgnoreCase)) is { } named)
        {
            return (named, "");
        }

        if (marks.Find(text) is [var marked])
        {
            return (All.Single(task => task.Name == marked), "");
        }

        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        List<LoggableTask> fitting = [.. All.Where(task => words.Length > 0 && words.All(word => HasWord(task.Name, word)))];
        return fitting switch
        {
            [var only] => (only, ""),
            [] => (ByFormerName(text) ?? ByFormerMark(text)) is { } former ? (former, "") : (null, NoTask(text)),
            _ => (null, $"{QuotedText.Of(text)} fits {CountWords.Of(fitting.Count, "task")} of {Job}: {CountWords.Names([.. fitting.Select(Shown)], MostOffered)}; type the mark or more words"),
        };
    }

    private LoggableTask? ByFormerName(string text) =>
        All.FirstOrDefault(task => string.Equals(task.Name, FormerNames.Today(text), StringComparison.OrdinalIgnoreCase));

    private LoggableTask? ByFormerMark(string text) => formerMarks.Value.Find(text) is [var former] ? ByFormerName(former) : null;

    /// <summary>A task as it is logged: with the figures that its time is learned by.</summary>
    public static LoggableTask Loggable(ShopTask task) => new(task.Name, task.Timing is TaskTiming.ByOperation by ? LoggedWork.Of(by) : null);

    private static IReadOnlyList<LoggableTask> Seen(LogShop shop, string job)
    {
        using var log = ShopLog.OpenToRead(shop.Folder);
        return log is null ? [] :
        [
            .. log.Of(job)
                .GroupBy(entry => entry.Task, StringComparer.Ordinal)
                .Select(task => new LoggableTask(task.Key, task.LastOrDefault(entry => entry.Work is not null && entry.Finished)?.Work)),
        ];
    }

    /// <summary>Whether one of a name's words begins so: <c>rip</c> is no part of <c>strip</c>.</summary>
    private static bool HasWord(string name, string word)
    {
        for (var at = name.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = name.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if (at == 0 || !char.IsLetterOrDigit(name[at - 1]))
            {
                return true;
            }
        }

        return false;
    }

    private string NoTask(string text)
    {
        string?[] near = [NearestMark(text), ValueMistakes.Nearest(text, [.. Names])];
        var offered = string.Join(" or ", near.OfType<string>());
        return $"no task of {Job} is called {QuotedText.Of(text)}; type its mark, its name or words of it" + (offered.Length == 0 ? "" : "; nearest: " + offered);
    }

    /// <summary>A word of a few letters may be a mark with a slip in it: it is offered with the task's name, to see whether that was meant.</summary>
    private string? NearestMark(string text) => text.Length is < 2 or > LongestMarkTyped || !text.All(char.IsAsciiLetter)
        ? null
        : NearestName.To(text, All.Select(MarkOf)) is { } mark ? Shown(All.First(task => MarkOf(task) == mark)) : null;

    private string Shown(LoggableTask task) => $"{marks.Of(task.Name)} '{task.Name}'";
}
