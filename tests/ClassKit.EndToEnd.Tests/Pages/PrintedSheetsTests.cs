using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>Pages printed by headless Chromium on both papers: nobody prints, or reads, ten sheets a student.</summary>
public sealed partial class PrintedSheetsTests(TourRun tour) : IDisposable
{
    /// <summary>Sides at most, by the page's place in the tour.</summary>
    private static readonly Dictionary<string, int> Sides = new()
    {
        ["graded/feedback/"] = 2,
        ["graded/class-report"] = 2,
        ["dealt/answer-key"] = 2,
        ["pack/handout"] = 2,
        ["pack/guide"] = 5,
        ["pack/comparison"] = 3,
        ["pack/observations"] = 2,
        ["pack/tasting.html"] = 1,
        ["pack/tasting-key"] = 2,
        ["pack/bench-plan"] = 1,
        ["pack/projector"] = 6,
        ["pack/requisition"] = 3,
        ["pack/stations"] = 2,
        ["pack/run-sheets"] = 7,
        ["pack/formula-cards"] = 4,
        ["pack/rubric"] = 1,
        ["pack/index"] = 2,
        ["observed/"] = 3,
        ["term/students/a"] = 2,
        ["term/term-report"] = 2,
        ["term/marking-agreement"] = 2,
    };

    /// <summary>What announces what follows: alone at the foot of a side it announces nothing.</summary>
    private const string HeadingsOnPaper =
        "() => [...document.querySelectorAll('h1, h2, h3, h4, caption, thead tr')].map(heading => heading.innerText)";

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task A_page_takes_no_more_sides_than_somebody_reads_and_leaves_no_heading_or_line_alone(string paper)
    {
        Tool.PdfToText.Require();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        var failures = new List<string>();
        foreach (var (file, most) in tour.Pages.Select(file => (File: file, Most: MostOf(file))).Where(entry => entry.Most > 0))
        {
            await page.GotoAsync(new Uri(file).AbsoluteUri);
            if (await WiderThan(page, paper) is { Length: > 0 } wide)
                failures.Add($"{Place(file)} is wider than {paper} and is all printed smaller for it: {wide}");
            var pdf = _folder.Of("page.pdf");
            await page.PdfAsync(new() { Path = pdf, Format = paper });
            var sides = PrintedSide.Of(Tool.PdfToText.Run("-layout", pdf, "-"));
            if (sides.Count > most)
                failures.Add($"{Place(file)} takes {sides.Count} sides of {paper}, and {most} were promised");
            var headings = await page.EvaluateAsync<string[]>(HeadingsOnPaper);
            failures.AddRange(sides.SelectMany(side => side.Faults(headings)).Select(fault => $"{Place(file)} on {paper}, {fault}"));
        }

        Assert.True(failures.Count == 0, string.Join('\n', failures));
    }

    /// <summary>
    /// What sticks out where a page is laid out for print between the margins of its paper (15 mm a side, 12 mm on its side); empty for
    /// nothing. Chromium would print all of the page smaller, and nobody would read why.
    /// </summary>
    private static async Task<string> WiderThan(IPage page, string paper)
    {
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        var isOnItsSide = await page.EvaluateAsync<bool>(
            "() => [document.body, ...document.body.children].some(part => ['grid', 'screens'].includes(getComputedStyle(part).page))"
        );
        var (width, height) = paper == "A4" ? (210.0, 297.0) : (215.9, 279.4);
        await page.SetViewportSizeAsync((int)((isOnItsSide ? height - 24 : width - 30) / 25.4 * 96), 1000);
        var wide = await page.EvaluateAsync<string>(
            "() => { const room = document.documentElement.clientWidth; return document.documentElement.scrollWidth <= room ? '' : [...document.querySelectorAll('body *')].filter(part => part.getBoundingClientRect().right > room + 1).slice(0, 1).map(part => part.tagName + '.' + part.className + ' ' + Math.round(part.getBoundingClientRect().right) + ' of ' + room + ' px').join(); }"
        );
        await page.EmulateMediaAsync(new() { Media = Media.Null });
        return wide;
    }

