using System.Security.Cryptography;
using System.Text;

namespace ClassKit.Pages.Layout;

/// <summary>A script that stands in a page. The page's policy names it by its digest, so that no other can run there.</summary>
public sealed class InlineScript
{
    internal InlineScript(string text)
    {
        // The end of the element must not occur in its text, and a page's line ends are those that a browser makes of them.
        Text = text.ReplaceLineEndings("\n");
        if (Text.Contains("</script", StringComparison.OrdinalIgnoreCase))
            throw new ArgumentException("A script cannot hold its own end.", nameof(text));
    }

    /// <summary>The script.</summary>
    public string Text { get; }

    /// <summary>What a content security policy (W3C CSP 3, 2.3.1) calls it.</summary>
    public string Source => $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(Text)))}'";
}
