using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax.Inlines;

namespace ClassKit.Pages.Prose;

/// <summary>A bare address as the text it is.</summary>
internal sealed class PrintedAutolinkRenderer : HtmlObjectRenderer<AutolinkInline>
{
    /// <inheritdoc/>
    protected override void Write(HtmlRenderer renderer, AutolinkInline obj) =>
        renderer.Write("<span class=\"address\">").WriteEscape(obj.Url).Write("</span>");
}
