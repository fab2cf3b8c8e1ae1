using System.Security.Cryptography;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;
using ClassKit.Pages.Tests.Samples;

namespace ClassKit.Pages.Tests.Accessibility;

/// <summary>What WCAG 2.2 asks of a page's structure; the success criterion stands beside each check.</summary>
public sealed class PageStructureTests
{
    public static TheoryData<string> PageNames => [.. SamplePages.All.Keys];

    private static IDocument Parse(string name) =>
        new HtmlParser(new HtmlParserOptions { IsStrictMode = false }).ParseDocument(SamplePages.All[name]);

    [Theory, MemberData(nameof(PageNames))]
    public void A_page_is_html_without_parse_errors(string name)
    {
        var errors = new List<string>();
        var parser = new HtmlParser(new HtmlParserOptions { IsKeepingSourceReferences = true });
        parser.Error += (_, error) => errors.Add(((AngleSharp.Html.Dom.Events.HtmlErrorEvent)error).Message);
        var document = parser.ParseDocument(SamplePages.All[name]);

        Assert.Empty(errors);
        Assert.Equal("html", document.Doctype.Name);
        Assert.StartsWith("<!DOCTYPE html>", SamplePages.All[name], StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(PageNames))]
    public void A_page_states_its_language_title_and_viewport(string name)
    {
        var page = Parse(name);
        Assert.Equal("en", page.DocumentElement.GetAttribute("lang")); // 3.1.1
        Assert.False(string.IsNullOrWhiteSpace(page.Title)); // 2.4.2
        var viewport = page.QuerySelector("meta[name=viewport]")!.GetAttribute("content")!;
        Assert.DoesNotContain("maximum-scale", viewport, StringComparison.Ordinal); // 1.4.4
        Assert.DoesNotContain("user-scalable", viewport, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(PageNames))]
    public void A_page_has_one_header_one_main_one_footer_and_one_first_heading(string name)
    {
        var page = Parse(name);
        foreach (var landmark in new[] { "body > header", "body > main", "body > footer", "h1" })
            Assert.Single(page.QuerySelectorAll(landmark)); // 1.3.1
        Assert.Single(page.QuerySelectorAll("main"));
    }

    [Theory, MemberData(nameof(PageNames))]
    public void Headings_never_skip_a_level(string name)
    {
        var before = 0;
        foreach (var heading in Parse(name).QuerySelectorAll("h1, h2, h3, h4, h5, h6")) // 1.3.1
        {
            var level = heading.LocalName[1] - '0';
            Assert.True(level <= before + 1, $"h{level} “{heading.TextContent.Trim()}” follows h{before}.");
            Assert.False(string.IsNullOrWhiteSpace(heading.TextContent));
            before = level;
        }
    }

    [Theory, MemberData(nameof(PageNames))]
    public void Every_table_has_a_caption_and_every_head_cell_a_scope(string name)
    {
        foreach (var table in Parse(name).QuerySelectorAll("table")) // 1.3.1, technique H39 and H63
        {
            Assert.False(
                string.IsNullOrWhiteSpace(table.QuerySelector("caption")?.TextContent),
                $"No caption: {table.TextContent.Trim()[..40]}"
            );
            Assert.NotEmpty(table.QuerySelectorAll("thead th"));
            Assert.All(table.QuerySelectorAll("th"), head =>
                Assert.Contains(head.GetAttribute("scope"), new[] { "col", "row", "rowgroup", "colgroup" })
            );
        }
    }

    [Theory, MemberData(nameof(PageNames))]
    public void Every_row_of_a_table_fills_its_columns(string name)
    {
        foreach (var table in Parse(name).QuerySelectorAll("table:not(:has([rowspan]))"))
        {
            var widths = table
                .QuerySelectorAll("tr")
                .Select(row =>
                    row.Children.Sum(cell =>
                        int.Parse(cell.GetAttribute("colspan") ?? "1", System.Globalization.CultureInfo.InvariantCulture)
                    )
                )
                .Distinct();
            Assert.Single(widths);
        }
    }