    /// <summary>
    /// A class that prints on Letter has pages set for it, sheets on their side too.
    /// </summary>
    [Fact]
    public async Task A_pack_for_a_class_with_Letter_takes_no_more_sides()
    {
        Tool.PdfToText.Require();
        var profile = File.ReadAllText(Checkout.Demo.Class);
        File.WriteAllText(
            _folder.Of("class.md"),
            profile
                .Replace("paper: A4", "paper: Letter", StringComparison.Ordinal)
                .Replace("prices: prices.md\n", "", StringComparison.Ordinal)
        );
        ClassKitRun.Of("pack", Checkout.Demo.Lesson, "--class", _folder.Of("class.md"), "--out", _folder.Of("pack")).Done();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        var failures = new List<string>();
        foreach (var (kind, most) in Sides.Where(kind => kind.Key.StartsWith("pack/", StringComparison.Ordinal)))
        {
            await page.GotoAsync(new Uri(_folder.Of(Path.ChangeExtension(kind, null) + ".html")).AbsoluteUri);
            var pdf = _folder.Of("page.pdf");
            await page.PdfAsync(new() { Path = pdf, PreferCSSPageSize = true });
            var sides = PaperOfPdf.Sides(pdf);
            if (sides.Count > most)
                failures.Add($"{kind} takes {sides.Count} sides, and {most} were promised");
            if (!sides.All(side => side.Is(PaperOfPdf.Letter)))
                failures.Add($"{kind} is not all on Letter");
        }

        Assert.True(failures.Count == 0, string.Join('\n', failures));
    }

    /// <summary>The demo class prints on A4, and nobody has to set it.</summary>
    [Fact]
    public async Task A_page_prints_on_the_paper_of_the_class_by_itself()
    {
        Tool.PdfToText.Require();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        foreach (
            var file in Sides.Keys.Select(kind =>
                tour.Pages.First(file => MostOf(file) > 0 && Place(file).StartsWith(kind, StringComparison.Ordinal))
            )
        )
        {
            await page.GotoAsync(new Uri(file).AbsoluteUri);
            var pdf = _folder.Of("page.pdf");
            await page.PdfAsync(new() { Path = pdf, PreferCSSPageSize = true });
            var sides = PaperOfPdf.Sides(pdf);
            Assert.All(sides, side => Assert.True(side.Is(PaperOfPdf.A4), $"{Place(file)} is not all on A4"));
            Assert.NotEmpty(sides);
        }
    }

    /// <summary>What is printed at once says how much paper it takes, and every student begins on a fresh sheet.</summary>
    [Theory]
    [InlineData("dealt/sheets-to-print.html", "A4")]
    [InlineData("dealt/sheets-to-print.html", "Letter")]
    [InlineData("graded/feedback-to-print.html", "A4")]
    [InlineData("graded/feedback-to-print.html", "Letter")]
    public async Task A_class_takes_as_much_paper_as_its_list_says(string file, string paper)
    {
        Tool.PdfToText.Require();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        await page.GotoAsync(new Uri(Path.Combine(tour.Folder, file)).AbsoluteUri);
        var pdf = _folder.Of("class.pdf");
        await page.PdfAsync(new() { Path = pdf, Format = paper });
        var sides = Tool.PdfToText.Run(pdf, "-").Split('\f')[..^1];
        var names = await page.Locator("article h2.name").AllInnerTextsAsync();

        var told = int.Parse(
            SheetsOfPaper().Match(await page.Locator(".lede").First.InnerTextAsync()).Groups[1].Value,
            CultureInfo.InvariantCulture
        );
        Assert.InRange(sides.Length, told * 2 - 1, told * 2);
        Assert.All(names, name => Assert.Equal(0, Array.FindIndex(sides, 2, side => side.Contains(name, StringComparison.Ordinal)) % 2));

        // A student's sides bear the student's name and their own numbers, and nothing of the file that they were printed from.
        var owned = sides[2..].Where(side => side.Trim().Length > 0).ToList();
        Assert.NotEmpty(owned);
        Assert.All(owned, side =>
        {
            Assert.DoesNotContain("to print", side, StringComparison.Ordinal);
            Assert.DoesNotMatch(@"\d+ / \d+\s*$", side);
            Assert.Matches(@"\b\d of \d\b", side);
            Assert.Contains(names, name => Regex.Replace(side, @"\s+", " ").Contains(name, StringComparison.Ordinal));
        });
    }

