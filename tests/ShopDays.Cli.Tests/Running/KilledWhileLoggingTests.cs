using System.Diagnostics;
using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using ShopDays.Logbook;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>
/// The program is killed (SIGKILL) again and again while it logs, at moments drawn from a seed: while it starts, right behind
/// an acknowledgement, and a little after one. What it had acknowledged must be there, all of it and once.
/// </summary>
public sealed class KilledWhileLoggingTests
{
    // Two at a time keep two cores busy; a folder begins anew every so often, so that the making of the file is killed too.
    private const int Lanes = 2;
    private const int RoundsOfALane = 104;
    private const int RoundsOfAFolder = 8;
    private const int LinesOfARound = 40;

    // A start takes from a fifth of a second to over a second on a busy machine: this reaches from its first step into the writing.
    private const int LongestStartMilliseconds = 700;

    // About what two entries take on a fast disk.
    private const int LongestWaitMicroseconds = 2000;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task What_was_acknowledged_outlives_a_kill_at_any_moment()
    {
        var tallies = await Task.WhenAll(Enumerable.Range(0, Lanes).Select(lane => Task.Run(() => Lane(1618 + lane), Stop)));
        var tally = tallies.Aggregate((one, other) => one + other);
        TestContext.Current.SendDiagnosticMessage("{0}", tally);
        Assert.True(tally.Rounds >= 200, $"{tally}");

        // Were all kills early or all late, nothing would have been put to the proof. How many fall where hangs on the machine: a tenth is far below half.
        Assert.True(tally.InTheMidst > tally.Rounds / 10 && tally.Acknowledged > tally.Rounds, $"{tally}");
    }

    private static async Task<Tally> Lane(int seed)
    {
        var chance = new Random(seed);
        var tally = new Tally(0, 0, 0, 0, 0);
        while (tally.Rounds < RoundsOfALane)
        {
            using var folder = new FreshFolder().WithShop(ATrayShop.Shop);
            IReadOnlyList<LogEntry> before = [];
            for (var round = 0; round < RoundsOfAFolder; round++)
            {
                var (after, acknowledged) = await Round(folder, chance, before, tally.Rounds);
                var added = after.Count - before.Count;
                tally += new Tally(1, acknowledged, added - acknowledged, added == 0 ? 1 : 0, added > 0 && added < LinesOfARound ? 1 : 0);
                before = after;
            }
        }

        return tally;
    }

    private static async Task<(IReadOnlyList<LogEntry> After, int Acknowledged)> Round(FreshFolder folder, Random chance, IReadOnlyList<LogEntry> before, int round)
    {
        using var adding = AddingLines.In(folder.Path, Stop);
        List<string> marks = [.. Enumerable.Range(0, LinesOfARound).Select(line => FormattableString.Invariant($"round {round} line {line}"))];
        marks.ForEach(adding.Feed);
        await AwaitTheMoment(adding, chance);
        await adding.Kill(Stop);

        var after = Read(folder, isToWrite: chance.Next(2) == 0);
        Assert.Equal(before, after.Take(before.Count));
        List<LogEntry> added = [.. after.Skip(before.Count)];

        // It takes one line at a time: at most one is safe on the disk without having been acknowledged.
        Assert.InRange(added.Count - adding.Acknowledged.Count, 0, 1);
        Assert.Equal(marks.Take(added.Count), added.Select(entry => entry.Note));
        Assert.Equal(adding.Acknowledged, added.Take(adding.Acknowledged.Count).Select(entry => entry.Id));
        return (after, adding.Acknowledged.Count);
    }

    private static async Task AwaitTheMoment(AddingLines adding, Random chance)
    {
        if (chance.Next(3) == 0)
        {
            await Task.Delay(chance.Next(LongestStartMilliseconds), Stop);
            return;
        }

        await adding.WaitFor(chance.Next(1, LinesOfARound), Stop);
        if (chance.Next(2) == 0)
        {
            var wait = TimeSpan.FromMicroseconds(chance.Next(LongestWaitMicroseconds));
            for (var from = Stopwatch.GetTimestamp(); Stopwatch.GetElapsedTime(from) < wait;)
            {
                Thread.SpinWait(20);
            }
        }
    }

    private static IReadOnlyList<LogEntry> Read(FreshFolder folder, bool isToWrite)
    {
        var shop = new ShopFolder(folder.Path);
        using var log = isToWrite ? ShopLog.Open(shop) : ShopLog.OpenToRead(shop);
        if (log is null)
        {
            return [];
        }

        Assert.Equal(["ok"], log.File.Read(file => file.Rows("pragma integrity_check", row => row.GetString(0))));
        return log.All();
    }

    /// <summary>How the kills fell.</summary>
    /// <param name="Rounds">How many.</param>
    /// <param name="Acknowledged">Entries acknowledged over all of them.</param>
    /// <param name="Unsaid">Entries safe on the disk, but killed before their acknowledgement.</param>
    /// <param name="BeforeAny">Rounds killed before any entry was safe.</param>
    /// <param name="InTheMidst">Rounds killed with some lines logged and some not.</param>
    private sealed record Tally(int Rounds, int Acknowledged, int Unsaid, int BeforeAny, int InTheMidst)
    {
        public static Tally operator +(Tally one, Tally other) => new(
            one.Rounds + other.Rounds,
            one.Acknowledged + other.Acknowledged,
            one.Unsaid + other.Unsaid,
            one.BeforeAny + other.BeforeAny,
            one.InTheMidst + other.InTheMidst);
    }
}
