using ShopDays.Cli.Paper;
using ShopDays.Cli.Paper.Days;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Tests.Running;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

/// <summary>Paper is not wasted: pages are filled, and a day stands on one side where it can.</summary>
public sealed class PageFillTests
{
    [Theory]
    [MemberData(nameof(Sample.Shops), MemberType = typeof(Sample))]
    public async Task Every_page_but_the_last_of_its_section_is_filled_by_a_fifth_at_the_least(string shop) => AssertFilled(await Sample.Of(shop).Pdf());

    [Fact]
    public void The_pages_of_a_long_job_are_filled_too() => AssertFilled(PlanBook.Set(APlan.Of(APlan.Parts(60), AShop.With(PaperSize.A4))));

    // The bound is our own wish: a plan that is pinned up should not be a book. Its boards have a page each, and three of its
    // days take both sides of their sheets, since they also say how heavy work is taken and what is honed.
    [Fact]
    public async Task The_plan_of_the_writing_table_takes_no_more_than_36_pages()
    {
        using var document = PdfDocument.Open(await Sample.Of("tidewater-commission").Pdf());

        Assert.InRange(document.NumberOfPages, 1, 36);
    }

    [Theory]
    [MemberData(nameof(Sample.Shops), MemberType = typeof(Sample))]
    public async Task The_cautions_take_a_page_and_the_summary_one_or_two_where_much_is_to_be_known_before_beginning(string shop)
    {
        using var document = PdfDocument.Open(await Sample.Of(shop).Pdf());
        var sections = document.GetPages().Select(SectionOf).ToList();

        Assert.InRange(sections.Count(section => section == "Summary"), 1, 2);
        Assert.Single(sections, "Cautions");
    }

    [Theory]
    [MemberData(nameof(Sample.Shops), MemberType = typeof(Sample))]
    public async Task No_caution_is_said_by_common_practice(string shop)
    {
        using var document = PdfDocument.Open(await Sample.Of(shop).Pdf());
        Assert.DoesNotContain("Said by common practice", string.Concat(document.GetPages().Select(page => page.Text)), StringComparison.Ordinal);
    }

    [Fact]
    public void Nine_rows_of_work_stand_on_one_side_with_their_waits_and_cautions()
    {
        var plan = APlan.Of(APlan.Parts(9), AShop.With(PaperSize.Letter));
        using var document = PdfDocument.Open(PlanBook.Set(plan));
        var sections = document.GetPages().Select(SectionOf).ToList();

        Assert.All(
            PaperDay.Of(plan.Plan).Where(day => day.Sessions.Sum(session => session.Work.Count) <= 9),
            day => Assert.Single(sections, string.Concat(DateWords.Long(day.Date).Where(c => c != ' '))));
    }

    private static void AssertFilled(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        var pages = document.GetPages().ToList();
        Assert.All(pages.Zip(pages.Skip(1)).Where(pair => SectionOf(pair.First) == SectionOf(pair.Second)), pair => Assert.InRange(FilledOf(pair.First), 0.2, 1));
    }

    // From the upper margin to the lowest line of text, as a share of what lies between the margins.
    private static double FilledOf(Page page)
    {
        var (top, bottom) = (page.Height - Margins.Usual.Top, Margins.Usual.Bottom);
        var lowest = page.Letters.Select(letter => letter.StartBaseLine.Y).Where(y => y > bottom && y < top).Min();
        return (top - lowest) / (top - bottom);
    }

    // The words at the right of the head, above the line that ends it.
    private static string SectionOf(Page page) => string.Concat(page.Letters
        .Where(letter => letter.StartBaseLine.Y > page.Height - 40 && letter.StartBaseLine.X > page.Width / 2)
        .Select(letter => letter.Value.Trim()));
}
