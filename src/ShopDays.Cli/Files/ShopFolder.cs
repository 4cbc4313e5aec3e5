using ShopDays.Measures;

namespace ShopDays.Cli.Files;

/// <summary>The folder of a shop: where <c>shop.yaml</c> lies, and <c>jobs</c> beside it.</summary>
/// <param name="Path">The folder.</param>
internal sealed record ShopFolder(string Path)
{
    public const string ShopFileName = "shop.yaml";
    public const string RatesFileName = "rates.yaml";
    public const string JobsFolderName = "jobs";
    public const string JobFileEnding = ".yaml";

    /// <summary>Where jobs lie.</summary>
    public string Jobs => System.IO.Path.Combine(Path, JobsFolderName);

    /// <summary>Finds the shop's folder by walking up from a folder.</summary>
    /// <returns>The folder; null when there is no shop file in it or above.</returns>
    public static ShopFolder? FindFrom(string folder)
    {
        for (var at = new DirectoryInfo(System.IO.Path.GetFullPath(folder)); at is not null; at = at.Parent)
        {
            if (File.Exists(System.IO.Path.Combine(at.FullName, ShopFileName)))
            {
                return new(at.FullName);
            }
        }

        return null;
    }

    /// <summary>As <see cref="FindFrom"/>, where nothing can be done without a shop.</summary>
    /// <exception cref="FileTroubleException">There is no shop file in the folder or above.</exception>
    public static ShopFolder MustFindFrom(string folder) => FindFrom(folder) ?? throw NoShop(folder);

    /// <summary>Finds a job and its shop from what a maker typed: a path, or the name of a job of the shop here.</summary>
    /// <param name="typed">For example <c>jobs/chest.yaml</c> or <c>chest</c>.</param>
    /// <param name="currentFolder">Where the maker stands.</param>
    /// <exception cref="FileTroubleException">There is no shop file, or no such job.</exception>
    public static (ShopFolder Shop, string JobPath) FindJob(string typed, string currentFolder)
    {
        var path = System.IO.Path.Combine(currentFolder, typed);
        if (File.Exists(path))
        {
            var folder = System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(path))!;
            return (FindFrom(folder) ?? throw NoShop(folder), System.IO.Path.GetFullPath(path));
        }

        var shop = MustFindFrom(currentFolder);
        var named = System.IO.Path.Combine(shop.Jobs, typed + JobFileEnding);
        return File.Exists(named) ? (shop, named) : throw NoJob(typed, shop);
    }

    /// <summary>The names of the shop's jobs, in ordinal order.</summary>
    public IReadOnlyList<string> JobNames() => Directory.Exists(Jobs)
        ? [.. Directory.EnumerateFiles(Jobs, "*" + JobFileEnding).Where(file => !file.EndsWith(Sawn.SawnFile.Ending, StringComparison.Ordinal) && !file.EndsWith(Variants.VariantsFile.Ending, StringComparison.Ordinal)).Select(file => System.IO.Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal)]
        : [];

    /// <summary>Reads a file of the shop; it is named from the shop's folder.</summary>
    /// <exception cref="FileTroubleException">It cannot be read.</exception>
    public SourceFile Read(string path)
    {
        var full = System.IO.Path.Combine(Path, path);
        return SourceFile.Read(full, System.IO.Path.GetRelativePath(Path, full).Replace('\\', '/'));
    }

    private static FileTroubleException NoShop(string folder) => new(
        $"there is no {ShopFileName} in {folder} or in a folder above it; go to the shop's folder, or begin one with: shopdays new NAME");

    private static FileTroubleException NoJob(string typed, ShopFolder shop)
    {
        var names = shop.JobNames();
        var nearest = NearestName.To(System.IO.Path.GetFileNameWithoutExtension(typed), names);
        return new($"no job is called {QuotedText.Of(typed)} in {shop.Jobs}; "
            + (names.Count == 0 ? "there are none yet" : "expected " + ValueMistakes.AnyOf(names, "jobs"))
            + (nearest is null ? "" : "; nearest: " + nearest));
    }
}
