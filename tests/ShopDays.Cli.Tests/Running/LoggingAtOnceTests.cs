using ShopDays.Cli.Files;
using ShopDays.Cli.Store;
using ShopDays.Cli.Tests.Commands;
using Xunit;

namespace ShopDays.Cli.Tests.Running;

/// <summary>Several processes that write into one log at the same time.</summary>
public sealed class LoggingAtOnceTests : IDisposable
{
    private const int LinesOfEach = 40;

    private readonly FreshFolder folder = new FreshFolder().WithShop(ATrayShop.Shop);

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public async Task All_that_several_processes_log_at_once_is_there_once_and_under_the_number_that_was_said(int processes)
    {
        var stop = TestContext.Current.CancellationToken;
        List<AddingLines> all = [.. Enumerable.Range(0, processes).Select(_ => AddingLines.In(folder.Path, stop))];
        try
        {
            // They start at once and make the file at once; when each has logged its first line, the rest goes to all together.
            string Mark(int process, int line) => FormattableString.Invariant($"process {process} line {line}");
            for (var process = 0; process < processes; process++)
            {
                all[process].Feed(Mark(process, 0));
            }

            await Task.WhenAll(all.Select(one => one.WaitFor(1, stop)));
            for (var line = 1; line < LinesOfEach; line++)
            {
                for (var process = 0; process < processes; process++)
                {
                    all[process].Feed(Mark(process, line));
                }
            }

            Assert.All(await Task.WhenAll(all.Select(one => one.End(stop))), end => Assert.Equal((0, ""), end));
            using var log = ShopLog.OpenToRead(new ShopFolder(folder.Path))!;
            Assert.Equal(["ok"], log.File.Read(file => file.Rows("pragma integrity_check", row => row.GetString(0))));
            var entries = log.All();
            Assert.Equal(Enumerable.Range(1, processes * LinesOfEach), entries.Select(entry => (int)entry.Id.Number));
            for (var process = 0; process < processes; process++)
            {
                var own = all[process].Acknowledged.Select(number => entries.Single(entry => entry.Id == number).Note);
                Assert.Equal(Enumerable.Range(0, LinesOfEach).Select(line => Mark(process, line)), own);
            }
        }
        finally
        {
            all.ForEach(one => one.Dispose());
        }
    }

    public void Dispose() => folder.Dispose();
}
