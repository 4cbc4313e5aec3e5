using System.Collections.Concurrent;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace ShopDays.Cli.Tests.Running;

/// <summary>The paper of a sample, read back once by a reader that shares nothing with the writer.</summary>
internal sealed record ReadPaper(string Title, IReadOnlyList<ReadPage> Pages)
{
    private static readonly ConcurrentDictionary<string, Lazy<Task<ReadPaper>>> Read = new(StringComparer.Ordinal);

    /// <summary>All text, without spaces: lines are broken wherever they must be.</summary>
    public string Text { get; } = string.Concat(Pages.Select(page => page.Text));

    /// <summary>The paper of a sample.</summary>
    public static Task<ReadPaper> Of(string shop) => Read.GetOrAdd(shop, name => new(async () =>
    {
        using var paper = PdfDocument.Open(await Sample.Of(name).Pdf());
        return new(paper.Information.Title ?? "", [.. paper.GetPages().Select(ReadPage.Of)]);
    })).Value;

    /// <summary>A text without its spaces.</summary>
    public static string Squeezed(string text) => string.Concat(text.Where(letter => !char.IsWhiteSpace(letter)));
}

/// <summary>A page: its size in points, its text without spaces, its fonts, and the cuts in its tables, such as <c>3 rip</c>.</summary>
internal sealed record ReadPage(double Width, double Height, string Text, IReadOnlyList<string> Fonts, IReadOnlyList<string> Cuts)
{
    private const string HeadOfCuts = "Onthepieceinhand";
    private static readonly string[] Kinds = ["rip", "crosscut", "resaw", "straighten"];

    public static ReadPage Of(Page page)
    {
        var text = ReadPaper.Squeezed(page.Text);
        return new(
            Math.Round(page.Width, 2, MidpointRounding.AwayFromZero),
            Math.Round(page.Height, 2, MidpointRounding.AwayFromZero),
            text,
            [.. page.Letters.Select(letter => letter.FontName).OfType<string>().Distinct()],
            text.Contains(HeadOfCuts, StringComparison.Ordinal) ? [.. CutsOn(page)] : []);
    }

    // Number and kind of a cut stand beside each other in a row.
    private static IEnumerable<string> CutsOn(Page page)
    {
        var words = page.GetWords().ToList();
        return words.Zip(words.Skip(1))
            .Where(pair => Kinds.Contains(pair.Second.Text) && pair.First.Text.All(char.IsAsciiDigit))
            .Select(pair => $"{pair.First.Text} {pair.Second.Text}");
    }
}
