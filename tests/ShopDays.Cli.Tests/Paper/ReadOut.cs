using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Tokens;

namespace ShopDays.Cli.Tests.Paper;

/// <summary>A part of a file as a program reads it out: its kind, the words in a picture's place, its words on the pages, and its parts.</summary>
internal sealed record ReadOut(string Kind, string? Alternative, string? Scope, int Columns, string Words, IReadOnlyList<ReadOut> Parts)
{
    /// <summary>This part and all below it, in the order in which they are read.</summary>
    public IEnumerable<ReadOut> All => [this, .. Parts.SelectMany(part => part.All)];

    /// <summary>Its words and those of its parts, without spaces.</summary>
    public string AllWords => string.Concat(All.Select(part => part.Words));

    /// <summary>The whole of a file.</summary>
    public static ReadOut Of(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        return new Reader(document).Whole();
    }

    private sealed class Reader(PdfDocument document)
    {
        private readonly Dictionary<(int Page, int Number), string> words = document.GetPages()
            .SelectMany(page => page.GetMarkedContents().SelectMany(Flat).Where(marked => marked.MarkedContentIdentifier >= 0).Select(marked => (Key: (page.Number - 1, marked.MarkedContentIdentifier), Words: string.Concat(marked.Letters.Select(letter => letter.Value.Trim())))))
            .ToDictionary(one => one.Key, one => one.Words);

        public ReadOut Whole()
        {
            var root = (DictionaryToken)Resolved(document.Structure.Catalog.CatalogDictionary.Data["StructTreeRoot"]);
            return PartOf((DictionaryToken)Resolved(root.Data["K"]));
        }

        private static IEnumerable<MarkedContentElement> Flat(MarkedContentElement marked) => [marked, .. marked.Children.SelectMany(Flat)];

        private ReadOut PartOf(DictionaryToken part)
        {
            List<ReadOut> parts = [];
            var said = "";
            foreach (var inside in part.Data.TryGetValue("K", out var kids) ? Listed(Resolved(kids)) : [])
            {
                switch (inside)
                {
                    case NumericToken number:
                        said += words[(PageOf(part), number.Int)];
                        break;
                    case DictionaryToken strokes when strokes.Data.ContainsKey("MCID"):
                        said += words[(PageOf(strokes), ((NumericToken)strokes.Data["MCID"]).Int)];
                        break;
                    case DictionaryToken below:
                        parts.Add(PartOf(below));
                        break;
                    default:
                        throw new InvalidOperationException($"What is {inside} doing in the structure?");
                }
            }

            var attributes = part.Data.TryGetValue("A", out var a) ? (DictionaryToken)Resolved(a) : null;
            return new(
                ((NameToken)part.Data["S"]).Data,
                part.Data.TryGetValue("Alt", out var alt) ? ((IDataToken<string>)Resolved(alt)).Data : null,
                attributes?.Data.TryGetValue("Scope", out var scope) == true ? ((NameToken)scope).Data : null,
                attributes?.Data.TryGetValue("ColSpan", out var span) == true ? ((NumericToken)span).Int : 1,
                said,
                parts);
        }

        private IEnumerable<IToken> Listed(IToken token) => token is ArrayToken array ? array.Data.Select(Resolved) : [token];

        // Pages are counted in the tree of numbers as they follow each other.
        private int PageOf(DictionaryToken part) => ((NumericToken)((DictionaryToken)Resolved(part.Data["Pg"])).Data["StructParents"]).Int;

        private IToken Resolved(IToken token) => token is IndirectReferenceToken reference ? document.Structure.GetObject(reference.Data).Data : token;
    }
}
