using ClassKit.Desk.Folders;
using ClassKit.Desk.Opening;
using ClassKit.EndToEnd.Tests.Tools;
using Microsoft.Playwright;

namespace ClassKit.EndToEnd.Tests.Desk;

/// <summary>
/// The instructor's week at the desk, in a browser: what comes of it is what the commands make of the same, byte for byte.
/// </summary>
public sealed class WeekTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly List<string> _failures = [];
    private readonly HashSet<string> _seen = [];

    /// <summary>A table of a hundred fields is walked in part.</summary>
    private const int MostWalked = 120;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task From_the_first_start_to_what_is_taught_again()
    {
        var folders = new FolderHolder();
        await using var desk = await OpenDesk.StartAsync(
            folders,
            new(),
            bug => _failures.Add(bug.ToString()),
            () => new(2026, 11, 25, 9, 0, 0, TimeSpan.Zero)
        );
        await using var chromium = await ChromiumBrowser.TakeAsync();
        await using var context = await chromium.Browser.NewContextAsync();
        var page = await context.NewPageAsync();
        page.Request += (_, request) =>
        {
            if (
                !request.Url.StartsWith(desk.Address, StringComparison.Ordinal)
                && !request.Url.StartsWith("data:", StringComparison.Ordinal)
            )
                _failures.Add($"asks for {request.Url}");
        };
        page.Console += (_, said) =>
        {
            if (said.Type == "error")
                _failures.Add($"{page.Url}: {said.Text}");
        };

        // Monday: the first start, and a lesson.
        await page.GotoAsync(desk.Entrance);
        await Look(page, "Good to have you here");
        await Press(page, "Look round with the invented class");
        await Look(page, "This week");
        await Follow(page, "Prepare a lesson");
        await Look(page, "Which lesson?");
        await Follow(page, "One Tin, Three Lifts");
        await page.Locator("#open-page").WaitForAsync();
        await Look(page, "One Tin, Three Lifts");

        // A link that is followed within a page takes heading and list along, and what was ticked stays.
        await page.ReloadAsync();
        await page.GetByLabel("Tick Student handout", new() { Exact = false }).CheckAsync();
        await page.FrameLocator("#sheet").GetByRole(AriaRole.Link, new() { Name = "Formula cards", Exact = true }).First.ClickAsync();
        await page.Locator("#open-page:has-text('Formula cards')").WaitForAsync();
        Assert.True(await page.GetByLabel("Tick Student handout", new() { Exact = false }).IsCheckedAsync());
        await Press(page, "Print what is ticked");
        await Look(page, "To print");
        await Follow(page, "Tick something else");
        await Press(page, "Keep all of it in the folder");
        await Follow(page, "One Tin, Three Lifts");

        // What teams measured is typed, and drawn on the prediction.
        await Follow(page, "What the teams measured");
        await Follow(page, "Team 2");
        await Look(page, "What we measured");
        await page.GetByLabel("Popovers, Height, piece 1").FillAsync("81,5");
        await Press(page, "Keep what Team 2 measured");
        await Follow(page, "What we measured");
        await page.Locator("iframe[title='What the teams measured, beside what was predicted']").WaitForAsync();
        await Follow(page, "The lesson");

        // The class's page: what a change breaks is said while it is typed, and what was typed is not lost to another form.
        await Follow(page, "Change teams, ovens or the period");
        await Look(page, "Tuesday bakers");
        await page.GetByLabel("Teams", new() { Exact = true }).FillAsync("99");
        await page.Locator(".looked-over >> text=99 teams for 24 students").WaitForAsync();
        await page.Locator("#names").FillAsync("Ada Berg");
        await page.Locator("form:has(#names) button").ClickAsync();
        await page.Locator("text=Something typed elsewhere on this page is not kept yet").WaitForAsync();
        await Follow(page, "What was arranged with somebody");
        await Look(page, "What was arranged");
        await Follow(page, "This week");
        await Follow(page, "Lessons");
        await Follow(page, "One Tin, Three Lifts");

        // Wednesday: practice is handed out.
        await Follow(page, "Hand out its practice");
        await Look(page, "Hand out practice");
        await Press(page, "See what a student gets");
        await page.Locator(".sides").WaitForAsync();
        await Look(page, "One Tin, Three Lifts");
        await Press(page, "Hand it out to 24 students");
        await Follow(page, "Who gets what");
        await Look(page, "One Tin, Three Lifts");

        // Friday: what came back is dropped in, and one answer is decided on.
        await Follow(page, "Gathered in");
        await page.Locator("#files").SetInputFilesAsync(Directory.EnumerateFiles(Checkout.Demo.Returned));
        await Press(page, "Take them in");
        await Follow(page, "What came back");
        Assert.Equal("21 of 24 students in", await page.Locator("#who").InnerTextAsync());
        await Look(page, "One Tin, Three Lifts");
        await Follow(page, "Beatriz Carvalho");
        await Look(page, "Beatriz Carvalho");
        await page.Locator("td a:has-text('Change it')").First.ClickAsync();
        await page.GetByLabel("Points").First.FillAsync("0.5");
        await page.GetByLabel("Reason").First.FillAsync("<script>alert(1)</script> “Shown at the bench”, she said; =1+1");
        await Look(page, "One Tin, Three Lifts");
        await Press(page, "Decide");
        await Follow(page, "What is left to decide");
        Assert.Contains(
            "<script>alert(1)</script>",
            await page.Locator("#decided + form table").InnerTextAsync(),
            StringComparison.Ordinal
        );
        await Look(page, "One Tin, Three Lifts");

        // The week after: what to teach again, and practice for it.
        await Follow(page, "To teach again");
        await Look(page, "One Tin, Three Lifts");
        await Press(page, "Make it");
        await Follow(page, "What to teach again");
        await page.Locator("text=Who practises what").WaitForAsync();
        await Follow(page, "This week");
        await Look(page, "This week");

        // The end of the term: a mark is typed, a marker's levels are typed, and the grades are frozen.
        await Follow(page, "Marks");
        await Look(page, "How breads rise, autumn");
        await page.Locator(".share a:has-text('How steam lifts')").First.ClickAsync();
        await page.GetByLabel("Rosa Whitehorse", new() { Exact = true }).FillAsync("13,5 late");
        await Look(page, "How steam lifts");
        await Press(page, "Keep them");
        await page.Locator("text=Kept.").WaitForAsync();
        await Follow(page, "All of the term");
        await page.Locator(".share a:has-text('Bench day one')").First.ClickAsync();
        await Look(page, "Bench day one");
        await page.GetByLabel("Amara Osei, Explaining").SelectOptionAsync("Secure");
        await Press(page, "Keep the marks");
        await page.Locator("text=Kept.").WaitForAsync();
        await Follow(page, "All of the term");
        await Follow(page, "Freeze the grades to give them out");
        await Look(page, "Freeze the grades");
        await page.GetByLabel("Why now").FillAsync("End of the term");
        await Press(page, "Freeze them");
        await page.Locator("text=are frozen as they are").WaitForAsync();
        await Follow(page, "How breads rise, autumn");
        await Look(page, "How breads rise, autumn");
        await Follow(page, "This week");

        // A file's text, and what goes before somebody is erased.
        await Follow(page, "Your files");
        await Look(page, "Your files");
        await page.Locator("main li", new() { HasText = "class.md" }).GetByRole(AriaRole.Link).First.ClickAsync();
        await Look(page, "class.md");
        await page.GotoAsync($"{desk.Address}people/class/rosa-whitehorse/erase");
        await Look(page, "Erase Rosa Whitehorse");
        await Follow(page, "Bench sums");
        await Follow(page, "How much of the water goes in as ice?");
        await Look(page, "How much of the water goes in as ice?");

        Assert.True(_failures.Count == 0, string.Join("\n", _failures));
        SameAsTheCommands(folders.Current!);
    }

    private void SameAsTheCommands(TeachingFolder folder)
    {
        var demo = Checkout.Demo;
        var round = folder.Round(folder.Class("class")!, "01-one-tin-three-lifts")!;
        ClassKitRun.Of("pack", demo.Lesson, "--class", demo.Class, "--out", _folder.Of("pack")).Done();
        ClassKitRun
            .Of("deal", demo.Lesson, "--roster", demo.Roster, "--class", demo.Class, "--seed", "2026", "--out", _folder.Of("dealt"))
            .Done();
        ClassKitRun.Of("grade", _folder.Of("dealt"), "--returned", demo.Returned, "--out", _folder.Of("graded")).Done();
        File.Copy(Path.Combine(round.Graded, "corrections.csv"), _folder.Of("graded", "corrections.csv"));
        ClassKitRun.Of("regrade", _folder.Of("dealt"), "--returned", demo.Returned, "--graded", _folder.Of("graded"), "--write").Done();
        ClassKitRun
            .Of(
                "follow-up",
                _folder.Of("dealt"),
                "--graded",
                _folder.Of("graded"),
                "--from",
                "shipped:/lessons/practice",
                "--seed",
                "2026",
                "--out",
                _folder.Of("follow-up")
            )
            .Done();

        var term = Path.Combine(folder.Root, "term", "term.md");
        ClassKitRun.Of("weigh", term, "--out", _folder.Of("weighed")).Done();
        ClassKitRun.Of("weigh", term, "--record", folder.Root, "--out", _folder.Of("weighed-on-record")).Done();
        Assert.Equal(FolderContent.Digests(_folder.Of("weighed")), FolderContent.Digests(_folder.Of("weighed-on-record")));
        var again = ClassKitRun.Of("freeze", term, "--record", folder.Root).Done().Output;
        Assert.Contains("the grades given out are the grades of today", again, StringComparison.Ordinal);
        Assert.DoesNotContain("--write", again, StringComparison.Ordinal);

        Assert.Equal(
            FolderContent.Digests(_folder.Of("pack")),
            FolderContent.Digests(folder.PackOf(folder.Class("class")!, folder.Lesson("one-tin-three-lifts")!))
        );
        Assert.Equal(FolderContent.Digests(_folder.Of("dealt")), FolderContent.Digests(round.Dealt));
        Assert.Equal(FolderContent.Digests(demo.Returned), FolderContent.Digests(round.Returned));
        Assert.Equal(FolderContent.Digests(_folder.Of("graded")), FolderContent.Digests(round.Graded));
        Assert.Equal(FolderContent.Digests(_folder.Of("follow-up")), FolderContent.Digests(round.FollowUp));
    }

    private static Task Press(IPage page, string button) =>
        page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).First.ClickAsync();

    private static Task Follow(IPage page, string link) =>
        page.Locator(".rail nav, main")
            .GetByRole(AriaRole.Link, new() { NameRegex = new(System.Text.RegularExpressions.Regex.Escape(link)) })
            .First.ClickAsync();

    /// <summary>
    /// What stands there is readable for everybody: WCAG 2.2 AA by axe's rules, in light and in dark, and nothing runs out of a phone's 360
    /// pixels or of 320 (1.4.10).
    /// </summary>
    private async Task Look(IPage page, string heading)
    {
        await page.GetByRole(AriaRole.Heading, new() { Name = heading, Level = 1 }).WaitForAsync();

        // What stands in a frame is looked at by itself elsewhere; no script runs in it, and axe's would be waited for without end.
        await page.EvaluateAsync(
            "() => { for (const folded of document.querySelectorAll('details')) folded.open = true; for (const frame of document.querySelectorAll('iframe[title]')) frame.remove(); }"
        );
        // Colours hang on classes: where all of them were seen together there is no new one.
        var isNewLook = _seen.Add(
            await page.EvaluateAsync<string>(
                "[...new Set([...document.querySelectorAll('[class]')].flatMap(one => [...one.classList]))].sort().join(' ')"
            )
        );
        _failures.AddRange(
            (await (isNewLook ? Axe.ViolationsAsync(page) : Axe.StructureViolationsAsync(page))).Select(violation =>
                $"{page.Url}: {violation}"
            )
        );
        await page.SetViewportSizeAsync(320, 700);
        var over = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        if (over > 1)
            _failures.Add($"{page.Url} runs {over} pixels out of 320");
        await LookTwiceAsLargeAsync(page);
        await page.SetViewportSizeAsync(1280, 900);
        await WalkAsync(page);
    }

    /// <summary>
    /// At 200 % zoom a window of 1280 pixels is one of 640 (WCAG 2.2, 1.4.4): nothing runs out of it, nothing to press or type into goes,
    /// and no words are cut off.
    /// </summary>
    private async Task LookTwiceAsLargeAsync(IPage page)
    {
        const string Reachable =
            "() => [...document.querySelectorAll('a[href], button, input:not([type=hidden]), select, textarea, summary')].filter(one => one.checkVisibility()).length";
        await page.SetViewportSizeAsync(1280, 900);
        var whole = await page.EvaluateAsync<int>(Reachable);
        await page.SetViewportSizeAsync(640, 450);
        if (await page.EvaluateAsync<int>(Reachable) is var left && left < whole)
            _failures.Add($"{page.Url}: of {whole} things to press or type into {left} are there at 200 %");
        var cut = await page.EvaluateAsync<string[]>(
            """
            () => [...document.querySelectorAll("main *, header *, footer *")].filter(one => one.checkVisibility() && one.clientWidth > 4 && one.innerText?.trim()
                && getComputedStyle(one).overflowX === "hidden" && one.scrollWidth > one.clientWidth + 1).map(one => one.outerHTML.slice(0, 90))
            """
        );
        _failures.AddRange(cut.Select(one => $"{page.Url}: cut off at 200 %: {one}"));
        var over = await page.EvaluateAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
        if (over > 1)
            _failures.Add($"{page.Url} runs {over} pixels out of 640");
    }

    /// <summary>
    /// The keyboard alone (WCAG 2.2, 2.1.1, 2.1.2, 2.4.7): Tab comes to everything that can be pressed or typed into, each shows where it
    /// is, and the page is left again at its end. Once for each kind of page.
    /// </summary>
    private async Task WalkAsync(IPage page)
    {
        if (
            !_seen.Add(
                await page.EvaluateAsync<string>("location.pathname.split('/').slice(2).map(step => /[a-z]+/.exec(step)?.[0]).join('/')")
            )
        )
            return;
        await page.EvaluateAsync(
            """
            () => {
              const reached = "a[href], button, input:not([type=hidden]), select, textarea, summary, iframe";
              window.toReach = [...document.querySelectorAll(reached)].filter(one => one.checkVisibility() && !one.disabled);
              // Of several radio buttons of a name one is come to, and arrows lead to the others.
              window.toReach = window.toReach.filter(one => one.type !== "radio" || one.checked);
              window.seen = new Set();
              window.unseen = [];
              document.addEventListener("focusin", ({ target }) => {
                window.seen.add(target);
                const { outlineStyle, outlineWidth } = getComputedStyle(target);
                if (target.matches(reached) && (outlineStyle === "none" || parseFloat(outlineWidth) < 1)) window.unseen.push(target.outerHTML.slice(0, 90));
              });
              document.activeElement?.blur();
              scrollTo(0, 0);
            }
            """
        );
        // A field for day and time has a stop for each of its parts.
        var all = await page.EvaluateAsync<int>("toReach.length + 8 * document.querySelectorAll('[type=datetime-local]').length");
        for (var pressed = 0; pressed < Math.Min(all + 2, MostWalked); pressed++)
            await page.Keyboard.PressAsync("Tab");
        var left = await page.EvaluateAsync<string[]>(
            "most => [...toReach.slice(0, most - 5).filter(one => !seen.has(one)).map(one => `Tab does not reach ${one.outerHTML.slice(0, 90)}`), ...unseen.map(one => `focus cannot be seen on ${one}`)]",
            MostWalked
        );
        _failures.AddRange(left.Select(said => $"{page.Url}: {said}"));
    }
}
