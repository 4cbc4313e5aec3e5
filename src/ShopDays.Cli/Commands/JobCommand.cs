using System.CommandLine;
using System.Diagnostics;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Json;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Work;

namespace ShopDays.Cli.Commands;

/// <summary>What the commands that compute something of a job have in common: the job, the seed, JSON, and reading the files.</summary>
internal sealed class JobCommand
{
    private readonly Argument<string> job = new("JOB") { Description = "A job's file, or its name in the shop's jobs folder." };
    private readonly Option<bool> json = new("--json") { Description = "Print the answer for other programs." };
    private readonly SearchOptions search = new(
        "Where draws and searches begin: the same seed gives the same answer.",
        "How hard to search for a layout.",
        "What to spare in the layout; as priced unless given.");

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
        Command = new Command(name, $"{description}\nExample: {example}") { job, json };
        search.AddTo(Command);
        Command.Add(priorOnly);
        Command.Add(quiet);
        Command.Add(verbose);
    }

    /// <summary>The same with an option for how long a plan is looked for.</summary>
    public JobCommand ThatPlans()
    {
        search.AddSchedulesTo(Command, "Schedules to look at for a plan.");
        return this;
    }

    /// <summary>The command, for more options and its action.</summary>
    public Command Command { get; }

    /// <summary>Reads the files and answers; their mistakes are printed instead when there are any.</summary>
    /// <param name="answer">What to do with what was asked for; gives the exit code.</param>
    public void AnswerWith(Func<Question, int> answer) => Command.SetAction(parsed =>
    {
        var reading = ShopAndJob.Read(parsed.GetRequiredValue(job), Directory.GetCurrentDirectory(), clock.GetCurrentInstant());
        if (reading.Read is not { } read)
        {
            foreach (var finding in reading.Findings)
            {
                screen.Located(screen.Error, finding.Place.ToString(), finding.Message);
            }

            screen.Error.WriteLine($"{CountWords.Of(reading.Findings.Count, "mistake")}; nothing was worked out or written");
            if (parsed.GetValue(json) && !parsed.GetValue(quiet))
            {
                JsonAnswer.Write(screen.Out, RefusalJson.Of(reading.Findings));
            }

            return ExitCode.No;
        }

        foreach (var doubt in reading.Doubts)
        {
            screen.Located(screen.Error, doubt.Place.ToString(), doubt.Message);
        }

        var rates = LearnedRates.Of(read.Folder, read.Shop, read.Operations, clock, parsed.GetValue(priorOnly));
        var progress = new Progress(screen.Error, parsed.GetValue(verbose), screen.ErrorIsTerminal, screen.Width, screen.Time);
        return answer(new(
            parsed,
            search.Workings(parsed, read, rates, progress),
            parsed.GetValue(json),
            parsed.GetValue(quiet) ? screen.Silent() : screen));
    });

    /// <summary>Answers with the order of work; why there is none is said instead.</summary>
    /// <param name="asked">What was asked for.</param>
    /// <param name="answer">What to do with the order of work; gives the exit code.</param>
    public int InOrder(Question asked, Func<OrderOfWork.Made, int> answer) => asked.Workings switch
    {
        { Missing.Count: > 0 } => SayMissing(asked),
        { Order: OrderOfWork.GoesRound round } => SayGoesRound(asked, round.Names),
        { Order: OrderOfWork.Made made } => answer(made),
        _ => throw new UnreachableException(),
    };

    /// <summary>Says on the error stream that the stock does not yield every part, and to other programs as their answer.</summary>
    private int SayMissing(Question asked)
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
    private int SayGoesRound(Question asked, IReadOnlyList<string> names)
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
}
