using ShopDays.Cli.Commands;
using ShopDays.Cli.Files;
using ShopDays.Cli.Phrases;
using ShopDays.Cli.Terminal;
using ShopDays.Layouts;
using ShopDays.Work;
using Xunit;

namespace ShopDays.Bench.Tests.Doing;

public sealed class AsOnTheTerminalTests
{
    private static readonly (string, string)[] Fetch = [("who", "maker"), ("job", "tray"), ("task", "fetch and stack the boards")];

    [Fact]
    public async Task The_jobs_page_names_the_dates_and_the_reasons_that_the_terminal_names()
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", Fetch);
        bench.Clock.AdvanceMinutes(95);
        await visitor.Send("/done", [.. Fetch, ("how", "done")]);
        var page = WordsOf(await visitor.LookWhenWorkedOut("/job"));

        var told = Told(bench);
        Assert.Contains(told.Glance, page, StringComparison.Ordinal);
        foreach (var moment in (NodaTime.ZonedDateTime?[])[told.Ahead!.Forecast.P50, told.Ahead.Forecast.P80, told.Ahead.Forecast.P90])
        {
            Assert.Contains(DateWords.Of(moment!.Value.Date), page, StringComparison.Ordinal);
        }

        Assert.All(told.Why, row => Assert.Contains($"{row.Days}: {row.What}", page, StringComparison.Ordinal));
    }

    /// <summary>As the command for progress works it out.</summary>
    private static ToldProgress Told(OpenBench bench)
    {
        var now = bench.Clock.GetCurrentInstant();
        var read = ShopAndJob.Read(Path.Combine(bench.Folder.Jobs, "tray" + ShopFolder.JobFileEnding), bench.Folder.Path, now).Read!;
        var silent = new Progress(TextWriter.Null, isVerbose: false, isTerminal: false, width: 80, TimeProvider.System);
        var workings = new Workings(read, 1, LayoutEffort.Normal, LayoutPreference.AsPriced, LearnedRates.Of(bench.Folder, read.Shop, read.Operations, bench.Clock), silent);
        var graph = ((OrderOfWork.Made)workings.Order).Graph;
        return ProgressNow.Of(workings, graph, new JobNow(workings, graph, OnRecord.Of(read, now), now), now)!;
    }

    private static string WordsOf(string page) => System.Net.WebUtility.HtmlDecode(page);
}
