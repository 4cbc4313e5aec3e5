using ShopDays.Cli.Tests.Commands;
using ShopDays.Cli.Tests.Files;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>A sample shop with its job; every command is run on it once, when a test first asks, in a copy of its own.</summary>
internal sealed class Sample
{
    private static readonly Dictionary<string, Sample> All = new Sample[]
    {
        new("elm-workbench", "bench"),
        new("evening-cupboard", "wall-cupboard"),
        new("tidewater-commission", "writing-table"),
    }.ToDictionary(sample => sample.Shop, StringComparer.Ordinal);

    private readonly Lazy<Task<(Ran Ran, byte[] Pdf)>> plan;
    private readonly Lazy<Task<(Ran Ran, byte[] Internal, byte[] Quote)>> price;
    private readonly Dictionary<string, Lazy<Task<Ran>>> runs;

    private Sample(string shop, string job)
    {
        (Shop, Job) = (shop, job);
        plan = new(() => InACopy(async folder =>
        {
            var ran = await Ran.In(folder.Path, "plan", Job, "--json", "--pdf", "plan.pdf");
            return (ran.WentWell(), await File.ReadAllBytesAsync(folder.File("plan.pdf")));
        }));
        price = new(() => InACopy(async folder =>
        {
            var ran = await Ran.In(folder.Path, "price", Job, "--json", "--schedules", "200", "--pdf", "internal.pdf", "--quote", "quote.pdf");
            return (ran.WentWell(), await File.ReadAllBytesAsync(folder.File("internal.pdf")), await File.ReadAllBytesAsync(folder.File("quote.pdf")));
        }));
        string[][] commands = [["check"], ["layout"], ["estimate"], ["plan"], ["check", "--json"], ["layout", "--json"], ["estimate", "--json"]];
        runs = commands.ToDictionary(
            command => string.Join(' ', command),
            command => new Lazy<Task<Ran>>(() => InACopy(async folder => (await Ran.In(folder.Path, [command[0], Job, .. command[1..]])).WentWell())),
            StringComparer.Ordinal);
    }

    /// <summary>The names of the sample shops.</summary>
    public static TheoryData<string> Shops => [.. All.Keys.Order(StringComparer.Ordinal)];

    /// <summary>The sample of that name.</summary>
    public static Sample Of(string shop) => All[shop];

    /// <summary>The folder's name.</summary>
    public string Shop { get; }

    /// <summary>The job's name.</summary>
    public string Job { get; }

    /// <summary>The plan as JSON.</summary>
    public async Task<Ran> Plan() => (await plan.Value).Ran;

    /// <summary>The paper of the same plan.</summary>
    public async Task<byte[]> Pdf() => (await plan.Value).Pdf;

    /// <summary>The price as JSON, the internal sheet and the client's quote of the same run.</summary>
    public Task<(Ran Ran, byte[] Internal, byte[] Quote)> Price() => price.Value;

    /// <summary>What a command gave, for instance <c>layout --json</c>.</summary>
    public Task<Ran> Run(string command) => runs[command].Value;

    /// <summary>Copies the sample to a fresh folder.</summary>
    public void CopyTo(FreshFolder folder)
    {
        var from = Repository.Folder("sample-projects", Shop);
        foreach (var file in Directory.EnumerateFiles(from, "*", SearchOption.AllDirectories).Where(file => Path.GetExtension(file) is ".yaml" or ".txt"))
        {
            var to = folder.File(Path.GetRelativePath(from, file));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(file, to);
        }
    }

    private async Task<T> InACopy<T>(Func<FreshFolder, Task<T>> run)
    {
        using var folder = new FreshFolder();
        CopyTo(folder);
        return await run(folder);
    }
}
