using System.Text;
using System.Xml.Linq;
using NodaTime;
using ShopDays.Cli.Paper.Rates;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Paper.Svg;
using ShopDays.Cli.Tests.Running;
using ShopDays.Times;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

public sealed class RatesPaperTests
{
    private static readonly Instant Made = Instant.FromUtc(2027, 4, 1, 7, 0);
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Papers => [.. PaperSize.All.Select(paper => paper.Name)];

    [Theory]
    [MemberData(nameof(Papers))]
    public void The_paper_says_the_report_card_in_words_and_has_every_rate_and_both_pictures(string paper)
    {
        var told = ATimedShop.Told(ATimedShop.Model(24, withASlip: true), PaperSize.All.Single(one => one.Name == paper));
        var pages = ReadBack.Pages(RatesBook.Set(told, ATimedShop.Courses(told), Made)).Select(ReadPaper.Squeezed).ToList();

        Assert.All(told.Sentences.Concat(told.NotLearnedFrom), sentence => Assert.Contains(ReadPaper.Squeezed(sentence), pages[0], StringComparison.Ordinal));
        Assert.All(told.Rates, rate => Assert.Contains(ReadPaper.Squeezed(rate.Operation.Name), pages[0], StringComparison.Ordinal));
        Assert.Contains("whiteoak", pages[0], StringComparison.Ordinal);
        Assert.Contains(pages, page => page.Contains(ReadPaper.Squeezed(EstimatePicture.Title), StringComparison.Ordinal) && page.Contains("heldout(1)", StringComparison.Ordinal));
        Assert.Contains(pages, page => page.Contains("rip:ft/min", StringComparison.Ordinal) && page.Contains("mortise:mineach", StringComparison.Ordinal));
    }

    [Fact]
    public void The_same_rates_give_the_same_bytes()
    {
        var told = ATimedShop.Told(ATimedShop.Model(9), PaperSize.A4, inches: false);

        Assert.Equal(RatesBook.Set(told, ATimedShop.Courses(told), Made), RatesBook.Set(told, ATimedShop.Courses(told), Made));
    }

    [Fact]
    public void A_shop_without_times_has_one_page_and_no_drawings()
    {
        var told = ATimedShop.Told(ATimedShop.Model(0), PaperSize.A4);

        Assert.Contains("Nothingislearnedyet", ReadPaper.Squeezed(Assert.Single(ReadBack.Pages(RatesBook.Set(told, [], Made)))), StringComparison.Ordinal);
        Assert.Empty(RateDrawings.Of(told, []));
    }

    [Theory]
    [InlineData(3)]
    [InlineData(24)]
    [InlineData(200)]
    public void Every_time_has_a_mark_and_those_outside_always_have_their_bar(int times)
    {
        var model = ATimedShop.Model(times, withASlip: times > 3);
        var drawn = new EstimatePicture(model, 400).Drawn().Drawn;
        var card = ReportCard.Of(model)!;
        var key = times > 3 ? 3 : 2;
        var crosses = model.Log.Count(one => one.IsHeldOut);

        // Each kind of mark stands once more in the key; a cross is two strokes.
        var marks = drawn.OfType<Drawn.Disc>().Count() + drawn.OfType<Drawn.Polygon>().Count() + (drawn.OfType<Drawn.Line>().Count(line => line.Pen.Width == 1.4) / 2);
        Assert.Equal(times + key, marks);
        var inside = card.Coverages.Single(one => one.Share == 0.8).Inside;
        Assert.Equal((times <= 120 ? times : times - inside) + 1, drawn.OfType<Drawn.Line>().Count(line => line.Pen == new Pen(0.8, 0.5)));
        Assert.Equal(times > 3 ? 1 : 0, crosses);
    }

    [Fact]
    public void A_drawing_is_well_formed_and_says_in_words_what_it_shows()
    {
        var told = ATimedShop.Told(ATimedShop.Model(24), PaperSize.A4, inches: false);
        var drawings = RateDrawings.Of(told, ATimedShop.Courses(told));

        Assert.Equal(["expected-and-taken.svg", "rates-over-time.svg"], drawings.Select(drawing => drawing.Name));
        var roots = drawings.Select(drawing => XDocument.Parse(Encoding.UTF8.GetString(drawing.Drawing)).Root!).ToList();
        Assert.All(roots, root => Assert.Equal(Svg + "svg", root.Name));
        Assert.Contains("24 timed tasks", roots[0].Element(Svg + "desc")!.Value, StringComparison.Ordinal);
        Assert.Contains("rip, m/min", roots[1].Element(Svg + "desc")!.Value, StringComparison.Ordinal);

        // One dot for each time.
        Assert.Equal(24, roots[1].Descendants(Svg + "circle").Count());
    }

    [Fact]
    public void Nothing_of_a_picture_lies_outside_it()
    {
        var told = ATimedShop.Told(ATimedShop.Model(40, withASlip: true), PaperSize.A4);
        var whole = new EstimatePicture(told.Model, 400);
        Assert.All(whole.Drawn().Drawn.SelectMany(Corners), spot => Assert.True(spot.X is >= 0 and <= 400 && spot.Y >= 0 && spot.Y <= whole.Height, $"{spot}"));
        Assert.All(ATimedShop.Courses(told), course => Assert.All(
            new NarrowingPicture(told, course, 240, 180).Drawn().Drawn.SelectMany(Corners),
            spot => Assert.True(spot.X is >= 0 and <= 240 && spot.Y is >= 0 and <= 180, $"{spot}")));
    }

    [Fact]
    public void Equal_steps_on_an_axis_are_equal_factors_and_its_marks_are_round()
    {
        var axis = LogScale.Around([3, 400], 0, 300);

        Assert.Equal(axis.Place(20) - axis.Place(10), axis.Place(200) - axis.Place(100), 9);
        Assert.Equal(["5 min", "10 min", "30 min", "1 h", "2 h", "5 h"], axis.TimeTicks().Select(tick => tick.Words));
        Assert.Equal(["5", "10", "20", "50", "100", "200"], axis.FigureTicks().Select(tick => tick.Words));
        Assert.True(LogScale.Around([1.1, 1.4], 0, 100).FigureTicks().Count >= 2);
    }

    private static IEnumerable<Spot> Corners(Drawn drawn) => drawn switch
    {
        Drawn.Line line => [line.From, line.To],
        Drawn.Rectangle rectangle => [new(rectangle.Box.X, rectangle.Box.Y), new(rectangle.Box.Right, rectangle.Box.Bottom)],
        Drawn.Polygon polygon => polygon.Corners,
        Drawn.Disc disc => [new(disc.Box.X, disc.Box.Y), new(disc.Box.Right, disc.Box.Bottom)],
        Drawn.Text { IsTurned: false, Align: Align.Left } text => [text.At, text.At with { X = text.At.X + text.Style.WidthOf(text.Words) - 0.01 }],
        Drawn.Text { IsTurned: false, Align: Align.Right } text => [text.At, text.At with { X = text.At.X - text.Style.WidthOf(text.Words) }],
        Drawn.Text text => [text.At],
        _ => throw new System.Diagnostics.UnreachableException(),
    };
}
