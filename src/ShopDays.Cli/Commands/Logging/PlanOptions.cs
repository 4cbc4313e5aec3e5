using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Terminal;

namespace ShopDays.Cli.Commands.Logging;

/// <summary>How the plan was made whose tasks are logged: a task is called after the boards that the layout chose.</summary>
/// <param name="clock">Tells how old the entries are that rates are learned from.</param>
internal sealed class PlanOptions(IClock clock)
{
    private readonly SearchOptions search = new(
        "The seed of the plan, where it was made with one.",
        "The effort of the plan's layout, where it was made with one.",
        "What the plan's layout spares, where it was made so.");

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command) => search.AddTo(command);

    /// <summary>The workings of a job, as its plan has them.</summary>
    public Workings Workings(ParseResult parsed, ShopAndJob read, Screen screen) => search.Workings(
        parsed,
        read,
        LearnedRates.Of(read.Folder, read.Shop, read.Operations, clock),
        new(screen.Error, false, screen.ErrorIsTerminal, screen.Width, screen.Time));
}
