using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.EndToEnd.Tests.Tour;
using ClassKit.Pages;
using ClassKit.Pages.ClassPrints;
using ClassKit.Pages.Packs;
using ClassKit.Pages.Trays;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Running;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>
/// All of a pack in one file, with everybody's exercises and feedback, takes as much paper as its list says, on both papers; on both sides
/// of it every copy begins on a sheet of its own.
/// </summary>
public sealed partial class TrayTests(TourRun tour) : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task All_of_a_pack_takes_as_much_paper_as_its_list_says()
    {
        Tool.PdfToText.Require();
        var pack = BuildPack.Run(BuildPack.Read(Checkout.Demo.Lesson, Checkout.Demo.Class).Model!, Run.Unwatched).Model!;
        var html = HtmlPages.Pack(pack).ToDictionary(page => page.FileName, page => page.Html);
        List<PrintedPage> pages =
        [
            .. PackContents
                .Of(pack)
                .Where(entry => entry != PackContents.Index)
                .Select(entry => PrintedPage.Of(pack, entry, html[entry.FileName])),
        ];
        var dealt = DealtFolder.Read(Path.Combine(tour.Folder, "dealt")).Model!;
        var grades = GradedFolder.Read(Path.Combine(tour.Folder, "graded"), dealt).Model!;
        pages.Add(
            PrintedPage.Of(
                "sheets",
                "Practice sheets",
                File.ReadAllText(Path.Combine(tour.Folder, "dealt", DealFiles.SheetsToPrint)),
                PrintedClass.OfSheets(dealt)
            )
        );
        pages.Add(
            PrintedPage.Of(
                "feedback",
                "Feedback",
                File.ReadAllText(Path.Combine(tour.Folder, "graded", GradeFiles.FeedbackToPrint)),
                PrintedClass.OfFeedback(grades)
            )
        );
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        foreach (
            var (paper, bothSides) in Trials.All
                ? [("A4", true), ("Letter", true), ("A4", false)]
                : new[] { ("A4", true), ("Letter", false) }
        )
        {
            File.WriteAllText(_folder.Of("tray.html"), string.Concat(HtmlPages.ToPrint(pack, pages, bothSides)));
            await page.GotoAsync(new Uri(_folder.Of("tray.html")).AbsoluteUri);
            await page.PdfAsync(new() { Path = _folder.Of("tray.pdf"), Format = paper });
            var sides = Tool.PdfToText.Run(_folder.Of("tray.pdf"), "-").Split('\f')[..^1];
            var told = int.Parse(
                Told().Match(await page.Locator(".lede").First.InnerTextAsync()).Groups[1].Value,
                CultureInfo.InvariantCulture
            );
            Assert.Equal(told, bothSides ? (sides.Length + 1) / 2 : sides.Length);
            if (!bothSides)
                continue;
            foreach (
                var (title, copies) in new[]
                {
                    (PackContents.Handout.Title, 24),
                    (PackContents.Observations.Title, 6),
                    (PackContents.Tasting.Title, 24),
                    (PackContents.Rubric.Title, 6),
                }
            )
            {
                var begins = sides
                    .Index()
                    .Skip(2)
                    .Where(side =>
                        side.Item.Split('\n')
                            .Where(line => line.Trim().Length > 0)
                            .Take(4)
                            .Any(line => line.Trim().StartsWith(title, StringComparison.OrdinalIgnoreCase))
                    )
                    .Select(side => side.Index)
                    .ToList();
                Assert.Equal(copies, begins.Count);
                Assert.All(begins, side => Assert.Equal(0, side % 2));
            }

            // Nobody's sheet has somebody else's on its back.
            var names = dealt.Students.Select(seat => seat.Who.Shown).ToHashSet(StringComparer.Ordinal);
            var named = sides
                .Index()
                .Where(side => side.Item.Split('\n').Take(6).Any(line => names.Contains(line.Trim())))
                .Select(side => side.Index)
                .ToList();
            Assert.Equal(PrintedClass.OfSheets(dealt).Students.Count + PrintedClass.OfFeedback(grades).Students.Count, named.Count);
            Assert.All(named, side => Assert.Equal(0, side % 2));
        }
    }

    [GeneratedRegex(@"(\d+) sheets of paper")]
    private static partial Regex Told();
}
