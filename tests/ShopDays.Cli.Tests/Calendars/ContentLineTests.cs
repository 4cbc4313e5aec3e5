using System.Text;
using CsCheck;
using ShopDays.Cli.Calendars;
using Xunit;

namespace ShopDays.Cli.Tests.Calendars;

[Trait("Source", "RFC 5545 (B. Desruisseaux, 2009), sections 3.1 and 3.3.11")]
public sealed class ContentLineTests
{
    // Letters of one to four octets, and what has a meaning of its own in a value.
    private static readonly string[] Pieces = ["a", " ", "é", "½", "漢", "🪵", ";", ",", "\\", "\n", "\r\n", "\t", "\u0001", "\"", ":", "="];

    private static readonly Gen<string> Words = Gen.Int[0, Pieces.Length - 1].Array[0, 200].Select(places => string.Concat(places.Select(place => Pieces[place])));

    /// <summary>3.1: 75 octets at the most, and a fold between two characters.</summary>
    [Fact]
    public void A_long_line_is_folded_and_reads_back_as_it_was() => Words.Sample(words =>
    {
        var line = "SUMMARY:" + ContentLine.Text(words);
        Assert.Equal([line], StrictLines.Of(Folded(line)));
        Assert.Equal([line], ContentLine.Unfolded(Encoding.UTF8.GetString(Folded(line))).Select(one => one.Line));
    });

    /// <summary>3.1: "lines of text SHOULD NOT be longer than 75 octets": 75 stand in one line, 76 do not.</summary>
    [Theory]
    [InlineData(75, 1)]
    [InlineData(76, 2)]
    [InlineData(149, 2)]
    [InlineData(150, 3)]
    public void A_line_is_folded_at_its_seventy_sixth_octet(int octets, int lines) =>
        Assert.Equal(lines, Encoding.UTF8.GetString(Folded(new string('x', octets))).Split("\r\n").Length - 1);

    /// <summary>3.3.11: a line feed is written as \n, a backslash, a semicolon and a comma with a backslash before them, a colon as it is.</summary>
    [Fact]
    public void Text_is_escaped() => Assert.Equal(@"oak\, 5/4\; rip: \\ the\nrest", ContentLine.Text("oak, 5/4; rip: \\ the\r\nrest"));

    /// <summary>3.3.11: TSAFE-CHAR has no controls.</summary>
    [Fact]
    public void Controls_become_spaces() => Assert.Equal("a b c", ContentLine.Text("a\u0001b\tc"));

    private static byte[] Folded(string line)
    {
        var text = new StringBuilder();
        ContentLine.AddTo(text, line);
        return Encoding.UTF8.GetBytes(text.ToString());
    }
}
