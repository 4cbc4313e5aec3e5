using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Prices;

namespace ShopDays.Cli.Paper.Prices;

/// <summary>The quote that a maker sends: what the client gets, when, and for how much. Nothing of how the price was made is on it.</summary>
internal static class QuoteBook
{
    private const double AmountWidth = 96;

    // The roomiest first: a quote takes the first that lets it stand on one page.
    private static readonly Way[] Ways = [new(10.5), new(10), new(9.5), new(9.5) { IsClose = true }, new(9) { IsClose = true }, new(8.5) { IsClose = true }];

    /// <summary>Sets it. The same values give the same bytes.</summary>
    /// <param name="told">The price.</param>
    /// <param name="made">When.</param>
    /// <returns>A PDF file.</returns>
    public static byte[] Set(ToldPrice told, Instant made)
    {
        var shop = told.Read.Shop;
        using var book = new Book(new Imprint($"Quote: {told.Job.Name}", $"Quote, {shop.Name}", "en", made));
        var sheet = new Sheet(book, shop.Paper, Margins.Usual, new(shop.Name, $"Quote: {told.Job.Name}", $"{DateWords.Long(told.Today)}; valid until {DateWords.Long(told.ValidUntil)}"));
        var blocks = Densities.First(Ways, way => [.. Blocks(told, way)], new(sheet.Area.Width, sheet.Area.Height)) ?? [.. Blocks(told, Ways[0])];
        sheet.Add(blocks);
        sheet.Finish();
        return book.ToBytes();
    }

    /// <summary>All words of the maker's own on it.</summary>
    public static IEnumerable<string> Names(ToldPrice told)
    {
        var wanted = told.Job.Commission;
        return [told.Read.Shop.Name, told.Job.Name, wanted.Client ?? "", wanted.Description ?? "", .. wanted.Hardware.Select(item => item.Name), .. wanted.Included, .. wanted.NotIncluded, .. told.Money.SmallPrint];
    }

    private static IEnumerable<Block> Blocks(ToldPrice told, Way way)
    {
        var (wanted, body) = (told.Job.Commission, TypeScale.Body with { Size = way.Size });
        yield return new Heading(told.Job.Name, TypeScale.Title) { BookmarkLevel = 0, Above = 0 };
        yield return new Paragraph($"Quote from {told.Read.Shop.Name}{(wanted.Client is { } client ? $" for {client}" : "")}", body.In(Weight.SemiBold));
        yield return new Paragraph($"{DateWords.Long(told.Today)}, valid until {DateWords.Long(told.ValidUntil)}", body) { After = 0.9 * body.Size };
        if (wanted.Description is { } description)
        {
            yield return new Paragraph(description, body);
        }

        yield return new Table([Column.Fixed("", 70), Column.Shared("")], [.. QuoteWords.Facts(told).Select(fact => Row.Of(new TextCell(fact.Name) { Style = body.In(Weight.SemiBold) }, fact.Words))], body) { After = 4, Padding = way.Padding };
        if (wanted.Included.Count + wanted.NotIncluded.Count > 0)
        {
            yield return new SideBySide(22, Listed("Included", wanted.Included, way.Heading, body), Listed("Not included", wanted.NotIncluded, way.Heading, body));
        }

        yield return new Together(new Heading("Dates", way.Heading) { BookmarkLevel = 1, Above = 6 }, new Bullets(QuoteWords.Dates(told), body));
        yield return new Together(new Heading("Price", way.Heading) { BookmarkLevel = 1, Above = 6 }, PriceTable(told, body) with { Padding = way.Padding, After = way.After });
        yield return new Together(new Heading("Payments", way.Heading) { BookmarkLevel = 1, Above = 2 }, PaymentTable.Of(told, body) with { Padding = way.Padding, After = way.After });
        yield return new Heading("Terms", way.Heading) { BookmarkLevel = 1, Above = 2 };
        foreach (var paragraph in (string[])[QuoteWords.Changes, .. told.Money.SmallPrint])
        {
            yield return new Paragraph(paragraph, body);
        }

        yield return Signatures(told, way.IsClose ? 44 : 58);
    }

    private static Table PriceTable(ToldPrice told, TextStyle body)
    {
        var quoted = told.Price.Quoted;
        var rows = quoted.Lines.Select(line => Row.Of((line.For == QuotedFor.Delivery ? "Delivery and placing" : told.Job.Name) + TaxInIt(quoted, line), MoneyWords.Of(line.Amount))).ToList();
        if (quoted.Tax.Amount > 0 && !quoted.TaxIsIncluded)
        {
            rows.AddRange(quoted.Lines.Where(line => line.Tax.Amount > 0).Select(line =>
                Row.Of($"Tax, {MoneyWords.Share(line.TaxRate)}{(quoted.Lines.Count == 1 ? "" : line.For == QuotedFor.Delivery ? " on delivery" : " on the piece")}", MoneyWords.Of(line.Tax))));
        }

        rows.Add(new Row(RowKind.Total, quoted is { TaxIsIncluded: true, Tax.Amount: > 0 } ? $"To pay, {MoneyWords.Of(quoted.Tax)} of it tax" : "To pay", MoneyWords.Of(quoted.Total)));
        return new([Column.Shared(""), Column.Fixed(quoted.Total.Currency.Code, AmountWidth, Align.Right)], rows, body);
    }

    /// <summary>Where prices are quoted with their tax and the lines are taxed differently, each says at which rate.</summary>
    private static string TaxInIt(Quoted quoted, QuotedLine line) => quoted is { TaxIsIncluded: true, Lines.Count: > 1 }
        ? $", {(line.TaxRate.Value > 0 ? $"{MoneyWords.Share(line.TaxRate)} tax in it" : "no tax in it")}"
        : "";

    private static Together Listed(string title, IReadOnlyList<string> entries, TextStyle heading, TextStyle body) => new(
        new Heading(title, heading) { Above = 4 },
        entries.Count == 0 ? new Paragraph("Nothing further.", body) : new Bullets([.. entries.Select(Wording.Capital)], body));

    private static Drawing Signatures(ToldPrice told, double height) => new(height, Meaning.Words, (page, box) =>
    {
        var width = (box.Width - 30) / 2;
        foreach (var (words, left) in (ReadOnlySpan<(string, double)>)[("Accepted, with date", box.X), (told.Read.Shop.Name, box.X + width + 30)])
        {
            page.Line(left, box.Bottom - 18, left + width, box.Bottom - 18, Pen.Fine);
            page.Text(words, left, box.Bottom - 6, TypeScale.Small.Fitted(words, width, 6));
        }
    });

    /// <summary>How closely the quote is set.</summary>
    /// <param name="Size">Of its text.</param>
    private readonly record struct Way(double Size)
    {
        /// <summary>Whether the rows of its tables, and what stands behind them, keep little white.</summary>
        public bool IsClose { get; init; }

        /// <summary>How what names its parts is set.</summary>
        public TextStyle Heading => IsClose ? TypeScale.Subheading with { Size = Size + 1.5 } : TypeScale.Subheading;

        /// <summary>White above and below the text of a row, in points.</summary>
        public double Padding => (IsClose ? 0.14 : 0.28) * Size;

        /// <summary>Distance below a table, in points.</summary>
        public double After => (IsClose ? 0.5 : 1) * Size;
    }
}
