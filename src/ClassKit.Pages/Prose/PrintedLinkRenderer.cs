using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax.Inlines;

namespace ClassKit.Pages.Prose;

/// <summary>Links as a printed page needs them: the address behind the words. Only links within the pack can be followed; pictures give way to their text.</summary>
internal sealed class PrintedLinkRenderer : HtmlObjectRenderer<LinkInline>
{
    /// <inheritdoc/>
    protected override void Write(HtmlRenderer renderer, LinkInline obj)
    {
        var address = obj.GetDynamicUrl?.Invoke() ?? obj.Url ?? "";
        if (obj.IsImage)
        {
            renderer.WriteChildren(obj);
        }
        else if (IsWithinPack(address))
        {
            renderer.Write("<a href=\"").WriteEscapeUrl(address).Write("\">");
            renderer.WriteChildren(obj);
            renderer.Write("</a>");
        }
        else
        {
            renderer.WriteChildren(obj);
            renderer.Write(" <span class=\"address\">(").WriteEscape(address).Write(")</span>");
        }
    }

    /// <summary>An anchor or a page beside this one: nothing with a scheme, a host or a way out of the folder.</summary>
    private static bool IsWithinPack(string address) =>
        address.Length > 0 && address[0] != '/' && !address.Contains(':', StringComparison.Ordinal)
        && !address.Contains('\\', StringComparison.Ordinal) && !address.Contains("..", StringComparison.Ordinal);
}
