using System.CommandLine;
using ShopDays.Cli.Files;
using ShopDays.Cli.Terminal;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands;

/// <summary>Runs what was typed, and turns wrong use and trouble with files into a line and an exit code.</summary>
internal static class CommandLine
{
    /// <summary>Runs it.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(RootCommand root, string[] args, Screen screen)
    {
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors)
            {
                screen.Error.WriteLine(error.Message);
            }

            SayNearest(root, parsed, screen);
            screen.Error.WriteLine(parsed.CommandResult.Command == root
                ? "see: shopdays --help"
                : $"see: shopdays {parsed.CommandResult.Command.Name} --help");
            return ExitCode.WrongUse;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = screen.Out, Error = screen.Error });
        }
        catch (FileTroubleException trouble)
        {
            screen.Error.WriteLine(trouble.Message);
            return ExitCode.CannotReadOrWrite;
        }
    }

    private static void SayNearest(RootCommand root, ParseResult parsed, Screen screen)
    {
        var names = parsed.CommandResult.Command == root
            ? root.Subcommands.Select(command => command.Name)
            : parsed.CommandResult.Command.Options.Select(option => option.Name);
        foreach (var typed in parsed.UnmatchedTokens)
        {
            if (NearestName.To(typed, names) is { } nearest)
            {
                screen.Error.WriteLine($"nearest to {QuotedText.Of(typed)}: {nearest}");
            }
        }
    }
}
