namespace ShopDays.Cli.Files;

/// <summary>Writes files that appear whole or not at all.</summary>
public static class WholeFile
{
    private const string Ending = ".part";

    /// <summary>A name of 255 bytes is the longest there is; what is added takes some of it.</summary>
    private const int LongestLead = 100;

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
    /// there before stays untouched until that moment; on any failure nothing is left behind, and what a killed run left
    /// a day ago is cleared away. A link stays a link: the file that it leads to is written.
    /// </summary>
    /// <param name="path">Where the file is to be; its folder must exist.</param>
    /// <param name="bytes">All that it holds.</param>
    /// <exception cref="IOException">The folder is missing, the disk is full, or a folder has that name.</exception>
    /// <exception cref="UnauthorizedAccessException">The place may not be written to.</exception>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        var passing = WriteBeside(path, bytes);
        try
        {
            File.Move(passing.Beside, passing.Place, overwrite: true);
        }
        finally
        {
            Forget(passing.Beside);
        }
    }

    /// <summary>
    /// Writes several files into one folder, which is made where there is none: all of them beside their places first, so that
    /// a full disk or a name that is taken leaves everything as it was. What else is in the folder stays.
    /// </summary>
    /// <param name="folder">The folder.</param>
    /// <param name="files">Names without a folder, and all that each holds.</param>
    /// <exception cref="FileTroubleException">They cannot be written.</exception>
    public static void SaveAll(string folder, IReadOnlyList<(string Name, byte[] Bytes)> files)
    {
        if (File.Exists(folder))
        {
            throw FileTroubleException.Of(folder, "is a file, not a folder");
        }

        var isNew = !Directory.Exists(folder);
        List<(string Beside, string Place)> passing = [];
        var isWritten = false;
        try
        {
            Directory.CreateDirectory(folder);
            foreach (var (name, bytes) in files)
            {
                passing.Add(WriteBeside(Path.Combine(folder, name), bytes));
            }

            foreach (var (beside, place) in passing)
            {
                File.Move(beside, place, overwrite: true);
            }

            isWritten = true;
        }
        catch (Exception trouble) when (trouble is IOException or UnauthorizedAccessException)
        {
            throw FileTroubleException.Writing(folder, trouble);
        }
        finally
        {
            foreach (var (beside, _) in passing)
            {
                Forget(beside);
            }

            if (isNew && !isWritten && Directory.Exists(folder) && !Directory.EnumerateFileSystemEntries(folder).Any())
            {
                Directory.Delete(folder);
            }
        }
    }

    private static (string Beside, string Place) WriteBeside(string path, ReadOnlySpan<byte> bytes)
    {
        var named = new FileInfo(path);
        var place = named.LinkTarget is null ? named.FullName : named.ResolveLinkTarget(returnFinalTarget: true)!.FullName;
        var folder = Path.GetDirectoryName(place) ?? throw new IOException($"'{path}' names a folder, not a file.");
        if (Directory.Exists(place))
        {
            throw new IOException($"'{path}' is a folder, not a file.");
        }

        RefuseWhatIsNoFile(place);
        var passing = $".{Path.GetFileName(place)}";
        passing = passing[..Math.Min(passing.Length, LongestLead)];
        var beside = Path.Combine(folder, $"{passing}.{Path.GetRandomFileName()}{Ending}");
        try
        {
            using (var file = new FileStream(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None))
            {
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }

            RemoveWhatWasLeft(folder, passing, File.GetLastWriteTimeUtc(beside));
            return (beside, place);
        }
        catch
        {
            Forget(beside);
            throw;
        }
    }

    // After the renaming there is nothing of this name; deleting what is not there does nothing.
    private static void Forget(string beside)
    {
        if (Directory.Exists(Path.GetDirectoryName(beside)))
        {
            File.Delete(beside);
        }
    }

    /// <summary>Renaming over a device or a pipe would put a file in its place: it is refused. Opening both ways never waits for a reader.</summary>
    private static void RefuseWhatIsNoFile(string place)
    {
        if (!File.Exists(place))
        {
            return;
        }

        if (!OperatingSystem.IsWindows() && place.StartsWith("/dev/", StringComparison.Ordinal))
        {
            throw new IOException("it is a device, not a file");
        }

        using var there = new FileStream(place, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete);
        if (!there.CanSeek)
        {
            throw new IOException("it is a pipe or a device, not a file");
        }
    }

    /// <summary>A run that was killed leaves its passing file; a day later nobody is still writing it.</summary>
    private static void RemoveWhatWasLeft(string folder, string passing, DateTime now)
    {
        foreach (var left in Directory.EnumerateFiles(folder, $"{passing}.*{Ending}"))
        {
            if (now - File.GetLastWriteTimeUtc(left) > TimeSpan.FromDays(1))
            {
                File.Delete(left);
            }
        }
    }
}
