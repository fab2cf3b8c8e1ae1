using System.Text.Json;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;
using ClassKit.Pages;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>
/// The projector pages as a class sees them from the last row: on a screen of 1280 × 720 no type is under 28 pixels, a twenty-fifth of the
/// height.
/// </summary>
/// <remarks>
/// 28 of 720 is what the instructor we build for asked for; the foot with "back" and "on" is theirs alone and may be smaller.
/// </remarks>
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

    /// <summary>
    /// What ends below the foot of its frame, where the number stands, or beyond its right margin: a frame on paper has one height, and cuts
    /// off what is longer.
    /// </summary>
    private const string BeyondTheFrame = """
        () => [...document.querySelectorAll('.screen')].flatMap(screen => {
          const frame = screen.getBoundingClientRect(), right = frame.right - parseFloat(getComputedStyle(screen).paddingRight), foot = screen.querySelector('.screen-foot').getBoundingClientRect().top;
          return [...screen.querySelectorAll('h2, p:not(.screen-foot), li, dd, tr, svg:not(.level), figcaption, .bar-figure')].filter(part => part.getClientRects().length > 0)
            .filter(part => part.getBoundingClientRect().bottom > foot + 1 || part.getBoundingClientRect().right > right + 1)
            .map(part => `${screen.querySelector('h2').textContent}: ${part.tagName} ${part.textContent.trim().slice(0, 40)}`).slice(0, 1);
        })
        """;

    /// <summary>
    /// The demo lesson alone fitted, and rows of a lesson with a series were lost: lessons with more breads are looked at too, and frames
    /// on paper as well as screens.
    /// </summary>
    [Fact]
    public async Task No_row_is_lost_at_the_edge_of_a_frame_and_no_number_stands_over_it()
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (
            await chromium.Browser.NewContextAsync(
                new()
                {
                    ViewportSize = new() { Width = 1280, Height = 720 },
                }
            )
        ).NewPageAsync();
        var series = HtmlPages.Pack(SeriesSheetsTests.Pack()).Single(made => made.FileName == "projector.html").Html;
        foreach (
            var (lesson, html) in new[]
            {
                (
                    "the demo lesson",
                    await File.ReadAllTextAsync(Path.Combine(tour.Folder, "pack", "projector.html"), TestContext.Current.CancellationToken)
                ),
                ("a lesson with a series", series),
            }
        )
        {
            await page.SetContentAsync(html);
            foreach (var media in new[] { Media.Screen, Media.Print })
            {
                await page.EmulateMediaAsync(new() { Media = media });
                var lost = (await page.EvaluateAsync<JsonElement>(BeyondTheFrame))
                    .EnumerateArray()
                    .Select(found => found.GetString())
                    .ToList();
                Assert.True(lost.Count == 0, $"{lesson}, {media}: {string.Join("; ", lost)}");
            }
            await page.EmulateMediaAsync(new() { Media = Media.Screen });
            Assert.Empty(
                (await page.EvaluateAsync<JsonElement>(SmallType)).EnumerateArray().Select(found => $"{lesson}: {found.GetString()}")
            );
            Assert.Empty(
                (await page.EvaluateAsync<JsonElement>(TallScreens)).EnumerateArray().Select(found => $"{lesson}: {found.GetString()}")
            );
        }
    }

    [Fact]
    public async Task Nothing_is_too_small_for_the_last_row_and_no_idea_takes_more_than_its_screen()
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (
            await chromium.Browser.NewContextAsync(
                new()
                {
                    ViewportSize = new() { Width = 1280, Height = 720 },
                }
            )
        ).NewPageAsync();
        await page.GotoAsync(new Uri(Path.Combine(tour.Folder, "pack", "projector.html")).AbsoluteUri);

        Assert.Empty((await page.EvaluateAsync<JsonElement>(SmallType)).EnumerateArray().Select(found => found.GetString()));
        Assert.Empty((await page.EvaluateAsync<JsonElement>(TallScreens)).EnumerateArray().Select(found => found.GetString()));
        Assert.True(await page.Locator(".screen").CountAsync() >= 10);
    }
}
