using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>Pages in headless Chromium: WCAG 2.2 AA by axe's rules, and not one request to anywhere.</summary>
public sealed class AccessibilityTests(TourRun tour) : IDisposable
{
    private static readonly int[] ZoomedWidths = [640, 320];

    private const string CutOff = """
        () => {
          const page = document.documentElement;
          const found = [];
          if (page.scrollWidth > page.clientWidth + 1) {
            const inside = e => { for (let up = e.parentElement; up; up = up.parentElement) if (getComputedStyle(up).overflowX !== 'visible') return true; return false; };
            const wide = [...document.body.querySelectorAll('*')].filter(e => e.getBoundingClientRect().right > page.clientWidth + 1 && !inside(e));
            found.push(`runs ${page.scrollWidth - page.clientWidth} pixels out of the page: ${wide.slice(0, 3).map(e => e.outerHTML.slice(0, 120)).join(' | ')}`);
          }
          const torn = new Set();
          for (const cell of [...document.querySelectorAll('th, td')].slice(0, 400)) {
            if (cell.querySelector('code, .address, .own-words')) continue;
            const texts = document.createTreeWalker(cell, NodeFilter.SHOW_TEXT);
            for (let text = texts.nextNode(); text; text = texts.nextNode()) {
              for (const word of text.data.matchAll(/[\p{L}\p{N}.,’]{2,}/gu)) {
                const range = document.createRange();
                range.setStart(text, word.index);
                range.setEnd(text, word.index + word[0].length);
                if (new Set([...range.getClientRects()].map(line => Math.round(line.top))).size > 1) torn.add(word[0]);
              }
            }
          }
          if (torn.size > 0) found.push(`tears in a cell: ${[...torn].slice(0, 5).join(' | ')}`);
          for (const e of document.body.querySelectorAll('*')) {
            const scrolls = ['auto', 'scroll'].includes(getComputedStyle(e).overflowX) && e.scrollWidth > e.clientWidth + 1;
            if (scrolls && e.tabIndex < 0 && !e.querySelector('a, button, input')) found.push(`scrolls and cannot be reached by keyboard: ${e.outerHTML.slice(0, 120)}`);
          }
          return found;
        }
        """;

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Every_kind_of_page_of_the_tour_passes_in_light_and_in_dark()
    {
        // Sheets differ in nothing but numbers, and students' pages of the term in little else, so one of them speaks for all. Feedback
        // pages differ in their words: those with most to say, with least, and some between. That matters in light only, for dark changes
        // nothing but colours. Files to print for everybody repeat those pages: that of the two who sit again speaks for the class's, and
        // those of a small class are looked at below.
        var kinds = tour
            .Pages.Where(page =>
                IsOfResit(page) == Path.GetFileName(page) is "sheets-to-print.html"
                && !page.EndsWith("feedback-to-print.html", StringComparison.Ordinal)
            )
            .DistinctBy(page => Kind(page, "sheets"))
            .DistinctBy(page => Kind(page, "students"))
            .ToList();
        var feedback = kinds
            .Where(page => Kind(page, "feedback") != page)
            .OrderByDescending(page => new FileInfo(page).Length)
            .ThenBy(page => page, StringComparer.Ordinal)
            .ToList();
        var spoken = feedback.Where((_, at) => at < 2 || at == feedback.Count / 2 || at == feedback.Count - 1).ToList();
        Assert.Equal(4, spoken.Count);

        // What is printed is never dark.
        await Pass(
            [.. kinds.Except(feedback), .. spoken],
            kinds.Except(feedback).Where(page => !page.EndsWith("-to-print.html", StringComparison.Ordinal)).Append(feedback[0])
        );
    }

