using System.Security.Cryptography;
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

    /// <summary>
    /// Keys that tell several paths apart, in their order. Of paths that would share one, that which is its key already has it, or else the
    /// first; the others carry digits of their own path behind it.
    /// </summary>
    /// <param name="paths">Each once.</param>
    /// <param name="key">The key of one alone.</param>
    public static IReadOnlyList<string> Apart(IReadOnlyList<string> paths, Func<string, string> key)
    {
        var first = paths
            .GroupBy(key)
            .ToDictionary(same => same.Key, same => same.OrderBy(path => !path.StartsWith(same.Key, StringComparison.Ordinal)).First());
        return [.. paths.Select(path => first[key(path)] == path ? key(path) : $"{key(path)}-{Digits(path)}")];
    }

    private static string Digits(string path) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(path.Replace('\\', '/'))))[..8];
}
