using ShopDays.Cli.Calendars;
using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Jobs;
using ShopDays.Cli.Files.Sawn;
using ShopDays.Cli.Files.Variants;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Store;

namespace ShopDays.Cli.Tests.Files;

/// <summary>The corpus of broken files: <c>KIND/NAME.yaml</c> with the messages that it must give in <c>NAME.expected</c>.</summary>
internal static class BrokenFiles
{
    public const string ExpectedEnding = ".expected";

    private static readonly IReadOnlyList<string> Cautions = [.. BuiltIn.Cautions.Select(one => one.Kind)];

    public static string Folder { get; } = Repository.Folder("tests", "ShopDays.Cli.Tests", "Files", "broken");

    /// <summary>All cases, as <c>kind/name.yaml</c>, in ordinal order.</summary>
    public static IReadOnlyList<string> Cases { get; } =
    [
        .. Directory.EnumerateDirectories(Folder)
            .SelectMany(Directory.EnumerateFiles)
            .Where(file => Path.GetExtension(file) != ExpectedEnding)
            .Select(file => Path.GetRelativePath(Folder, file).Replace('\\', '/'))
            .Order(StringComparer.Ordinal),
    ];

    public static IReadOnlyList<Finding> Read(string name) => Read(Path.GetDirectoryName(name)!, SourceFile.Read(Path.Combine(Folder, name), Path.GetFileName(name)));

    /// <summary>Reads a file as what it is meant to be.</summary>
    /// <param name="kind">shop, job, rates, parts, sawn, log, variants or ical.</param>
    /// <param name="file">The file.</param>
    public static IReadOnlyList<Finding> Read(string kind, SourceFile file)
    {
        var findings = new Findings();
        switch (kind)
        {
            case "shop":
                var read = ShopFile.Read(file, BuiltIn.Operations, findings);
                if ((read.Shop is null) == findings.AreNone)
                {
                    throw new InvalidOperationException("a shop with mistakes, or none without");
                }

                break;
            case "job":
                var job = JobFile.Read(file, SoundShop(), Known, findings);
                if ((job is null) == findings.AreNone)
                {
                    throw new InvalidOperationException("a job with mistakes, or none without");
                }

                break;
            case "rates":
                RatesFile.Read(file, BuiltIn.Operations, Cautions, findings);
                break;
            case "sawn":
                var located = JobFile.Read(SourceFile.Read(Path.Combine(Folder, "sound-job.yaml"), "job.yaml"), SoundShop(), Known, findings)!;
                SawnFile.Read(file, located, findings, Known.Today);
                break;
            case "parts":
                JobFile.Read(JobAround(file), SoundShop(), Known, findings);
                break;
            case "log":
                LogSheet.Read(file, ASheet.Settings(findings));
                break;
            case "variants":
                foreach (var variant in VariantsFile.Read(file, findings))
                {
                    var otherwise = ShopFile.Read(SourceFile.Read(Path.Combine(Folder, "sound-shop.yaml"), "shop.yaml"), BuiltIn.Operations, findings, variant.Shop);
                    JobFile.Read(SourceFile.Read(Path.Combine(Folder, "sound-job.yaml"), "job.yaml"), otherwise, Known, findings, variant.Job);
                }

                break;
            case "ical":
                new CalendarReader(file, "tray", findings).Read();
                break;
            default:
                throw new ArgumentException(kind, nameof(kind));
        }

        return findings.InOrder();
    }

    private static KnownNames Known => new(BuiltIn.Species, BuiltIn.Operations, BuiltIn.Waits, new(2027, 3, 10));

    private static ShopReading SoundShop() => ShopFile.Read(SourceFile.Read(Path.Combine(Folder, "sound-shop.yaml"), "shop.yaml"), BuiltIn.Operations, new());

    private static SourceFile JobAround(SourceFile parts) => new(
        parts.Path,
        "job.yaml",
        System.Text.Encoding.UTF8.GetBytes($$"""
            job: Shelf
            start: 2027-03-01
            stock:
              - {board: A, species: white oak, size: 10' x 10" x 4/4, count: 3}
            parts-from: {{Path.GetFileName(parts.Path)}}
            """));
}
