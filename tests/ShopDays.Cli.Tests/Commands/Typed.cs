using System.CommandLine;
using NodaTime;
using NodaTime.Testing;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Terminal;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>What a maker typed and what came back, without a process of its own.</summary>
internal sealed record Typed(int ExitCode, string Out, string Error)
{
    /// <summary>The evening of 3 March 2027 in England, already the 4th further east.</summary>
    public static readonly Instant Evening = Instant.FromUtc(2027, 3, 3, 22, 30);

    public static Typed Run(params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var screen = new Screen(output, error);
        var root = new RootCommand { new NewCommand(screen, new FakeClock(Evening)).Describe(), new CheckCommand(screen).Describe() };
        var exitCode = CommandLine.Run(root, args, screen);
        return new(exitCode, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }
}
