using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Outline;

/// <summary>A list item that begins with its name in bold: <c>**Name.** Text</c>.</summary>
/// <param name="Name">Without the point.</param>
/// <param name="Text">What follows.</param>
internal sealed partial record NamedItem(Located Name, Located Text)
{
    /// <summary>The item taken apart, or null with the reason noted.</summary>
    public static NamedItem? Read(Located item, string example, ProblemList problems)
    {
        var match = BoldStart().Match(item.Text);
        if (!match.Success)
        {
            problems.Add(
                item.Line,
                $"This item reads `{Prose.Excerpt(item.Text)}`",
                $"Begin it with a name in bold and a point, then its text: `{example}`."
            );
            return null;
        }
        return new(new(match.Groups["name"].Value, item.Line), new(match.Groups["text"].Value, item.Line));
    }

    [GeneratedRegex(@"^\*\*(?<name>[^*]+?)[.:]?\*\*[.:]?\s*(?<text>\S.*)$")]
    private static partial Regex BoldStart();
}
