using System.CommandLine;
using System.Text.Json;
using NodaTime;
using NodaTime.Testing;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Terminal;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>What a maker typed and what came back, without a process of its own.</summary>
internal sealed record Typed(int ExitCode, string Out, string Error)
{
    /// <summary>The answer of a run with <c>--json</c> that went well.</summary>
    public JsonElement ReadJson()
    {
        Assert.Equal((0, ""), (ExitCode, Error));
        using var document = JsonDocument.Parse(Out);
        return document.RootElement.Clone();
    }

    /// <summary>The evening of 3 March 2027 in England, already the 4th further east.</summary>
    public static readonly Instant Evening = Instant.FromUtc(2027, 3, 3, 22, 30);

    public static Typed Run(params string[] args) => At(Evening, args);

    /// <summary>The same at a moment.</summary>
    public static Typed At(Instant now, params string[] args)
    {
        using var output = new StringWriter();
        using var error = new StringWriter();
        var screen = new Screen(output, error);
        var clock = new FakeClock(now);
        var root = new RootCommand
        {
            new NewCommand(screen, clock).Describe(),
            new CheckCommand(screen, clock).Describe(),
            new LayoutCommand(screen, clock).Describe(),
            new MaterialsCommand(screen, clock).Describe(),
            new EstimateCommand(screen, clock).Describe(),
            new PlanCommand(screen, clock).Describe(),
            new PriceCommand(screen, clock).Describe(),
            new CompareCommand(screen, clock).Describe(),
            new ProgressCommand(screen, clock).Describe(),
            new OrdersCommand(screen, clock).Describe(),
            new TrialCommand(screen, clock).Describe(),
        };
        var exitCode = CommandLine.Run(root, args, screen);
        return new(exitCode, output.ToString().ReplaceLineEndings("\n"), error.ToString().ReplaceLineEndings("\n"));
    }
}
