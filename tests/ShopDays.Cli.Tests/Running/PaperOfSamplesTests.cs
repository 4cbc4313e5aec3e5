using System.Globalization;
using System.Text.Json;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>The paper of the samples beside the answer in JSON of the same run.</summary>
public sealed class PaperOfSamplesTests
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
    public async Task It_has_the_jobs_name_and_the_shops_paper(string shop, string title, double shorter, double longer)
    {
        var paper = await ReadPaper.Of(shop);
        Assert.Equal(title, paper.Title);

        // Boards lie on their sides.
        Assert.All(paper.Pages, page => Assert.Equal((shorter, longer), (Math.Min(page.Width, page.Height), Math.Max(page.Width, page.Height))));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Every_page_has_text_in_fonts_that_it_brings_along(string shop)
    {
        var paper = await ReadPaper.Of(shop);

        // A font of which a part is embedded has six letters and a plus before its name (ISO 32000-1, 9.6.4).
        Assert.All(paper.Pages, page => Assert.NotEmpty(page.Text));
        Assert.All(paper.Pages.SelectMany(page => page.Fonts), name => Assert.Matches(@"^[A-Z]{6}\+", name));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task It_has_a_sheet_for_every_day_and_not_many_more_pages(string shop)
    {
        var paper = await ReadPaper.Of(shop);
        var days = (int)(await Plan(shop)).Number("shopDays");
        var boards = (await Layout(shop)).List("boards").Count;

        // Nine sections about the sheets, some of several pages: the order of work may have a page for every other day.
        Assert.InRange(paper.Pages.Count, days + 9, (2 * days) + (2 * boards) + 15);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Every_session_stands_on_its_day_with_all_its_work(string shop)
    {
        var pages = (await ReadPaper.Of(shop)).Pages;
        foreach (var session in (await Plan(shop)).List("sessions"))
        {
            var (start, end) = (session.Time("start"), session.Time("end"));
            var date = ReadPaper.Squeezed(start.ToString("dddd d MMMM uuuu", CultureInfo.InvariantCulture));
            var day = string.Concat(pages.Select(page => page.Text).Where(page => page.Contains(date, StringComparison.Ordinal)));
            Assert.Contains($"{start.ToString("HH:mm", CultureInfo.InvariantCulture)}to{end.ToString("HH:mm", CultureInfo.InvariantCulture)}", day, StringComparison.Ordinal);
            Assert.All(session.List("tasks"), work => Assert.Contains(
                ReadPaper.Squeezed(work.Time("start").ToString("HH:mm", CultureInfo.InvariantCulture) + work.Text("task")), day, StringComparison.Ordinal));
        }
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Every_task_has_a_mark_of_its_own_beside_its_time_and_in_the_order_of_work(string shop)
    {
        var paper = await ReadPaper.Of(shop);
        var order = string.Concat(paper.Pages.Select(page => page.Text).Where(text => text.Contains("Comesafter", StringComparison.Ordinal)));
        var work = (await Plan(shop)).List("sessions").SelectMany(session => session.List("tasks")).ToList();
        Assert.All(work.GroupBy(one => one.Text("mark")), marked => Assert.Single(marked.Select(one => one.Text("task")).Distinct(StringComparer.Ordinal)));
        Assert.All(work, one =>
        {
            Assert.Contains(ReadPaper.Squeezed(one.Text("mark") + one.Time("start").ToString("HH:mm", CultureInfo.InvariantCulture) + one.Text("task")), paper.Text, StringComparison.Ordinal);
            Assert.Contains(ReadPaper.Squeezed(one.Text("mark") + one.Text("task")), order, StringComparison.Ordinal);
        });
        Assert.Contains("Taskormark", paper.Text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Every_part_and_every_board_is_there(string shop)
    {
        var all = (await ReadPaper.Of(shop)).Text;
        Assert.All((await Sample.Of(shop).Run("check --json")).ReadJson().List("parts"), part => Assert.Contains(ReadPaper.Squeezed(part.Text("part")), all, StringComparison.Ordinal));
        Assert.All((await Layout(shop)).List("boards"), board => Assert.Contains(ReadPaper.Squeezed($"Board {board.Text("board")}: {board.Text("species")}"), all, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Every_cut_is_in_a_table_with_its_number(string shop)
    {
        var paper = await ReadPaper.Of(shop);
        var printed = paper.Pages.SelectMany(page => page.Cuts);
        var cuts = (await Layout(shop)).List("boards").SelectMany(board => board.List("cuts"))
            .Select(cut => $"{cut.Number("order").ToString(CultureInfo.InvariantCulture)} {cut.Text("kind")}");
        Assert.Equal(cuts.Order(StringComparer.Ordinal), printed.Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task Every_wait_and_every_caution_is_there_in_full(string shop)
    {
        var all = (await ReadPaper.Of(shop)).Text;
        var plan = await Plan(shop);
        Assert.All(plan.List("waits"), wait => Assert.Contains(ReadPaper.Squeezed(wait.Text("reason")), all, StringComparison.Ordinal));
        Assert.All(plan.List("cautions"), caution => Assert.Contains(ReadPaper.Squeezed(caution.Text("text")), all, StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Shops))]
    public async Task The_dates_that_can_be_promised_stand_on_the_first_page(string shop)
    {
        var first = (await ReadPaper.Of(shop)).Pages[0].Text;
        var finish = (await Plan(shop)).Field("finish");
        Assert.All(new[] { "p50", "p80", "p90" }, name => Assert.Contains(ReadPaper.Squeezed(finish.Time(name).ToString("d MMMM", CultureInfo.InvariantCulture)), first, StringComparison.Ordinal));
    }

    private static async Task<JsonElement> Plan(string shop) => (await Sample.Of(shop).Plan()).ReadJson();

    private static async Task<JsonElement> Layout(string shop) => (await Sample.Of(shop).Run("layout --json")).ReadJson();
}
