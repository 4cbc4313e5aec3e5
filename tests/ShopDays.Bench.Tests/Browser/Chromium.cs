using Microsoft.Playwright;
using Xunit;

namespace ShopDays.Bench.Tests.Browser;

/// <summary>A real browser without a screen, one for all tests, the one of Debian's packages; the tests that need it are skipped where there is none.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    /// <summary>How long a page is waited for that never comes: what is tested is that it comes, not how soon.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private IPlaywright? driver;
    private IBrowser? browser;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (Places.FirstOrDefault(File.Exists) is { } place)
        {
            driver = await Playwright.CreateAsync();
            Assertions.SetDefaultExpectTimeout((float)Patience.TotalMilliseconds);
            browser = await driver.Chromium.LaunchAsync(new() { ExecutablePath = place, Args = ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"] });
        }
    }

    /// <summary>A window as large as a phone held upright, or as a desk's screen.</summary>
    /// <param name="isPhone">Whether it is a phone.</param>
    /// <param name="hasScript">Whether scripts run in it.</param>
    public async Task<IPage> Window(bool isPhone, bool hasScript = true)
    {
        Assert.SkipWhen(browser is null, "there is no chromium on this machine");
        var context = await browser!.NewContextAsync(new()
        {
            ViewportSize = isPhone ? new() { Width = 390, Height = 844 } : new() { Width = 1280, Height = 900 },
            HasTouch = isPhone,
            JavaScriptEnabled = hasScript,
        });
        context.SetDefaultTimeout((float)Patience.TotalMilliseconds);
        return await context.NewPageAsync();
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        driver?.Dispose();
    }
}
