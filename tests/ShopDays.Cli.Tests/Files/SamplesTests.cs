using ShopDays.Cli.Files;
using ShopDays.Cli.Files.Variants;
using Xunit;

namespace ShopDays.Cli.Tests.Files;

public sealed class SamplesTests
{
    public static TheoryData<string> Jobs => [.. Directory
        .EnumerateFiles(Repository.Folder("sample-projects"), "*.yaml", SearchOption.AllDirectories)
        .Where(file => Path.GetFileName(Path.GetDirectoryName(file)) == "jobs" && !file.EndsWith(VariantsFile.Ending, StringComparison.Ordinal))
        .Select(file => Path.GetRelativePath(Repository.Folder(), file).Replace('\\', '/'))
        .Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Jobs))]
    public void A_sample_job_and_its_shop_are_read_without_a_mistake(string job)
    {
        var read = ShopAndJob.Read(job, Repository.Folder());
        Assert.Equal([], read.Findings.Select(one => one.ToString()));
        Assert.NotEmpty(read.Read!.Job.Parts);
        Assert.NotEmpty(read.Read.Job.Boards);
    }

    [Theory]
    [MemberData(nameof(Jobs))]
    public void The_variants_beside_a_sample_job_are_read_without_a_mistake(string job)
    {
        var read = ShopAndJob.Read(job, Repository.Folder()).Read!;
        var path = VariantsFile.PathFor(Path.Combine(Repository.Folder(), job));
        var findings = new Findings();
        var variants = File.Exists(path) ? VariantsFile.Read(read.Folder.Read(path), findings) : [];
        Assert.Equal([], findings.InOrder().Concat(variants.SelectMany(variant => read.Otherwise(variant, null).Findings)).Select(one => one.ToString()));
    }
}
