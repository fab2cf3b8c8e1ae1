using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>Debian's Chromium, headless and without anything that would call home; skips the test where it is missing.</summary>
internal sealed class ChromiumBrowser : IAsyncDisposable
{
    private readonly IPlaywright _playwright;

    private ChromiumBrowser(IPlaywright playwright, IBrowser browser) => (_playwright, Browser) = (playwright, browser);

    public IBrowser Browser { get; }

    public static async Task<ChromiumBrowser> LaunchAsync()
    {
        var chromium = Tool.Chromium.Require();
        var playwright = await Playwright.CreateAsync();
        return new(
            playwright,
            await playwright.Chromium.LaunchAsync(
                new()
                {
                    ExecutablePath = chromium,
                    Args =
                    [
                        "--no-sandbox",
                        "--disable-gpu",
                        "--disable-quic",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--disable-component-update",
                        "--disable-sync",
                    ],
                }
            )
        );
    }

    public async ValueTask DisposeAsync()
    {
        await Browser.DisposeAsync();
        _playwright.Dispose();
    }
}
