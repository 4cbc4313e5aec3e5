using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;

namespace ShopDays.Bench.Tests.Browser;

[Trait("Source", "WCAG 2.2, level AA, by the axe accessibility engine 4.x")]
public sealed class AccessibilityTests(Chromium chromium)
{
    public static TheoryData<bool, ColorScheme> Looks => new() { { true, ColorScheme.Light }, { false, ColorScheme.Dark } };

    [Theory]
    [MemberData(nameof(Looks))]
    public async Task The_engine_finds_nothing_serious_on_any_page(bool isPhone, ColorScheme scheme)
    {
        await using var bench = await OpenBench.Of();
        using var visitor = new Visitor(bench);
        (string, string)[] fetch = [("who", "maker"), ("job", "tray"), ("task", "fetch and stack the boards")];
        await visitor.Send("/start", fetch);
        bench.Clock.AdvanceMinutes(9);
        await visitor.Send("/done", [.. fetch, ("how", "half"), ("stopped", "the thick board is still outside")]);
        await visitor.Send("/start", fetch);
        var page = await chromium.Window(isPhone);
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        foreach (var path in Pages.All.Append("log/1"))
        {
            await page.GotoAsync(bench.Address + path);
            var found = await page.RunAxe(new AxeRunOptions { RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] } });
            Assert.Empty(found.Violations.Where(one => one.Impact is "serious" or "critical" or "moderate").Select(one => $"{path}: {one.Id}: {one.Help}: {string.Join("; ", one.Nodes.Take(3).Select(node => node.Html))}"));
        }

        await page.Context.CloseAsync();
    }
}
