using ShopDays.Cli.Terminal;
using Xunit;

namespace ShopDays.Cli.Tests.Terminal;

public sealed class LocatedMistakeTests
{
    private const string Message = "'papper' is not a key of a shop; expected units, fraction, currency, climate, shop, place, week, extra, closed, quiet, workers, paper, daylight, appointments, overhead, least-session, limits or clamps; nearest: paper";

    [Theory]
    [InlineData(40)]
    [InlineData(80)]
    [InlineData(100)]
    public void A_mistake_is_wrapped_at_the_screens_width_with_its_place_first(int width)
    {
        var lines = Printed(width, "shop.yaml:5:1");
        Assert.StartsWith("shop.yaml:5:1: ", lines[0], StringComparison.Ordinal);
        Assert.All(lines, line => Assert.True(line.Length <= width));
        Assert.All(lines.Skip(1), line => Assert.StartsWith("  ", line, StringComparison.Ordinal));
        Assert.Equal("shop.yaml:5:1: " + Message, string.Join(' ', lines.Select(line => line.Trim())));
    }

    [Fact]
    public void A_place_is_never_broken_however_long_it_is()
    {
        const string Place = "jobs/a table for the long room, as drawn in the spring of the year before last.yaml:12:30";
        Assert.StartsWith(Place + ": 'papper'", Printed(60, Place)[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Elsewhere_than_on_a_terminal_a_mistake_is_one_line_for_programs_that_read_by_the_line()
    {
        Assert.Equal(["shop.yaml:5:1: " + Message], Printed(80, "shop.yaml:5:1", isTerminal: false));
    }

    private static string[] Printed(int width, string place, bool isTerminal = true)
    {
        using var written = new StringWriter();
        var screen = new Screen(written, written, width, errorIsTerminal: isTerminal);
        screen.Located(screen.Error, place, Message);
        return written.ToString().ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
    }
}
