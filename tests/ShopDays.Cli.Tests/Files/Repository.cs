namespace ShopDays.Cli.Tests.Files;

/// <summary>The folders of this repository, found from where the tests run.</summary>
internal static class Repository
{
    private static readonly Lazy<string> Root = new(() =>
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "ShopDays.sln")))
        {
            at = at.Parent ?? throw new InvalidOperationException("the tests do not run inside the repository");
        }

        return at.FullName;
    });

    public static string Folder(params string[] names) => Path.Combine([Root.Value, .. names]);
}
