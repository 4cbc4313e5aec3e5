namespace ShopDays.Cli.Files;

/// <summary>A file that was read from the disk.</summary>
/// <param name="Path">Where it is.</param>
/// <param name="Name">How it is named to the maker: from the shop's folder, with slashes.</param>
/// <param name="Bytes">All that it holds.</param>
internal sealed record SourceFile(string Path, string Name, byte[] Bytes)
{
    /// <summary>Reads a file. Of one that is far too large only the beginning is read; its size is then reported.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="name">How it is named to the maker.</param>
    /// <param name="largest">More bytes than this are far too many.</param>
    /// <exception cref="FileTroubleException">It is missing, a folder, or may not be read.</exception>
    public static SourceFile Read(string path, string name, int largest = Yaml.YamlFile.LargestBytes)
    {
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            var bytes = new byte[(stream.CanSeek && stream.Length < largest ? (int)stream.Length : largest) + 1];
            var read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            return new(path, name, bytes[..read]);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw FileTroubleException.Reading(name, Directory.Exists(path), trouble);
        }
    }

    /// <summary>Reads a file that is named in this one, from this one's folder.</summary>
    /// <exception cref="FileTroubleException">It is missing, a folder, or may not be read.</exception>
    public SourceFile Beside(string name)
    {
        var folder = System.IO.Path.GetDirectoryName(Path) ?? "";
        var shown = System.IO.Path.GetDirectoryName(Name) ?? "";
        return Read(System.IO.Path.Combine(folder, name), System.IO.Path.Combine(shown, name).Replace('\\', '/'));
    }
}
