using System.Net;
using System.Text.RegularExpressions;

namespace ClassKit.Tests;

/// <summary>Sentences of an HTML page, as far as their beginnings go. Reads the text of the file and nothing that makes it.</summary>
internal static partial class Sentences
{
    /// <summary>
    /// Paragraphs, headings and captions that begin with a small letter, table cells and items that do and end as a sentence does, and
    /// sentences that follow another one with a small letter.
    /// </summary>
    /// <remarks>
    /// What a student typed is quoted as it was typed. File names, ids and cell formulas begin as they are written, so they may not begin a
    /// sentence; in a list of files each item begins with one. What stands softly beside a sentence, such as a skill, is none.
    /// </remarks>
    public static IReadOnlyList<string> BeginningLow(string html) =>
        [
            .. Blocks(html)
                .SelectMany(block => StartsLow(block) ? [block.Text] : InTheMiddle().Matches(block.Text).Select(match => match.Value)),
        ];

    /// <summary>Sentences that touch the one before: a space between two pieces of a page was lost.</summary>
    public static IReadOnlyList<string> Touching(string html) =>
        [.. Blocks(html).SelectMany(block => Touch().Matches(block.Text).Select(match => match.Value))];

    private static bool StartsLow((string Tag, string Text) block) =>
        Low().IsMatch(block.Text)
        && !FileName().IsMatch(block.Text)
        && (
            block.Tag is "p" or "caption" or "figcaption" or "h1" or "h2" or "h3" or "h4" or "summary" || SentenceEnd().IsMatch(block.Text)
        );

    /// <summary>The innermost pieces of text between tags that begin or end a block.</summary>
    private static IEnumerable<(string Tag, string Text)> Blocks(string html)
    {
        var seen = Hidden().Replace(html, " ");
        var tag = "";
        var from = 0;
        foreach (Match block in BlockTag().Matches(seen))
        {
            var text = Text(seen[from..block.Index]);
            if (tag.Length > 0 && text.Length > 0)
                yield return (tag, text);
            tag = block.Groups["close"].Success ? "" : block.Groups["tag"].Value;
            from = block.Index + block.Length;
        }
    }

    private static string Text(string piece) =>
        string.Join(' ', WebUtility.HtmlDecode(AnyTag().Replace(piece, "")).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [GeneratedRegex(
        @"<(script|style|svg|math|title|code|nav)\b.*?</\1>|<p class=""screen-foot""[^>]*>.*?</p>|<span class=""soft[^>]*>.*?</span>|<!--.*?-->",
        RegexOptions.Singleline
    )]
    private static partial Regex Hidden();

    [GeneratedRegex(
        @"<(?<close>/)?(?<tag>p|li|td|th|dd|dt|caption|figcaption|h1|h2|h3|h4|div|summary|blockquote|tr|ul|ol|dl|table|tbody|thead|section|article|header|footer|main|figure|body|label|br)\b[^>]*>"
    )]
    private static partial Regex BlockTag();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex AnyTag();

    [GeneratedRegex(@"^\(?[a-zà-ÿ]")]
    private static partial Regex Low();

    [GeneratedRegex(@"(?<!#[A-Z0-9/]+)[.!?]”?$")]
    private static partial Regex SentenceEnd();

    [GeneratedRegex(@"^[^:<]{1,80}\.(xlsx|ods|html|json|csv|zip)\b")]
    private static partial Regex FileName();

    /// <summary>After a word of two letters or more, so that “e.g. this” and initials are no end.</summary>
    [GeneratedRegex(@"(?<=[a-zà-ÿ0-9%)][a-zà-ÿ0-9%)])[.!?]”? [a-zà-ÿ][^ ]*")]
    private static partial Regex InTheMiddle();

    [GeneratedRegex(@"[a-zà-ÿ)%]{2}[.!?][A-ZÀ-Þ][a-zà-ÿ]+\b(?![.@(])")]
    private static partial Regex Touch();
}
