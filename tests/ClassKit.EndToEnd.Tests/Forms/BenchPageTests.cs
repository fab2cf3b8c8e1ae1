using System.Globalization;
using System.Net;
using ClassKit.EndToEnd.Tests.Tools;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Forms;

/// <summary>
/// Bench marks on a phone in the kitchen: Chromium with the network cut, the page reloaded in the middle, its file brought back and
/// weighed.
/// </summary>
public sealed class BenchPageTests : IDisposable
{
    /// <summary>WCAG 2.2, 2.5.5 asks for 44 px; a wet finger is worse than a dry one.</summary>
    private const double LeastTouched = 48;

    private static readonly string Demo = Path.Combine(Checkout.Demo.Root, "demo-cohort");

    private static readonly string Rubric = Path.Combine(Checkout.Demo.Root, "rubrics", "bench-work.md");

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task What_is_touched_survives_a_reload_comes_back_as_a_file_and_counts_and_a_changed_file_or_another_class_is_refused()
    {
        ClassKitRun
            .Of(
                "bench",
                Rubric,
                "--class",
                Path.Combine(Demo, "class.md"),
                "--roster",
                Path.Combine(Demo, "roster.csv"),
                "--out",
                _folder.Of("form")
            )
            .Done();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await OpenAsync(chromium);
        List<string> asked = [];
        page.Request += (_, request) => asked.Add(request.Url);

        // Every team is secure everywhere: 2 × 16 of 3 × 16 points. Team 1 before, the others after the reload.
        await TouchTeamAsync(page, 1);
        Assert.StartsWith("8 of 8", await page.Locator("[data-count='team-1']").InnerTextAsync(), StringComparison.Ordinal);
        await page.ReloadAsync();
        Assert.Equal("Taken up where this device left off.", await page.Locator("#kept").InnerTextAsync());
        Assert.Equal(8, await page.Locator("#team-1 input:checked[value='Secure']").CountAsync());
        for (var team = 2; team <= 6; team++)
            await TouchTeamAsync(page, team);
        await page.GetByLabel("What was seen", new() { Exact = true }).Last.FillAsync("Ofen heiß, ½ Blech – 🥖 “gut”");

        // Amara explains better than her team, by 1 × 3 points; Selin was away.
        await ShowAsync(page, "students");
        await OpenStudentAsync(page, "Amara Osei");
        await page.Locator("[name='student.amara-osei.7'][value='Excellent']").CheckAsync();
        await OpenStudentAsync(page, "Selin Aydın");
        await page.Locator("[data-field='student.selin-aydin.team']").SelectOptionAsync("away");
        Assert.Empty(await TooSmallAsync(page));
        Assert.Empty(await Axe.ViolationsAsync(page));
        await ShowAsync(page, "done");
        await page.GetByLabel("Marked by").FillAsync("Chef Inés");
        Assert.Empty(await TooSmallAsync(page));
        Assert.Empty(await Axe.ViolationsAsync(page));
        var saved = await page.RunAndWaitForDownloadAsync(() => page.Locator("#save").ClickAsync());
        await saved.SaveAsAsync(_folder.Of("day.json"));

        Assert.Equal("bench-marks-chef-inés.json", saved.SuggestedFilename);
        Assert.All(asked, address => Assert.StartsWith("file:", address, StringComparison.Ordinal));
        Weigh(Path.Combine(Demo, "roster.csv")).Done();
        Assert.Contains("35 of 48", Student("amara-osei"), StringComparison.Ordinal);
        Assert.Contains("32 of 48", Student("anders-lindqvist"), StringComparison.Ordinal);
        Assert.Contains("Ofen heiß, ½ Blech – 🥖 “gut”", Student("yael-oconnor"), StringComparison.Ordinal);
        Assert.Contains("no mark", Student("selin-aydin"), StringComparison.OrdinalIgnoreCase);

        var others = _folder.Of("others.csv");
        File.WriteAllLines(
            others,
            ["name", .. File.ReadAllLines(Path.Combine(Demo, "roster.csv")).Skip(1).Select((_, number) => $"Pupil Number {number + 1}")]
        );
        Assert.Contains("It is of another form: Bench work", Refused(others), StringComparison.Ordinal);
        File.WriteAllText(
            _folder.Of("day.json"),
            File.ReadAllText(_folder.Of("day.json")).Replace("Secure", "Excellent", StringComparison.Ordinal)
        );
        Assert.Contains("its digest does not fit what stands in it", Refused(Path.Combine(Demo, "roster.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_browser_that_keeps_nothing_says_so_and_emptying_takes_two_touches()
    {
        ClassKitRun
            .Of(
                "bench",
                Rubric,
                "--class",
                Path.Combine(Demo, "class.md"),
                "--roster",
                Path.Combine(Demo, "roster.csv"),
                "--out",
                _folder.Of("form")
            )
            .Done();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var forgetful = await OpenAsync(
            chromium,
            "Object.defineProperty(window, 'localStorage', { get() { throw new Error('private'); } });"
        );
        Assert.StartsWith("This browser keeps nothing", await forgetful.Locator("#kept").InnerTextAsync(), StringComparison.Ordinal);
        await TouchTeamAsync(forgetful, 1);
        Assert.Equal(8, await forgetful.Locator("#team-1 input:checked[value='Secure']").CountAsync());

        var page = await OpenAsync(chromium);
        await TouchTeamAsync(page, 1);
        await ShowAsync(page, "done");
        await page.GetByText("Empty everything").ClickAsync();
        Assert.Equal(8, await page.Locator("#team-1 input:checked[value='Secure']").CountAsync());
        await page.GetByText("Yes, empty it on this device").ClickAsync();
        await page.ReloadAsync();
        Assert.Equal(0, await page.Locator("#team-1 input:checked[value='Secure']").CountAsync());
    }

    private async Task<IPage> OpenAsync(ChromiumBrowser chromium, string? before = null)
    {
        var context = await chromium.Browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = 360, Height = 740 },
                HasTouch = true,
                IsMobile = true,
                AcceptDownloads = true,
            }
        );
        if (before is not null)
            await context.AddInitScriptAsync(before);
        await context.SetOfflineAsync(true);
        var page = await context.NewPageAsync();
        await page.GotoAsync(new Uri(_folder.Of("form", "bench-marks.html")).AbsoluteUri);
        return page;
    }

    private static Task ShowAsync(IPage page, string view) => page.Locator($"[data-view='{view}']").TapAsync();

    private static async Task OpenStudentAsync(IPage page, string name) =>
        await page.Locator("summary").Filter(new() { HasText = name }).TapAsync();

    private static async Task TouchTeamAsync(IPage page, int team)
    {
        await ShowAsync(page, string.Create(CultureInfo.InvariantCulture, $"team-{team}"));
        Assert.Empty(await TooSmallAsync(page));
        foreach (var level in await page.Locator($"#team-{team} label:has([value='Secure'])").AllAsync())
            await level.TapAsync();
    }

    /// <summary>Everything in view that can be touched and is too small for it, or wider than the screen.</summary>
    private static Task<string[]> TooSmallAsync(IPage page) =>
        page.EvaluateAsync<string[]>(
            """
            least => [...document.querySelectorAll("button, summary, select, textarea, input:not([type=radio]), label:has([type=radio])")]
              .filter(one => one.checkVisibility())
              .filter(one => { const { width, height } = one.getBoundingClientRect(); return width < least || height < least; })
              .map(one => one.outerHTML.slice(0, 120))
              .concat(document.documentElement.scrollWidth > innerWidth ? ["wider than the screen"] : [])
            """,
            LeastTouched
        );

    private ClassKitRun Weigh(string roster)
    {
        File.WriteAllText(
            _folder.Of("term.md"),
            $"""
            ---
            class: {Path.GetRelativePath(_folder.Path, Path.Combine(Demo, "class.md"))}
            roster: {Path.GetRelativePath(_folder.Path, roster)}
            rule: {Path.GetRelativePath(_folder.Path, Path.Combine(Checkout.Demo.Root, "rubrics", "term-grade.md"))}
            ---

            # A term

            ## Work

            | Work | Kind | Category | Out of | Marks | Resit | Second marker |
            |---|---|---|---|---|---|---|
            | Bench day | bench work | Bench work | {Path.GetRelativePath(_folder.Path, Rubric)} | day.json | | |
            """
        );
        return ClassKitRun.Of("weigh", _folder.Of("term.md"), "--out", _folder.Of("weighed"));
    }

    private string Refused(string roster)
    {
        var run = Weigh(roster);
        Assert.Equal(1, run.ExitCode);
        return run.Problems;
    }

    private string Student(string id) =>
        WebUtility.HtmlDecode(File.ReadAllText(_folder.Of("weighed", "students", id + ".html"))).Replace('\u00A0', ' ');
}
