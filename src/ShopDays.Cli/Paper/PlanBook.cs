using ShopDays.Cli.Paper.Boards;
using ShopDays.Cli.Paper.Days;
using ShopDays.Cli.Paper.Lists;
using ShopDays.Cli.Paper.Overview;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Paper;

/// <summary>The whole plan as one file to be printed: what to know first, what to saw, a sheet for every day, what to look up.</summary>
internal static class PlanBook
{
    /// <summary>Sets it. The same values give the same bytes.</summary>
    /// <returns>A PDF file.</returns>
    public static byte[] Set(PlanPaper plan)
    {
        using var book = new Book(new Imprint(plan.Job.Name, $"Plan in working days, {plan.Shop.Name}", "en", plan.Made));
        var paper = plan.Shop.Paper;
        var margins = Margins.Usual;
        var upright = RoomOf(paper, margins);
        var made = $"Made {DateWords.Long(plan.Made.InZone(plan.Plan.Finish.Zone).Date)}";
        var foot = plan.Rest is not { Standing.IsBegun: true } ? made : $"{made}, of what was left; sheets of days before stay valid";
        Dress Dressed(string section) => new($"{plan.Job.Name}, {plan.Shop.Name}", section, foot);

        var sheet = new Sheet(book, paper, margins, Dressed(Anew("Summary")));
        Set(SummaryPage.Of(plan, upright));
        Section("Calendar", paper, CalendarPages.Of(plan, upright));
        Section("Waits", paper, WaitPages.Of(plan, upright));
        Section("Cautions", paper, CautionPages.Of(plan, upright));
        if (plan.Rest is null || plan.ToCut.Count > 0)
        {
            Section("Stock", paper, StockPages.Of(plan));
            Section("Boards", paper.Turned(), BoardPages.Of(plan, RoomOf(paper.Turned(), margins)));
        }

        Section("Cut list", paper.Turned(), CutListPages.Of(plan));
        var days = PaperDay.Of(plan.Plan);
        foreach (var day in days)
        {
            sheet.NewPage(Dressed(DateWords.Long(day.Date)), paper);
            if (day.Number == 1)
            {
                book.Bookmark("Day sheets", book.Pages[^1], 0);
            }

            Set(DayPages.Of(plan, days, day, upright));
        }

        Section("Order of work", paper, OrderPages.Of(plan));
        Section("Log", paper, LogPages.Of(upright));
        sheet.Finish();
        return book.ToBytes();

        // What was printed before and what is printed now lie on one bench: each page says which it is.
        string Anew(string section) => plan.Rest is null ? section : $"{section}, anew from {DateWords.When(plan.Rest.From)}";

        void Section(string name, PaperSize size, IEnumerable<Block> blocks)
        {
            sheet.NewPage(Dressed(Anew(name)), size);
            Set(blocks);
        }

        void Set(IEnumerable<Block> blocks)
        {
            foreach (var block in blocks)
            {
                sheet.Add(block);
            }
        }
    }

    private static Room RoomOf(PaperSize paper, Margins margins) =>
        new(paper.Width - margins.Left - margins.Right, paper.Height - margins.Top - margins.Bottom);
}