    /// <summary>The back says that something is missing exactly where something is.</summary>
    [Fact]
    public async Task A_back_says_that_solutions_have_no_room_where_they_have_none()
    {
        Tool.PdfToText.Require();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        await page.GotoAsync(new Uri(Path.Combine(tour.Folder, "graded/feedback-to-print.html")).AbsoluteUri);
        // Of every other student more is missed than there is room for.
        await page.EvaluateAsync(
            "() => [...document.querySelectorAll('article')].forEach((article, at) => { if (at % 2) for (const piece of article.querySelectorAll('.missed-part')) for (let more = 0; more < 2; more++) piece.after(piece.cloneNode(true)); })"
        );
        var wanted = await page.EvaluateAsync<int[]>(
            "() => [...document.querySelectorAll('article')].map(article => article.querySelectorAll('.missed-part').length + (article.querySelector('.side > p.small') ? 1 : 0))"
        );
        var asks = await page.EvaluateAsync<string[][]>(
            "() => [...document.querySelectorAll('article')].map(article => [...article.querySelectorAll('.missed-part h3, .missed-part h4')].map(ask => ask.textContent.trim()))"
        );
        var sides = await Printed(page);
        var said = 0;
        foreach (var (at, parts) in asks.Index().Where(entry => entry.Item.Length > 0))
        {
            var back = Blankless(sides[2 + at * 2 + 1]);
            var printed = parts.Distinct().Sum(ask => back.Split(Blankless(ask)).Length - 1);
            var says = back.Contains(Blankless("What has no room here"), StringComparison.Ordinal);
            Assert.True(says == printed < wanted[at], $"Student {at + 1}: {printed} of {wanted[at]} parts are printed, said: {says}");
            said += says ? 1 : 0;
        }

        Assert.InRange(said, 1, asks.Length - 1);

        static string Blankless(string text) => Regex.Replace(text, @"\s+", "");
    }

    /// <summary>
    /// A formula that sticks out of its box is printed over what stands beside it, or past the paper's edge. In large print too, where
    /// everything is nearly twice as wide.
    /// </summary>
    [Fact]
    public async Task No_formula_leaves_its_box_in_print()
    {
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        await page.EmulateMediaAsync(new() { Media = Media.Print });
        // Between the margins of A4, in pixels.
        await page.SetViewportSizeAsync(680, 1000);
        var failures = new List<string>();
        var formulas = 0;
        var feedback = Directory.EnumerateFiles(Path.Combine(tour.Folder, "graded/feedback"), "*.html").Order(StringComparer.Ordinal);
        foreach (
            var (file, isLarge) in feedback.Take(Trials.All ? int.MaxValue : 6).SelectMany(file => new[] { (file, false), (file, true) })
        )
        {
            await page.GotoAsync(new Uri(file).AbsoluteUri);
            if (isLarge)
                await page.EvaluateAsync("() => document.body.classList.add('large-print')");
            formulas += await page.Locator(".side math").CountAsync();
            failures.AddRange(
                (await page.EvaluateAsync<string[]>(FormulasOutside)).Select(fault =>
                    $"{Place(file)}{(isLarge ? " in large print" : "")}: {fault}"
                )
            );
        }

        Assert.True(formulas > 0);
        Assert.True(failures.Count == 0, string.Join('\n', failures));
    }

    /// <summary>Formulas that are laid out wider than the block that they stand in, or over what is no part of them.</summary>
    private const string FormulasOutside = """
        () => [...document.querySelectorAll('.side math')].filter(math => math.getClientRects().length > 0).flatMap(math => {
          let block = math.parentElement;
          while (getComputedStyle(block).display.startsWith('inline')) block = block.parentElement;
          const right = Math.min(block.getBoundingClientRect().right, document.documentElement.clientWidth);
          const most = Math.max(...[math, ...math.querySelectorAll('*')].flatMap(part => [...part.getClientRects()]).map(box => box.right));
          return most > right + 1 ? [`${math.textContent} ends at ${Math.round(most)} of ${Math.round(right)} px`] : [];
        })
        """;

