using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Tools;

/// <summary>
/// Debian's Chromium, headless and without anything that would call home, in the hands of one test; skips the test where it is missing.
/// </summary>
/// <remarks>
/// A start takes two seconds of processor time, so that a browser stays open for the tests after, as many as run at once. What a test
/// opened in it is closed with it: no test sees another's pages, storage or settings. It ends with the process that began it.
/// </remarks>
internal sealed class ChromiumBrowser : IAsyncDisposable
{
    private static readonly ConcurrentBag<IBrowser> Free = [];

    private ChromiumBrowser(IBrowser browser) => Browser = browser;

    public IBrowser Browser { get; }

    public static async Task<ChromiumBrowser> TakeAsync()
    {
        var program = Tool.Chromium.Require();
        // One that a test brought down is nobody's any more.
        while (Free.TryTake(out var free))
            if (free.IsConnected)
                return new(free);
        return new(await StartAsync(program));
    }

    private static async Task<IBrowser> StartAsync(string program) =>
        await (await Playwright.CreateAsync()).Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = program,
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
        );

    public async ValueTask DisposeAsync()
    {
        foreach (var context in Browser.Contexts.ToList())
            await context.CloseAsync();
        Free.Add(Browser);
    }
}
