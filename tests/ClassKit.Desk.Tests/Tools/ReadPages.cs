using System.Net;
using System.Text.RegularExpressions;

namespace ClassKit.Desk.Tests.Tools;

/// <summary>
/// Reads every page of the desk that any test is answered with, also those that refuse something, for what strangers stumbled over.
/// </summary>
/// <param name="found">Told of each place.</param>
internal sealed partial class ReadPages(Action<string> found) : DelegatingHandler
{
    protected override async Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken)
    {
        var answer = await base.SendAsync(request, cancellationToken);
        if (answer.Content.Headers.ContentType?.MediaType != "text/html")
            return answer;
        await answer.Content.LoadIntoBufferAsync(cancellationToken);
        foreach (var fault in Faults(await answer.Content.ReadAsStringAsync(cancellationToken)))
            found($"{request.Method} {request.RequestUri!.AbsolutePath}: “{fault}”");
        return answer;
    }

    /// <summary>What is wrong with the words of a page of the desk; nothing of the sheets that it shows.</summary>
    public static IEnumerable<string> Faults(string page)
    {
        if (!page.Contains("class=\"rail\"", StringComparison.Ordinal))
            return [];
        var words = WebUtility.HtmlDecode(Spaces().Replace(Tags().Replace(Unread().Replace(page, " "), " "), " "));
        return Foreign()
            .Matches(words)
            .Select(match => words[Math.Max(0, match.Index - 40)..Math.Min(words.Length, match.Index + match.Length + 40)].Trim());
    }

    /// <summary>
    /// Marks of a terminal; a stop behind a question; one of something that "lie" or "are"; a word twice, apart from those that may be.
    /// </summary>
    [GeneratedRegex(
        @"`|\?\.(?=\s|$)|\b1 [a-z]+ (?:lie|are|were|have|wait|name|stay)\b|(?<![\w’-])(?!that\b|had\b)([a-z]{2,}) \1(?![\w’.-])"
    )]
    private static partial Regex Foreign();

    /// <summary>What others wrote: fields, code, and what a file or a student brings.</summary>
    [GeneratedRegex("<(script|style|svg|textarea|option|title|bdi|code|td)\\b.*?</\\1>", RegexOptions.Singleline)]
    private static partial Regex Unread();

    [GeneratedRegex("<[^>]*>")]
    private static partial Regex Tags();

    [GeneratedRegex("\\s+")]
    private static partial Regex Spaces();
}
