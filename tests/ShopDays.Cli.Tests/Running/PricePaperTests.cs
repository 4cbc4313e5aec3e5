using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using ShopDays.Cli.Tests.Commands;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Outline;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>The client's quote and the internal sheet of the samples, read back beside the answer in JSON of the same run.</summary>
public sealed partial class PricePaperTests
{
    public static TheoryData<string> Shops => Sample.Shops;

    // The sizes of ISO 216 and of ANSI/ASME Y14.1 in points of 1/72 in, from memory.
    public static TheoryData<string, string, double, double> Papers => new()
    {
        { "elm-workbench", "Elm workbench", 595.28, 841.89 },
        { "evening-cupboard", "Wall cupboard", 595.28, 841.89 },
        { "tidewater-commission", "Writing table", 612, 792 },
    };

    [Theory]
    [MemberData(nameof(Papers))]
    public async Task Both_have_a_title_a_language_bookmarks_and_the_shops_paper(string shop, string job, double width, double height)
    {
        var (_, sheet, quote) = await Sample.Of(shop).Price();
        foreach (var (bytes, title) in ((byte[], string)[])[(sheet, $"{job}: price"), (quote, $"Quote: {job}")])
        {
            using var paper = PdfDocument.Open(bytes);
            Assert.Equal(title, paper.Information.Title);
            Assert.Equal("en", paper.Structure.Catalog.CatalogDictionary.TryGet<UglyToad.PdfPig.Tokens.StringToken>(UglyToad.PdfPig.Tokens.NameToken.Create("Lang"), out var language) ? language.Data : "");
            Assert.True(paper.TryGetBookmarks(out var bookmarks));
            Assert.True(bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Count() > 2);
            Assert.All(paper.GetPages(), page => Assert.Equal((width, height), (Math.Round(page.Width, 2, MidpointRounding.AwayFromZero), Math.Round(page.Height, 2, MidpointRounding.AwayFromZero))));
        }
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_quote_says_all_that_a_client_should_know(string shop)
    {
        var (price, words) = await Quote(shop);
        var text = ReadPaper.Squeezed(words);
        var quoted = price.Field("quoted");
        string[] expected =
        [
            price.Text("client"),
            "Size",
            "Timber",
            "Finish",
            "Fittings",
            "Included",
            "Not included",
            "four times in five such a piece is ready by its promised date",
            "A change is agreed in writing",
            "Accepted, with date",
            Long(quoted.Text("validUntil")),
            Written(price.Amount("total")),
            .. price.List("stages").SelectMany(payment => (string[])[Short(payment.Text("date")), Written(payment.Amount("amount"))]),
        ];
        Assert.All(expected, one => Assert.Contains(ReadPaper.Squeezed(one), text, StringComparison.Ordinal));
    }

    // A client signs what stands above the line, not a page that says nothing else.
    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_quote_of_a_sample_stands_on_one_side_of_a_sheet(string shop)
    {
        using var quote = PdfDocument.Open((await Sample.Of(shop).Price()).Quote);
        Assert.Equal(1, quote.NumberOfPages);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Volumes_are_written_with_the_sign_for_cubic_on_paper(string shop)
    {
        using var sheet = PdfDocument.Open((await Sample.Of(shop).Price()).Internal);
        var words = string.Concat(sheet.GetPages().Select(page => page.Text));
        Assert.DoesNotMatch(@"[0-9] m3\b", words);
        Assert.Matches("m³|board feet", words);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Nothing_internal_is_on_the_quote(string shop)
    {
        var (price, words) = await Quote(shop);
        Assert.DoesNotMatch(Internal(), words);

        var quoted = price.Field("quoted");
        var open = price.List("stages").Select(payment => payment.Amount("amount"))
            .Concat(price.List("stages").Select(payment => payment.Amount("tax")))
            .Concat(quoted.List("lines").SelectMany(line => (decimal[])[line.Amount("amount"), line.Amount("tax")]))
            .Concat([price.Amount("total"), quoted.Amount("price"), price.Amount("tax")]).ToHashSet();
        var earning = price.Field("earning");
        decimal[] hidden =
        [
            .. price.List("lines").Select(line => line.Amount("amount")),
            .. price.Field("rate").List("inAYear").Select(line => line.Amount("amount")),
            price.Amount("expectedCost"), price.Amount("contingency"), price.Amount("cost"), price.Amount("outlay"), price.Amount("reckoned"), price.Amount("profit"),
            price.Field("rate").Amount("perHour"), earning.Amount("perHourAtP50"), earning.Amount("perHourAtP90"), earning.Amount("leastPrice"),
        ];
        var figures = Figures().Matches(words).Select(match => match.Value).ToHashSet(StringComparer.Ordinal);
        Assert.NotEmpty(figures);
        Assert.All(hidden.Where(amount => amount > 0 && !open.Contains(amount)), amount => Assert.DoesNotContain(Written(amount), figures));
        Assert.All(price.List("lines").Where(line => line.Text("kind") == "labour"), line => Assert.DoesNotContain(line.Text("working").Split(' ')[0], words, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_internal_sheet_has_every_line_and_every_figure(string shop)
    {
        var (ran, sheet, _) = await Sample.Of(shop).Price();
        var price = ran.ReadJson();
        var text = ReadPaper.Squeezed(WordsOf(sheet));
        Assert.All(price.List("lines"), line => Assert.Contains(
            ReadPaper.Squeezed(line.Text("working").Replace(" m3", " m³", StringComparison.Ordinal) + Written(line.Amount("amount"))), text, StringComparison.Ordinal));
        var earning = price.Field("earning");
        decimal[] figures = [price.Amount("expectedCost"), price.Amount("cost"), price.Amount("reckoned"), price.Amount("total"), price.Amount("profit"), earning.Amount("leastPrice"), earning.Amount("perHourAtP50"), earning.Amount("perHourAtP90"), .. price.Field("rate").List("inAYear").Select(line => line.Amount("amount"))];
        Assert.All(figures, amount => Assert.Contains(Written(amount), text, StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_makers_own_terms_stand_on_the_quote()
    {
        var (_, words) = await Quote("tidewater-commission");
        var terms = await File.ReadAllTextAsync(Path.Combine(Files.Repository.Folder("sample-projects", "tidewater-commission"), "terms.txt"), TestContext.Current.CancellationToken);
        Assert.Contains(ReadPaper.Squeezed(terms), ReadPaper.Squeezed(words), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("terms.txt")]
    [InlineData("papers/terms.txt")]
    [InlineData("../terms.txt")]
    public async Task Terms_are_read_from_the_shops_folder_only_whatever_a_link_says(string path)
    {
        using var elsewhere = new FreshFolder().With("terms.txt", "Read by nobody.");
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop + $"money: {{rate: 40 per hour, terms: {path}}}\n").WithJob("tray", ATrayShop.Job);
        if (path.StartsWith("papers", StringComparison.Ordinal))
        {
            Directory.CreateSymbolicLink(folder.File("papers"), elsewhere.Path);
        }
        else if (!path.StartsWith("..", StringComparison.Ordinal))
        {
            File.CreateSymbolicLink(folder.File("terms.txt"), elsewhere.File("terms.txt"));
        }

        var ran = await Ran.In(folder.Path, "check", "tray");
        Assert.Equal(1, ran.ExitCode);
        Assert.Contains($"'{path}' is not in the shop's folder; expected a text file there, such as terms.txt", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_job_that_says_nothing_of_its_client_has_a_quote_all_the_same_and_is_told_what_would_help()
    {
        using var folder = new FreshFolder().WithShop(ATrayShop.Shop + "money: {rate: 40 per hour}\n").WithJob("tray", ATrayShop.Job);
        var ran = (await Ran.In(folder.Path, "price", "tray", "--quote", "quote.pdf")).WentWell();
        Assert.Contains("The quote would say more with these keys in the job file: client, description, dimensions, included, not-included.", ran.Out.Replace("\n", " ", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("Tray", WordsOf(await File.ReadAllBytesAsync(folder.File("quote.pdf"), TestContext.Current.CancellationToken)), StringComparison.Ordinal);
    }

    [GeneratedRegex(@"\b(hours?|rates?|margin|markup|contingency|risk|overhead|wage|profit|waste|lost|spare|chance|break-even|P50|P80|P90)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Internal();

    [GeneratedRegex(@"[0-9][0-9,]*(\.[0-9]+)?")]
    private static partial Regex Figures();

    private static async Task<(JsonElement Price, string Words)> Quote(string shop)
    {
        var (ran, _, quote) = await Sample.Of(shop).Price();
        return (ran.ReadJson(), WordsOf(quote));
    }

    private static string WordsOf(byte[] bytes)
    {
        using var paper = PdfDocument.Open(bytes);
        return string.Join(' ', paper.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text));
    }

    private static string Written(decimal amount) => amount.ToString("N2", CultureInfo.InvariantCulture);

    private static string Long(string date) => DateOnly.ParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture).ToString("dddd d MMMM yyyy", CultureInfo.InvariantCulture);

    private static string Short(string date) => DateOnly.ParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture).ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);
}
