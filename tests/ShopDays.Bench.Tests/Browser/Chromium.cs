using Microsoft.Playwright;
using Xunit;

namespace ShopDays.Bench.Tests.Browser;

/// <summary>A real browser without a screen, the one of Debian's packages; the tests that need it are skipped where there is none.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    private IPlaywright? driver;
    private IBrowser? browser;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        if (Places.FirstOrDefault(File.Exists) is { } place)
        {
            driver = await Playwright.CreateAsync();
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
        context.SetDefaultTimeout(60_000);
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
