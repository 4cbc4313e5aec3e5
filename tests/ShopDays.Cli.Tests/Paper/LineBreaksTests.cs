using CsCheck;
using ShopDays.Cli.Paper.Setting;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

public sealed class LineBreaksTests
{
    private static readonly Gen<string> Letters = Gen.Char["abcdefgh 0123456789½×°−/\" \t\n"].Array[0, 120].Select(letters => new string(letters));

    private static readonly Gen<string> Words = Gen.Char["abcdefgh½× \n"].Array[0, 120].Select(letters => new string(letters));

    [Fact]
    public void A_wrapped_text_loses_no_letter() => Gen.Select(Letters, Gen.Double[12, 300]).Sample((text, width) =>
    {
        var lines = LineBreaks.Of(text, TypeScale.Body, width);

        Assert.Equal(string.Concat(text.Where(c => !char.IsWhiteSpace(c))), string.Concat(string.Concat(lines).Where(c => !char.IsWhiteSpace(c))));
    });

    [Fact]
    public void A_wrapped_text_keeps_its_words_where_each_fits_a_line() => Words.Sample(text =>
    {
        var width = Split(text).Select(word => TypeScale.Body.WidthOf(word)).DefaultIfEmpty(10).Max() + 0.1;

        Assert.Equal(Split(text), LineBreaks.Of(text, TypeScale.Body, width).SelectMany(Split));
    });

    [Fact]
    public void No_line_is_wider_than_it_may_be() => Gen.Select(Letters, Gen.Double[12, 300]).Sample((text, width) =>
        Assert.All(LineBreaks.Of(text, TypeScale.Body, width), line => Assert.True(TypeScale.Body.WidthOf(line) <= width + 1e-9)));

    [Theory]
    [InlineData("straighten the edges of A2, cuts 4, 6", "cuts\u00A04,\u00A06")]
    [InlineData("rip A2, cuts 5, 7-9", "cuts\u00A05,\u00A07-9")]
    [InlineData("rip A2, cut 12", "cut\u00A012")]
    public void The_numbers_of_cuts_stay_on_one_line(string text, string held)
    {
        for (var width = TypeScale.Body.WidthOf(held) + 0.1; width < 300; width += 5)
        {
            Assert.Contains(LineBreaks.Of(text, TypeScale.Body, width), line => line.EndsWith(held, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("side table (80 %)", "(80\u00a0%)")]
    [InlineData("as likely as not 45 min", "45\u00a0min")]
    [InlineData("alone it takes 1 h 15 min", "1\u00a0h\u00a015\u00a0min")]
    [InlineData("waits for 1 d 12 h", "1\u00a0d\u00a012\u00a0h")]
    [InlineData("mortise: leg, for stretcher (1 of 4)", "(1\u00a0of\u00a04)")]
    [InlineData("tenon: end stretcher (3-4 of 8)", "(3-4\u00a0of\u00a08)")]
    [InlineData("rough slabs, 3050 × 410 × 75 mm", "3050\u00a0×\u00a0410\u00a0×\u00a075\u00a0mm")]
    public void A_figure_and_its_unit_stay_on_one_line(string text, string held)
    {
        for (var width = TypeScale.Body.WidthOf(held) + 0.1; width < 300; width += 5)
        {
            Assert.Contains(LineBreaks.Of(text, TypeScale.Body, width), line => line.EndsWith(held, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Every_line_takes_as_many_words_as_fit()
    {
        const double Width = 150;
        var lines = LineBreaks.Of(string.Join(' ', Enumerable.Repeat("plane the face", 30)), TypeScale.Body, Width);

        for (var order = 0; order + 1 < lines.Count; order++)
        {
            Assert.True(TypeScale.Body.WidthOf($"{lines[order]} {Split(lines[order + 1])[0]}") > Width);
        }
    }

    [Fact]
    public void A_word_wider_than_a_line_is_broken_between_letters_and_not_inside_one()
    {
        var lines = LineBreaks.Of(string.Concat(Enumerable.Repeat("e\u0301", 40)), TypeScale.Body, 60);

        Assert.True(lines.Count > 1);
        Assert.All(lines, line => Assert.StartsWith("e\u0301", line, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("9 1/4 in")]
    [InlineData("47 1/2\"")]
    [InlineData("120 mm")]
    [InlineData("−5 °C")]
    public void A_measure_is_never_broken(string measure)
    {
        for (var width = TypeScale.Body.WidthOf(measure) + 1; width < 300; width += 7)
        {
            var lines = LineBreaks.Of($"cut the board to {measure} and {measure} now", TypeScale.Body, width);
            Assert.Equal(2, lines.Sum(line => line.Replace('\u00A0', ' ').Split(measure).Length - 1));
        }
    }

    [Fact]
    public void A_line_feed_begins_a_new_line() => Assert.Equal(["a", "", "b c"], LineBreaks.Of("a\n\nb  c", TypeScale.Body, 100));

    private static string[] Split(string text) => text.Split([' ', '\t', '\n', '\u00A0'], StringSplitOptions.RemoveEmptyEntries);
}
