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
    private static readonly double[] Sizes = [10.5, 10, 9.5, 9];

    /// <summary>Sets it. The same values give the same bytes.</summary>
    /// <param name="told">The price.</param>
    /// <param name="made">When.</param>
    /// <returns>A PDF file.</returns>
    public static byte[] Set(ToldPrice told, Instant made)
    {
        var shop = told.Read.Shop;
        using var book = new Book(new Imprint($"Quote: {told.Job.Name}", $"Quote, {shop.Name}", "en", made));
        var sheet = new Sheet(book, shop.Paper, Margins.Usual, new(shop.Name, $"Quote: {told.Job.Name}", $"{DateWords.Long(told.Today)}; valid until {DateWords.Long(told.ValidUntil)}"));
        var blocks = Densities.First(Sizes, size => [.. Blocks(told, TypeScale.Body with { Size = size })], new(sheet.Area.Width, sheet.Area.Height)) ?? [.. Blocks(told, TypeScale.Body)];
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

    private static IEnumerable<Block> Blocks(ToldPrice told, TextStyle body)
    {
        var wanted = told.Job.Commission;
        yield return new Heading(told.Job.Name, TypeScale.Title) { BookmarkLevel = 0, Above = 0 };
        yield return new Paragraph($"Quote from {told.Read.Shop.Name}{(wanted.Client is { } client ? $" for {client}" : "")}", body.In(Weight.SemiBold));
        yield return new Paragraph($"{DateWords.Long(told.Today)}, valid until {DateWords.Long(told.ValidUntil)}", body) { After = 0.9 * body.Size };
        if (wanted.Description is { } description)
        {
            yield return new Paragraph(description, body);
        }

        yield return new Table([Column.Fixed("", 70), Column.Shared("")], [.. QuoteWords.Facts(told).Select(fact => Row.Of(new TextCell(fact.Name) { Style = body.In(Weight.SemiBold) }, fact.Words))], body) { After = 4 };
        if (wanted.Included.Count + wanted.NotIncluded.Count > 0)
        {
            yield return new SideBySide(22, Listed("Included", wanted.Included, body), Listed("Not included", wanted.NotIncluded, body));
        }

        yield return new Together(new Heading("Dates", TypeScale.Subheading) { BookmarkLevel = 1, Above = 6 }, new Bullets(QuoteWords.Dates(told), body));
        yield return new Together(new Heading("Price", TypeScale.Subheading) { BookmarkLevel = 1, Above = 6 }, PriceTable(told, body));
        yield return new Together(new Heading("Payments", TypeScale.Subheading) { BookmarkLevel = 1, Above = 2 }, PaymentTable.Of(told, body));
        yield return new Heading("Terms", TypeScale.Subheading) { BookmarkLevel = 1, Above = 2 };
        foreach (var paragraph in (string[])[QuoteWords.Changes, .. told.Money.SmallPrint])
        {
            yield return new Paragraph(paragraph, body);
        }

        yield return Signatures(told);
    }

    private static Table PriceTable(ToldPrice told, TextStyle body)
    {
        var quoted = told.Price.Quoted;
        var rows = quoted.Lines.Select(line => Row.Of(line.For == QuotedFor.Delivery ? "Delivery and placing" : told.Job.Name, MoneyWords.Of(line.Amount))).ToList();
        if (quoted.Tax.Amount > 0 && !quoted.TaxIsIncluded)
        {
            rows.AddRange(quoted.Lines.Where(line => line.Tax.Amount > 0).Select(line =>
                Row.Of($"Tax, {MoneyWords.Share(line.TaxRate)}{(quoted.Lines.Count == 1 ? "" : line.For == QuotedFor.Delivery ? " on delivery" : " on the piece")}", MoneyWords.Of(line.Tax))));
        }

        rows.Add(new Row(RowKind.Total, quoted is { TaxIsIncluded: true, Tax.Amount: > 0 } ? $"To pay, {MoneyWords.Of(quoted.Tax)} of it tax" : "To pay", MoneyWords.Of(quoted.Total)));
        return new([Column.Shared(""), Column.Fixed(quoted.Total.Currency.Code, AmountWidth, Align.Right)], rows, body);
    }

    private static Together Listed(string title, IReadOnlyList<string> entries, TextStyle body) => new(
        new Heading(title, TypeScale.Subheading) { Above = 4 },
        entries.Count == 0 ? new Paragraph("Nothing further.", body) : new Bullets([.. entries.Select(Wording.Capital)], body));

    private static Drawing Signatures(ToldPrice told) => new(58, Meaning.Words, (page, box) =>
    {
        var width = (box.Width - 30) / 2;
        foreach (var (words, left) in (ReadOnlySpan<(string, double)>)[("Accepted, with date", box.X), (told.Read.Shop.Name, box.X + width + 30)])
        {
            page.Line(left, box.Y + 40, left + width, box.Y + 40, Pen.Fine);
            page.Text(words, left, box.Y + 52, TypeScale.Small.Fitted(words, width, 6));
        }
    });
}
