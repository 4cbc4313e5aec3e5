using System.Runtime.Versioning;
using ShopDays.Cli.Bench.Doors;
using ShopDays.Cli.Files;
using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Bench.Tests.Doors;

[Trait("Source", "OWASP Cheat Sheet Series, Session Management: at least 64 bits of chance, of a generator made for secrets; the 128 bits from the project's own aims")]
public sealed class BenchKeyTests : IDisposable
{
    private readonly FreshFolder folder = new();

    private ShopFolder Shop => new(folder.Path);

    private string KeyFile => folder.File(".bench", "key");

    [Fact]
    public void A_key_is_128_bits_of_chance()
    {
        var keys = Enumerable.Range(0, 200).Select(_ =>
        {
            var key = BenchKey.Of(Shop).Text;
            File.Delete(KeyFile);
            return key;
        }).ToList();
        Assert.Equal(keys.Count, keys.Distinct().Count());
        Assert.All(keys, key => Assert.Matches("^[0-9a-f]{32}$", key));

        // Each bit is set in about half of the keys: beyond 40 of 200 away it would be off by more than five deviations.
        var bits = keys.Select(key => UInt128.Parse(key, System.Globalization.NumberStyles.HexNumber, System.Globalization.CultureInfo.InvariantCulture)).ToList();
        Assert.All(Enumerable.Range(0, 128), place => Assert.InRange(bits.Count(key => (key >> place & 1) == 1), 60, 140));
    }

    [Fact]
    public void A_key_is_the_same_after_the_program_was_started_anew()
    {
        var (first, second) = (BenchKey.Of(Shop), BenchKey.Of(Shop));
        Assert.Equal((first.Text, first.Pass), (second.Text, second.Pass));
        Assert.True(second.Opens(first.Text) && second.IsPass(first.Pass));
    }

    [Fact]
    public void A_key_whose_file_was_removed_locks_all_phones_out()
    {
        var before = BenchKey.Of(Shop);
        File.Delete(KeyFile);
        var after = BenchKey.Of(Shop);
        Assert.False(after.Opens(before.Text) || after.IsPass(before.Pass));
    }

    [Fact]
    public void Nobody_else_on_this_machine_can_read_the_key_whoever_made_its_folder_and_its_file()
    {
        if (OperatingSystem.IsWindows())
        {
            Assert.Skip("files have no such modes here");
            return;
        }

        BenchKey.Of(Shop);
        AssertClosed();
        File.SetUnixFileMode(KeyFile, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.OtherRead);
        File.SetUnixFileMode(folder.File(".bench"), UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute | UnixFileMode.OtherRead | UnixFileMode.OtherExecute);
        BenchKey.Of(Shop);
        AssertClosed();
    }

    [Theory]
    [InlineData("")]
    [InlineData("\n")]
    [InlineData("abc")]
    [InlineData("0123456789abcdef0123456789abcde")]
    [InlineData("0123456789abcdef0123456789abcdef0")]
    [InlineData("0123456789ABCDEF0123456789ABCDEF")]
    [InlineData("0123456789abcdef 123456789abcdef")]
    [InlineData("zzzzzzzzzzzzzzzzzzzzzzzzzzzzzzzz")]
    [InlineData("\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661\u0661")]
    public void A_file_that_holds_no_key_is_refused_with_what_to_do(string text)
    {
        BenchKey.Of(Shop);
        File.WriteAllText(KeyFile, text);
        var trouble = Assert.Throws<FileTroubleException>(() => BenchKey.Of(Shop));
        Assert.Equal($"{KeyFile} holds no key; remove it, and a new one is made", trouble.Message);
        Assert.Equal(text, File.ReadAllText(KeyFile));
    }

    [Fact]
    public void A_key_that_ends_in_a_line_break_is_one()
    {
        var key = BenchKey.Of(Shop).Text;
        File.AppendAllText(KeyFile, "\n");
        Assert.Equal(key, BenchKey.Of(Shop).Text);
    }

    [Fact]
    public void What_stands_in_the_way_of_a_key_is_named()
    {
        File.WriteAllText(folder.File(".bench"), "");
        Assert.Equal($"{folder.File(".bench")} is a file, not a folder", Assert.Throws<FileTroubleException>(() => BenchKey.Of(Shop)).Message);
        File.Delete(folder.File(".bench"));
        Directory.CreateDirectory(KeyFile);
        Assert.StartsWith(KeyFile, Assert.Throws<FileTroubleException>(() => BenchKey.Of(Shop)).Message, StringComparison.Ordinal);
    }

    public void Dispose() => folder.Dispose();

    [UnsupportedOSPlatform("windows")]
    private void AssertClosed()
    {
        const UnixFileMode Others = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(KeyFile));
        Assert.Equal(UnixFileMode.None, File.GetUnixFileMode(folder.File(".bench")) & Others);
        Assert.All(Directory.EnumerateFileSystemEntries(folder.File(".bench")), path => Assert.Equal(KeyFile, path));
    }
}
