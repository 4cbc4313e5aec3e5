using System.Text;
using ShopDays.Cli.Paper.Setting;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

public sealed class SurfaceTests
{
    [Theory]
    [InlineData("47 1/2\" × 9 ¼ in, 5/4, ⅛ ½ ¾ off")]
    [InlineData("−5 °C ≤ x ≥ 20 °C")]
    [InlineData("3′ 11″ – “oak”, Ærø, Łódź, Žďár, čaj")]
    [InlineData("0123456789 1111")]
    public void Text_reads_back_as_it_was_set(string text)
    {
        var file = ReadBack.Drawn(page => page.Text(text, 50, 100, TypeScale.Body));

        Assert.Equal([text], ReadBack.Pages(file));
    }

    [Theory]
    [InlineData("two\nlines", "two lines")]
    [InlineData("a\tb", "a b")]
    [InlineData("9\u00A01/4", "9 1/4")]
    public void Whatever_is_not_a_letter_is_set_as_a_space(string text, string expected)
    {
        var file = ReadBack.Drawn(page => page.Text(text, 50, 100, TypeScale.Body));

        Assert.Equal([expected], ReadBack.Pages(file));
    }

    [Fact]
    public void Every_weight_is_embedded_and_only_in_part()
    {
        var file = ReadBack.Drawn(page =>
        {
            foreach (var weight in Enum.GetValues<Weight>())
            {
                page.Text("dovetail", 50, 100 + (20 * (int)weight), new TextStyle(10, weight));
            }
        });

        var fonts = ReadBack.Letters(file).Select(letter => letter.FontName).Distinct().ToList();
        Assert.Equal(4, fonts.Count);
        Assert.All(fonts, font => Assert.Matches("^[A-Z]{6}\\+Inter", font));
        Assert.Equal(4, ReadBack.Dictionaries(file, "FontDescriptor").Count(descriptor => descriptor.Data.ContainsKey("FontFile2")));
        // Each whole font file takes some 310,000 bytes.
        Assert.InRange(file.Length, 1, 60_000);
    }

    [Fact]
    public void Figures_all_take_the_same_width()
    {
        var style = TypeScale.Bench;

        Assert.All("0123456789", figure => Assert.Equal(style.WidthOf("0"), style.WidthOf([figure]), 1e-9));
    }

    [Theory]
    [InlineData("Rip 118 ft of white oak")]
    [InlineData("111 111")]
    public void The_width_reckoned_is_the_width_drawn(string text)
    {
        var style = TypeScale.Heading;
        var letters = ReadBack.Letters(ReadBack.Drawn(page => page.Text(text, 50, 100, style)));

        // The file gives each advance cut down to whole thousandths of an em: up to one is lost at each letter.
        Assert.Equal(letters[^1].EndBaseLine.X - letters[0].StartBaseLine.X, style.WidthOf(text), 0.001 * style.Size * text.Length);
    }

    [Fact]
    public void Text_ends_at_the_right_or_stands_about_the_middle_when_asked()
    {
        var letters = ReadBack.Letters(ReadBack.Drawn(page =>
        {
            page.Text("saw", 200, 100, TypeScale.Body, Align.Right);
            page.Text("plane", 200, 130, TypeScale.Body, Align.Centre);
        }));

        // A thousandth of an em at each letter, as above, comes to little more than a twentieth of a point.
        Assert.Equal(200, letters[2].EndBaseLine.X, 0.06);
        Assert.Equal(200, (letters[3].StartBaseLine.X + letters[7].EndBaseLine.X) / 2, 0.06);
    }

    [Fact]
    public void Turned_text_reads_upwards()
    {
        var letters = ReadBack.Letters(ReadBack.Drawn(page => page.TurnedText("end", new Spot(100, 200), 90, TypeScale.Body)));

        Assert.All(letters, letter => Assert.Equal(100, letter.StartBaseLine.X, 0.01));
        Assert.True(letters[2].StartBaseLine.Y > letters[0].StartBaseLine.Y);
    }

    [Fact]
    public void The_same_drawing_gives_the_same_bytes()
    {
        static byte[] Draw() => ReadBack.Drawn(page =>
        {
            page.Text("heavy", 50, 100, TypeScale.Heading);
            page.Text("light", 50, 150, TypeScale.Body);
            page.Polygon([new(10, 10), new(60, 10), new(30, 50)], Pen.Strong, Fill.Hatched(Hatch.Crossed));
        });

        Assert.Equal(Draw(), Draw());
    }

    [Fact]
    public void Another_text_gives_the_file_another_mark()
    {
        static string Mark(string text)
        {
            var file = Encoding.Latin1.GetString(ReadBack.Drawn(page => page.Text(text, 50, 100, TypeScale.Body)));
            return file[file.LastIndexOf("/ID[", StringComparison.Ordinal)..][..70];
        }

        Assert.NotEqual(Mark("oak"), Mark("elm"));
    }

    [Theory]
    [InlineData("front of the chest", 40)]
    [InlineData("front", 400)]
    public void A_shortened_text_fits_and_begins_as_the_text_does(string text, double width)
    {
        var shortened = TypeScale.Body.Shortened(text, width);

        Assert.True(TypeScale.Body.WidthOf(shortened) <= width);
        Assert.StartsWith(shortened.TrimEnd('…'), text, StringComparison.Ordinal);
        Assert.NotEmpty(shortened);
    }

    [Theory]
    [InlineData(Hatch.Rising, 0, 1)]
    [InlineData(Hatch.Rising, 1, 0)]
    [InlineData(Hatch.Falling, 0, 1)]
    [InlineData(Hatch.Falling, 1, 0)]
    [InlineData(Hatch.Crossed, 1, 0)]
    [InlineData(Hatch.Level, 0, 1)]
    [InlineData(Hatch.Dots, 0, 1)]
    [InlineData(Hatch.Upright, 1, 0)]
    public void A_walk_across_an_area_soon_meets_a_stroke_of_its_hatch(Hatch hatch, int stepX, int stepY)
    {
        const double Spacing = 5;
        var area = new Box(103, 211, 50, 40);
        var strokes = Hatching.Strokes(area, hatch, Spacing).ToList();

        // Strokes at 45 degrees lie 1.42 spacings apart along a side; the walk is a little longer.
        for (var x = area.X; x + (1.5 * Spacing * stepX) <= area.Right; x += 3)
        {
            for (var y = area.Y; y + (1.5 * Spacing * stepY) <= area.Bottom; y += 3)
            {
                var from = new Spot(x, y);
                var to = new Spot(x + (1.5 * Spacing * stepX), y + (1.5 * Spacing * stepY));
                Assert.Contains(strokes, stroke => Side(stroke, from) * Side(stroke, to) <= 0);
            }
        }
    }

    // Which side of a stroke's line a place lies on: above 0, below 0, or 0 on the line.
    private static double Side((Spot From, Spot To) stroke, Spot place) =>
        ((stroke.To.X - stroke.From.X) * (place.Y - stroke.From.Y)) - ((stroke.To.Y - stroke.From.Y) * (place.X - stroke.From.X));
}
