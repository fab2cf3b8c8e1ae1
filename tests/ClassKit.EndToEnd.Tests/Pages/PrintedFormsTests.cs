using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>
/// Pages that are made for the screen and printed all the same: on the paper of the class, in few sides, without what only a screen needs.
/// </summary>
public sealed class PrintedFormsTests(TourRun tour) : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    /// <summary>The demo class prints on A4.</summary>
    [Fact]
    public async Task Every_page_for_a_class_prints_on_its_paper()
    {
        Tool.PdfToText.Require();
        var graded = Path.Combine(tour.Folder, "graded");
        var rubric = Path.Combine(Checkout.Demo.Root, "rubrics", "bench-work.md");
        ClassKitRun.Of("skills", graded, "--out", _folder.Of("skills")).Done();
        ClassKitRun.Of("observe", Checkout.Demo.Lesson, "--class", Checkout.Demo.Class, "--out", _folder.Of("observe")).Done();
        ClassKitRun
            .Of("bench", rubric, "--class", Checkout.Demo.Class, "--roster", Checkout.Demo.Roster, "--out", _folder.Of("bench"))
            .Done();
        ClassKitRun
            .Of("difficulty", Checkout.Demo.Lesson, "--graded", graded, "--class", Checkout.Demo.Class, "--out", _folder.Of("difficulty"))
            .Done();
        ClassKitRun
            .Of("practice", Checkout.Demo.Lesson, "--apart-from", Path.Combine(tour.Folder, "dealt"), "--out", _folder.Of("practice"))
            .Done();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        foreach (
            var (file, most) in new[]
            {
                // One side with everybody on it, and how it is to be read.
                ("skills/skills.html", 2),
                ("observe/observations-form.html", 2),
                // A side a team, and the students.
                ("bench/bench-marks.html", 7),
                ("difficulty/difficulty.html", 4),
                ("practice/practice.html", 14),
            }
        )
        {
            await page.GotoAsync(new Uri(_folder.Of(file)).AbsoluteUri);
            var pdf = _folder.Of("page.pdf");
            await page.PdfAsync(new() { Path = pdf, PreferCSSPageSize = true });
            var sides = PaperOfPdf.Sides(pdf);
            Assert.NotEmpty(sides);
            Assert.All(sides, side => Assert.True(side.Is(PaperOfPdf.A4), $"{file} is not on A4"));
            Assert.True(sides.Count <= most, $"{file} takes {sides.Count} sides, and {most} were promised");
            var text = Tool.PdfToText.Run("-layout", pdf, "-");
            Assert.DoesNotContain("Save the file", text, StringComparison.Ordinal);
            Assert.DoesNotContain("not seen yet", text, StringComparison.Ordinal);
        }
    }
}