    [Theory, MemberData(nameof(PageNames))]
    public void Every_drawing_is_hidden_from_speech_or_says_what_it_shows(string name)
    {
        foreach (var drawing in Parse(name).QuerySelectorAll("svg").Where(svg => svg.ParentElement!.Closest("svg") is null)) // 1.1.1
        {
            if (drawing.GetAttribute("aria-hidden") == "true")
                continue;
            Assert.Equal("img", drawing.GetAttribute("role"));
            Assert.False(string.IsNullOrWhiteSpace(drawing.QuerySelector("title")?.TextContent));
            Assert.False(string.IsNullOrWhiteSpace(drawing.QuerySelector("desc")?.TextContent));
        }
    }

    [Theory, MemberData(nameof(PageNames))]
    public void Ids_are_unique_and_every_reference_finds_its_target(string name)
    {
        var page = Parse(name);
        var ids = page.QuerySelectorAll("[id]").Select(element => element.Id!).ToList();
        Assert.Equal(ids.Count, ids.Distinct().Count());
        var wanted = page.QuerySelectorAll("[aria-labelledby]")
            .SelectMany(element => element.GetAttribute("aria-labelledby")!.Split(' '))
            .Concat(page.QuerySelectorAll("a[href^='#']").Select(link => link.GetAttribute("href")![1..]))
            .Concat(page.QuerySelectorAll("[fill^='url(#']").Select(shape => shape.GetAttribute("fill")![5..^1]));
        Assert.All(wanted, id => Assert.Contains(id, ids));
    }

    [Theory, MemberData(nameof(PageNames))]
    public void A_page_asks_for_nothing_and_runs_nothing_that_its_policy_does_not_name(string name)
    {
        var page = Parse(name);
        var policy = page.QuerySelector("meta[http-equiv='Content-Security-Policy']")!.GetAttribute("content")!;
        var scripts = page.QuerySelectorAll("script:not([type='application/json'], [type='application/ld+json'])");
        Assert.Equal(
            name.StartsWith("self-check", StringComparison.Ordinal) || name.EndsWith("-form.html", StringComparison.Ordinal) ? 1 : 0,
            scripts.Length
        );
        Assert.Equal(
            scripts.Select(script =>
                $"script-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(script.TextContent)))}'"
            ),
            policy.Split("; ").Where(rule => rule.StartsWith("script-src", StringComparison.Ordinal))
        );
        Assert.Empty(page.QuerySelectorAll("script[src], iframe, object, embed, img, base, form, link:not([href='data:,'])"));
        foreach (var attribute in page.All.SelectMany(element => element.Attributes))
        {
            Assert.False(attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase), attribute.Name);
            if (attribute.Name is "src" or "srcset" or "href" or "xlink:href" or "action" or "poster")
                Assert.DoesNotContain("//", attribute.Value, StringComparison.Ordinal);
        }
        var css = string.Concat(page.QuerySelectorAll("style").Select(style => style.TextContent));
        Assert.DoesNotContain("url(", css, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", css, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_models_give_the_same_text_also_in_parallel()
    {
        var again = Enumerable.Range(0, 4).AsParallel().Select(_ => SamplePages.Render()).ToList();
        foreach (var pages in again)
            Assert.Equal(SamplePages.All, pages);
    }

    [Fact]
    public void Pages_do_not_depend_on_the_culture()
    {
        var before = Thread.CurrentThread.CurrentCulture;
        try
        {
            var commas = (System.Globalization.CultureInfo)System.Globalization.CultureInfo.InvariantCulture.Clone();
            commas.NumberFormat.NumberDecimalSeparator = ",";
            commas.NumberFormat.NegativeSign = "~";
            Thread.CurrentThread.CurrentCulture = commas;
            Assert.Equal(SamplePages.All, SamplePages.Render());
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }
}
