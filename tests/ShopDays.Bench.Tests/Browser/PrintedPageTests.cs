using Microsoft.Playwright;
using UglyToad.PdfPig;
using Xunit;

namespace ShopDays.Bench.Tests.Browser;

[Trait("Source", "Chromium of Debian's packages, driven by Playwright; what it prints is read by PdfPig; A4 of ISO 216 with margins of 15 mm")]
public sealed class PrintedPageTests(Chromium chromium, BenchAtWork bench)
{
    /// <summary>What is left of A4 between its margins, 180 mm, at 96 to the inch.</summary>
    private const int WidthOfText = 680;

    private static readonly (string Sign, string Letters)[] Ligatures = [("\uFB00", "ff"), ("\uFB01", "fi"), ("\uFB02", "fl"), ("\uFB03", "ffi"), ("\uFB04", "ffl")];

    public static TheoryData<string> All => [.. BenchAtWork.Pages];

    [Theory]
    [MemberData(nameof(All))]
    public async Task A_page_on_paper_has_nothing_to_tap_and_nothing_beyond_its_edge_and_is_black_on_white_in_the_dark_too(string path)
    {
        var page = await Printed(path, ColorScheme.Dark);
        var faults = await page.EvaluateAsync<string[]>("""
            width => {
                const faults = [];
                const named = one => `${one.tagName} ${one.className} ${one.textContent.trim().slice(0, 40)}`;
                const shown = [...document.body.querySelectorAll('*')].filter(one => !one.closest('svg *') && one.checkVisibility({ opacityProperty: true, visibilityProperty: true }) && one.getClientRects().length > 0);
                const paper = one => { for (let at = one; at; at = at.parentElement) { const colour = getComputedStyle(at).backgroundColor; if (colour !== 'rgba(0, 0, 0, 0)') { return colour; } } return 'rgb(255, 255, 255)'; };
                for (const one of shown) {
                    const [box, style] = [one.getBoundingClientRect(), getComputedStyle(one)];
                    if (one.matches('button, .button, nav, nav a, form:not([action="/sheet"]), .skip')) { faults.push(`to tap: ${named(one)}`); }
                    if (one.matches('input:not([type=checkbox])') && style.color !== 'rgba(0, 0, 0, 0)') { faults.push(`written on: ${one.outerHTML}`); }
                    if (box.width > 0 && (box.right > width + .5 || box.left < -.5)) { faults.push(`beyond the edge: ${named(one)}`); }
                    if (style.overflowX !== 'visible' && one.scrollWidth > one.clientWidth + 1 && !one.matches('input')) { faults.push(`cut off: ${named(one)}`); }
                    if ([...one.childNodes].some(node => node.nodeType === 3 && node.data.trim()) && (style.color !== 'rgb(0, 0, 0)' || paper(one) !== 'rgb(255, 255, 255)')) { faults.push(`${style.color} on ${paper(one)}: ${named(one)}`); }
                }
                return faults;
            }
            """, WidthOfText);
        Assert.Empty(faults);
        await page.Context.CloseAsync();
    }

    [Theory]
    [MemberData(nameof(All))]
    public async Task What_stands_on_a_page_stands_on_its_paper_and_what_is_folded_away_too(string path)
    {
        var page = await Printed(path, ColorScheme.Light);
        var words = await page.EvaluateAsync<string[]>("() => document.getElementById('main').innerText.split(/\\s+/).filter(word => word.length > 1)");
        var folded = await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('main > section > details li, main > section > details td')].map(one => one.textContent.trim().split(/\\s+/)[0]).filter(word => word.length > 0)");
        using var paper = PdfDocument.Open(await page.PdfAsync(new() { Format = "A4" }));
        var text = Ligatures.Aggregate(string.Concat(paper.GetPages().SelectMany(one => one.Text).Where(sign => !char.IsWhiteSpace(sign))), (all, one) => all.Replace(one.Sign, one.Letters, StringComparison.Ordinal));
        Assert.NotEmpty(words);
        Assert.All(words.Concat(folded), word => Assert.Contains(word, text, StringComparison.Ordinal));
        Assert.All(paper.GetPages(), one =>
        {
            Assert.InRange(one.Width, 594, 597);
            Assert.InRange(one.Height, 841, 844);
        });
        await page.Context.CloseAsync();
    }

    [Theory]
    [InlineData("")]
    [InlineData("job")]
    public async Task The_plan_as_a_PDF_is_one_tap_away(string path)
    {
        var page = await chromium.Window(isPhone: true);
        await page.GotoAsync(bench.Address + path);
        var link = page.GetByRole(AriaRole.Link, new() { Name = "the plan as a PDF" });
        await Assertions.Expect(link).ToBeVisibleAsync();
        var answer = await page.APIRequest.GetAsync(new Uri(new Uri(bench.Address), await link.GetAttributeAsync("href")).AbsoluteUri);
        Assert.Equal((200, "application/pdf"), (answer.Status, answer.Headers["content-type"]));
        using var plan = PdfDocument.Open(await answer.BodyAsync());
        Assert.Contains("Tray", plan.GetPage(1).Text, StringComparison.Ordinal);
        await page.Context.CloseAsync();
    }

    private async Task<IPage> Printed(string path, ColorScheme scheme)
    {
        var page = await chromium.Window(isPhone: false);
        await page.SetViewportSizeAsync(WidthOfText, 1000);
        await page.EmulateMediaAsync(new() { Media = Media.Print, ColorScheme = scheme });
        await page.GotoAsync(bench.Address + path);
        return page;
    }
}
