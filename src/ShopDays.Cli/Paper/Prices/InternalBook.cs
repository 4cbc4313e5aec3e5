using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Paper.Prices;

/// <summary>The price of a job for its maker: all that it is made of, and what it may come to.</summary>
internal static class InternalBook
{
    private const double AmountWidth = 76;
    private const double HeightOfCurve = 300;

    private static readonly TextStyle Body = TypeScale.Body with { Size = 10 };

    // The roomiest first: the cost takes the first that lets it stand on one page.
    private static readonly double[] Sizes = [10, 9.5, 9, 8.5, 8];

    /// <summary>Sets it. The same values give the same bytes.</summary>
    /// <param name="told">The price.</param>
    /// <param name="made">When.</param>
    /// <returns>A PDF file.</returns>
    public static byte[] Set(ToldPrice told, Instant made)
    {
        using var book = new Book(new Imprint($"{told.Job.Name}: price", $"Price for the maker, {told.Read.Shop.Name}", "en", made));
        Dress Dressed(string section) => new($"{told.Job.Name}, {told.Read.Shop.Name}", section, $"Made {DateWords.Long(told.Today)}; not for the client");
        var sheet = new Sheet(book, told.Read.Shop.Paper, Margins.Usual, Dressed("What it costs"));
        var room = new Room(sheet.Area.Width, sheet.Area.Height);
        sheet.Add(Densities.First(Sizes, size => [.. Cost(told, Body with { Size = size })], room) ?? [.. Cost(told, Body)]);
        sheet.NewPage(Dressed("What is asked for"));
        sheet.Add([.. Asked(told)]);
        sheet.NewPage(Dressed("What it may come to"));
        sheet.Add([.. Outlook(told, sheet.Area.Width)]);
        sheet.Finish();
        return book.ToBytes();
    }

    private static IEnumerable<Block> Cost(ToldPrice told, TextStyle body)
    {
        var (price, rate) = (told.Price, told.Risk.Rate);
        yield return new Heading($"{told.Job.Name}: price", TypeScale.Title) { BookmarkLevel = 0, Above = 0 };
        yield return new Paragraph($"{told.Read.Shop.Name}, {DateWords.Long(told.Today)}. Amounts in {rate.Currency.Code}. For the maker alone.", TypeScale.Body);
        yield return new SideBySide(
            16,
            Figure("The cost", "with what may go wrong", MoneyWords.Of(price.CostWithContingency), big: false),
            Figure("As quoted", price.Quoted.TaxIsIncluded ? $"before tax; {MoneyWords.Of(price.Quoted.Total)} with it" : "before tax", MoneyWords.Of(price.Quoted.BeforeTax), big: true),
            Figure("The risk", $"of earning less than {MoneyWords.Of(rate)} an hour", ChanceWords.Of(told.Chance), big: false));
        yield return new Heading("What it costs", TypeScale.Subheading) { BookmarkLevel = 1, Above = 4 };
        yield return new Table(Columns("Line", "Working"), [.. CostRows(told)], body);
    }

    private static IEnumerable<Block> Asked(ToldPrice told)
    {
        var (price, rate) = (told.Price, told.Risk.Rate);
        yield return new Heading("What is asked for", TypeScale.Heading) { BookmarkLevel = 0, Above = 0 };
        yield return new Table(Columns("", "Working"), [.. AskedRows(told)], Body) { After = 4 };
        yield return new Paragraph(QuotedRows.MarginLeft(price), TypeScale.Body);
        yield return new Together(new Heading("Payments", TypeScale.Subheading) { BookmarkLevel = 1 }, PaymentTable.Of(told, Body));
        if (price.Terms.Rate is { ToEarn: { } toEarn, Billable: { } billable } built)
        {
            yield return new Together(
                new Heading("What an hour has to earn", TypeScale.Subheading) { BookmarkLevel = 1 },
                new Table(
                    [Column.Shared(""), Column.Fixed("In a year", AmountWidth, Align.Right)],
                    [
                        .. built.PerYear.Select(one => Row.Of(Wording.Capital(one.Name), MoneyWords.Of(one.PerYear))),
                        Row.Of("In all", MoneyWords.Of(toEarn)),
                        new Row(RowKind.Total, $"By the hour, of {HourWords.Of(billable)} that are paid for", MoneyWords.Of(rate)),
                    ],
                    Body));
        }

        if (told.Notes.Count > 0)
        {
            yield return new NoteBox("Before it is sent", told.Notes, Body);
        }
    }

