namespace ShopDays.Benchmarks;

/// <summary>The sample shops of the project, copied to be written in.</summary>
internal static class Samples
{
    /// <summary>Copies one.</summary>
    /// <param name="name">Its folder's name.</param>
    /// <param name="target">Where to.</param>
    public static void Copy(string name, string target)
    {
        var source = Path.Combine(Root(), "sample-projects", name);
        foreach (var file in Directory.EnumerateFiles(source, "*", SearchOption.AllDirectories).Where(file => !Path.GetFileName(file).StartsWith("shop.db", StringComparison.Ordinal)))
        {
            var copy = Path.Combine(target, Path.GetRelativePath(source, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    private static string Root()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(at.FullName, "ShopDays.sln")))
        {
            at = at.Parent ?? throw new DirectoryNotFoundException("this is not run within the checkout");
        }

        return at.FullName;
    }
}
