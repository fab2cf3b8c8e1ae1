using System.Security.Cryptography;
using System.Text;

namespace ClassKit.Desk.Safety;

/// <summary>The one script that a page made to stand alone may hold: practice that checks itself.</summary>
internal static class SheetScript
{
    /// <summary>How a content security policy names it; null for a page without.</summary>
    public static string? Of(string html)
    {
        const string open = "<script>";
        const string close = "</script>";
        if (html.LastIndexOf(open, StringComparison.Ordinal) is not (>= 0 and var at))
            return null;
        var text = html[(at + open.Length)..];
        return text.IndexOf(close, StringComparison.Ordinal) is >= 0 and var end
            ? $"'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text[..end])))}'"
            : null;
    }
}