    [Fact]
    public async Task Pages_that_the_tour_does_not_make_pass_too()
    {
        var lessons = Path.Combine(Checkout.Demo.Root, "lessons");
        var mountains = Path.Combine(Checkout.Demo.Root, "demo-cohort", "mountain-class.md");
        ClassKitRun.Of("pack", Path.Combine(lessons, "thin-air-quick-breads"), "--class", mountains, "--out", _folder.Of("pack")).Done();
        ClassKitRun.Of("rehearse", Checkout.Demo.Lesson, "--students", "12", "--seed", "3", "--out", _folder.Of("rehearsed")).Done();
        ClassKitRun
            .Of(
                "follow-up",
                _folder.Of("rehearsed", "dealt"),
                "--graded",
                _folder.Of("rehearsed", "graded"),
                "--from",
                Path.Combine(lessons, "practice"),
                "--out",
                _folder.Of("follow-up")
            )
            .Done();
        ClassKitRun
            .Of(
                "pack",
                Path.Combine(lessons, "no-oven-in-the-house"),
                "--class",
                Path.Combine(Checkout.Demo.Root, "demo-cohort", "no-oven-class.md"),
                "--out",
                _folder.Of("no-oven")
            )
            .Done();
        ClassKitRun
            .Of(
                "rehearse",
                Path.Combine(lessons, "practice"),
                "--exercise",
                "tub_cut_open",
                "--exercise",
                "muffins_that_failed",
                "--students",
                "3",
                "--seed",
                "5",
                "--out",
                _folder.Of("drawn")
            )
            .Done();

        var ofMarks = PagesOfMarks();

        // The rehearsed class's own pages are of the kinds that the tour makes; follow-up pages differ in their exercises, so a few of them
        // speak for all.
        List<string> pages =
        [
            .. Trials.Some(Directory.EnumerateFiles(_folder.Of("pack"), "*.html").Order(StringComparer.Ordinal), 2),
            .. Directory.EnumerateFiles(_folder.Of("rehearsed"), "*.html"),
            .. Directory.EnumerateFiles(_folder.Of("follow-up"), "*.html"),
            .. new[] { "comparison", "bench-plan", "formula-cards" }.Select(page => _folder.Of("no-oven", page + ".html")),
            .. ofMarks,
            _folder.Of("drawn", "graded", "written-answers.html"),
            _folder.Of("drawn", "graded", "feedback-to-print.html"),
            Directory.EnumerateFiles(_folder.Of("drawn", "dealt", "sheets"), "*.html").Order(StringComparer.Ordinal).First(),
            .. Directory.EnumerateFiles(_folder.Of("follow-up", "pages"), "*.html").Order(StringComparer.Ordinal).Take(3),
        ];

        Assert.True(pages.Count > 12, string.Join("\n", pages));
        // In dark only colours change, and a pack's pages of one lesson have those of another.
        await Pass(
            pages,
            pages.Where(page =>
                !page.StartsWith(_folder.Of("pack"), StringComparison.Ordinal)
                && !page.StartsWith(_folder.Of("no-oven"), StringComparison.Ordinal)
                && !page.EndsWith("-to-print.html", StringComparison.Ordinal)
            )
        );
        foreach (var width in ZoomedWidths)
            Assert.Empty(
                await RunsOut(
                    [
                        .. ofMarks,
                        .. Directory.EnumerateFiles(_folder.Of("rehearsed"), "*.html"),
                        .. Directory.EnumerateFiles(_folder.Of("follow-up"), "*.html"),
                    ],
                    width
                )
            );
    }

    /// <summary>
    /// At 200 % zoom (WCAG 2.2, 1.4.4) a window of 1280 pixels has 640 left, and at 400 % (1.4.10) 320. Nothing may run out of the page
    /// sideways, and what scrolls by itself, as wide tables do, can be reached by the tab key (2.1.1).
    /// </summary>
    [Theory]
    [InlineData(640)]
    [InlineData(320)]
    public async Task Every_kind_of_page_fits_a_zoomed_window_and_is_read_by_keyboard(int width) =>
        Assert.Empty(
            await RunsOut(
                tour.Pages.DistinctBy(page => Kind(page, "sheets"))
                    .DistinctBy(page => Kind(page, "feedback"))
                    .DistinctBy(page => Kind(page, "students")),
                width
            )
        );

