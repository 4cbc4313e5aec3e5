using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Terminal;
using ShopDays.Layouts;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>How the plan was made whose tasks are logged: a task is called after the boards that the layout chose.</summary>
internal sealed class PlanOptions
{
    private static readonly string[] Efforts = ["quick", "normal", "long"];

    private readonly Option<int> seed = new("--seed") { Description = "The seed of the plan, where it was made with one.", DefaultValueFactory = _ => 1, CustomParser = SeedOf, HelpName = "NUMBER" };
    private readonly Option<string> effort = new("--effort") { Description = "The effort of the plan's layout, where it was made with one.", DefaultValueFactory = _ => "normal" };
    private readonly Option<string?> prefer = new("--prefer") { Description = "What the plan's layout spares, where it was made so." };

    private readonly IClock clock;

    /// <summary>Makes the options.</summary>
    /// <param name="clock">Tells how old the entries are that rates are learned from.</param>
    public PlanOptions(IClock clock)
    {
        this.clock = clock;
        effort.AcceptOnlyFromAmong(Efforts);
        prefer.AcceptOnlyFromAmong("timber", "sawing");
    }

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        command.Add(seed);
        command.Add(effort);
        command.Add(prefer);
    }

    /// <summary>The workings of a job, as its plan has them.</summary>
    public Workings Workings(ParseResult parsed, ShopAndJob read, Screen screen) => new(
        read,
        parsed.GetValue(seed),
        (LayoutEffort)Array.IndexOf(Efforts, parsed.GetRequiredValue(effort)),
        parsed.GetValue(prefer) switch { "timber" => LayoutPreference.Timber, "sawing" => LayoutPreference.Sawing, _ => LayoutPreference.AsPriced },
        LearnedRates.Of(read.Folder, read.Shop, read.Operations, clock),
        new(screen.Error, false, screen.ErrorIsTerminal, screen.Width, screen.Time));

    private static int SeedOf(ArgumentResult typed)
    {
        if (int.TryParse(typed.Tokens[0].Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number))
        {
            return number;
        }

        typed.AddError($"{QuotedText.Of(typed.Tokens[0].Value)} is no seed; expected a whole number");
        return 0;
    }
}
