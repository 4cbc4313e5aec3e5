using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Xunit;

namespace ShopDays.Bench.Tests.Browser;

[Trait("Source", "WCAG 2.2, level AA, by the axe accessibility engine 4.x")]
public sealed class AccessibilityTests(Chromium chromium, BenchAtWork bench)
{
    private const string Tags = "wcag2a wcag2aa wcag21a wcag21aa wcag22aa best-practice";

    public static TheoryData<string> All => [.. BenchAtWork.Pages];

    [Theory]
    [MemberData(nameof(All))]
    public async Task The_engine_finds_nothing_serious_on_a_page_at_any_size_in_the_light_or_in_the_dark(string path)
    {
        var page = await chromium.Window(isPhone: true);
        foreach (var (width, height) in ((int, int)[])[(390, 844), (1280, 900)])
        {
            await page.SetViewportSizeAsync(width, height);
            await page.GotoAsync(bench.Address + path);
            foreach (var scheme in (ColorScheme[])[ColorScheme.Light, ColorScheme.Dark])
            {
                await page.EmulateMediaAsync(new() { ColorScheme = scheme });
                var found = await page.RunAxe(new AxeRunOptions { RunOnly = new() { Type = "tag", Values = [.. Tags.Split(' ')] } });
                Assert.Contains(found.Passes, one => one.Id == "color-contrast");
                Assert.Empty(found.Violations.Where(one => one.Impact is "serious" or "critical" or "moderate").Select(one => $"{width} wide, {scheme}: {one.Id}: {one.Help}: {string.Join("; ", one.Nodes.Take(3).Select(node => node.Html))}"));
            }
        }

        await page.Context.CloseAsync();
    }
}
