using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Terminal;
using ShopDays.Logbook;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log add</c>: times written down on paper, typed back.</summary>
internal sealed class AddLog(Screen screen, IClock clock)
{
    private const string FromInput = "-";

    private readonly Argument<string[]> words = new("WORDS")
    {
        Description = $"JOB, then TASK TIME as often as wanted; TASK is a mark, a name or words of it, and '{TypedStretch.Half}' behind a time means that it goes on another day. With --timed: OPERATION QUANTITY [UNIT] TIME. '{FromInput}' in the place of the rest reads such lines, one each, from standard input; a note stands behind a #.",
        Arity = ArgumentArity.OneOrMore,
    };

    private readonly Option<bool> timed = new("--timed") { Description = "Work timed by itself, outside any job." };
    private readonly Option<LocalDate?> on = LogOptions.On();
    private readonly Option<string?> worker = LogOptions.Worker();
    private readonly Option<string?> note = LogOptions.Note();
    private readonly Option<string?> stopped = LogOptions.Stopped("Where you stopped, and what comes first next time; it goes with the last of the tasks.");
    private readonly Option<string?> setback = LogOptions.Setback();
    private readonly Option<double?> quantity = LogOptions.Quantity();
    private readonly Option<bool> json = LogOptions.Json();
    private readonly Option<bool> quiet = LogOptions.Quiet();
    private readonly TimedStretch byItself = new();
    private readonly PlanOptions plan = new(clock);

    public Command Describe()
    {
        var command = new Command(
            "add",
            "Log times afterwards, as many as were pencilled on the sheet.\n"
            + "Example: shopdays log add writing-table KDR 45m LTS 1h10 half --on 2024-05-14\n"
            + "Example: shopdays log add --timed rip 12 ft 20m --thickness 2in --species 'white oak'") { words, timed, on, worker, note, stopped, setback, quantity };
        byItself.AddTo(command);
        plan.AddTo(command);
        command.Add(json);
        command.Add(quiet);
        command.SetAction(Answer);
        return command;
    }

    private int Answer(ParseResult parsed)
    {
        if (LogShop.Read(screen) is not { } shop)
        {
            return ExitCode.No;
        }

        var date = parsed.GetValue(on) ?? shop.Today(clock);
        if (shop.WorkerOf(parsed.GetValue(worker), screen) is not { } who || shop.IsToCome(date, clock, screen))
        {
            return ExitCode.No;
        }

        var typed = parsed.GetRequiredValue(words);
        var isTimed = parsed.GetValue(timed);
        var rest = isTimed ? typed : typed[1..];
        if (rest.Length == 0)
        {
            screen.Error.WriteLine($"there is no task behind the job; expected a task and a time, such as: shopdays log add {typed[0]} KDR 45m");
            return ExitCode.WrongUse;
        }

        if (!isTimed && byItself.Typed(parsed) is [_, ..] stray)
        {
            screen.Error.WriteLine($"{string.Join(", ", stray)} can only stand with --timed: a task of a job knows its own method, timber and sizes");
            return ExitCode.WrongUse;
        }

        if (isTimed && parsed.GetValue(quantity) is not null)
        {
            screen.Error.WriteLine("--quantity cannot stand with --timed, where it is one of the words: shopdays log add --timed rip 12 ft 20m");
            return ExitCode.WrongUse;
        }

        if (parsed.GetValue(stopped) is { Length: > 0 } && (isTimed || rest is [FromInput]))
        {
            screen.Error.WriteLine(isTimed ? "--stopped cannot stand with --timed: work outside a job is not gone on with" : $"--stopped cannot stand with '{FromInput}', whose lines may be of several days");
            return ExitCode.WrongUse;
        }

        var tasks = isTimed ? null : JobTasks.Of(typed[0], shop, plan, parsed, screen);
        if (!isTimed && tasks is null)
        {
            return ExitCode.No;
        }

        Func<IReadOnlyList<string>, (IReadOnlyList<LogEntry>, string?)> read = isTimed
            ? some => ReadTimed(some, shop, parsed)
            : some => ReadOfJob(some, tasks!, parsed.GetValue(quantity));
        LogEntry Settled(LogEntry entry, string said) => entry with
        {
            On = new(date),
            Worker = who,
            Note = said.Length > 0 ? said : parsed.GetValue(note) ?? "",
            Setback = LogOptions.SetbackOf(parsed.GetValue(setback)),
        };

        var answers = parsed.GetValue(quiet) ? screen.Silent() : screen;
        return rest is [FromInput]
            ? AddLines(shop, tasks, answers, parsed.GetValue(json), line => TypedStretch.Split(line) is var (some, said) && read(some) is var (entries, complaint)
                ? ([.. entries.Select(entry => Settled(entry, said))], complaint)
                : default)
            : AddAll(shop, tasks, answers, parsed.GetValue(json), read(rest), entry => Settled(entry, ""), parsed.GetValue(stopped) ?? "");
    }

