using ShopDays.Cli.Terminal;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

public sealed class ProgressTests
{
    [Fact]
    public void On_a_terminal_the_passing_line_is_gone_before_the_answer()
    {
        using var writer = new StringWriter();
        var seen = new Progress(writer, isVerbose: false, isTerminal: true).During("sawing", writer.ToString);
        Assert.Equal("sawing", seen);
        Assert.Equal("sawing\r      \r", writer.ToString());
    }

    [Fact]
    public void Where_each_step_is_asked_for_it_keeps_its_line()
    {
        using var writer = new StringWriter();
        Assert.Equal(3, new Progress(writer, isVerbose: true, isTerminal: true).During("sawing", () => 3));
        Assert.Equal("sawing\n", writer.ToString().ReplaceLineEndings("\n"));
    }

    [Fact]
    public void In_a_pipe_nothing_is_said()
    {
        using var writer = new StringWriter();
        Assert.Equal(3, new Progress(writer, isVerbose: false, isTerminal: false).During("sawing", () => 3));
        Assert.Equal("", writer.ToString());
    }
}
