using System.Text.RegularExpressions;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax.Inlines;

namespace ClassKit.Pages.Prose;

/// <summary>Links as a printed page needs them: the address behind the words. Only links within the pack can be followed.</summary>
internal sealed partial class PrintedLinkRenderer : HtmlObjectRenderer<LinkInline>
{
    /// <inheritdoc/>
    protected override void Write(HtmlRenderer renderer, LinkInline obj)
    {
        var address = obj.GetDynamicUrl?.Invoke() ?? obj.Url ?? "";
        if (obj.IsImage)
        {
            WritePicture(renderer, obj, address);
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

    /// <summary>
    /// A picture that is part of the page is shown; any other gives way to its words, for a page asks nobody for anything.
    /// </summary>
    private static void WritePicture(HtmlRenderer renderer, LinkInline picture, string address)
    {
        if (!Embedded().IsMatch(address))
        {
            renderer.WriteChildren(picture);
            return;
        }
        renderer.Write("<img class=\"authored\" src=\"").Write(address).Write("\" alt=\"");
        var before = renderer.EnableHtmlForInline;
        renderer.EnableHtmlForInline = false;
        renderer.WriteChildren(picture);
        renderer.EnableHtmlForInline = before;
        renderer.Write("\" />");
    }

    /// <summary>An anchor or a page beside this one: nothing with a scheme, a host or a way out of the folder.</summary>
    private static bool IsWithinPack(string address) =>
        address.Length > 0
        && address[0] != '/'
        && !address.Contains(':', StringComparison.Ordinal)
        && !address.Contains('\\', StringComparison.Ordinal)
        && !address.Contains("..", StringComparison.Ordinal);

    [GeneratedRegex("^data:image/(?:png|jpeg);base64,[A-Za-z0-9+/=]+$")]
    private static partial Regex Embedded();
}
