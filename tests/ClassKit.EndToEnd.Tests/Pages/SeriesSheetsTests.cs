using ClassKit.EndToEnd.Tests.Tools;
using ClassKit.Lessons.Packs;
using ClassKit.Pages;
using ClassKit.Pages.Values;
using ClassKit.UseCases.Packs;

namespace ClassKit.EndToEnd.Tests.Pages;

/// <summary>A lesson whose teams share out what is changed has more breads than teams bake, and takes no more paper for it.</summary>
public sealed class SeriesSheetsTests : IDisposable
{
    /// <summary>Without a plan: what is printed here tells of no minute, and planning takes longer than all else.</summary>
    internal static LessonPack Pack()
    {
        var read = BuildPack
            .Read(
                Path.Combine(Checkout.Demo.Root, "lessons", "one-dough-three-clocks"),
                Path.Combine(Checkout.Demo.Root, "demo-cohort", "long-morning-class.md")
            )
            .Model!;
        return PackProse.InWords(new PlannedPack(ComputedPack.Build(read.Lesson, read.Profile).Value, new(null, null, null, [], null)));
    }

    /// <summary>Sides at most, of each page's file.</summary>
    private static readonly Dictionary<string, int> Sides = new() { ["comparison.html"] = 3, ["projector.html"] = 6 };

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task A_series_takes_no_more_sides_than_somebody_reads()
    {
        Tool.PdfToText.Require();
        await using var chromium = await ChromiumBrowser.TakeAsync();
        var page = await (await chromium.Browser.NewContextAsync()).NewPageAsync();
        var failures = new List<string>();
        foreach (var made in HtmlPages.Pack(Pack()).Where(made => Sides.ContainsKey(made.FileName)))
        {
            File.WriteAllText(_folder.Of(made.FileName), made.Html);
            await page.GotoAsync(new Uri(_folder.Of(made.FileName)).AbsoluteUri);
            foreach (var paper in new[] { "A4", "Letter" })
            {
                var pdf = _folder.Of("page.pdf");
                await page.PdfAsync(new() { Path = pdf, Format = paper });
                var sides = PrintedSide.Of(Tool.PdfToText.Run("-layout", pdf, "-"));
                if (sides.Count > Sides[made.FileName])
                    failures.Add($"{made.FileName} takes {sides.Count} sides of {paper}, and {Sides[made.FileName]} were promised");
            }
        }

        Assert.True(failures.Count == 0, string.Join('\n', failures));
    }
}
