using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using ShopDays.Cli.Files;
using ShopDays.Cli.Terminal;
using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands;

/// <summary>The options by which a layout, and all that follows from it, comes out one way and no other: seed, effort, and what is spared.</summary>
internal sealed class SearchOptions
{
    private const int MostSchedules = 10_000_000;

    private static readonly string[] Efforts = ["quick", "normal", "long"];

    private static readonly Dictionary<string, LayoutPreference> Preferences = new(StringComparer.Ordinal)
    {
        ["timber"] = LayoutPreference.Timber,
        ["sawing"] = LayoutPreference.Sawing,
    };

    private readonly Option<int> seed = new("--seed") { DefaultValueFactory = _ => 1, CustomParser = SeedOf, HelpName = "NUMBER" };
    private readonly Option<string> effort = new("--effort") { DefaultValueFactory = _ => "normal" };
    private readonly Option<string?> prefer = new("--prefer");
    private readonly Option<int> schedules = new("--schedules") { DefaultValueFactory = _ => Commands.Workings.UsualSchedules, CustomParser = SchedulesOf, HelpName = "NUMBER" };

    /// <summary>Makes the options, each with what its help says.</summary>
    /// <param name="ofSeed">Of the seed.</param>
    /// <param name="ofEffort">Of the effort.</param>
    /// <param name="ofPrefer">Of what is spared.</param>
    public SearchOptions(string ofSeed, string ofEffort, string ofPrefer)
    {
        (seed.Description, effort.Description, prefer.Description) = (ofSeed, ofEffort, ofPrefer);
        effort.AcceptOnlyFromAmong(Efforts);
        prefer.AcceptOnlyFromAmong([.. Preferences.Keys]);
    }

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(seed);
        command.Add(effort);
        command.Add(prefer);
    }

    /// <summary>Adds to a command that plans how long a plan is looked for.</summary>
    /// <param name="command">The command.</param>
    /// <param name="ofSchedules">What its help says of it.</param>
    public void AddSchedulesTo(Command command, string ofSchedules)
    {
        schedules.Description = ofSchedules;
        command.Add(schedules);
    }

    /// <summary>Schedules to look at, as typed, or as many as is usual.</summary>
    public int Schedules(ParseResult parsed) => parsed.GetValue(schedules) is > 0 and var typed ? typed : Commands.Workings.UsualSchedules;

    /// <summary>The workings of a job with the options as typed.</summary>
    public Workings Workings(ParseResult parsed, ShopAndJob read, LearnedRates rates, Progress progress) => new(
        read,
        parsed.GetValue(seed),
        (LayoutEffort)Array.IndexOf(Efforts, parsed.GetRequiredValue(effort)),
        parsed.GetValue(prefer) is { } preferred ? Preferences[preferred] : LayoutPreference.AsPriced,
        rates,
        progress)
    {
        Schedules = Schedules(parsed),
    };

    private static int SchedulesOf(ArgumentResult typed)
    {
        var text = typed.Tokens[0].Value;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is >= 1 and <= MostSchedules)
        {
            return number;
        }

        typed.AddError($"{QuotedText.Of(text)} is no number of schedules; expected a whole number between 1 and {MostSchedules.ToString("#,0", CultureInfo.InvariantCulture)}");
        return 0;
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
