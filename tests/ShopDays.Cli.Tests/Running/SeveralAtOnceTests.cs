using System.Globalization;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>Several programs that log into one shop at the same time.</summary>
public sealed class SeveralAtOnceTests
{
    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public async Task All_that_several_log_at_once_is_there_each_once_under_a_number_of_its_own(int programs)
    {
        const int Lines = 60;
        using var folder = new FreshFolder();
        folder.WithShop(ATrayShop.Shop);
        var said = await Task.WhenAll(Enumerable.Range(0, programs).Select(async program =>
        {
            using var bench = Bench.In(folder.Path, "log", "add", "--timed", "-");
            for (var line = 1; line <= Lines; line++)
            {
                await bench.Type(string.Create(CultureInfo.InvariantCulture, $"rip 12 ft {line}m # {program}-{line}"));
            }

            return await bench.End();
        }));

        Assert.All(said, lines => Assert.Equal(Lines, lines.Count));
        using var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
        var entries = log.All();
        Assert.Equal(
            Enumerable.Range(0, programs).SelectMany(program => Enumerable.Range(1, Lines).Select(line => string.Create(CultureInfo.InvariantCulture, $"{program}-{line}"))).Order(StringComparer.Ordinal),
            entries.Select(entry => entry.Note).Order(StringComparer.Ordinal));
        Assert.Equal(Enumerable.Range(1, programs * Lines).Select(number => (long)number), entries.Select(entry => entry.Id.Number).Order());
        Assert.Equal(
            said.SelectMany(lines => lines).Order(StringComparer.Ordinal),
            entries.Select(LogPhrases.Of).Order(StringComparer.Ordinal));
    }
}
