using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;

namespace ShopDays.Cli.Paper.Comparisons;

/// <summary>Ways of doing a job side by side, as a sheet to think over: what each comes to, what it changes and why, and single changes that would save something.</summary>
internal static class ComparisonBook
{
    /// <summary>Columns that a page holds, the job as it is among them.</summary>
    private const int MostInARow = 7;

    private const double WidthOfNames = 104;

    // The roomiest first: the ways take the first that lets them stand on one side of a sheet.
    private static readonly double[] Sizes = [10.5, 10, 9.5, 9, 8.5];

    /// <summary>Sets it. The same values give the same bytes.</summary>
    /// <param name="told">The ways that were asked for; none where only suggestions were.</param>
    /// <param name="suggested">Single changes that save something; null where none were asked for.</param>
    /// <param name="today">The date at the shop.</param>
    /// <param name="made">When.</param>
    /// <returns>A PDF file.</returns>
    public static byte[] Set(ToldComparison told, ToldComparison? suggested, LocalDate today, Instant made)
    {
        var (job, shop) = (told.Read.Job.Name, told.Read.Shop);
        using var book = new Book(new Imprint($"{job}: done otherwise", $"Ways of doing it side by side, {shop.Name}", "en", made));
        Dress Dressed(string section) => new($"{job}, {shop.Name}", section, $"Made {DateWords.Long(today)}; not for the client");
        ToldComparison[] all = [.. told.Others.Count > 0 || suggested is null ? [told] : (ToldComparison[])[], .. suggested is null ? [] : (ToldComparison[])[suggested]];
        Sheet? sheet = null;
        foreach (var one in all)
        {
            var dress = Dressed(Wording.Capital(one.Suggested is null ? "done otherwise" : "what would save"));
            if (sheet is null)
            {
                sheet = new Sheet(book, shop.Paper, Margins.Usual, dress);
            }
            else
            {
                sheet.NewPage(dress);
            }

            var room = new Room(sheet.Area.Width, sheet.Area.Height);
            var isFirst = one == all[0];
            sheet.Add(Densities.First(Sizes, size => [.. Blocks(one, today, isFirst, TypeScale.Body with { Size = size })], room) ?? [.. Blocks(one, today, isFirst, TypeScale.Body with { Size = 9.5 })]);
        }

        sheet!.Finish();
        return book.ToBytes();
    }

    /// <summary>All words of the maker's own on it.</summary>
    public static IEnumerable<string> Names(ToldComparison told) => [told.Read.Shop.Name, told.Read.Job.Name, .. told.Others.Select(one => one.Name)];

    private static IEnumerable<Block> Blocks(ToldComparison told, LocalDate today, bool isFirst, TextStyle body)
    {
        var title = $"{told.Read.Job.Name}: {(told.Suggested is null ? "done otherwise" : "what would save")}";
        yield return new Heading(title, isFirst ? TypeScale.Title : TypeScale.Heading) { BookmarkLevel = 0, Above = 0 };
        yield return new Paragraph($"{told.Read.Shop.Name}, {DateWords.Long(today)}.{InMoney(told)}", body);
        if (ComparisonWords.AsItIs(told) is { } cannot)
        {
            yield return new NoteBox("", [cannot], body);
        }

        foreach (var some in told.Others.Index().Chunk(MostInARow - 1))
        {
            yield return Side(told, some, body);
        }

        foreach (var (index, other) in told.Others.Index())
        {
            var small = body with { Size = body.Size - 0.5 };
            yield return new Together(
            [
                new Heading($"{CountWords.Number(index + 1)}. {Wording.Capital(other.Name)}", TypeScale.Subheading with { Size = body.Size + 0.5 }) { BookmarkLevel = 1, Above = 4 },
                .. ComparisonWords.Of(told, other).Select(one => new Paragraph(Wording.Signed(one.Lead + one.Words), small) { After = 0.15 * small.Size }),
            ]);
        }

        yield return new Gap(6);
        foreach (var note in (string[])[.. ComparisonWords.Notes(told), $"Times {told.Behind.Source}.", .. told.Behind.Notes])
        {
            yield return new Paragraph(note, TypeScale.Small with { Size = Math.Min(TypeScale.Small.Size, body.Size - 0.5) }) { After = 2 };
        }

        if (PaperNames.Remark(Names(told)) is { } remark)
        {
            yield return new Paragraph(remark, TypeScale.Small);
        }
    }

    private static string InMoney(ToldComparison told) => told.Read.Shop.Money is { } money
        ? $" Amounts in {money.Terms.Rate.PerHour.Currency.Code}, before tax; the price is the one at which an hour earns less than {MoneyWords.Of(money.Terms.Rate.PerHour)} in {MoneyWords.Share((decimal)told.Risk)} of the courses."
        : "";

    private static Table Side(ToldComparison told, (int Index, Tried Item)[] some, TextStyle body) => new(
        [
            Column.Fixed("What it comes to", WidthOfNames),
            Column.Shared("As it is", align: Align.Right),
            .. some.Select(one => Column.Shared(CountWords.Number(one.Index + 1), align: Align.Right)),
        ],
        [
            .. ComparedRows.Of(told, [told.AsIs, .. some.Select(one => one.Item)])
                .Select(row => Row.Of([Wording.Capital(row.Name), .. row.Cells.Select(cell => (Cell)Wording.Signed(cell))])),
        ],
        body with { Size = Math.Min(body.Size, some.Length > 4 ? 8 : 9.5) })
    {
        Distance = 5,
    };
}
