using System.Net;
using ClassKit.EndToEnd.Tests.Tools;

namespace ClassKit.EndToEnd.Tests.Forms;

/// <summary>
/// What two teams measured: one on a phone without a network, one in the pack's workbook; and what comes with it that is neither.
/// </summary>
public sealed class ObservationPageTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Both_are_drawn_on_the_prediction_and_what_is_neither_is_named_and_stops_nothing()
    {
        ClassKitRun.Of("observe", Checkout.Demo.Lesson, "--class", Checkout.Demo.Class, "--out", _folder.Of("form")).Done();
        ClassKitRun.Of("pack", Checkout.Demo.Lesson, "--class", Checkout.Demo.Class, "--out", _folder.Of("pack")).Done();
        Directory.CreateDirectory(_folder.Of("back"));
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var context = await chromium.Browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = 360, Height = 740 },
                HasTouch = true,
                IsMobile = true,
                AcceptDownloads = true,
            }
        );
        await context.SetOfflineAsync(true);
        var page = await context.NewPageAsync();
        await page.GotoAsync(new Uri(_folder.Of("form", "observations-form.html")).AbsoluteUri);
        await page.GetByLabel("Team").FillAsync("Team 1");
        await page.Locator("[data-view='bread-popovers']").TapAsync();
        await page.Locator("[data-field='popovers.height.1']").FillAsync("80,5");
        await page.ReloadAsync();
        await page.Locator("[data-field='popovers.height.2']").FillAsync("81.5");
        await page.Locator("[data-view='bread-batter_buns']").TapAsync();
        await page.Locator("[data-field='batter_buns.height.1']").FillAsync("60");
        Assert.Empty(await Axe.ViolationsAsync(page));
        await page.Locator("[data-view='done']").TapAsync();
        var saved = await page.RunAndWaitForDownloadAsync(() => page.Locator("#save").ClickAsync());
        Assert.Equal("observations-team-1.json", saved.SuggestedFilename);
        await saved.SaveAsAsync(_folder.Of("back", saved.SuggestedFilename));
        File.WriteAllBytes(
            _folder.Of("back", "team two.xlsx"),
            OpenPyXl
                .Run(
                    File.ReadAllBytes(_folder.Of("pack", "observations.xlsx")),
                    """
                    s = w['Observations']
                    s['B4'] = 'Team 2'
                    bread = ''
                    for r in range(1, 100):
                        bread = s.cell(r, 1).value if s.cell(r, 1).value in ('Popovers', 'Batter buns', 'Buttermilk muffins') else bread
                        if s.cell(r, 1).value == 'Height' and bread == 'Popovers': s['F%d' % r] = 75
                        if s.cell(r, 1).value == 'Height' and bread == 'Batter buns': s['F%d' % r] = 58
                    """
                )
                .Saved
        );
        File.WriteAllText(_folder.Of("back", "team 1 again.json"), File.ReadAllText(_folder.Of("back", "observations-team-1.json")));
        File.WriteAllText(_folder.Of("back", "letter.json"), "{\"kind\":\"cl");

        var run = ClassKitRun.Of(
            "observed",
            Checkout.Demo.Lesson,
            "--class",
            Checkout.Demo.Class,
            "--returned",
            _folder.Of("back"),
            "--out",
            _folder.Of("observed")
        );

        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Measurements of 2 teams.", run.Output, StringComparison.Ordinal);
        var drawn = WebUtility.HtmlDecode(File.ReadAllText(_folder.Of("observed", "what-we-measured.html"))).Replace('\u00A0', ' ');

        // Team means of popovers: 81 and 75 mm; popovers stood 21 and 17 mm above the buns.
        Assert.Contains("Mean 78 mm of 2 teams", drawn, StringComparison.Ordinal);
        Assert.Contains("Popovers stood 19 mm higher than Batter buns (95 %:", drawn, StringComparison.Ordinal);
        Assert.Contains("letter.json", drawn, StringComparison.Ordinal);
        Assert.Contains("Team 1 has brought", drawn, StringComparison.Ordinal);
        await page.GotoAsync(new Uri(_folder.Of("observed", "what-we-measured.html")).AbsoluteUri);
        Assert.Empty(await Axe.ViolationsAsync(page));
    }
}
