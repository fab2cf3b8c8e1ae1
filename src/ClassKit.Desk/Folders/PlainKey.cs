using System.Text;

namespace ClassKit.Desk.Folders;

/// <summary>A path as one plain word, for addresses and for names of folders.</summary>
internal static class PlainKey
{
    /// <summary>Letters and digits stay, steps become dots, anything else a dash; an ending <c>.md</c> goes.</summary>
    public static string Of(string path) => OfFile(path.EndsWith(".md", StringComparison.OrdinalIgnoreCase) ? path[..^3] : path);

    /// <summary>The same with its ending.</summary>
    public static string OfFile(string path)
    {
        var plain = new StringBuilder();
        foreach (var rune in path.EnumerateRunes())
        {
            if (rune.Value is '/' or '\\')
                plain.Append('.');
            else if (Rune.IsLetterOrDigit(rune) || rune.Value is '-' or '_' or '.')
                plain.Append(rune);
            else
                plain.Append('-');
        }
        return plain.ToString();
    }
}
