using Microsoft.Playwright;
using ShopDays.Cli.Bench.Live;
using ShopDays.Cli.Tests.Running;
using Xunit;

namespace ShopDays.Bench.Tests.Browser;

[Trait("Source", "Chromium of Debian's packages, driven by Playwright; server-sent events of the HTML Living Standard")]
public sealed class SeveralPhonesTests(Chromium chromium)
{
    private static readonly string ShopOfTwo = ATrayShop.Shop.Replace("[{name: maker}]", "[{name: maker}, {name: Bryn Tait}]", StringComparison.Ordinal);

    [Fact]
    public async Task Two_open_pages_follow_each_other_without_being_loaded_again()
    {
        await using var bench = await OpenBench.Of();
        var (one, other) = (await chromium.Window(isPhone: true), await chromium.Window(isPhone: true));
        List<IRequest> asked = [];
        other.Request += (_, request) => asked.Add(request);
        await one.GotoAsync(bench.Address);
        await other.GotoAsync(bench.Address);
        await Start(one);
        await Assertions.Expect(other.Locator(".clock")).ToBeVisibleAsync();
        await other.GetByRole(AriaRole.Button, new() { Name = "Pause" }).ClickAsync();
        await Assertions.Expect(one.GetByRole(AriaRole.Button, new() { Name = "Go on" })).ToBeVisibleAsync();

        // One look at the page, and one after its own tap: what came in between came by the stream.
        Assert.Contains(asked, request => new Uri(request.Url).AbsolutePath == "/live");
        Assert.Equal(["GET", "POST", "GET"], asked.Where(request => request.IsNavigationRequest).Select(request => request.Method));
        await Close(one, other);
    }

    [Fact]
    public void What_tells_open_pages_of_changes_looks_for_them_twice_a_second_at_least() =>
        Assert.True(2 * LiveEvents.LookEvery < TimeSpan.FromSeconds(1));

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_page_that_is_told_nothing_is_right_once_it_is_loaded_again_and_takes_taps_as_ever(bool hasScript)
    {
        await using var bench = await OpenBench.Of();
        var (one, deaf) = (await chromium.Window(isPhone: true), await chromium.Window(isPhone: true, hasScript));
        List<string> faults = [];
        deaf.PageError += (_, fault) => faults.Add(fault);
        await deaf.RouteAsync("**/live", route => route.AbortAsync());
        await one.GotoAsync(bench.Address);
        await deaf.GotoAsync(bench.Address);
        await Start(one);
        await Assertions.Expect(one.Locator(".clock")).ToBeVisibleAsync();
        bench.Clock.AdvanceMinutes(6);
        await deaf.ReloadAsync();
        await Assertions.Expect(deaf.Locator(".clock")).ToHaveTextAsync("0:06");
        await deaf.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).First.ClickAsync();
        await Assertions.Expect(deaf.GetByRole(AriaRole.Status)).ToContainTextAsync("Logged");
        Assert.Equal(6, Assert.Single(bench.Logged()).Took.Minutes);
        Assert.Empty(faults);
        await Close(one, deaf);
    }

    [Fact]
    public async Task Two_workers_are_at_a_task_each_by_taps_and_each_phone_sees_both()
    {
        await using var bench = await OpenBench.Of(ShopOfTwo);
        var (makers, bryns) = (await chromium.Window(isPhone: true), await chromium.Window(isPhone: true));
        await makers.GotoAsync(bench.Address);
        await bryns.GotoAsync(bench.Address);
        await ChooseAndSee(bryns, "Bryn Tait");
        await Start(makers);
        await Assertions.Expect(makers.Locator(".clock")).ToBeVisibleAsync();
        bench.Clock.AdvanceMinutes(4);

        // Hers are her own tasks; what the other is at is none of them any more.
        await Assertions.Expect(bryns.Locator(".clock")).ToHaveCountAsync(0);
        await bryns.ReloadAsync();
        await Start(bryns);
        await Assertions.Expect(bryns.Locator(".clock")).ToBeVisibleAsync();
        var begun = bench.Begun();
        Assert.Equal(["Bryn Tait", "maker"], begun.Select(work => work.Worker).Order(StringComparer.Ordinal));
        Assert.Equal(2, begun.Select(work => work.Task).Distinct().Count());
        Assert.All(begun, work => Assert.Null(work.PausedAt));

        // One at a time for each: nothing more can be begun from either page.
        foreach (var phone in (IPage[])[makers, bryns])
        {
            await phone.ReloadAsync();
            await Assertions.Expect(phone.GetByRole(AriaRole.Button, new() { Name = "Start" })).ToHaveCountAsync(0);
        }

        // Each phone sees both, by a tap on the other's name, and the same of both.
        foreach (var (name, minutes) in ((string, string)[])[("maker", "0:04"), ("Bryn Tait", "0:00")])
        {
            foreach (var phone in (IPage[])[makers, bryns])
            {
                await ChooseAndSee(phone, name);
                await Assertions.Expect(phone.Locator(".clock")).ToHaveTextAsync(minutes);
                await Assertions.Expect(phone.Locator("#at-hand")).ToContainTextAsync(begun.Single(work => work.Worker == name).Task);
            }
        }

        // What one ends is the one's own, and the other goes on.
        bench.Clock.AdvanceMinutes(3);
        await bryns.ReloadAsync();
        await bryns.GetByRole(AriaRole.Button, new() { Name = "Done", Exact = true }).First.ClickAsync();
        await Assertions.Expect(bryns.GetByRole(AriaRole.Status)).ToContainTextAsync("Logged");
        var entry = Assert.Single(bench.Logged());
        Assert.Equal(("Bryn Tait", 3.0), (entry.Worker, entry.Took.Minutes));
        Assert.Equal("maker", Assert.Single(bench.Begun()).Worker);
        await Close(makers, bryns);
    }

    [Fact]
    public async Task Who_looks_can_be_chosen_on_every_page_and_stays_on_it()
    {
        await using var bench = await OpenBench.Of(ShopOfTwo);
        var phone = await chromium.Window(isPhone: true, hasScript: false);
        var name = "maker";
        foreach (var path in BenchAtWork.Pages.Where(path => !path.StartsWith("log/", StringComparison.Ordinal)))
        {
            name = name == "maker" ? "Bryn Tait" : "maker";
            await phone.GotoAsync(bench.Address + path);
            await ChooseAndSee(phone, name);
            Assert.Equal(bench.Address + path, phone.Url);
        }

        await Close(phone);
    }

    private static Task Start(IPage page) => page.GetByRole(AriaRole.Button, new() { Name = "Start" }).First.ClickAsync();

    private static async Task ChooseAndSee(IPage page, string name)
    {
        await page.Locator(".who").GetByRole(AriaRole.Button, new() { Name = name }).ClickAsync();
        await Assertions.Expect(page.Locator(".who button[aria-pressed=true]")).ToHaveTextAsync(name);
    }

    private static async Task Close(params IPage[] pages)
    {
        foreach (var page in pages)
        {
            await page.Context.CloseAsync();
        }
    }
}
