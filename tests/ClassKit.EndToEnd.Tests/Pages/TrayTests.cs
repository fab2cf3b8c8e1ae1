using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.Pages;
using ClassKit.Pages.Packs;
using ClassKit.Pages.Trays;
using ClassKit.UseCases.Packs;
using ClassKit.UseCases.Running;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>All of a pack in one file takes as much paper as its list says, on both papers; every copy begins on a sheet of its own.</summary>
public sealed partial class TrayTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task All_of_a_pack_takes_as_much_paper_as_its_list_says()
    {
        Tool.PdfToText.Require();
        var pack = BuildPack.Run(BuildPack.Read(Checkout.Demo.Lesson, Checkout.Demo.Class).Model!, Run.Unwatched).Model!;
        var html = HtmlPages.Pack(pack).ToDictionary(page => page.FileName, page => page.Html);
        List<PrintedPage> pages = [.. PackContents.Of(pack).Where(entry => entry != PackContents.Index).Select(entry => PrintedPage.Of(pack, entry, html[entry.FileName]))];
        await using var chromium = await ChromiumBrowser.LaunchAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        foreach (var (paper, bothSides) in new[] { ("A4", true), ("Letter", true), ("A4", false) })
        {
            File.WriteAllText(_folder.Of("tray.html"), string.Concat(HtmlPages.ToPrint(pack, pages, bothSides)));
            await page.GotoAsync(new Uri(_folder.Of("tray.html")).AbsoluteUri);
            await page.PdfAsync(new() { Path = _folder.Of("tray.pdf"), Format = paper });
            var sides = Tool.PdfToText.Run(_folder.Of("tray.pdf"), "-").Split('\f')[..^1];
            var told = int.Parse(Told().Match(await page.Locator(".lede").First.InnerTextAsync()).Groups[1].Value, CultureInfo.InvariantCulture);
            Assert.Equal(told, bothSides ? (sides.Length + 1) / 2 : sides.Length);
            if (!bothSides) continue;
            foreach (var (title, copies) in new[] { (PackContents.Handout.Title, 24), (PackContents.Observations.Title, 24), (PackContents.Tasting.Title, 24), (PackContents.Rubric.Title, 6) })
            {
                var begins = sides.Index().Skip(2).Where(side => side.Item.Split('\n').Where(line => line.Trim().Length > 0).Take(4).Any(line => line.Contains(title, StringComparison.OrdinalIgnoreCase))).Select(side => side.Index).ToList();
                Assert.Equal(copies, begins.Count);
                Assert.All(begins, side => Assert.Equal(0, side % 2));
            }
        }
    }

    [GeneratedRegex(@"(\d+) sheets of paper")]
    private static partial Regex Told();
}
