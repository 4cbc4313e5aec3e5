namespace ShopDays.Cli.Tests.Commands;

/// <summary>An empty folder that is gone after the test.</summary>
internal sealed class FreshFolder : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("shopdays-").FullName;

    public string File(params string[] names) => System.IO.Path.Combine([Path, .. names]);

    /// <summary>All files with all that is in them, to see whether anything was written.</summary>
    public IReadOnlyDictionary<string, string> Everything() => Directory
        .EnumerateFiles(Path, "*", SearchOption.AllDirectories)
        .ToDictionary(file => file, System.IO.File.ReadAllText, StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
