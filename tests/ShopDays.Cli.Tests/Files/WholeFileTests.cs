using ShopDays.Cli.Files;
using Xunit;

namespace ShopDays.Cli.Tests.Files;

public sealed class WholeFileTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("shopdays-");

    [Fact]
    public void A_file_is_written_whole_and_alone()
    {
        WholeFile.Write(Inside("plan.pdf"), [1, 2, 3]);

        Assert.Equal([1, 2, 3], File.ReadAllBytes(Inside("plan.pdf")));
        Assert.Single(folder.GetFileSystemInfos());
    }

    [Fact]
    public void A_file_that_is_there_is_replaced()
    {
        File.WriteAllBytes(Inside("plan.pdf"), [9, 9, 9, 9]);

        WholeFile.Write(Inside("plan.pdf"), [1]);

        Assert.Equal([1], File.ReadAllBytes(Inside("plan.pdf")));
        Assert.Single(folder.GetFileSystemInfos());
    }

    [Fact]
    public void A_link_stays_a_link_and_what_it_leads_to_is_replaced()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "links need a privilege there");
        File.WriteAllBytes(Inside("old.pdf"), [9]);
        File.CreateSymbolicLink(Inside("plan.pdf"), Inside("old.pdf"));

        WholeFile.Write(Inside("plan.pdf"), [1]);

        Assert.Equal([1], File.ReadAllBytes(Inside("old.pdf")));
        Assert.Equal(Inside("old.pdf"), new FileInfo(Inside("plan.pdf")).LinkTarget);
        Assert.Equal(2, folder.GetFileSystemInfos().Length);
    }

    [Fact]
    public void Where_a_folder_has_the_name_nothing_is_left_behind()
    {
        folder.CreateSubdirectory("plan.pdf");

        Assert.ThrowsAny<SystemException>(() => WholeFile.Write(Inside("plan.pdf"), [1]));

        Assert.Equal(["plan.pdf"], folder.GetFileSystemInfos().Select(entry => entry.Name));
        Assert.Empty(Directory.GetFileSystemEntries(Inside("plan.pdf")));
    }

    [Fact]
    public void Where_the_folder_is_missing_it_is_not_made()
    {
        Assert.Throws<DirectoryNotFoundException>(() => WholeFile.Write(Path.Combine(Inside("missing"), "plan.pdf"), [1]));

        Assert.Empty(folder.GetFileSystemInfos());
    }

    public void Dispose() => folder.Delete(recursive: true);

    private string Inside(string name) => Path.Combine(folder.FullName, name);
}
