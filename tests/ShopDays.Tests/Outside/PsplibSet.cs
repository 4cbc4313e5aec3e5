using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;

namespace ShopDays.Tests.Outside;

/// <summary>The published scheduling problems of one size, out of their archive.</summary>
/// <param name="Name">j30, j60 or j120.</param>
/// <param name="Instances">The problems, by group and number.</param>
internal sealed record PsplibSet(string Name, ImmutableArray<PsplibInstance> Instances)
{
    /// <summary>The names of all sets.</summary>
    public static readonly ImmutableArray<string> Names = ["j30", "j60", "j120"];

    internal static string Folder { get; } = Path.Combine(AppContext.BaseDirectory, "Outside", "data", "psplib");

    /// <summary>Reads every n-th problem of a set, beginning with the first.</summary>
    public static PsplibSet Read(string name, int every = 1)
    {
        using var archive = ZipFile.OpenRead(Path.Combine(Folder, name + ".zip"));
        return new(name, [.. Rows(name).Where((_, index) => index % every == 0).Select(row => Read(archive, row))]);
    }

    /// <summary>Reads one problem, by the name of its file without ending.</summary>
    public static PsplibInstance One(string instance)
    {
        foreach (var name in Names)
        {
            if (Rows(name).FirstOrDefault(row => row[2] == instance + ".sm") is { } row)
            {
                using var archive = ZipFile.OpenRead(Path.Combine(Folder, name + ".zip"));
                return Read(archive, row);
            }
        }

        throw new ArgumentException($"no published problem is called {instance}", nameof(instance));
    }

    private static PsplibInstance Read(ZipArchive archive, string[] row)
    {
        using var file = new StreamReader(archive.GetEntry(row[2])!.Open());
        var instance = PsplibInstance.Parse(file.ReadToEnd(), Path.GetFileNameWithoutExtension(row[2]), Number(row[0]), Number(row[5].Length == 0 ? row[4] : row[5]), Number(row[6]));
        return instance.CriticalPath == Number(row[4]) ? instance : throw new InvalidDataException($"{row[2]} and the table have different critical paths");
    }

    private static IEnumerable<string[]> Rows(string name) =>
        File.ReadLines(Path.Combine(Folder, name + ".csv")).Skip(1).Where(line => line.Length > 0).Select(line => line.Split(','));

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);
}