    /// <summary>What runs out of a window, and what scrolls in it and no key reaches.</summary>
    private static async Task<List<string>> RunsOut(IEnumerable<string> files, int width)
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        await using var context = await chromium.Browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = 512 },
            }
        );
        var page = await context.NewPageAsync();
        var failures = new List<string>();
        foreach (var file in files)
        {
            await page.GotoAsync(new Uri(file).AbsoluteUri);
            failures.AddRange((await page.EvaluateAsync<string[]>(CutOff)).Select(what => $"{file} at {width}: {what}"));
        }
        return failures;
    }

    /// <summary>What a class can do and how hard its exercises proved, by what the tour graded.</summary>
    private List<string> PagesOfMarks()
    {
        var graded = Path.Combine(tour.Folder, "graded");
        ClassKitRun
            .Of("skills", graded, "--wanted", "2027-06-01", "--last-year", _folder.Of("rehearsed", "graded"), "--out", _folder.Of("skills"))
            .Done();
        ClassKitRun
            .Of("difficulty", Checkout.Demo.Lesson, "--graded", graded, "--class", Checkout.Demo.Class, "--out", _folder.Of("difficulty"))
            .Done();
        // Students' pages are alike: one of a folder speaks for all.
        return
        [
            .. Directory
                .EnumerateFiles(_folder.Of("skills"), "*.html", SearchOption.AllDirectories)
                .Order(StringComparer.Ordinal)
                .DistinctBy(Path.GetDirectoryName),
            .. Directory.EnumerateFiles(_folder.Of("difficulty"), "*.html"),
        ];
    }

    private static bool IsOfResit(string page) => Kind(page, "resit") != page;

    private static string Kind(string page, string folder) =>
        page.Contains($"{Path.DirectorySeparatorChar}{folder}{Path.DirectorySeparatorChar}", StringComparison.Ordinal) ? folder : page;

    private static async Task Pass(IEnumerable<string> light, IEnumerable<string> dark)
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        // Every pair of colours is reckoned in a test of its own: some pages show that they are the ones used.
        var all = light.ToList();
        var failures = await Task.WhenAll(
            Look(chromium.Browser, ColorScheme.Light, all, Trials.Some(all, 4).ToHashSet()),
            Look(chromium.Browser, ColorScheme.Dark, Trials.Some(dark, 3), [])
        );

        Assert.True(failures.All(list => list.Count == 0), string.Join("\n", failures.SelectMany(list => list)));
    }

    private static async Task<List<string>> Look(IBrowser browser, ColorScheme scheme, IEnumerable<string> files, HashSet<string> inColor)
    {
        var failures = new List<string>();
        await using var context = await browser.NewContextAsync(new() { ColorScheme = scheme });
        var page = await context.NewPageAsync();
        var address = "";
        page.Request += (_, request) =>
        {
            if (request.Url != address)
                failures.Add($"{address} asks for {request.Url}");
        };
        foreach (var file in files)
        {
            address = new Uri(file).AbsoluteUri;
            await page.GotoAsync(address);
            // What is folded is not judged, and a reader opens it.
            await page.EvaluateAsync("document.querySelectorAll('details').forEach(folded => folded.open = true)");
            // Rows of a long table are alike, and axe looks at every cell of every one.
            if (!Trials.All)
                await page.EvaluateAsync(
                    "document.querySelectorAll('tbody').forEach(body => [...body.rows].slice(12).forEach(row => row.remove()))"
                );
            failures.AddRange(
                (
                    await (
                        scheme is ColorScheme.Dark ? Axe.ColorViolationsAsync(page)
                        : inColor.Contains(file) ? Axe.ViolationsAsync(page)
                        : Axe.StructureViolationsAsync(page)
                    )
                ).Select(violation => $"{file} ({scheme}): {violation}")
            );
        }
        return failures;
    }
}
