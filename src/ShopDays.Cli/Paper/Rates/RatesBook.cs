using NodaTime;
using ShopDays.Cli.Paper.Setting;
using ShopDays.Cli.Phrases;
using ShopDays.Times;

namespace ShopDays.Cli.Paper.Rates;

/// <summary>A shop's rates as a file to be printed: the report card with the table of rates, then the pictures.</summary>
internal static class RatesBook
{
    private const double TallestPanel = 185;
    private const double Between = 18;

    /// <summary>Sets it. The same values give the same bytes.</summary>
    /// <param name="told">The rates and all that is told about them.</param>
    /// <param name="courses">How those with most times became known; may be empty.</param>
    /// <param name="made">When.</param>
    /// <returns>A PDF file.</returns>
    public static byte[] Set(ToldRates told, IReadOnlyList<RateCourse> courses, Instant made)
    {
        using var book = new Book(new Imprint("Rates", $"Rates of {told.Shop.Name}", "en", made));
        var margins = Margins.Usual;
        Dress Dressed(string section) => new($"Rates, {told.Shop.Name}", section, $"Made {DateWords.Long(told.Today)}");
        var sheet = new Sheet(book, told.Shop.Paper, margins, Dressed("Report card"));
        foreach (var block in FirstPage(told))
        {
            sheet.Add(block);
        }

        if (told.Card is not null)
        {
            sheet.NewPage(Dressed("Expected and taken"));
            sheet.Add([.. Expected(told, sheet.Area.Width)]);
        }

        if (courses.Count > 0)
        {
            sheet.NewPage(Dressed("How rates became known"));
            sheet.Add([.. Narrowing(told, courses, sheet.Area)]);
        }

        sheet.Finish();
        return book.ToBytes();
    }

    private static IEnumerable<Block> FirstPage(ToldRates told)
    {
        var sentences = told.Sentences;
        yield return new Heading("How fast this shop works", TypeScale.Title) { BookmarkLevel = 0, Above = 0 };
        yield return new Paragraph($"{told.Shop.Name}, {DateWords.Long(told.Today)}. From {(told.Entries == 1 ? "one entry" : CountWords.Number(told.Entries) + " entries")} of the log.", TypeScale.Body);
        yield return new Heading("How far to trust the ranges", TypeScale.Subheading);
        yield return new Paragraph(sentences[0], TypeScale.Bench.In(Weight.SemiBold));
        yield return new Bullets([.. sentences.Skip(1)], TypeScale.Body);
        if (told.NotLearnedFrom is { Count: > 0 } left)
        {
            yield return new Heading("Not learned from", TypeScale.Subheading);
            yield return new Bullets(left, TypeScale.Body);
        }

        yield return new Heading("Rates", TypeScale.Subheading) { BookmarkLevel = 1 };
        if (told.Rates.Count == 0)
        {
            yield return new Paragraph("None was timed yet.", TypeScale.Body);
            yield break;
        }

        yield return new Table(
            [
                Column.Shared("Operation"),
                Column.Fixed("Tables say", 52, Align.Right),
                Column.Fixed("Now", 40, Align.Right),
                Column.Fixed("80 % range of the rate", 100, Align.Right),
                Column.Fixed("", 48),
                Column.Fixed("Times", 30, Align.Right),
            ],
            [.. told.Rates.Select(rate => RowOf(told, rate))],
            TypeScale.Body with { Size = 10 });
        yield return new Paragraph(ToldRates.SmallPrint, TypeScale.Small);
    }

    private static Row RowOf(ToldRates told, OperationRate rate)
    {
        var reading = told.ReadingOf(rate);
        var at = told.AtOf(rate);
        return Row.Of(
            new TextCell(ToldRates.NameOf(rate)) { Note = at.Length == 0 ? null : at },
            reading.Write(rate.Prior),
            new TextCell(reading.Write(rate.Learned)) { Style = TypeScale.Body with { Size = 10, Weight = Weight.SemiBold } },
            reading.WriteRange(rate.Learned),
            reading.Unit,
            CountWords.Number(rate.Entries) + (rate.HeldOut > 0 ? $" + {CountWords.Number(rate.HeldOut)}" : ""));
    }

    private static IEnumerable<Block> Expected(ToldRates told, double width)
    {
        var picture = new EstimatePicture(told.Model, width);
        yield return new Heading(EstimatePicture.Title, TypeScale.Heading) { BookmarkLevel = 0, Above = 0 };
        yield return new Paragraph("Each mark is a timed task, beside what all the other times made one expect of it. Where its bar crosses the broken line it lies inside its 80 % range: four in five should.", TypeScale.Body);
        yield return new Gap(8);
        yield return new Drawing(picture.Height, Meaning.Picture(picture.Description), (page, box) => page.Draw(picture.Drawn(), new(box.X, box.Y)));
    }

    private static IEnumerable<Block> Narrowing(ToldRates told, IReadOnlyList<RateCourse> courses, Box area)
    {
        yield return new Heading("How rates became known", TypeScale.Heading) { BookmarkLevel = 0, Above = 0 };
        yield return new Paragraph(Key, TypeScale.Body);
        yield return new Gap(6);
        var width = (area.Width - Between) / 2;
        foreach (var row in courses.Chunk(2))
        {
            NarrowingPicture[] panels = [.. row.Select(course => new NarrowingPicture(told, course, width, TallestPanel))];
            Picture[] pictures = [.. panels.Select(panel => panel.Drawn())];
            yield return new Drawing(TallestPanel, Meaning.Picture(string.Join(' ', panels.Select(panel => panel.Description))), (page, box) =>
            {
                for (var at = 0; at < pictures.Length; at++)
                {
                    page.Draw(pictures[at], new(box.X + (at * (width + Between)), box.Y));
                }
            });
            yield return new Gap(Between);
        }
    }

    /// <summary>How the pictures are to be read.</summary>
    public static string Key => "The band is the 80 % range of the rate, the line in it its middle: hatched as the tables have it, grey after each time that was logged. Dots are the times themselves, told for the stated timber and size; a cross is held out. Up and down is logarithmic.";
}
