using System.Reflection;
using ShopDays.Cli.Files;
using Xunit;

namespace ShopDays.Cli.Tests.Files;

public sealed class BrokenFilesTests
{
    public static TheoryData<string> Cases => [.. BrokenFiles.Cases];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_broken_file_gives_its_messages_word_for_word(string name)
    {
        var expected = File.ReadAllLines(Path.Combine(BrokenFiles.Folder, Path.ChangeExtension(name, BrokenFiles.ExpectedEnding)));
        Assert.NotEmpty(expected);
        Assert.Equal(expected, BrokenFiles.Read(name).Select(one => one.ToString()));
    }

    [Fact]
    public void Every_kind_of_mistake_is_provoked_by_a_broken_file()
    {
        var factories = typeof(Finding).Assembly.GetTypes()
            .Where(type => type.Name.EndsWith("Mistakes", StringComparison.Ordinal))
            .SelectMany(type => type.GetMethods(BindingFlags.Static | BindingFlags.Public | BindingFlags.DeclaredOnly))
            .Where(method => method.ReturnType == typeof(Finding))
            .Select(method => method.Name)
            .ToHashSet();
        var provoked = BrokenFiles.Cases.SelectMany(BrokenFiles.Read).Select(one => one.Kind)
            .Concat(GrownFiles().SelectMany(file => BrokenFiles.Read(file.Kind, file.File)).Select(one => one.Kind))
            .ToHashSet();
        Assert.True(factories.Count > 60, "the factories were not found");
        Assert.Equal([], factories.Except(provoked).Order(StringComparer.Ordinal));
        Assert.Equal([], provoked.Except(factories).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_file_of_more_than_a_million_bytes_is_not_read()
    {
        var (kind, file) = GrownFiles()[0];
        Assert.Equal(["shop.yaml:1:1: the file has 1,000,001 bytes; expected at most 1,000,000"], BrokenFiles.Read(kind, file).Select(one => one.ToString()));
    }

    [Fact]
    public void A_parts_list_of_thousands_of_rows_is_not_read()
    {
        var (kind, file) = GrownFiles()[1];
        Assert.Equal(["parts.csv:2002:1: the parts list goes on; expected at most 2,000 rows"], BrokenFiles.Read(kind, file).Select(one => one.ToString()));
    }

    [Fact]
    public void Terms_as_long_as_a_book_are_not_read()
    {
        var (kind, file) = GrownFiles()[2];
        Assert.Equal(["shop.yaml:7:35: 'terms.txt' is too long for the terms of a quote; expected 50,000 bytes at most"], BrokenFiles.Read(kind, file).Select(one => one.ToString()));
    }

    /// <summary>Files that would be a burden to keep.</summary>
    private static (string Kind, SourceFile File)[] GrownFiles()
    {
        var large = new byte[1_000_001];
        Array.Fill(large, (byte)'#');
        var folder = Directory.CreateTempSubdirectory("shopdays-").FullName;
        var list = Path.Combine(folder, "parts.csv");
        try
        {
            File.WriteAllText(list, "name,length,width,thickness\n" + string.Concat(Enumerable.Range(1, 2_001).Select(row => FormattableString.Invariant($"slat {row},30,2,1\n"))));
            File.WriteAllText(Path.Combine(folder, "terms.txt"), new string('x', 50_001));
            var shop = File.ReadAllText(Path.Combine(BrokenFiles.Folder, "shop", "terms-are-not-there.yaml")).Replace("terms-of-last-year.txt", "terms.txt", StringComparison.Ordinal);
            return [("shop", new("shop.yaml", "shop.yaml", large)), ("parts", SourceFile.Read(list, "parts.csv")), ("shop", new(Path.Combine(folder, "shop.yaml"), "shop.yaml", System.Text.Encoding.UTF8.GetBytes(shop)))];
        }
        finally
        {
            // Kept until the process ends: the job around a parts list reads it from its folder.
            AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(folder, recursive: true);
        }
    }
}
