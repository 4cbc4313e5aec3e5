using NodaTime;
using ShopDays.Cli.Phrases;
using ShopDays.Logbook;
using ShopDays.Measures;

namespace ShopDays.Cli.Terminal;

/// <summary>The log for the eyes.</summary>
internal static class LogPrint
{
    /// <summary>Prints a page of entries, the newest last.</summary>
    /// <param name="screen">Where to.</param>
    /// <param name="entries">The page.</param>
    /// <param name="all">How many there are in all.</param>
    public static void Print(Screen screen, IReadOnlyList<LogEntry> entries, int all)
    {
        if (entries.Count == 0)
        {
            screen.Out.WriteLine("Nothing is logged.");
            return;
        }

        var several = entries.Any(entry => entry.Worker != entries[0].Worker);
        var table = Grid.WithHeads([">No.", "Date", "Task", ">Took", .. several ? ["Who"] : Array.Empty<string>(), "Remarks"]);
        foreach (var entry in entries)
        {
            table.AddTexts(
            [
                entry.Id.ToString(),
                DateWords.Plain(entry.On.Date).Replace(' ', '\u00a0'),
                LogPhrases.Whole(entry),
                WorkTimeText.Write(entry.Took),
                .. several ? [LogPhrases.Plain(entry.Worker)] : Array.Empty<string>(),
                string.Join("; ", new[] { entry.Finished ? "" : "half done", LogPhrases.Remarks(entry) }.Where(text => text.Length > 0)),
            ]);
        }

        screen.Console.Write(table);
        if (all > entries.Count)
        {
            screen.Out.WriteLine($"The last {CountWords.Number(entries.Count)} of {LogPhrases.Count(all)}; all of them: shopdays log list --all");
        }
    }

    /// <summary>Prints one entry with all its figures.</summary>
    public static void Print(Screen screen, LogEntry entry, DateTimeZone zone)
    {
        screen.Wrapped(LogPhrases.Of(entry));
        screen.Out.WriteLine($"  worker: {LogPhrases.Plain(entry.Worker)}");
        if (entry.On.Ended is { } ended)
        {
            screen.Out.WriteLine($"  ended: {DateWords.Of(ended.InZone(zone))}");
        }

        if (entry.Work is { } work)
        {
            screen.Hanging("  ", FormattableString.Invariant($"{LogPhrases.Plain(work.Operation)} by {LogPhrases.Plain(work.Method)}: {work.Quantity:0.###} {LogPhrases.Plain(work.Unit)}, set up {work.Setups:0.#} times"));
            foreach (var (property, value) in work.Covariates.OrderBy(one => one.Key))
            {
                screen.Out.WriteLine(FormattableString.Invariant($"  {Name(property)}: {value:0.####} {Unit(property)}"));
            }
        }

        if (LogPhrases.Remarks(entry) is { Length: > 0 } remarks)
        {
            screen.Hanging("  ", remarks);
        }
    }

    /// <summary>Prints what became of an entry.</summary>
    public static void Print(Screen screen, IReadOnlyList<(string What, Instant At, string Why, LogEntry Before)> trace, DateTimeZone zone)
    {
        foreach (var (what, at, why, before) in trace)
        {
            screen.Hanging("  ", $"{what} {DateWords.Of(at.InZone(zone))}{(why.Length == 0 ? "" : $" ({LogPhrases.Plain(why)})")}; before: {LogPhrases.Of(before)}{(LogPhrases.Remarks(before) is { Length: > 0 } remarks ? "; " + remarks : "")}");
        }
    }

    private static string Name(Work.Covariate property) => property switch
    {
        Work.Covariate.Thickness => "thickness",
        Work.Covariate.Hardness => "hardness",
        Work.Covariate.Depth => "depth",
        _ => "width",
    };

    private static string Unit(Work.Covariate property) => property == Work.Covariate.Hardness ? "lbf" : "in";
}
