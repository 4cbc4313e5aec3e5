using ShopDays.Cli.Store;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>A stretch of work as it is typed: the task, the time, and whether it is only half done.</summary>
/// <param name="Task">Mark, name or words of the name.</param>
/// <param name="Took">The time at the task.</param>
/// <param name="Finished">Whether the task was finished.</param>
internal sealed record TypedStretch(string Task, WorkTime Took, bool Finished)
{
    /// <summary>The word behind a time for a task that goes on another day.</summary>
    public const string Half = "half";

    /// <summary>
    /// Takes words apart: <c>KDR 45m</c>, <c>KDR 1h 30m half LTS 20m</c>, <c>rip A1 into 3 45m</c>. A number without a unit is
    /// a time, in minutes, only right behind a mark, so that numbers in names stay there.
    /// </summary>
    /// <param name="words">The words.</param>
    /// <param name="isMark">Whether a word is the mark of a task.</param>
    /// <returns>The stretches, or what is wrong.</returns>
    public static (IReadOnlyList<TypedStretch> Stretches, string? Complaint) Read(IReadOnlyList<string> words, Func<string, bool> isMark)
    {
        var stretches = new List<TypedStretch>();
        var task = new List<string>();
        var time = "";
        foreach (var word in words)
        {
            if (task.Count == 0 && stretches.Count > 0 && word == Half)
            {
                (stretches[^1], time) = (stretches[^1] with { Finished = false }, "");
            }
            else if (task.Count == 0 && time.Length > 0 && !TypedNumber.TryRead(word, out _) && LogOptions.ReadTook($"{time} {word}", out var longer) is null)
            {
                (stretches[^1], time) = (stretches[^1] with { Took = longer }, $"{time} {word}");
            }
            else if (task.Count > 0 && (!TypedNumber.TryRead(word, out _) || (task.Count == 1 && isMark(task[0]))) && LogOptions.ReadTook(word, out var took) is null)
            {
                stretches.Add(new(string.Join(' ', task), took, Finished: true));
                task.Clear();
                time = word;
            }
            else
            {
                task.Add(word);
            }
        }

        return task.Count == 0 && stretches.Count > 0 ? (stretches, null) : ([], NoTime(task.Count == 0 ? words : task));
    }

    private static string NoTime(IReadOnlyList<string> words)
    {
        // The last word was meant as a time where it begins like a number.
        var last = words[^1];
        if (words.Count > 1 && (char.IsAsciiDigit(last[0]) || (last.Length > 1 && last[0] is '-' or '.')))
        {
            return LogOptions.ReadTook(last, out _) ?? $"{QuotedText.Of(last)} has no unit; write {last}m for minutes (behind a task's mark the number alone will do)";
        }

        return $"{QuotedText.Of(string.Join(' ', words))} has no time behind it; expected a task and a time, such as KDR 45m, with {Half} behind it where it goes on another day";
    }

    /// <summary>Splits a line into words; what stands in double quotes is one word, what stands behind a lone # is a note.</summary>
    public static (IReadOnlyList<string> Words, string Note) Split(string line)
    {
        var words = new List<string>();
        var at = 0;
        while (at < line.Length)
        {
            if (char.IsWhiteSpace(line[at]))
            {
                at++;
            }
            else if (line[at] == '#')
            {
                return (words, line[(at + 1)..].Trim());
            }
            else if (line[at] == '"' && line.IndexOf('"', at + 1) is var close and > 0)
            {
                words.Add(line[(at + 1)..close]);
                at = close + 1;
            }
            else
            {
                var end = at;
                while (end < line.Length && !char.IsWhiteSpace(line[end]))
                {
                    end++;
                }

                words.Add(line[at..end]);
                at = end;
            }
        }

        return (words, "");
    }

    /// <summary>The entry that comes of it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="task">The task that was meant.</param>
    /// <param name="on">When.</param>
    /// <param name="worker">Who.</param>
    /// <param name="quantity">How much was done where it is half done; null where that is not said.</param>
    public LogEntry Entry(string job, LoggableTask task, WorkedOn on, string worker, double? quantity = null) => new()
    {
        Job = job,
        Task = task.Name,
        Work = task.Done(Finished, quantity),
        Took = Took,
        On = on,
        Worker = worker,
        Finished = Finished,
    };
}
