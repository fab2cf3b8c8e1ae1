using System.Net;
using System.Text.RegularExpressions;

namespace ClassKit.Desk.Tests.Tools;

/// <summary>
/// Walks every page of the desk that leads on from the first, and reads what stands there as somebody who knows a spreadsheet and a word
/// processor.
/// </summary>
internal static partial class PlainWords
{
    /// <summary>
    /// Files' texts are the instructor's own, and may say anything; a lesson's pages are made first; whoever erases somebody is told of
    /// files by their names.
    /// </summary>
    private static readonly string[] Passed = ["texts", "jobs", "lessons/class/"];

    /// <summary>
    /// What strangers stumbled over: names of the program's own files and fields, of its commands, and sentences that read as if put
    /// together.
    /// </summary>
    private static readonly string[] Foreign =
    [
        @"(?i)\bseed:? ?\d",
        @"\b(grades|dealt|judged)\.json\b",
        @"\bthe same one, and\b",
        @"\bclasskit [a-z]",
        @"(?<!-)--[a-z]{3}",
        @"\[\]",
        @"\bnull\b",
        @"\b1 (students|files|answers|workbooks|points)\b",
        @"\. (points|name|back|reason|names)\s*(?:$|<)",
    ];

    /// <summary>So many pages of one kind are read: every student has some.</summary>
    private const int MostAlike = 3;

    /// <summary>How many pages were read.</summary>
    /// <param name="desk">The desk.</param>
    /// <param name="faults">Gathers what was found, with the page.</param>
    public static async Task<int> ReadAsync(RunningDesk desk, List<string> faults)
    {
        HashSet<string> seen = [""];
        var alike = new Dictionary<string, int>(StringComparer.Ordinal);
        var read = 0;
        Queue<string> open = new([""]);
        while (open.TryDequeue(out var at))
        {
            using var answer = await desk.Client.SendAsync(desk.Request(at, null));
            // Whatever has to be worked out first is over before anything else is asked.
            if (answer.Headers.Location?.ToString().Contains("jobs/", StringComparison.Ordinal) == true)
                await desk.OverAsync(answer);
            if (answer.Content.Headers.ContentType?.MediaType != "text/html")
                continue;
            var page = await answer.Content.ReadAsStringAsync();
            if (!page.Contains("class=\"rail\"", StringComparison.Ordinal))
                continue;
            read++;
            var words = WebUtility.HtmlDecode(Spaces().Replace(Tags().Replace(Unread().Replace(page, " "), " "), " "));
            faults.AddRange(
                Foreign.SelectMany(pattern =>
                    Regex
                        .Matches(words, pattern)
                        .Select(found => $"{at}: “{words[Math.Max(0, found.Index - 40)..Math.Min(words.Length, found.Index + 40)]}”")
                )
            );
            foreach (
                var next in Links()
                    .Matches(page)
                    .Select(link => WebUtility.HtmlDecode(link.Groups["to"].Value))
                    .Where(next =>
                        !Passed.Any(passed => next.StartsWith(passed, StringComparison.Ordinal))
                        && !next.EndsWith("/erase", StringComparison.Ordinal)
                    )
            )
            {
                if (!seen.Add(next))
                    continue;
                var kind = KindOf(next);
                alike[kind] = alike.GetValueOrDefault(kind) + 1;
                if (alike[kind] <= MostAlike)
                    open.Enqueue(next);
            }
        }
        return read;
    }

    /// <summary>Pages of one kind have as many steps, the first of them in common, and where there are many the last.</summary>
    private static string KindOf(string address)
    {
        var steps = address.Split('?')[0].Split('/');
        return $"{steps[0]} {steps.Length} {(steps.Length > 3 ? steps[^1] : "")}";
    }

    [GeneratedRegex("<(script|style|svg|textarea|option|title|bdi)\\b.*?</\\1>", RegexOptions.Singleline)]
    private static partial Regex Unread();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();

    [GeneratedRegex("\\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex("<a [^>]*href=\"(?<to>[^\":#]+)(?:#[^\"]*)?\"")]
    private static partial Regex Links();
}
