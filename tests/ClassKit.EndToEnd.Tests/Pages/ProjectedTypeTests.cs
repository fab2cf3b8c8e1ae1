using System.Text.Json;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>The projector pages as a class sees them from the last row: on a screen of 1280 × 720 no type is under 28 pixels, a twenty-fifth of the height.</summary>
/// <remarks>28 of 720 is what the instructor we build for asked for; the foot with "back" and "on" is theirs alone and may be smaller.</remarks>
public sealed class ProjectedTypeTests(TourRun tour)
{
    private const string SmallType = """
        () => [...document.querySelectorAll('.screen *, .masthead *')]
          .filter(element => !element.closest('.screen-foot, .hint, .only-spoken, title, desc'))
          .filter(element => [...element.childNodes].some(node => node.nodeType === 3 && node.textContent.trim()))
          .filter(element => element.getClientRects().length > 0)
          .map(element => ({ text: element.textContent.trim().slice(0, 40), size: parseFloat(getComputedStyle(element).fontSize) * (element.currentCSSZoom ?? 1) }))
          .filter(found => found.size < 27.5)
          .map(found => `${found.size} px: ${found.text}`)
        """;

    private const string TallScreens = """
        () => [...document.querySelectorAll('.screen')].filter(screen => screen.getBoundingClientRect().height > innerHeight + 1)
          .map(screen => `${screen.getBoundingClientRect().height} px: ${screen.querySelector('h2').textContent}`)
        """;

    [Fact]
    public async Task Nothing_is_too_small_for_the_last_row_and_no_idea_takes_more_than_its_screen()
    {
        await using var chromium = await ChromiumBrowser.LaunchAsync();
        var page = await (await chromium.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 1280, Height = 720 } })).NewPageAsync();
        await page.GotoAsync(new Uri(Path.Combine(tour.Folder, "pack", "projector.html")).AbsoluteUri);

        Assert.Empty((await page.EvaluateAsync<JsonElement>(SmallType)).EnumerateArray().Select(found => found.GetString()));
        Assert.Empty((await page.EvaluateAsync<JsonElement>(TallScreens)).EnumerateArray().Select(found => found.GetString()));
        Assert.True(await page.Locator(".screen").CountAsync() > 10);
    }
}
