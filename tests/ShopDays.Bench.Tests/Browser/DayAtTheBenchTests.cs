using Microsoft.Playwright;
using Xunit;

namespace ShopDays.Bench.Tests.Browser;

[Trait("Source", "Chromium of Debian's packages, driven by Playwright; sizes of targets and the 56 px from the project's own aims")]
public sealed class DayAtTheBenchTests(Chromium chromium, BenchAtWork atWork)
{
    public static TheoryData<bool, bool> Windows => new() { { true, true }, { false, false } };

    [Theory]
    [MemberData(nameof(Windows))]
    public async Task A_days_work_is_logged_by_taps_alone(bool isPhone, bool hasScript)
    {
        await using var bench = await OpenBench.Of();
        var page = await chromium.Window(isPhone, hasScript);
        await page.GotoAsync(bench.Address);
        var names = new List<string>();
        for (var task = 0; task < 4; task++)
        {
            names.Add(await page.Locator("input[name=task]").First.GetAttributeAsync("value") ?? "");
            await page.GetByRole(AriaRole.Button, new() { Name = "Start" }).First.ClickAsync();
            await Assertions.Expect(page.Locator(".clock")).ToHaveTextAsync("0:00");
            bench.Clock.AdvanceMinutes(5 + task);
            await page.ReloadAsync();
            await page.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).First.ClickAsync();
            await Assertions.Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("Logged");
        }

        Assert.Equal(names, bench.Logged().Select(entry => entry.Task));
        Assert.Equal([5, 6, 7, 8], bench.Logged().Select(entry => entry.Took.Minutes));
        await Assertions.Expect(page.Locator("#done")).ToContainTextAsync("26 min");
        await page.GotoAsync(bench.Address + "job");
        await Assertions.Expect(page.Locator("main")).ToContainTextAsync("Finished");
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Whatever_is_tapped_is_as_large_as_a_thumb_in_a_glove_and_no_page_is_wider_than_its_window(bool isPhone)
    {
        var page = await chromium.Window(isPhone);
        foreach (var path in BenchAtWork.Pages)
        {
            await page.GotoAsync(atWork.Address + path);
            await page.EvaluateAsync("() => document.querySelectorAll('details').forEach(one => { one.open = true; })");
            var small = await page.EvaluateAsync<string[]>("""
                () => [...document.querySelectorAll('button, select, summary, nav a, .links a, .entries a, a.button, input:not([type=hidden]):not([type=checkbox])')]
                    .filter(one => one.checkVisibility())
                    .map(one => [one, one.getBoundingClientRect()])
                    .filter(([, box]) => box.height < 55.9 || box.width < 55.9)
                    .map(([one, box]) => `${one.tagName} ${one.textContent.trim().slice(0, 30)} ${Math.round(box.width)}x${Math.round(box.height)}`)
                """);
            Assert.Empty(small);
            Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= window.innerWidth"), path);
        }

        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task A_double_tap_logs_once()
    {
        await using var bench = await OpenBench.Of();
        await Begin(bench);
        var page = await chromium.Window(isPhone: true, hasScript: false);
        await page.GotoAsync(bench.Address);
        await page.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).First.DblClickAsync();
        await Assertions.Expect(page.GetByRole(AriaRole.Status)).ToContainTextAsync("ogged");
        Assert.Single(bench.Logged());
    }

    private static async Task Begin(OpenBench bench)
    {
        using var visitor = new Visitor(bench);
        await visitor.Send("/start", ("who", "maker"), ("job", "tray"), ("task", "fetch and stack the boards"));
        bench.Clock.AdvanceMinutes(5);
    }
}
