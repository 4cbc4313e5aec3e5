using System.Globalization;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>What the log has said to be logged is there, however the program ends.</summary>
public sealed class KilledTests
{
    private const int Rounds = 200;
    private const int AtOnce = 2;
    private const int MostLines = 48;

    /// <summary>
    /// Two at a time, each in a shop of its own. Each is fed many lines at once and killed without warning: one in eight while
    /// it starts and makes or opens the file, the others some way behind a drawn number of entries, while it writes the next.
    /// </summary>
    [Fact]
    public async Task Nothing_that_was_acknowledged_is_lost_when_the_program_is_killed_and_the_log_opens_clean()
    {
        var kept = await Task.WhenAll(Enumerable.Range(0, AtOnce).Select(seed => Task.Run(() => KillOver(seed, Rounds / AtOnce))));

        // Most rounds must have got as far as logging, or nothing was tried.
        Assert.True(kept.Sum(one => one.RoundsWithEntries) > Rounds / 2, $"{kept.Sum(one => one.RoundsWithEntries)} of {Rounds} rounds logged anything");
        Assert.True(kept.Sum(one => one.Entries) > Rounds, $"{kept.Sum(one => one.Entries)} entries in all");
    }

    private static async Task<(int RoundsWithEntries, int Entries)> KillOver(int seed, int rounds)
    {
        using var folder = new FreshFolder();
        folder.WithShop(ATrayShop.Shop);
        var random = new Random(seed);
        var acknowledged = new Dictionary<long, string>();
        var withEntries = 0;
        for (var round = 0; round < rounds; round++)
        {
            var said = await OneLife(folder, random, isStillStarting: round % 8 == 0, round);
            foreach (var line in said)
            {
                // A short line goes into a pipe whole or not at all (PIPE_BUF of POSIX), so each one read was said.
                var number = long.Parse(line[..line.IndexOf(':', StringComparison.Ordinal)], CultureInfo.InvariantCulture);
                Assert.True(acknowledged.TryAdd(number, line), $"number {number} was given twice");
            }

            withEntries += said.Count > 0 ? 1 : 0;
            AssertAllThere(folder, acknowledged);
        }

        return (withEntries, acknowledged.Count);
    }

    private static async Task<IReadOnlyList<string>> OneLife(FreshFolder folder, Random random, bool isStillStarting, int round)
    {
        using var bench = Bench.In(folder.Path, "log", "add", "--timed", "-");
        await bench.Type(string.Join('\n', Enumerable.Range(1, MostLines).Select(line => string.Create(CultureInfo.InvariantCulture, $"rip 12 ft {1 + (line % 90)}m # round {round}, line {line}"))));
        if (isStillStarting)
        {
            await Task.Delay(random.Next(400), TestContext.Current.CancellationToken);
            return await bench.Kill();
        }

        for (var entries = 1 + random.Next(MostLines / 4); entries > 0; entries--)
        {
            await bench.Hear();
        }

        // Somewhere within the next entry or two: a turn of this loop is far shorter than an entry takes.
        for (var turns = random.Next(200_000); turns > 0; turns--)
        {
            Thread.SpinWait(1);
        }

        return await bench.Kill();
    }

    private static void AssertAllThere(FreshFolder folder, Dictionary<long, string> acknowledged)
    {
        using var log = ShopLog.OpenToRead(new ShopFolder(folder.Path));
        if (log is null)
        {
            Assert.Empty(acknowledged);
            return;
        }

        Assert.Equal(["ok"], log.File.Read(file => file.Rows("pragma integrity_check", row => row.GetString(0))));
        var there = log.All().ToDictionary(entry => entry.Id.Number, entry => LogPhrases.Of(entry));
        Assert.All(acknowledged, one => Assert.Equal(one.Value, there.GetValueOrDefault(one.Key)));
    }
}
