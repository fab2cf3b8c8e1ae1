using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Extensions.TaskLists;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax;

namespace ClassKit.Pages.Prose;

/// <summary>Authored Markdown as HTML that keeps a page accessible and free of requests.</summary>
internal static class MarkdownHtml
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .DisableHtml()
        .UsePipeTables()
        .UseTaskLists()
        .UseDefinitionLists()
        .Build();

    /// <summary>Renders a text.</summary>
    /// <param name="markdown">The text as authored; HTML in it is shown as text.</param>
    /// <param name="topHeading">The level that the text's highest headings get; lower ones follow without gaps.</param>
    public static string Render(string markdown, int topHeading)
    {
        var document = Markdown.Parse(Ties.Tie(markdown), Pipeline);
        FitHeadings(document, topHeading);
        MarkHeaderCells(document);
        return Write(document, isLine: false);
    }

    /// <summary>Renders a text that stands within a line, without paragraphs around it.</summary>
    public static string RenderLine(string markdown) => Write(Markdown.Parse(Ties.Tie(markdown), Pipeline), isLine: true);

    /// <summary>A text without any marks, for data and speech.</summary>
    public static string PlainText(string markdown) => Markdown.ToPlainText(markdown, Pipeline).Trim();

    private static string Write(MarkdownDocument document, bool isLine)
    {
        using var writer = new StringWriter { NewLine = "\n" };
        var renderer = new HtmlRenderer(writer) { ImplicitParagraph = isLine };
        Pipeline.Setup(renderer);
        renderer.ObjectRenderers.ReplaceOrAdd<HtmlTaskListRenderer>(new TaskBoxRenderer());
        renderer.ObjectRenderers.ReplaceOrAdd<LinkInlineRenderer>(new PrintedLinkRenderer());
        renderer.ObjectRenderers.ReplaceOrAdd<AutolinkInlineRenderer>(new PrintedAutolinkRenderer());
        renderer.Render(document);
        return writer.ToString().TrimEnd();
    }

    /// <summary>A heading may be one level deeper than the one before it, never more (WCAG 2.2, 1.3.1).</summary>
    private static void FitHeadings(MarkdownDocument document, int topHeading)
    {
        var headings = document.Descendants<HeadingBlock>().ToList();
        if (headings.Count == 0)
            return;
        var shift = topHeading - headings.Min(heading => heading.Level);
        var before = topHeading - 1;
        foreach (var heading in headings)
            before = heading.Level = Math.Min(Math.Min(heading.Level + shift, before + 1), 6);
    }

    private static void MarkHeaderCells(MarkdownDocument document)
    {
        foreach (var cell in document.Descendants<TableRow>().Where(row => row.IsHeader).SelectMany(row => row.OfType<TableCell>()))
            cell.GetAttributes().AddPropertyIfNotExist("scope", "col");
    }
}
