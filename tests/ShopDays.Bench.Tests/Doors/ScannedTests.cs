using ShopDays.Cli.Bench.Doors;
using Xunit;

namespace ShopDays.Bench.Tests.Doors;

[Trait("Source", "ISO/IEC 18004, in its points: a finder's outer ring is dark, and so is its middle; around the code it is light")]
public sealed class ScannedTests
{
    [Fact]
    public void The_codes_light_squares_are_drawn_and_its_dark_ones_are_the_ground_of_a_dark_terminal()
    {
        var lines = Scanned.Of("http://127.0.0.1:7373/?key=0123456789abcdef0123456789abcdef").Split('\n').Select(line => line.TrimEnd('\r')).ToList();
        Assert.All(lines[0], sign => Assert.Equal('█', sign));
        Assert.All(lines[..^1], line => Assert.StartsWith("████", line, StringComparison.Ordinal));
        Assert.StartsWith("████ ▄▄▄▄▄ █", lines[2], StringComparison.Ordinal);
        Assert.StartsWith("████ █   █ █", lines[3], StringComparison.Ordinal);
    }
}
