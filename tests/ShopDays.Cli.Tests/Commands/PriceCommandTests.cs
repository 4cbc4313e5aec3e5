using NodaTime;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

/// <summary>The dates and the terms of a quote.</summary>
public sealed class PriceCommandTests
{
    private const string Money = "money: {rate: 40 per hour, margin: 20%, stages: [{on: order, share: 40%}, {on: finish, share: 30%}, {on: delivery, share: 30%}], terms: terms.txt}\n";

    private static readonly Instant InMay = Instant.FromUtc(2027, 5, 12, 9, 0);

    [Fact]
    public void A_quote_for_work_whose_start_is_past_has_no_date_before_today()
    {
        using var folder = Priced();
        var path = folder.File("jobs", "tray.yaml");
        var dates = Typed.At(InMay, "price", path, "--json", "--schedules", "30").ReadJson().List("stages").Select(stage => stage.Text("date")).ToList();
        Assert.Equal("2027-05-12", dates[0]);
        Assert.Equal(dates.Order(StringComparer.Ordinal), dates);

        var ran = Typed.At(InMay, "price", path, "--schedules", "30", "--quote", folder.File("quote.pdf"));
        Assert.Contains("The start, Mon 1 Mar 2027, is past: the dates are those of a plan from today.", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
        var words = Quote(folder);
        Assert.Contains(ReadPaper.Squeezed("Work begins on Wednesday 12 May 2027"), words, StringComparison.Ordinal);
        Assert.DoesNotContain(ReadPaper.Squeezed("March 2027"), words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_quote_and_the_internal_sheet_are_never_the_same_file()
    {
        using var folder = Priced();
        var ran = Typed.At(InMay, "price", folder.File("jobs", "tray.yaml"), "--quote", folder.File("a.pdf"), "--pdf", folder.File("jobs", "..", "a.pdf"));
        Assert.Equal(2, ran.ExitCode);
        Assert.Contains("'--pdf' and '--quote' name the same file", ran.Error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.False(File.Exists(folder.File("a.pdf")));
    }

    [Theory]
    [InlineData("price")]
    [InlineData("compare")]
    public void The_help_shows_a_risk_as_it_is_typed(string command)
    {
        var help = Typed.Run(command, "--help").Out;
        Assert.Contains("10% unless", help.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain("0.1", help, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_that_are_taxed_differently_say_how_where_their_tax_is_in_the_price()
    {
        using var folder = Priced().WithShop(ATrayShop.Shop + Money.Replace("margin: 20%", "margin: 20%, tax: {rate: 10%, delivery: 8%, in-prices: yes}", StringComparison.Ordinal));
        folder.WithJob("tray", ATrayShop.Job + "work: [{task: deliver, minutes: 60, after: finish, paid-travel: 12 km}]\ntravel: 30\n");
        var path = folder.File("jobs", "tray.yaml");
        var ran = Typed.At(InMay, "price", path, "--schedules", "30", "--quote", folder.File("quote.pdf"));
        Assert.Equal((0, ""), (ran.ExitCode, ran.Error));
        var words = Quote(folder);
        Assert.Contains(ReadPaper.Squeezed("Tray, 10 % tax in it"), words, StringComparison.Ordinal);
        Assert.Contains(ReadPaper.Squeezed("Delivery and placing, 8 % tax in it"), words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_date_that_is_likely_promised_and_kept_with_bad_luck_is_said_once()
    {
        using var folder = Priced().WithShop((ATrayShop.Shop + Money).Replace("  thursday: [\"09:00-12:30\"]\n", "", StringComparison.Ordinal));
        var ran = Typed.At(Instant.FromUtc(2027, 2, 20, 9, 0), "price", folder.File("jobs", "tray.yaml"), "--schedules", "30", "--quote", folder.File("quote.pdf"));
        Assert.Equal((0, ""), (ran.ExitCode, ran.Error));
        var words = Quote(folder);
        Assert.Contains(ReadPaper.Squeezed("Promised for Thursday 1 April 2027: four times in five such a piece is ready by its promised date."), words, StringComparison.Ordinal);
        Assert.Contains(ReadPaper.Squeezed("nine times in ten it is ready by that day too"), words, StringComparison.Ordinal);
        Assert.DoesNotContain(ReadPaper.Squeezed("As likely as not"), words, StringComparison.Ordinal);
    }

    [Fact]
    public void Work_that_is_begun_keeps_the_dates_of_its_plan()
    {
        using var tray = new ATrayUnderWay();
        tray.Folder.WithShop(ATrayShop.Shop + Money).With("terms.txt", "Paid in time.\n");
        tray.Done(2, 1);
        var ran = Typed.At(InMay, "price", tray.Job, "--schedules", "30");
        Assert.Contains("The start, Mon 1 Mar 2027, is past: the dates are those of the plan as it was then.", ran.Out.ReplaceLineEndings(" "), StringComparison.Ordinal);
    }

    [Fact]
    public void Each_line_of_a_list_in_the_terms_stands_by_itself_and_other_lines_run_on()
    {
        using var folder = Priced().With("terms.txt", "1. The first payment makes\nthe order firm.\n2. The rest is due\n- on delivery\n(a) or sooner\n\nTimber moves\nwith the seasons.\n");
        Assert.Equal(0, Typed.At(InMay, "price", folder.File("jobs", "tray.yaml"), "--schedules", "30", "--quote", folder.File("quote.pdf")).ExitCode);
        using var paper = UglyToad.PdfPig.PdfDocument.Open(File.ReadAllBytes(folder.File("quote.pdf")));
        var words = paper.GetPages().SelectMany(page => page.GetWords()).ToList();
        var left = words.Min(word => word.BoundingBox.Left);
        string[] begun = [.. words.Where(word => word.BoundingBox.Left < left + 2).Select(word => word.Text)];
        Assert.Equal(["1.", "2.", "-", "(a)", "Timber"], begun.SkipWhile(word => word != "1.").Take(5));
        Assert.Single(words.Where(word => word.Text == "1.").Select(word => word.BoundingBox.Bottom).Intersect(words.Where(word => word.Text == "firm.").Select(word => word.BoundingBox.Bottom)));
    }

    private static FreshFolder Priced() => new FreshFolder().WithShop(ATrayShop.Shop + Money).WithJob("tray", ATrayShop.Job).With("terms.txt", "Paid in time.\n");

    private static string Quote(FreshFolder folder)
    {
        using var paper = UglyToad.PdfPig.PdfDocument.Open(File.ReadAllBytes(folder.File("quote.pdf")));
        return string.Concat(paper.GetPages().Select(page => ReadPaper.Squeezed(page.Text)));
    }
}
