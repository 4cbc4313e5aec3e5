using ShopDays.Cli.Tests.Files;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>What <c>layout --svg</c> writes, and what it leaves alone.</summary>
public sealed class BoardDrawingFilesTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("shopdays-");

    [Fact]
    public async Task Each_board_is_written_into_a_folder_that_is_made_for_it()
    {
        var into = Path.Combine(folder.FullName, "boards");
        var ran = await LayOut(into);
        Assert.Equal(0, ran.ExitCode);
        Assert.Equal(["board-W1.svg", "board-W2.svg", "board-W3.svg"], Directory.GetFiles(into).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Contains("Written: ", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_else_is_in_the_folder_stays()
    {
        var mine = Path.Combine(folder.FullName, "mine.txt");
        await File.WriteAllTextAsync(mine, "mine", TestContext.Current.CancellationToken);
        await LayOut(folder.FullName);
        Assert.Equal("mine", await File.ReadAllTextAsync(mine, TestContext.Current.CancellationToken));
        Assert.Equal(4, folder.GetFileSystemInfos().Length);
    }

    [Fact]
    public async Task A_name_that_is_taken_by_a_folder_leaves_nothing_written()
    {
        folder.CreateSubdirectory("board-W3.svg");
        var ran = await LayOut(folder.FullName);
        Assert.Equal(3, ran.ExitCode);
        Assert.Single(folder.GetFileSystemInfos());
    }

    [Fact]
    public async Task A_file_in_the_place_of_the_folder_is_told_and_stays()
    {
        var mine = Path.Combine(folder.FullName, "mine.txt");
        await File.WriteAllTextAsync(mine, "mine", TestContext.Current.CancellationToken);
        var ran = await LayOut(mine);
        Assert.Equal(3, ran.ExitCode);
        Assert.Contains("is a file, not a folder", ran.Error, StringComparison.Ordinal);
        Assert.Equal("mine", await File.ReadAllTextAsync(mine, TestContext.Current.CancellationToken));
    }

    private static Task<Ran> LayOut(string into) =>
        Ran.In(Repository.Folder("sample-projects", "evening-cupboard"), "layout", "wall-cupboard", "--effort", "quick", "--svg", into);

    public void Dispose() => folder.Delete(recursive: true);
}
