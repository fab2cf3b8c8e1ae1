using ClassKit.CellFormulas.Sheets;

namespace ClassKit.CellFormulas.Syntax;

/// <summary>
/// The prefixes that files put before words newer than the file format: functions (<c>_xlfn.</c>, <c>_xlws.</c>) and names bound by LET
/// (<c>_xlpm.</c>).
/// </summary>
internal static class FilePrefixes
{
    public const string Function = "_xlfn.";
    public const string Bound = "_xlpm.";

    private static readonly string[] All = [Function, "_xlws.", Bound];

    /// <summary>The name without any of them, unless it would no longer be one.</summary>
    public static string StripName(string name)
    {
        var rest = Strip(name);
        return CellAddress.TryParse("", rest, out _) || bool.TryParse(rest, out _) ? name : rest;
    }

    /// <summary>The word without any of them.</summary>
    public static string Strip(string word)
    {
        var rest = word.AsSpan();
        for (var again = rest.Length > 0 && rest[0] == '_'; again; )
        {
            again = false;
            foreach (var prefix in All)
            {
                if (!rest.StartsWith(prefix, StringComparison.OrdinalIgnoreCase) || !StartsWord(rest[prefix.Length..]))
                    continue;
                rest = rest[prefix.Length..];
                again = true;
            }
        }

        return rest.Length == word.Length ? word : rest.ToString();
    }

    private static bool StartsWord(ReadOnlySpan<char> text) => !text.IsEmpty && (char.IsLetter(text[0]) || text[0] is '_' or '\\');
}
