using System.Text.RegularExpressions;

namespace ClassKit.Desk.Frame;

/// <summary>
/// Sentences that every front shares, as a page reads: what stands between the marks of a terminal stands between quotes, for nobody at the
/// desk has learned the other.
/// </summary>
internal static partial class Said
{
    /// <summary>The sentence with “words” for <c>`words`</c>, also where what was quoted is cut off.</summary>
    public static string Of(string words) => Marked().Replace(words, "“$1”");

    [GeneratedRegex("`([^`]*)(?:`|$)")]
    private static partial Regex Marked();
}
