using ClassKit.EndToEnd.Tests.Tour;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>Every page of the tour in headless Chromium: WCAG 2.2 AA by axe's rules, and not one request to anywhere.</summary>
public sealed class AccessibilityTests(TourRun tour)
{
    private static readonly AxeRunOptions Rules = new()
    {
        // Passes carry a copy of every element they looked at: on the answer key that is most of the time.
        ResultTypes = [ResultType.Violations],
        RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] },
    };

    [Fact]
    public async Task Every_page_passes_in_light_and_every_kind_of_page_in_dark()
    {
        var chromium = Tool.Chromium.Require();
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = chromium,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
        });

        // Feedback pages differ in their words only, so in dark, which changes nothing but colours, one of them speaks for all.
        var kinds = tour.Pages.DistinctBy(page => page.Contains("feedback", StringComparison.Ordinal) ? "feedback" : page);
        var failures = await Task.WhenAll(Look(browser, ColorScheme.Light, tour.Pages), Look(browser, ColorScheme.Dark, kinds));

        Assert.True(failures.All(list => list.Count == 0), string.Join("\n", failures.SelectMany(list => list)));
    }

    private async Task<List<string>> Look(IBrowser browser, ColorScheme scheme, IEnumerable<string> files)
    {
        var failures = new List<string>();
        await using var context = await browser.NewContextAsync(new() { ColorScheme = scheme });
        var page = await context.NewPageAsync();
        var address = "";
        page.Request += (_, request) =>
        {
            if (request.Url != address) failures.Add($"{address} asks for {request.Url}");
        };
        foreach (var file in files)
        {
            address = new Uri(file).AbsoluteUri;
            await page.GotoAsync(address);
            var result = await page.RunAxe(Rules);
            failures.AddRange(result.Violations.Select(violation =>
                $"{Path.GetRelativePath(tour.Folder, file)} ({scheme}): {violation.Id}: {violation.Help}\n    {string.Join("\n    ", violation.Nodes.Take(3).Select(node => node.Html))}"));
        }
        return failures;
    }
}
