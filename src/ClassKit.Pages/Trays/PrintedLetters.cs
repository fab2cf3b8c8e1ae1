using System.Text.RegularExpressions;

namespace ClassKit.Pages.Trays;

/// <summary>How many letters of a page come out of a printer: what is for the screen alone is none of them.</summary>
internal static partial class PrintedLetters
{
    /// <summary>Elements without an end tag (HTML, 13.1.2), as far as our pages have any.</summary>
    private static readonly HashSet<string> Void = ["area", "br", "col", "hr", "img", "input", "link", "meta", "wbr"];

    /// <summary>Runs of white space are one letter, and so is every tag.</summary>
    /// <param name="html">A page of ours: its tags are closed, in lower case, and no attribute holds a tag's end.</param>
    public static int Of(string html)
    {
        var (letters, from, skipped) = (0, 0, 0);
        foreach (Match tag in Tag().Matches(html))
        {
            if (skipped == 0)
                letters += Blanks().Replace(html[from..tag.Index], " ").Length;
            from = tag.Index + tag.Length;
            var isVoid = Void.Contains(tag.Groups["name"].Value) || tag.Groups["empty"].Length > 0;
            if (skipped > 0)
                skipped +=
                    isVoid ? 0
                    : tag.Groups["end"].Length > 0 ? -1
                    : 1;
            else if (!isVoid && tag.Groups["end"].Length == 0 && IsForTheScreen(tag))
                skipped = 1;
        }
        return letters;
    }

    private static bool IsForTheScreen(Match tag) =>
        tag.Groups["name"].Value is "head" or "nav" or "script" or "style" || ScreenClass().IsMatch(tag.Groups["attributes"].Value);

    [GeneratedRegex("<(?<end>/?)(?<name>[a-z][a-z0-9]*)(?<attributes>[^>]*?)(?<empty>/?)>", RegexOptions.IgnoreCase)]
    private static partial Regex Tag();

    [GeneratedRegex("class=\"[^\"]*\\b(only-screen|only-spoken)\\b")]
    private static partial Regex ScreenClass();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
