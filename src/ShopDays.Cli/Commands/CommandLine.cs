using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Parsing;
using ShopDays.Cli.Files;
using ShopDays.Cli.Terminal;
using ShopDays.Measures;

namespace ShopDays.Cli.Commands;

/// <summary>Runs what was typed, and turns wrong use and trouble with files into a line and an exit code.</summary>
internal static class CommandLine
{
    /// <summary>A lone hyphen stands for standard input: it is no option.</summary>
    private const string FromInput = "-";

    /// <summary>Runs it.</summary>
    /// <returns>The exit code.</returns>
    public static int Run(RootCommand root, string[] args, Screen screen)
    {
        foreach (var help in root.Options.OfType<HelpOption>())
        {
            // Where it goes into a pipe, the parser itself would not break its lines.
            help.Action = new HelpAction { MaxWidth = screen.Width };
        }

        var parsed = root.Parse(args, new() { ResponseFileTokenReplacer = null });
        var strange = OptionsTakenForNames(parsed);
        if (parsed.Errors.Count > 0 || strange.Count > 0)
        {
            foreach (var option in strange)
            {
                screen.Error.WriteLine($"{QuotedText.Of(option)} is no option of this command");
            }

            foreach (var error in parsed.Errors)
            {
                screen.Error.WriteLine(error.Message);
            }

            SayNearest(parsed, [.. strange, .. parsed.UnmatchedTokens], screen);
            screen.Error.WriteLine($"see: shopdays{PathOf(parsed.CommandResult)} --help");
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
        catch (IOException trouble)
        {
            // Files have their own trouble: what is left is the answer on its way into a pipe or a file of the caller.
            screen.Error.WriteLine($"the answer cannot be written: {trouble.Message}");
            return ExitCode.CannotReadOrWrite;
        }
        catch (Exception bug) when (bug is not OutOfMemoryException)
        {
            // Whatever the maker's files hold, this is not theirs to put right: they are told so, with all that helps to find it.
            screen.Error.WriteLine($"this is a fault of ShopDays, not of your files; please report what you typed and this text:\n{bug}");
            return ExitCode.CannotReadOrWrite;
        }
    }

    /// <summary>A misspelt option before the name of the job would be taken for that name; behind <c>--</c> it is one.</summary>
    private static List<string> OptionsTakenForNames(ParseResult parsed) => parsed.Tokens.Any(token => token.Type == TokenType.DoubleDash)
        ? []
        : [.. parsed.CommandResult.Children.OfType<ArgumentResult>().SelectMany(argument => argument.Tokens).Select(token => token.Value).Where(word => word.StartsWith('-') && word != FromInput)];

    /// <summary>The names of the commands that lead to one, from the root: <c> log add</c>; nothing for the root itself.</summary>
    private static string PathOf(CommandResult result) => result.Parent is CommandResult above ? $"{PathOf(above)} {result.Command.Name}" : "";

    private static void SayNearest(ParseResult parsed, IReadOnlyList<string> strange, Screen screen)
    {
        var command = parsed.CommandResult.Command;
        string[] names = command.Subcommands.Count > 0
            ? [.. command.Subcommands.Select(one => one.Name)]
            : [.. command.Options.Select(option => option.Name)];
        foreach (var typed in strange)
        {
            if ((Begun(typed, names) ?? NearestName.To(typed, names)) is { } nearest)
            {
                screen.Error.WriteLine($"nearest to {QuotedText.Of(typed)}: {nearest}");
            }
        }
    }

    /// <summary>The one name that begins with what was typed: a word cut short is no slip of the pen.</summary>
    private static string? Begun(string typed, string[] names) =>
        names.Where(name => name.StartsWith(typed, StringComparison.OrdinalIgnoreCase)).ToList() is [var only] ? only : null;
}
