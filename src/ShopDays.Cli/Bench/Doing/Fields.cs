using System.Globalization;
using Microsoft.AspNetCore.Http;
using NodaTime;
using ShopDays.Cli.Commands.Logging;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Bench.Doing;

/// <summary>What a form says, each field within its limits; what is beyond them is complained of, all together.</summary>
internal sealed class Fields(IFormCollection form)
{
    private const string SheetTime = "took-";
    private const int LongestName = 400;
    private const int LongestNote = 500;
    private const int LongestReason = 200;

    private readonly List<string> complaints = [];

    /// <summary>What is wrong with what was read so far; null for nothing.</summary>
    public string? Complaint => complaints.Count == 0 ? null : string.Join(" ", complaints);

    /// <summary>What was typed, each with the name of its field, much of it cut short.</summary>
    public IReadOnlyList<string> Typed =>
    [
        .. from one in form
           let words = WordsOf(one.Key)
           where words.Length > 0
           from text in one.Value
           where !string.IsNullOrWhiteSpace(text)
           select $"{words}: {LogPhrases.Plain(text.Length > LongestNote ? text[..LongestNote] + "…" : text)}",
    ];

    /// <summary>A name: of a job, a task, a worker; empty where none is said.</summary>
    public string Name(string field) => Text(field, LongestName);

    /// <summary>A remark on one line.</summary>
    public string Note() => Text("note", LongestNote);

    /// <summary>Where it was stopped; null where nothing is said.</summary>
    public string? Stopped() => form.ContainsKey("stopped") ? Text("stopped", StoppedText.Longest) : null;

    /// <summary>A time at the task; null where none is said.</summary>
    /// <param name="field">The field.</param>
    /// <param name="of">Which task it is of, where a form has several; it is said with what is wrong.</param>
    public WorkTime? Took(string field = "took", string of = "")
    {
        // A form may have the field twice, folded away and not: the one that was filled in counts.
        var text = form[field].FirstOrDefault(one => !string.IsNullOrWhiteSpace(one))?.Trim() ?? "";
        if (text.Length == 0)
        {
            return null;
        }

        if (LogOptions.ReadTook(Shortened(text), out var took) is { } complaint)
        {
            complaints.Add(of.Length == 0 ? $"Time: {complaint}." : $"Time of {of}: {complaint}.");
            return null;
        }

        return took;
    }

    /// <summary>A reason; empty where none is said.</summary>
    public string Why() => Text("why", LongestReason);

    /// <summary>A date that is not to come; null where none is said.</summary>
    /// <param name="today">Today's.</param>
    public LocalDate? On(LocalDate today)
    {
        var text = Text("on", 40);
        if (text.Length == 0)
        {
            return null;
        }

        if (LogWords.Date.Parse(text) is not { Success: true, Value: var date } || date < EntryLimits.FirstDate || date > today)
        {
            complaints.Add($"{QuotedText.Of(text)} is no date that work was done on; expected one up to today, such as {LogWords.Date.Format(today)}.");
            return null;
        }

        return date;
    }

    /// <summary>Complains of something that only who reads the fields can know.</summary>
    public void Complain(string what) => complaints.Add(what);

    /// <summary>What went wrong.</summary>
    public Setback Setback()
    {
        var word = Text("setback", 40);
        if (word.Length == 0)
        {
            return Logbook.Setback.None;
        }

        if (LogWords.Setbacks.Any(one => one.Word == word))
        {
            return LogWords.ValueOf(LogWords.Setbacks, word);
        }

        complaints.Add($"{QuotedText.Of(word)} is no setback.");
        return Logbook.Setback.None;
    }

    /// <summary>A choice of some words; the first where none is said.</summary>
    public string Choice(string field, params IReadOnlyList<string> words)
    {
        var word = Text(field, 40);
        if (word.Length == 0)
        {
            return words[0];
        }

        if (words.Contains(word))
        {
            return word;
        }

        complaints.Add($"{QuotedText.Of(word)} cannot be chosen here.");
        return words[0];
    }

    /// <summary>The key by which a form that is sent twice is known; a new one where it has none.</summary>
    public Guid Once() => Guid.TryParseExact(form["once"], "D", out var key) ? key : Guid.NewGuid();

    /// <summary>What a field that is typed into is called; empty for others.</summary>
    private static string WordsOf(string field) => field switch
    {
        "took" => "time",
        "on" => "date",
        "note" => "note",
        "stopped" => "where you stopped",
        "why" => "why",
        _ when field.StartsWith(SheetTime, StringComparison.Ordinal) && field.Length < SheetTime.Length + 8 => $"time of {LogPhrases.Plain(field[SheetTime.Length..])}",
        _ => "",
    };

    private string Text(string field, int longest)
    {
        var text = form[field].ToString().Trim();
        if (text.Length > longest)
        {
            complaints.Add(string.Create(CultureInfo.InvariantCulture, $"What is typed for '{field}' has {text.Length} letters; expected {longest} at most."));
            return "";
        }

        // The same rule for every text: what drives a terminal or turns the direction of writing has no place in a log.
        if (text.Chunk(StoppedText.Longest).Select(part => StoppedText.Complaint(new(part))).FirstOrDefault(one => one is not null) is { } complaint)
        {
            complaints.Add($"{field}: {complaint}.");
            return "";
        }

        return text;
    }

    private static string Shortened(string text) => text.Length > 40 ? text[..40] : text;
}
