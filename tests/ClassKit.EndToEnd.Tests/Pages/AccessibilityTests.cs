using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>Every page of the tour in headless Chromium: WCAG 2.2 AA by axe's rules, and not one request to anywhere.</summary>
public sealed class AccessibilityTests(TourRun tour)
{
    [Fact]
    public async Task Every_page_passes_in_light_and_every_kind_of_page_in_dark()
    {
        await using var chromium = await ChromiumBrowser.LaunchAsync();
        var browser = chromium.Browser;

        // Sheets differ in nothing but numbers, so one of them speaks for all; feedback pages differ in their words, which matters in light only, for
        // dark changes nothing but colours.
        var pages = tour.Pages.DistinctBy(page => Kind(page, "sheets"));
        var failures = await Task.WhenAll(Look(browser, ColorScheme.Light, pages), Look(browser, ColorScheme.Dark, pages.DistinctBy(page => Kind(page, "feedback"))));

        Assert.True(failures.All(list => list.Count == 0), string.Join("\n", failures.SelectMany(list => list)));
    }

    private static string Kind(string page, string folder) => page.Contains($"{Path.DirectorySeparatorChar}{folder}{Path.DirectorySeparatorChar}", StringComparison.Ordinal) ? folder : page;

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
            failures.AddRange((await Axe.ViolationsAsync(page)).Select(violation => $"{Path.GetRelativePath(tour.Folder, file)} ({scheme}): {violation}"));
        }
        return failures;
    }
}
