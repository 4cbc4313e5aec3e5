namespace ShopDays.Cli.Files;

/// <summary>Writes files that appear whole or not at all.</summary>
public static class WholeFile
{
    /// <summary>Writes a file as <see cref="Write"/> does, for a maker who is told in plain words what stands against it.</summary>
    /// <param name="path">Where the file is to be.</param>
    /// <param name="bytes">All that it holds.</param>
    /// <param name="makeFolder">Whether its folder is made where there is none.</param>
    /// <exception cref="FileTroubleException">The file cannot be written.</exception>
    public static void Save(string path, ReadOnlySpan<byte> bytes, bool makeFolder = false)
    {
        try
        {
            if (makeFolder)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            }

            Write(path, bytes);
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw FileTroubleException.Writing(path, trouble);
        }
    }

    /// <summary>
    /// Writes a file: first beside its place under another name, down to the disk, then by renaming. A file that was
    /// there before stays untouched until that moment; on any failure nothing is left behind. A link stays a link: the
    /// file that it leads to is written.
    /// </summary>
    /// <param name="path">Where the file is to be; its folder must exist.</param>
    /// <param name="bytes">All that it holds.</param>
    /// <exception cref="IOException">The folder is missing, the disk is full, or a folder has that name.</exception>
    /// <exception cref="UnauthorizedAccessException">The place may not be written to.</exception>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        var named = new FileInfo(path);
        var place = named.LinkTarget is null ? named.FullName : named.ResolveLinkTarget(returnFinalTarget: true)!.FullName;
        var folder = Path.GetDirectoryName(place) ?? throw new IOException($"'{path}' names a folder, not a file.");
        var beside = Path.Combine(folder, $".{Path.GetRandomFileName()}.part");
        try
        {
            using (var file = new FileStream(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }

            File.Move(beside, place, overwrite: true);
        }
        finally
        {
            // After the renaming there is nothing of this name; deleting what is not there does nothing.
            if (Directory.Exists(folder))
            {
                File.Delete(beside);
            }
        }
    }
}
