using ShopDays.Cli.Files;

namespace ShopDays.Cli.Bench.Now;

/// <summary>When each file of a shop that a maker writes was written last, and how long it is: it tells that one has changed.</summary>
internal static class FileStamps
{
    /// <summary>The stamp of all of them, in one text.</summary>
    public static string Of(ShopFolder folder) => string.Join('\n', Files(folder).Select(OfFile));

    /// <summary>The stamp of what a layout of a job is made from.</summary>
    public static string Of(ShopFolder folder, string job) => string.Join('\n', Files(folder)
        .Where(file => Path.GetDirectoryName(file) != folder.Jobs || Path.GetFileName(file).StartsWith(job + ".", StringComparison.Ordinal))
        .Select(OfFile));

    private static IEnumerable<string> Files(ShopFolder folder) =>
    [
        Path.Combine(folder.Path, ShopFolder.ShopFileName),
        Path.Combine(folder.Path, ShopFolder.RatesFileName),
        .. Directory.Exists(folder.Jobs) ? Directory.EnumerateFiles(folder.Jobs).Order(StringComparer.Ordinal).ToArray() : [],
    ];

    private static string OfFile(string path) => new FileInfo(path) is { Exists: true } file
        ? FormattableString.Invariant($"{path} {file.LastWriteTimeUtc.Ticks} {file.Length}")
        : path;
}
