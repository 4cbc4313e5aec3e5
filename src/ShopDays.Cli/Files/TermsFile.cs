using System.Text;
using System.Text.RegularExpressions;

namespace ShopDays.Cli.Files;

/// <summary>Reads the terms that stand under a quote: a text of the maker's own in the shop's folder, its paragraphs parted by empty lines, the lines of a list each by itself.</summary>
internal static partial class TermsFile
{
    private const int LargestBytes = 50_000;

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>Reads the file that is named, from the folder of another one; a name that leads out of that folder is a mistake.</summary>
    public static ValueReader<IReadOnlyList<string>> Beside(SourceFile shop) => (node, reading) =>
    {
        var name = Values.Text("a text file in the shop's folder, such as terms.txt")(node, reading)
            .Unless(reading.Findings, path => LeadsOut(shop, path) ? MoneyMistakes.TermsElsewhere(node.Place, path) : null);
        if (!name.IsRead)
        {
            return Field<IReadOnlyList<string>>.Wrong(node.Place);
        }

        try
        {
            var bytes = shop.Beside(name.Value!).Bytes;
            if (bytes.Length > LargestBytes)
            {
                reading.Findings.Add(MoneyMistakes.TermsTooLong(node.Place, name.Value!));
                return Field<IReadOnlyList<string>>.Wrong(node.Place);
            }

            return Field<IReadOnlyList<string>>.Read(node.Place, Paragraphs(Strict.GetString(bytes)));
        }
        catch (FileTroubleException trouble)
        {
            reading.Findings.Add(MoneyMistakes.NoTermsFile(node.Place, name.Value!, trouble.Why));
        }
        catch (DecoderFallbackException)
        {
            reading.Findings.Add(MoneyMistakes.NoTermsFile(node.Place, name.Value!, "is not a text in UTF-8"));
        }

        return Field<IReadOnlyList<string>>.Wrong(node.Place);
    };

    /// <summary>Whether a path is not in the folder of a file or below it; a link on the way counts as leading out, wherever it leads.</summary>
    private static bool LeadsOut(SourceFile shop, string path)
    {
        var folder = Path.GetFullPath(Path.GetDirectoryName(shop.Path) is { Length: > 0 } named ? named : ".");
        if (path.Contains('\0', StringComparison.Ordinal) || Path.IsPathRooted(path) || !IsBelow(Path.GetFullPath(Path.Combine(folder, path)), folder))
        {
            return true;
        }

        for (FileSystemInfo? at = new FileInfo(Path.Combine(folder, path)); at is not null && IsBelow(Path.GetFullPath(at.FullName), folder); at = Directory.GetParent(at.FullName))
        {
            if (at.LinkTarget is not null)
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsBelow(string path, string folder) => path.StartsWith(folder.TrimEnd(Path.DirectorySeparatorChar) + Path.DirectorySeparatorChar, StringComparison.Ordinal);

    /// <summary>Lines that follow one another are one paragraph, but for those of a list: each of these stands by itself.</summary>
    private static List<string> Paragraphs(string text)
    {
        List<string> paragraphs = [];
        var isOpen = false;
        foreach (var line in text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n', StringSplitOptions.TrimEntries))
        {
            if (isOpen && line.Length > 0 && !EntryOfAList().IsMatch(line))
            {
                paragraphs[^1] += " " + line;
            }
            else if (line.Length > 0)
            {
                paragraphs.Add(line);
            }

            isOpen = line.Length > 0;
        }

        return paragraphs;
    }

    [GeneratedRegex(@"^([-*•–]|\(?[0-9]{1,3}[.)]|\(?[a-z]\))\s")]
    private static partial Regex EntryOfAList();
}
