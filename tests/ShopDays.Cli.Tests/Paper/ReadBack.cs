using NodaTime;
using ShopDays.Cli.Paper.Setting;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;

namespace ShopDays.Cli.Tests.Paper;

/// <summary>Makes small files and reads them back with a reader that shares nothing with the writer.</summary>
internal static class ReadBack
{
    public static Imprint Imprint { get; } = new("Test piece", "Plan", "en", Instant.FromUtc(2027, 3, 1, 7, 0));

    public static byte[] Flowed(params Block[] blocks)
    {
        using var book = new Book(Imprint);
        var sheet = new Sheet(book, PaperSize.Letter, Margins.Usual, new Dress("Test piece", "Plan", "Made by hand"));
        sheet.Add(blocks);
        sheet.Finish();
        return book.ToBytes();
    }

    public static byte[] Drawn(Action<Surface> draw)
    {
        using var book = new Book(Imprint);
        draw(book.AddPage(PaperSize.A4));
        return book.ToBytes();
    }

    /// <summary>The text of every page, in the order in which it was set.</summary>
    public static string[] Pages(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        return [.. document.GetPages().Select(page => page.Text)];
    }

    /// <summary>The words of every page, found by their distances as a reader's search finds them.</summary>
    public static string[][] Words(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        return [.. document.GetPages().Select(page => page.GetWords().Select(word => word.Text).ToArray())];
    }

    /// <summary>All objects of a kind.</summary>
    public static IReadOnlyList<DictionaryToken> Dictionaries(byte[] file, string type)
    {
        using var document = PdfDocument.Open(file);
        return
        [
            .. document.Structure.CrossReferenceTable.ObjectOffsets.Keys
                .Select(one => document.Structure.GetObject(one).Data)
                .OfType<DictionaryToken>()
                .Where(one => one.Data.TryGetValue("Type", out var kind) && kind is NameToken name && name.Data == type),
        ];
    }

    public static Letter[] Letters(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        return [.. document.GetPages().SelectMany(page => page.Letters)];
    }
}
