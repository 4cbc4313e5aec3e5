using System.Text;
using ShopDays.Cli.Commands;
using ShopDays.Cli.Files;
using ShopDays.Cli.Terminal;
using ShopDays.Cli.Tests.Files;
using Xunit;

namespace ShopDays.Cli.Tests.Commands;

public sealed class FullDiskTests
{
    [Fact]
    public void An_answer_that_cannot_be_written_is_told_without_a_trace()
    {
        using var full = new FullDisk();
        using var error = new StringWriter();
        var screen = new Screen(full, error);
        var job = Repository.Folder("sample-projects", "evening-cupboard", "jobs", "wall-cupboard.yaml");
        var exitCode = CommandLine.Run([new CheckCommand(screen, NodaTime.SystemClock.Instance).Describe()], ["check", job], screen);
        Assert.Equal((ExitCode.CannotReadOrWrite, "the answer cannot be written: no room\n"), (exitCode, error.ToString().ReplaceLineEndings("\n")));
    }

    [Fact]
    public void A_fault_of_the_program_is_told_as_its_own_with_what_to_report()
    {
        using var error = new StringWriter();
        var screen = new Screen(TextWriter.Null, error);
        var command = new System.CommandLine.Command("saw");
        command.SetAction(_ => Bent());
        Assert.Equal(ExitCode.CannotReadOrWrite, CommandLine.Run([command], ["saw"], screen));
        Assert.StartsWith("this is a fault of ShopDays, not of your files; please report", error.ToString(), StringComparison.Ordinal);
        Assert.Contains("the saw is bent", error.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_full_disk_is_told_by_the_name_of_the_file_that_was_wanted()
    {
        // ENOSPC of POSIX, as the runtime hands it on.
        var trouble = FileTroubleException.Writing("plan.pdf", new IOException("No space left on device : '/shop/.passing.part'", 28));
        Assert.Equal("plan.pdf cannot be written: the disk is full", trouble.Message);
    }

    private static int Bent() => throw new InvalidOperationException("the saw is bent");

    private sealed class FullDisk : TextWriter
    {
        public override Encoding Encoding => Encoding.UTF8;

        public override void Write(char value) => throw new IOException("no room");
    }
}