    private (IReadOnlyList<LogEntry> Entries, string? Complaint) ReadTimed(IReadOnlyList<string> some, LogShop shop, ParseResult parsed) =>
        byItself.Read(some, shop, parsed) is var read && read.Work is { } work
            ? ([new() { Task = work.Operation, Work = work, Took = read.Took, On = default, Worker = "", Finished = true }], null)
            : ([], read.Complaint);

    private static (IReadOnlyList<LogEntry> Entries, string? Complaint) ReadOfJob(IReadOnlyList<string> some, JobTasks tasks, double? quantity)
    {
        var (stretches, complaint) = TypedStretch.Read(some, tasks.IsMark);
        if (complaint is null && quantity is not null && stretches.Count > 1)
        {
            complaint = "--quantity goes with one task; type the others without it";
        }

        var found = stretches.Select(stretch => (Stretch: stretch, Found: tasks.Find(stretch.Task))).ToList();
        string[] complaints = [.. complaint is null ? [] : new[] { complaint }, .. found.Where(one => one.Found.Task is null).Select(one => one.Found.Complaint), .. found.Select(one => one.Found.Task?.Complaint(quantity)).OfType<string>()];
        return complaints.Length > 0
            ? ([], string.Join('\n', complaints))
            : ([.. found.Select(one => one.Stretch.Entry(tasks.Job, one.Found.Task!, default, "", quantity))], null);
    }

    private int AddAll(LogShop shop, JobTasks? tasks, Screen answers, bool asJson, (IReadOnlyList<LogEntry> Entries, string? Complaint) read, Func<LogEntry, LogEntry> settle, string stopped)
    {
        if (read.Complaint is { } complaint)
        {
            screen.Error.WriteLine(complaint);
            screen.Error.WriteLine("nothing was logged");
            return ExitCode.No;
        }

        using var log = ShopLog.Open(shop.Folder);
        List<LogEntry> entries = [.. read.Entries.Select(settle)];
        entries[^1] = entries[^1] with { Stopped = stopped };
        var added = Add(log, entries, answers, asJson);
        SayDoubts(shop, tasks, answers, asJson, added);
        return ExitCode.Done;
    }

    /// <summary>Each line is logged by itself and said to be so as soon as it is safe; one with a mistake is told, and the rest goes on.</summary>
    private int AddLines(LogShop shop, JobTasks? tasks, Screen answers, bool asJson, Func<string, (IReadOnlyList<LogEntry> Entries, string? Complaint)> read)
    {
        using var log = ShopLog.Open(shop.Folder);
        var logged = new List<LogEntry>();
        var mistakes = 0;
        for (var line = 1; Console.In.ReadLine() is { } text; line++)
        {
            if (TypedStretch.Split(text).Words.Count == 0)
            {
                continue;
            }

            var (entries, complaint) = read(text);
            if (complaint is not null)
            {
                mistakes++;
                screen.Error.WriteLine(FormattableString.Invariant($"line {line}: {complaint}"));
                continue;
            }

            logged.AddRange(Add(log, entries, answers, asJson));
        }

        SayDoubts(shop, tasks, answers, asJson, logged);

        if (mistakes > 0)
        {
            screen.Error.WriteLine($"{CountWords.Of(mistakes, "line")} with mistakes; the others are logged");
        }

        return mistakes > 0 ? ExitCode.No : ExitCode.Done;
    }

    /// <summary>Logs entries, and says so when they are safe.</summary>
    /// <returns>The entries with their numbers.</returns>
    private List<LogEntry> Add(ShopLog log, IReadOnlyList<LogEntry> entries, Screen answers, bool asJson)
    {
        var numbers = log.AddAll(entries, clock.GetCurrentInstant());
        List<LogEntry> added = [.. entries.Zip(numbers, (entry, number) => entry with { Id = number })];
        if (!asJson)
        {
            added.ForEach(entry => answers.Out.WriteLine(LogPhrases.Of(entry)));
            answers.Out.Flush();
        }

        return added;
    }

    /// <summary>What is odd, or passed over, is said when all is logged, and safe; for another program what is odd is a part of the one answer.</summary>
    private void SayDoubts(LogShop shop, JobTasks? tasks, Screen answers, bool asJson, List<LogEntry> logged)
    {
        if (ReferenceEquals(answers, screen))
        {
            var odd = OddNow.Of(shop, clock, logged);
            if (asJson)
            {
                JsonAnswer.Write(answers.Out, LogJson.Logged(logged, shop.Zone, OddNow.Numbers(odd)));
            }
            else
            {
                if (tasks is not null)
                {
                    PassedOverNow.Say(answers, tasks, clock, logged.Select(entry => entry.Task));
                }

                OddNow.Say(answers, odd);
            }
        }
    }
}
