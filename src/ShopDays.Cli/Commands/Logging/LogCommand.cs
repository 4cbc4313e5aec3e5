using System.CommandLine;
using NodaTime;
using ShopDays.Cli.Terminal;

namespace ShopDays.Cli.Commands.Logging;

/// <summary><c>shopdays log</c>: what was worked and how long it took, written down at the bench or typed back from paper.</summary>
/// <param name="screen">Where answers go.</param>
/// <param name="clock">Tells the time.</param>
/// <param name="isTyped">Whether it was typed: only then is it worth describing all that can stand behind it.</param>
internal sealed class LogCommand(Screen screen, IClock clock, bool isTyped) : IShopCommand
{
    /// <inheritdoc/>
    public Command Describe()
    {
        var command = new Command("log", "Write down what was worked and how long it took; the rates learn from it.\nExample: shopdays log add writing-table KDR 45m");
        foreach (var one in isTyped ? Behind() : [])
        {
            command.Add(one);
        }

        return command;
    }

    private Command[] Behind() =>
    [
        new StartLog(screen, clock).Describe(),
        new PauseLog(screen, clock).Describe(),
        new DoneLog(screen, clock).Describe(),
        new DropLog(screen, clock).Describe(),
        new AddLog(screen, clock).Describe(),
        new ListLog(screen, clock).Describe(),
        new ShowLog(screen).Describe(),
        new FixLog(screen, clock).Describe(),
        new DeleteLog(screen, clock).Describe(),
        new RestoreLog(screen, clock).Describe(),
        new OddLog(screen, clock).Describe(),
        new StandingLog(screen, clock, "keep", Logbook.Standing.Kept, "Say that an odd time is right, so that it is learned from.").Describe(),
        new StandingLog(screen, clock, "unusual", Logbook.Standing.Unusual, "Say that a time is right but such a day should not count: nothing is learned from it.").Describe(),
        new SheetLog(screen, clock).Describe(),
        new ImportLog(screen, clock).Describe(),
        new ExportLog(screen).Describe(),
    ];
}
