using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands;

/// <summary>What the commands that compute something of a job have in common: the job, the seed, JSON, and reading the files.</summary>
internal sealed class JobCommand
{
    private static readonly string[] Efforts = ["quick", "normal", "long"];

    private static readonly Dictionary<string, LayoutPreference> Preferences = new(StringComparer.Ordinal)
    {
        ["timber"] = LayoutPreference.Timber,
        ["sawing"] = LayoutPreference.Sawing,
    };

    private readonly Argument<string> job = new("JOB") { Description = "A job's file, or its name in the shop's jobs folder." };
    private readonly Option<bool> json = new("--json") { Description = "Print the answer for other programs." };
    private readonly Option<int> seed = new("--seed") { Description = "Where draws and searches begin: the same seed gives the same answer.", DefaultValueFactory = _ => 1, CustomParser = SeedOf, HelpName = "NUMBER" };
    private readonly Option<string> effort = new("--effort") { Description = "How hard to search for a layout.", DefaultValueFactory = _ => "normal" };
    private readonly Option<string?> prefer = new("--prefer") { Description = "What to spare in the layout; as priced unless given." };
    private readonly Option<bool> quiet = new("--quiet", "-q") { Description = "Print nothing but complaints." };
    private readonly Option<bool> verbose = new("--verbose", "-v") { Description = "Say on the error stream what is being worked out." };
    private readonly Option<bool> priorOnly = new("--prior-only") { Description = "Leave the log aside: times by the built-in rates alone." };
    private readonly Screen screen;
    private readonly IClock clock;

    /// <summary>Makes a command of that name.</summary>
    public JobCommand(Screen screen, IClock clock, string name, string description, string example)
    {
        this.screen = screen;
        this.clock = clock;
        effort.AcceptOnlyFromAmong(Efforts);
        prefer.AcceptOnlyFromAmong([.. Preferences.Keys]);
        Command = new Command(name, $"{description}\nExample: {example}") { job, json, seed, effort, prefer, priorOnly, quiet, verbose };
    }

    /// <summary>The command, for more options and its action.</summary>
    public Command Command { get; }

    /// <summary>Reads the files and answers; their mistakes are printed instead when there are any.</summary>
    /// <param name="answer">What to do with what was asked for; gives the exit code.</param>
    public void AnswerWith(Func<Question, int> answer) => Command.SetAction(parsed =>
    {
        var reading = ShopAndJob.Read(parsed.GetRequiredValue(job), Directory.GetCurrentDirectory());
        if (reading.Read is not { } read)
        {
            foreach (var finding in reading.Findings)
            {
                screen.Error.WriteLine(finding);
            }

            screen.Error.WriteLine($"{CountWords.Of(reading.Findings.Count, "mistake")}; nothing was worked out or written");
            if (parsed.GetValue(json) && !parsed.GetValue(quiet))
            {
                JsonAnswer.Write(screen.Out, RefusalJson.Of(reading.Findings));
            }

            return ExitCode.No;
        }

        var asked = (LayoutEffort)Array.IndexOf(Efforts, parsed.GetRequiredValue(effort));
        var preference = parsed.GetValue(prefer) is { } preferred ? Preferences[preferred] : LayoutPreference.AsPriced;
        var progress = new Progress(screen.Error, parsed.GetValue(verbose), screen.ErrorIsTerminal, screen.Width, screen.Time);
        return answer(new(
            parsed,
            new(read, parsed.GetValue(seed), asked, preference, LearnedRates.Of(read.Folder, read.Shop, read.Operations, clock, parsed.GetValue(priorOnly)), progress),
            parsed.GetValue(json),
            parsed.GetValue(quiet) ? screen.Silent() : screen));
    });

    /// <summary>Says on the error stream that the stock does not yield every part, and to other programs as their answer.</summary>
    /// <returns>The exit code for it.</returns>
    public int SayMissing(Question asked)
    {
        var workings = asked.Workings;
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, RefusalJson.Of(workings.Layout, workings.Read.Located.Format));
        }

        LayoutPrint.PrintMissing(screen.Error, screen, workings.Layout, workings.Read.Located.Format);
        screen.Wrapped(screen.Error, "Nothing further was worked out: a plan of parts that are not there would be no plan.");
        return ExitCode.No;
    }

    /// <summary>Says on the error stream that the order of work goes round, at the places of what is in it, and to other programs as their answer.</summary>
    /// <returns>The exit code for it.</returns>
    public int SayGoesRound(Question asked, IReadOnlyList<string> names)
    {
        if (asked.AsJson)
        {
            JsonAnswer.Write(asked.Screen.Out, RefusalJson.Of(names));
        }

        var places = asked.Workings.Read.Located.Places;
        foreach (var name in names.Distinct(StringComparer.Ordinal))
        {
            screen.Error.WriteLine($"{places.Of(name)}: the order of work goes round: {string.Join(", ", names)}; remove one of these 'before' or 'after' lines");
        }

        return ExitCode.No;
    }

    private static int SeedOf(ArgumentResult typed)
    {
        var text = typed.Tokens[0].Value;
        if (int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var seed))
        {
            return seed;
        }

        typed.AddError($"{QuotedText.Of(text)} is no seed; expected a whole number between -2147483648 and 2147483647");
        return 0;
    }
}
