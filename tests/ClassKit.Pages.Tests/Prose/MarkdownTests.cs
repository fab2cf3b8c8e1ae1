using AngleSharp.Html.Parser;
using ClassKit.Pages.Prose;

namespace ClassKit.Pages.Tests.Prose;

public sealed class MarkdownTests
{
    private static AngleSharp.Dom.IDocument Render(string markdown, int topHeading = 2) =>
        new HtmlParser().ParseDocument(MarkdownHtml.Render(markdown, topHeading));

    [Fact]
    public void Headings_move_below_their_heading_and_leave_no_gap()
    {
        var levels = Render("# One\n\n### Two\n\n# Three\n\n###### Four", topHeading: 3)
            .QuerySelectorAll("h1, h2, h3, h4, h5, h6")
            .Select(heading => heading.LocalName);
        Assert.Equal(["h3", "h4", "h3", "h4"], levels);
    }

    [Fact]
    public void Html_is_shown_as_text()
    {
        var page = Render("A <b>bold</b> <script>alert(1)</script> claim\n\n<script>alert(2)</script>");
        Assert.Empty(page.QuerySelectorAll("b, script"));
        Assert.Contains("<script>alert(2)</script>", page.Body!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Task_lists_become_boxes_to_tick_and_not_form_fields()
    {
        var page = Render("- [ ] Weigh\n- [x] Preheat");
        Assert.Empty(page.QuerySelectorAll("input"));
        Assert.Equal(2, page.QuerySelectorAll("li > .box").Length);
        Assert.Equal("Done: Preheat", page.QuerySelectorAll("li")[1].TextContent.Replace("  ", " ", StringComparison.Ordinal).Trim());
    }

    [Theory]
    [InlineData("[the table](https://example.org/t)", "the table (https://example.org/t)")]
    [InlineData("<https://example.org/t>", "https://example.org/t")]
    [InlineData("[here](javascript:alert(1))", "here (javascript:alert(1))")]
    [InlineData("![a loaf](https://example.org/loaf.png)", "a loaf")]
    public void Links_out_are_printed_and_never_followed(string markdown, string text)
    {
        var page = Render(markdown);
        Assert.Empty(page.QuerySelectorAll("a, img"));
        Assert.Equal(text, page.Body!.TextContent.Trim());
    }

    [Fact]
    public void Links_within_the_pack_can_be_followed() =>
        Assert.Equal("handout.html#gas", Render("[gas](handout.html#gas)").QuerySelector("a")!.GetAttribute("href"));

    [Fact]
    public void Head_cells_of_tables_have_a_scope() =>
        Assert.All(Render("| a | b |\n|---|---|\n| 1 | 2 |").QuerySelectorAll("th"), head =>
            Assert.Equal("col", head.GetAttribute("scope"))
        );

    [Theory]
    [InlineData("Near 55–60 °C (131–140 °F), for 5 min.", "Near 55–60\u00A0°C (131–140\u00A0°F), for 5\u00A0min.")]
    [InlineData("Weigh 5 grapes and 3 g of salt.", "Weigh 5 grapes and 3\u00A0g of salt.")]
    public void A_number_stays_with_its_unit(string typed, string shown) => Assert.Equal(shown, Ties.Tie(typed));

    [Fact]
    public void A_line_has_emphasis_but_no_paragraph() => Assert.Equal("Fold <em>gently</em>.", MarkdownHtml.RenderLine("Fold *gently*."));
}
