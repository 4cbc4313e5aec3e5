using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;

namespace ShopDays.Cli.Paper.Setting;

/// <summary>
/// The marks that tell one PDF file, and one font subset in it, from another. PDFsharp draws them at random; here
/// they are made from the file's content instead, each of the same length as before, so that no offset moves.
/// </summary>
internal static partial class Marks
{
    /// <summary>Replaces the random marks of a file.</summary>
    public static byte[] Settle(byte[] file)
    {
        // Latin-1 keeps every byte as one character and back.
        var text = Encoding.Latin1.GetString(file);
        var blank = Replace(text, _ => 0);
        var hash = SHA256.HashData(Encoding.Latin1.GetBytes(blank));
        return Encoding.Latin1.GetBytes(Replace(text, place => hash[place % hash.Length]));
    }

    private static string Replace(string text, Func<int, byte> byteAt)
    {
        var subsets = new List<string>();
        var fonts = SubsetTag().Replace(text, tag =>
        {
            var order = subsets.IndexOf(tag.Value);
            if (order < 0)
            {
                order = subsets.Count;
                subsets.Add(tag.Value);
            }

            return string.Concat(Enumerable.Range(0, 6).Select(place => (char)('A' + (byteAt((6 * order) + place) % 26))));
        });
        return FileId().Replace(fonts, id =>
        {
            var place = 0;
            return string.Concat(id.Value.Select(c => c == '-' ? c : "0123456789ABCDEF"[byteAt(place++) % 16]));
        });
    }

    [GeneratedRegex(@"(?<=/)[A-Z]{6}(?=\+Inter[#,])")]
    private static partial Regex SubsetTag();

    [GeneratedRegex(@"(?<=/ID\[<[0-9A-F]{0,32}(><)?)[0-9A-F]{32}(?=>)|(?<=uuid:)[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}")]
    private static partial Regex FileId();
}
