using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>On a phone of 360 pixels nothing prints over its neighbour, and a label stays beside the line that is to be filled in.</summary>
public sealed class NarrowTablesTests(TourRun tour)
{
    /// <summary>Heads and cells whose text is wider than they are: it is drawn over the next one.</summary>
    private const string Overprinted = """
        () => [...document.querySelectorAll('th, td')].filter(cell => cell.getClientRects().length > 0 && !cell.closest('.only-spoken') && getComputedStyle(cell).position !== 'absolute')
          .filter(cell => cell.scrollWidth > cell.clientWidth + 1 && cell.clientWidth > 0)
          .map(cell => `“${cell.textContent.trim().slice(0, 30)}” needs ${cell.scrollWidth} of ${cell.clientWidth} px`)
        """;

    /// <summary>Labels whose line stands below them.</summary>
    private const string TornFromItsLine = """
        () => [...document.querySelectorAll('.fill, .answer-line')].filter(pair => pair.getClientRects().length > 0).filter(pair => {
          const words = document.createRange();
          words.selectNodeContents(pair.firstChild);
          const label = words.getBoundingClientRect(), line = pair.querySelector('span').getBoundingClientRect();
          return line.bottom > label.bottom + 12 || line.left < label.right - 1;
        }).map(pair => `“${pair.textContent.trim()}” is torn from its line`)
        """;

    [Theory]
    [InlineData("pack/observations.html")]
    [InlineData("pack/tasting.html")]
    [InlineData("pack/handout.html")]
    [InlineData("pack/rubric.html")]
    [InlineData("pack/requisition.html")]
    [InlineData("pack/run-sheets.html")]
    [InlineData("dealt/sheets-to-print.html")]
    public async Task Nothing_prints_over_its_neighbour(string file)
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (
            await chromium.Browser.NewContextAsync(
                new()
                {
                    ViewportSize = new() { Width = 360, Height = 800 },
                }
            )
        ).NewPageAsync();
        await page.GotoAsync(new Uri(Path.Combine(tour.Folder, file)).AbsoluteUri);

        Assert.Empty(await page.EvaluateAsync<string[]>(Overprinted));
        Assert.Empty(await page.EvaluateAsync<string[]>(TornFromItsLine));
    }
}