    /// <summary>
    /// Whoever missed everything has long solutions and many of them: what has no room on the two sides is left for the screen, never a
    /// third side.
    /// </summary>
    [Theory]
    [InlineData("A4")]
    [InlineData("Letter")]
    public async Task Feedback_is_one_sheet_whatever_was_missed(string paper)
    {
        Tool.PdfToText.Require();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        await page.GotoAsync(new Uri(Path.Combine(tour.Folder, "graded/feedback-to-print.html")).AbsoluteUri);
        // With everything missed one is as long as another.
        if (!Trials.All)
            await page.EvaluateAsync("() => [...document.querySelectorAll('article')].slice(6).forEach(article => article.remove())");
        var students = await page.Locator("article").CountAsync();
        await page.EvaluateAsync(
            "() => { for (const piece of document.querySelectorAll('.put-right > ol > li, .missed-part')) for (let more = 0; more < 12; more++) piece.after(piece.cloneNode(true)); }"
        );
        var pdf = _folder.Of("missed.pdf");
        await page.PdfAsync(new() { Path = pdf, Format = paper });
        var sides = Tool.PdfToText.Run(pdf, "-").Split('\f')[..^1];

        Assert.Equal(2 + students * 2, sides.Length);
        // What stands below on each sheet is still there, behind as much as had room.
        Assert.All(sides[2..].Chunk(2), sheet =>
            Assert.Contains("show it to them", Regex.Replace(string.Concat(sheet), @"\s+", " "), StringComparison.Ordinal)
        );
        Assert.Contains(sides, side =>
            side.Contains("with the other numbers:", StringComparison.Ordinal) && side.Split("Worked solutions").Length == 2
        );
    }

    /// <summary>
    /// What a student has to put right stands on their sheet, whether it is printed from their own file or with everybody's: what has no
    /// room is cut off in print, and nobody would see that a card is gone.
    /// </summary>
    [Fact]
    public async Task Every_card_of_every_student_is_printed_from_either_file()
    {
        Tool.PdfToText.Require();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        await page.GotoAsync(new Uri(Path.Combine(tour.Folder, "graded/feedback-to-print.html")).AbsoluteUri);
        var names = await page.Locator("article h2.name").AllInnerTextsAsync();
        var sides = await Printed(page);
        var failures = new List<string>();
        foreach (var file in Directory.EnumerateFiles(Path.Combine(tour.Folder, "graded/feedback"), "*.html"))
        {
            await page.GotoAsync(new Uri(file).AbsoluteUri);
            var cards = await page.Locator(".put-right .ask").AllInnerTextsAsync();
            var at = names.ToList().IndexOf(await page.Locator("h1").InnerTextAsync());
            if (at < 0 || cards.Count == 0)
                continue;
            var own = (await Printed(page))[0];
            failures.AddRange(cards.Where(card => !Holds(own, card)).Select(card => $"{Place(file)} prints no {card}"));
            failures.AddRange(
                cards
                    .Where(card => !Holds(sides[2 + at * 2], card))
                    .Select(card => $"feedback-to-print.html prints for {names[at]} no {card}")
            );
        }

        Assert.True(failures.Count == 0, string.Join('\n', failures));

        static bool Holds(string side, string card) => WithoutBlanks(side).Contains(WithoutBlanks(card), StringComparison.Ordinal);
        static string WithoutBlanks(string text) => Regex.Replace(text, @"\s+", "");
    }

    private async Task<string[]> Printed(IPage page)
    {
        var pdf = _folder.Of("printed.pdf");
        await page.PdfAsync(new() { Path = pdf, PreferCSSPageSize = true });
        return Tool.PdfToText.Run(pdf, "-").Split('\f')[..^1];
    }

    [GeneratedRegex(@"(\d+) sheets of paper")]
    private static partial Regex SheetsOfPaper();

    private string Place(string file) => Path.GetRelativePath(tour.Folder, file).Replace(Path.DirectorySeparatorChar, '/');

    private int MostOf(string file)
    {
        var place = Place(file);
        return Sides.FirstOrDefault(kind => place.StartsWith(kind.Key, StringComparison.Ordinal)).Value;
    }
}