    private static IEnumerable<Row> AskedRows(ToldPrice told)
    {
        var rows = QuotedRows.Of(told.Price).ToList();
        return rows.Select((row, at) => new Row(at == rows.Count - 1 ? RowKind.Total : RowKind.Entry, Wording.Capital(row.What), row.Working, MoneyWords.Of(row.Amount)));
    }

    private static IEnumerable<Row> CostRows(ToldPrice told)
    {
        foreach (var group in told.Price.Lines.GroupBy(PriceWords.GroupOf))
        {
            yield return new Row(RowKind.Group, Wording.Capital(group.Key));
            foreach (var line in group)
            {
                yield return Row.Of(Wording.Capital(PriceWords.NameOf(line)), Wording.Signed(told.Words.WorkingOf(line, told.Risk.Rate)), MoneyWords.Of(line.Amount));
            }

            if (group.Key == LastExpected(told))
            {
                yield return new Row(RowKind.Total, "Cost", "", MoneyWords.Of(told.Price.Cost));
            }
        }

        if (told.Price.Contingency.Amount > 0)
        {
            yield return new Row(RowKind.Total, "Cost with what may go wrong", "", MoneyWords.Of(told.Price.CostWithContingency));
        }
    }

    private static string? LastExpected(ToldPrice told) => told.Price.Lines.LastOrDefault(line => !line.IsContingency) is { } last ? PriceWords.GroupOf(last) : null;

    private static IEnumerable<Block> Outlook(ToldPrice told, double width)
    {
        yield return new Heading("What it may come to", TypeScale.Heading) { BookmarkLevel = 0, Above = 0 };
        yield return new Bullets([.. RiskWords.Of(told)], TypeScale.Body);
        yield return new Heading($"Chance that an hour earns less than {MoneyWords.Of(told.Risk.Rate)}, by the price", TypeScale.Subheading);
        yield return new RiskPicture(told, width, HeightOfCurve).Drawn();
        yield return new Paragraph(SmallPrint(told), TypeScale.Small);
    }

    private static string SmallPrint(ToldPrice told) =>
        $"Hours are those that are as likely as not, shared out among the kinds of work as on average; for bad luck stand the hours that four courses in five keep, less those. "
        + $"The risk is counted in {CountWords.Of(told.Risk.Courses, "drawn course")}, with what is spoiled and done again in them, seed {CountWords.Number(told.Seed)}; money that goes out is taken as {MoneyWords.Of(told.Price.Outlay)} whatever the hours. "
        + $"Times {told.Behind.Source}. What tax is due, and when, an accountant knows.";

    private static Column[] Columns(string name, string working) =>
        [Column.Shared(name, 1.2), Column.Shared(working), Column.Fixed("Amount", AmountWidth, Align.Right)];

    private static Drawing Figure(string title, string meaning, string figure, bool big) => new(70, Meaning.Words, (page, box) =>
    {
        page.Line(box.X, box.Y + 3, box.Right, box.Y + 3, big ? new Pen(3) : Pen.Strong);
        page.Text(title, box.X, box.Y + 18, TypeScale.Label.Fitted(title, box.Width, 6));
        page.Text(figure, box.X, box.Y + 46, (TypeScale.BigFigure with { Size = big ? 28 : 22, Weight = big ? Weight.Bold : Weight.SemiBold }).Fitted(figure, box.Width, 12));
        page.Text(meaning, box.X, box.Y + 60, TypeScale.Small.Fitted(meaning, box.Width, 6));
    });
}
