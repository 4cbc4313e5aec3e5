using System.Text;
using CsCheck;
using NodaTime;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Store;

/// <summary>An export holds everything: from it an equal log is made.</summary>
public sealed class LogCsvTests
{
    [Fact]
    public void Importing_an_export_into_an_empty_shop_gives_an_equal_log() => Gen.Select(
        AnEntry.Any.Array[0, 8],
        Gen.Select(Gen.Int[0, 7], Gen.Int[0, 3], AnEntry.Any).Array[0, 8]).Sample(
        (entries, changes) =>
        {
            using var from = new FreshFolder();
            using var to = new FreshFolder();
            using var log = ShopLog.Open(new ShopFolder(from.Path));
            var numbers = log.AddAll(entries, AnEntry.Noon);
            foreach (var (at, what, other) in changes.Where(change => change.Item1 < entries.Length))
            {
                _ = what switch
                {
                    0 => log.Delete(numbers[at], AnEntry.Noon, other.Note),
                    1 => log.Restore(numbers[at], AnEntry.Noon, ""),
                    _ => log.Change(numbers[at], _ => other, AnEntry.Noon + Duration.FromNanoseconds(at), other.Task)?.After,
                };
            }

            var text = Export(log);
            using var copy = ShopLog.Open(new ShopFolder(to.Path));
            LogImport.Into(copy, Read(text));
            Assert.Equal(text, Export(copy));
            Assert.Equal(log.All(), copy.All());

            // The next number is the same too: those of deleted entries are not given again.
            Assert.Equal(log.Add(AnEntry.Of("next"), AnEntry.Noon), copy.Add(AnEntry.Of("next"), AnEntry.Noon));
        },
        iter: 60,
        threads: 1);

    [Fact]
    public void Importing_an_export_again_adds_nothing()
    {
        using var folder = new FreshFolder();
        using var log = ShopLog.Open(new ShopFolder(folder.Path));
        var numbers = log.AddAll([AnEntry.Of("a"), AnEntry.Of("b"), AnEntry.Of("c")], AnEntry.Noon);
        log.Delete(numbers[1], AnEntry.Noon, "");
        var text = Export(log);
        var imported = LogImport.Into(log, Read(text));
        Assert.Equal((0, 2, 0), (imported.Added.Count, imported.AlreadyThere, imported.Traces));
        Assert.Equal(text, Export(log));
    }

    [Fact]
    public void An_export_into_another_log_gets_free_numbers_and_its_traces_go_with_it()
    {
        using var from = new FreshFolder();
        using var to = new FreshFolder();
        using var log = ShopLog.Open(new ShopFolder(from.Path));
        using var other = ShopLog.Open(new ShopFolder(to.Path));
        var number = log.Add(AnEntry.Of("a"), AnEntry.Noon);
        log.Change(number, entry => entry with { Note = "knots" }, AnEntry.Noon, "");
        other.AddAll([AnEntry.Of("x"), AnEntry.Of("y")], AnEntry.Noon);
        var imported = LogImport.Into(other, Read(Export(log)));
        Assert.Equal([3L], imported.Added.Select(entry => entry.Id.Number));
        Assert.Equal([""], other.TraceOf(new(3)).Select(line => line.Before.Note));
    }

    /// <summary>The rules of RFC 4180, section 2: lines end in CR LF, fields with commas, quotes or line breaks stand in quotes, a quote inside is doubled.</summary>
    [Fact]
    public void An_export_is_written_by_the_rules_of_RFC_4180()
    {
        using var folder = new FreshFolder();
        using var log = ShopLog.Open(new ShopFolder(folder.Path));
        log.Add(AnEntry.Of("a") with { Note = "said \"no\", then\nyes" }, AnEntry.Noon);
        var text = Export(log);
        Assert.Contains(",\"said \"\"no\"\", then\nyes\",", text, StringComparison.Ordinal);
        Assert.StartsWith("record,number,key,at,why,job,task,", text, StringComparison.Ordinal);
        Assert.EndsWith("as-logged,\r\n", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("factor", "0")]
    [InlineData("factor", "-1")]
    [InlineData("factor", "1E+300")]
    [InlineData("thickness", "0")]
    [InlineData("thickness", "12.1")]
    [InlineData("width", "-3")]
    [InlineData("depth", "1E+300")]
    [InlineData("hardness", "0")]
    [InlineData("quantity", "1E+308")]
    [InlineData("setups", "1E+308")]
    [InlineData("besides", "-1")]
    [InlineData("run", "5")]
    [InlineData("batch", "0")]
    [InlineData("took", "1.7E+308")]
    [InlineData("date", "2030-01-01")]
    [InlineData("date", "-0044-03-15")]
    [InlineData("method", "")]
    [InlineData("unit", "")]
    [InlineData("record", "thing")]
    public void A_row_that_could_not_have_been_added_is_refused_at_its_place(string column, string value)
    {
        var sound = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["record"] = "entry", ["number"] = "1", ["key"] = Guid.Empty.ToString(), ["task"] = "rip", ["operation"] = "rip", ["method"] = "hand",
            ["unit"] = "ft of cut", ["quantity"] = "12", ["run"] = "2", ["batch"] = "2", ["took"] = "30", ["date"] = "2027-04-17", ["worker"] = "somebody of long ago",
        };
        Assert.Empty(Mistakes(sound));
        sound[column] = value;
        var mistake = Assert.Single(Mistakes(sound));
        Assert.Equal((2, 1 + LogCsv.Columns.TakeWhile(one => one != column).Sum(one => 1 + sound.GetValueOrDefault(one, "").Length)), (mistake.Place.Line, mistake.Place.Column));
    }

    private static IReadOnlyList<Finding> Mistakes(Dictionary<string, string> row)
    {
        var findings = new Findings();
        var text = string.Join(',', LogCsv.Columns) + "\n" + string.Join(',', LogCsv.Columns.Select(column => row.GetValueOrDefault(column, ""))) + "\n";
        LogSheet.Read(new("log.csv", "log.csv", Encoding.UTF8.GetBytes(text)), ASheet.Settings(findings));
        return findings.InOrder();
    }

    private static string Export(ShopLog log)
    {
        var (entries, traces) = log.Everything();
        return LogCsv.Write(entries, traces);
    }

    private static IReadOnlyList<SheetRow> Read(string text)
    {
        var findings = new Findings();
        var (rows, empty) = LogSheet.Read(new("log.csv", "log.csv", Encoding.UTF8.GetBytes(text)), ASheet.Settings(findings));
        Assert.Empty(findings.InOrder().Select(one => one.ToString()));
        Assert.Equal(0, empty);
        return rows;
    }
}
