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

    [Theory]
    [InlineData("/dev/null")]
    [InlineData("/dev/full")]
    public void A_device_is_refused_and_not_replaced(string device)
    {
        Assert.SkipUnless(File.Exists(device), "no such device there");

        Assert.Contains("is a device", Assert.Throws<IOException>(() => WholeFile.Write(device, [1])).Message, StringComparison.Ordinal);
        File.CreateSymbolicLink(Inside("plan.pdf"), device);
        Assert.Throws<IOException>(() => WholeFile.Write(Inside("plan.pdf"), [1]));

        Assert.True(File.Exists(device));
    }

    [Fact]
    public void A_pipe_is_refused_and_not_replaced()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && File.Exists("/usr/bin/mkfifo"), "pipes with names are made by mkfifo");
        using (var made = System.Diagnostics.Process.Start("/usr/bin/mkfifo", Inside("plan.pdf")))
        {
            made.WaitForExit();
        }

        Assert.Contains("is a pipe", Assert.Throws<IOException>(() => WholeFile.Write(Inside("plan.pdf"), [1])).Message, StringComparison.Ordinal);

        Assert.Equal(["plan.pdf"], folder.GetFileSystemInfos().Select(entry => entry.Name));
    }

    [Fact]
    public void What_a_killed_run_left_is_cleared_away_when_it_is_a_day_old()
    {
        File.WriteAllBytes(Inside(".plan.pdf.aaaa.part"), [9]);
        File.SetLastWriteTimeUtc(Inside(".plan.pdf.aaaa.part"), DateTime.UtcNow.AddDays(-2));
        File.WriteAllBytes(Inside(".plan.pdf.bbbb.part"), [9]);
        File.WriteAllBytes(Inside(".other.pdf.cccc.part"), [9]);
        File.SetLastWriteTimeUtc(Inside(".other.pdf.cccc.part"), DateTime.UtcNow.AddDays(-2));

        WholeFile.Write(Inside("plan.pdf"), [1]);

        Assert.Equal([".other.pdf.cccc.part", ".plan.pdf.bbbb.part", "plan.pdf"], folder.GetFileSystemInfos().Select(entry => entry.Name).Order(StringComparer.Ordinal));
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
