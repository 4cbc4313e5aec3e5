using ShopDays.Cli.Files;
using Xunit;

namespace ShopDays.Cli.Tests.Files;

public sealed class SamplesTests
{
    public static TheoryData<string> Jobs => [.. Directory
        .EnumerateFiles(Repository.Folder("sample-projects"), "*.yaml", SearchOption.AllDirectories)
        .Where(file => Path.GetFileName(Path.GetDirectoryName(file)) == "jobs")
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
}
