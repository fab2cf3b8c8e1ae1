using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Wording;

namespace ClassKit.Content.Exercises;

/// <summary>Checks the <c>{name}</c> placeholders of a problem's text.</summary>
internal static partial class Placeholders
{
    public static void Check(Section opening, NameScope givens, ProblemList problems)
    {
        if (opening.Blocks.Count == 0)
        {
            problems.Add(opening.Line, "The problem has no text", "Tell it below the title, with `{name}` wherever a given's value belongs.");
            return;
        }
        foreach (var match in Braces().Matches(opening.Markdown).Where(match => givens.IsWhole && !givens.Known.Contains(match.Groups[1].Value)))
        {
            var line = opening.Blocks[0].Line + 1 + opening.Markdown.AsSpan(0, match.Index).Count('\n');
            problems.Add(line, $"`{match.Value}` stands for no given", NearestWord.Advice(match.Groups[1].Value, givens.Known));
        }
    }

    [GeneratedRegex(@"\{([^{}\n]*)\}")]
    private static partial Regex Braces();
}
