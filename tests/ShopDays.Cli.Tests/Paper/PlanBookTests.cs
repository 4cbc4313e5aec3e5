using System.Text.RegularExpressions;
using ShopDays.Cli.Paper;
using ShopDays.Cli.Paper.Days;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Layouts;
using ShopDays.Measures;
using ShopDays.Parts;
using ShopDays.Plans;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Outline;
using Xunit;

namespace ShopDays.Cli.Tests.Paper;

/// <summary>Whole plans, set and read back: what a maker needs is there, and inside the margins.</summary>
public sealed class PlanBookTests
{
    private const string LongName = "left-hand drawer runner of the upper till with the worn notch that the old one had, copied from it";

    private static readonly PlanPaper OfNine = APlan.Of(APlan.Parts(9), AShop.With(PaperSize.Letter));
    private static readonly byte[] NineFile = PlanBook.Set(OfNine);

    public static TheoryData<int, string, bool, string> Kinds => new()
    {
        { 1, "a4", false, "shelf" },
        { 1, "letter", true, "shelf" },
        { 9, "letter", true, "stile 2" },
        { 60, "a4", false, "panel 56" },
        { 3, "a4", true, LongName },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Nothing_is_printed_outside_the_margins(int parts, string paper, bool inches, string name)
    {
        using var document = PdfDocument.Open(FileOf(parts, paper, inches, name));
        var margins = Margins.Usual;

        Assert.All(document.GetPages().SelectMany(page => page.Letters.Where(letter => letter.Value.Trim().Length > 0).Select(letter => (Page: page, Letter: letter))), one =>
        {
            var box = one.Letter.BoundingBox;
            // Heads and feet stand in the upper and lower margins, a line each, 18 points from the paper's edge at the least.
            Assert.InRange(box.Left, margins.Left - 0.5, one.Page.Width - margins.Right + 0.5);
            Assert.InRange(box.Right, margins.Left - 0.5, one.Page.Width - margins.Right + 0.5);
            Assert.InRange(box.Bottom, 18, one.Page.Height - 18);
            Assert.InRange(box.Top, 18, one.Page.Height - 18);
        });
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Every_part_stands_on_the_cut_list_and_on_a_board(int parts, string paper, bool inches, string name)
    {
        var file = FileOf(parts, paper, inches, name);
        var (boards, list) = (TextOf(file, "Boards"), TextOf(file, "Cut list"));

        Assert.All(PartsOf(parts, name), part =>
        {
            Assert.Contains(Squeezed(part.Name), list, StringComparison.Ordinal);
            Assert.Contains(Squeezed(part.Name), boards, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("a4", 595.28, 841.89)]
    [InlineData("letter", 612, 792)]
    public void The_paper_is_the_shops(string paper, double width, double height)
    {
        using var document = PdfDocument.Open(FileOf(1, paper, true, "shelf"));

        // The cut list lies on its side. A file's sizes have two decimals.
        Assert.All(document.GetPages(), page => Assert.Equal((width, height), (Math.Round(Math.Min(page.Width, page.Height), 2), Math.Round(Math.Max(page.Width, page.Height), 2))));
        Assert.Contains(document.GetPages(), page => page.Width > page.Height);
    }

    [Fact]
    public void Every_session_stands_on_the_sheet_of_its_day_with_all_its_work()
    {
        foreach (var day in PaperDay.Of(OfNine.Plan))
        {
            var text = TextOf(NineFile, DateWords.Long(day.Date));
            Assert.All(day.Sessions, session => Assert.Contains(Squeezed(SessionTable.HoursOf(session, nameWorker: false)), text, StringComparison.Ordinal));
            Assert.All(day.Sessions.SelectMany(session => session.Work), work => Assert.Contains(Squeezed($"{DateWords.At(work.Start)}{work.Task.Name}"), text, StringComparison.Ordinal));
            Assert.Contains("openup", text, StringComparison.Ordinal);
            Assert.Contains("sweepup", text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_caution_is_there_and_each_day_has_those_of_its_work()
    {
        var all = TextOf(NineFile, "Cautions");
        Assert.All(OfNine.Cautions, caution => Assert.Contains(Squeezed(caution.Text + (caution.SaidBy.StartsWith("common practice", StringComparison.Ordinal) ? "" : "Said by " + caution.SaidBy)), all, StringComparison.Ordinal));

        foreach (var day in PaperDay.Of(OfNine.Plan))
        {
            var text = TextOf(NineFile, DateWords.Long(day.Date));
            var kinds = day.Sessions.SelectMany(session => session.Work).SelectMany(work => work.Task.Cautions).ToHashSet();
            Assert.All(OfNine.Cautions, caution => Assert.Equal(kinds.Contains(caution.Kind) ? 1 : 0, text.Split(Squeezed(caution.Text)).Length - 1));
        }
    }

    [Fact]
    public void Every_wait_stands_on_the_list_and_on_the_sheets_of_the_days_it_touches()
    {
        var list = TextOf(NineFile, "Waits");
        Assert.All(OfNine.Plan.Waits, wait => Assert.Contains(Squeezed(DateWords.When(wait.Start) + DateWords.When(wait.End)), list, StringComparison.Ordinal));

        foreach (var wait in OfNine.Plan.Waits)
        {
            var running = PaperDay.Of(OfNine.Plan).Where(day => day.Date >= wait.Start.Date && day.Date < wait.End.Date);
            Assert.All(running, day => Assert.Matches($"Waituntil.*{Escaped(DateWords.Short(wait.End.Date))}.*{Escaped(DateWords.At(wait.End))}.*{Escaped(": " + wait.Reason)}", TextOf(NineFile, DateWords.Long(day.Date))));
            // News of its end stands on the first sheet from then on.
            if (PaperDay.Of(OfNine.Plan).FirstOrDefault(day => day.Date >= wait.End.Date) is { } next)
            {
                Assert.Matches($"Waitover.*{Escaped(DateWords.At(wait.End))}.*{Escaped(": " + wait.Reason)}", TextOf(NineFile, DateWords.Long(next.Date)));
            }
        }
    }

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(12)]
    public void Many_that_rest_for_one_reason_share_a_line_that_is_not_cut_short(int boards)
    {
        const string Reason = "at rest, stickered: the saw has let tension out, and what is planed now would bow again";
        var day = PaperDay.Of(OfNine.Plan)[1];
        var sawn = day.Sessions[0].Session.Start;
        var waits = Enumerable.Range(0, boards).Select(board => new PlannedWait("chest", OfNine.Graph.Tasks[board], sawn, sawn.PlusHours(120).PlusMinutes(10 * board), Reason)).ToList();
        var note = DayWaits.Of(OfNine with { Plan = OfNine.Plan with { Waits = waits } }, day, TypeScale.Body, 500)!;
        var line = Assert.Single(note.Paragraphs);
        Assert.EndsWith(": " + Reason, line, StringComparison.Ordinal);
        Assert.All(waits, wait => Assert.Contains(DateWords.At(wait.End), line, StringComparison.Ordinal));
        Assert.Equal(boards <= 8, line.Contains($"({OfNine.Graph.Tasks[0].Name})", StringComparison.Ordinal));
    }

    [Fact]
    public void Every_cut_stands_in_the_table_with_its_number_and_what_comes_free()
    {
        var wording = new Wording(OfNine);
        var boards = TextOf(NineFile, "Boards");

        Assert.All(OfNine.Layout.Boards, board =>
        {
            Assert.Contains(Squeezed(wording.Board(board.Board)), boards, StringComparison.Ordinal);
            Assert.All(board.Cuts, cut => Assert.Contains(Squeezed($"{cut.Order}{cut.Kind}{wording.Length(cut.At)} from the"), boards, StringComparison.OrdinalIgnoreCase));
        });
    }

    [Fact]
    public void Every_task_stands_once_in_the_order_of_work_with_its_reason()
    {
        var order = TextOf(NineFile, "Order of work");

        Assert.All(OfNine.Graph.Tasks, (task, _) => Assert.Contains(Squeezed(task.Name), order, StringComparison.Ordinal));
        Assert.All(OfNine.Graph.Precedences, one => Assert.Contains(Squeezed($"{OfNine.Graph.Tasks[one.Before].Name}: {one.Reason}"), order, StringComparison.Ordinal));
    }

    [Fact]
    public void Each_strip_of_a_panel_stands_on_the_cut_list_with_its_own_width()
    {
        var lid = ALayout.Part("lid", 1, 42, 17) with { IsPanel = true };
        Blank[] strips = [.. ((double[])[9, 6, 2.625]).Select((width, order) => new Blank { Part = lid, Numbers = [1], Strip = order + 1, Strips = 3, Length = ALayout.In(43), Width = ALayout.In(width) })];
        var board = OfNine.Layout.Boards[0];
        var plan = OfNine with
        {
            Job = OfNine.Job with { Parts = [lid] },
            Layout = OfNine.Layout with { Boards = [.. strips.Select((strip, order) => board with { Board = ALayout.Board(order + 1), Blanks = [new PlacedBlank(strip, board.Usable with { Length = strip.Length, Width = strip.Width })] })] },
        };
        var list = TextOf(PlanBook.Set(plan), "Cut list");

        Assert.Contains(Squeezed("lid strip 1: 43\" × 9\", A1 lid strip 2: 43\" × 6\", A2 lid strip 3: 43\" × 2 5/8\", A3"), list, StringComparison.Ordinal);
    }

    [Fact]
    public void The_cost_of_the_layout_stands_with_the_stock_sum_by_sum_and_with_its_bound()
    {
        var text = TextOf(NineFile, "Stock");
        var cost = OfNine.Layout.Cost;

        Assert.All(CostWords.Lines(cost).Where(line => line.Amount.Amount != 0), line => Assert.Contains(Squeezed($"{Wording.Capital(line.Name)}{line.Amount}"), text, StringComparison.Ordinal));
        Assert.Contains(Squeezed($"In all{cost.Total}"), text, StringComparison.Ordinal);
        Assert.Contains(Squeezed(CostWords.Bound(cost)!), text, StringComparison.Ordinal);
    }

    [Fact]
    public void Stock_without_money_has_no_sums_and_says_why()
    {
        var moneyless = OfNine with { Layout = OfNine.Layout with { Cost = OfNine.Layout.Cost with { HourIsAssumed = true, Hour = new Money(1, new Currency("XXX", 2)) } } };
        var text = TextOf(PlanBook.Set(moneyless), "Stock");

        Assert.DoesNotContain("inmoney", text, StringComparison.Ordinal);
        Assert.Contains(Squeezed(Assert.Single(CostWords.Assumptions(moneyless.Layout.Cost, moneyless.Format))), text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_page_has_the_promise_the_lower_bound_and_the_seed()
    {
        var text = TextOf(NineFile, "Summary");

        Assert.Contains(Squeezed("A date that can be promised" + DateWords.Month(OfNine.Forecast.P80!.Value.Date)), text, StringComparison.Ordinal);
        Assert.Contains(Squeezed(DateWords.Month(OfNine.Forecast.P50!.Value.Date)), text, StringComparison.Ordinal);
        Assert.Contains(Squeezed(DateWords.Month(OfNine.Forecast.P90!.Value.Date)), text, StringComparison.Ordinal);
        Assert.Contains(Squeezed($"Nothing can finish before {DateWords.When(OfNine.Plan.LowerBound.At)}, because of {OfNine.Plan.LowerBound.Reason}"), text, StringComparison.Ordinal);
        Assert.Contains("seed7", text, StringComparison.Ordinal);
        Assert.Contains(Squeezed("Board A1 weighs more than one person lifts here"), text, StringComparison.Ordinal);
    }

    [Fact]
    public void Remarks_that_differ_only_in_the_board_are_said_once()
    {
        var remark = OfNine.Remarks[0];
        var plan = OfNine with { Remarks = [remark, remark with { About = "A2", Text = remark.Text.Replace("A1", "A2", StringComparison.Ordinal) }] };

        var text = TextOf(PlanBook.Set(plan), "Summary");

        Assert.Contains(Squeezed("The same holds for A2."), text, StringComparison.Ordinal);
        Assert.Equal(2, text.Split(Squeezed(remark.Cure)).Length);
    }

    [Fact]
    public void Hours_without_use_are_told_before_the_work_begins()
    {
        var text = TextOf(PlanBook.Set(OfNine with { UnusedHours = ["The last quarter of an hour on Tuesdays is dark."] }), "Summary");

        Assert.Contains(Squeezed("The last quarter of an hour on Tuesdays is dark."), text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reader_can_jump_to_every_section_and_every_day()
    {
        using var document = PdfDocument.Open(NineFile);
        Assert.True(document.TryGetBookmarks(out var bookmarks));
        var titles = bookmarks.GetNodes().OfType<DocumentBookmarkNode>().Select(node => node.Title).ToList();

        Assert.All(
            ["Calendar", "Waits", "Cautions", "Stock", "Boards", "Cut list", "Day sheets", "Order of work, and why", "Log", .. PaperDay.Of(OfNine.Plan).Select(day => DateWords.Long(day.Date))],
            title => Assert.Contains(title, titles));
        Assert.Equal(OfNine.Job.Name, document.Information.Title);
    }

    [Fact]
    public void Only_embedded_fonts_are_used()
    {
        // A font of which a part is embedded has six letters and a plus before its name (ISO 32000-1, 9.6.4).
        Assert.All(ReadBack.Letters(NineFile).Select(letter => letter.FontName).Distinct(), name => Assert.Matches("^[A-Z]{6}\\+Inter", name));
    }

    [Fact]
    public void Two_workers_have_their_sessions_named_on_one_sheet()
    {
        var plan = APlan.Of(APlan.Parts(3), AShop.With(PaperSize.A4, false, "Ines", "Piet"));
        var day = PaperDay.Of(plan.Plan)[0];
        var text = TextOf(PlanBook.Set(plan), DateWords.Long(day.Date));

        Assert.Contains("Ines", text, StringComparison.Ordinal);
        Assert.Contains("Piet", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Boards_heavier_than_one_person_lifts_are_marked()
    {
        static Board Slab(int number) => ALayout.Board(number, BoardEdges.Live, 120, 16) with { Thickness = ALayout.In(2) };

        Assert.Contains("twopeopleoranaid", TextOf(PlanBook.Set(APlan.Of(APlan.Parts(3), AShop.With(PaperSize.A4), Slab)), "Stock"), StringComparison.Ordinal);
        Assert.DoesNotContain("twopeople", TextOf(NineFile, "Stock"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_plan_gives_the_same_bytes() => Assert.Equal(NineFile, PlanBook.Set(OfNine));

    private static string Escaped(string text) => Regex.Escape(Squeezed(text));

    private static IReadOnlyList<Part> PartsOf(int parts, string name) =>
        name == LongName ? [.. APlan.Parts(parts).Select((part, order) => part with { Name = $"{LongName}, no. {order}" })] : APlan.Parts(parts);

    private static byte[] FileOf(int parts, string paper, bool inches, string name) =>
        parts == 9 ? NineFile : PlanBook.Set(APlan.Of(PartsOf(parts, name), AShop.With(PaperSize.All.Single(size => size.Name == paper), inches)));

    // All the text of a section, without spaces: lines are broken wherever they must be.
    private static string TextOf(byte[] file, string section)
    {
        using var document = PdfDocument.Open(file);
        return string.Concat(document.GetPages().Where(page => SectionOf(page) == Squeezed(section)).Select(page => Squeezed(page.Text)));
    }

    // The words at the right of the head, above the line that ends it.
    private static string SectionOf(Page page) => string.Concat(page.Letters
        .Where(letter => letter.StartBaseLine.Y > page.Height - 40 && letter.StartBaseLine.X > page.Width / 2)
        .Select(letter => letter.Value.Trim()));

    private static string Squeezed(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));
}
