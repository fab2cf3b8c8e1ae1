using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace ClassKit.Pages.Tests.Samples;

/// <summary>Pages as parsed documents.</summary>
internal static class Html
{
    public static IDocument Parse(string html) => new HtmlParser().ParseDocument(html);

    /// <summary>The text as one reads it: runs of white space are single spaces, and no-break spaces are spaces.</summary>
    public static string Text(this IElement element) =>
        string.Join(' ', element.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
