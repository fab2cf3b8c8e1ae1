using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Lessons.Authored;

namespace ClassKit.Content.Lessons;

/// <summary>Reads cautions: <c>- **Hot tin.** What to do. *Source: where that is published.*</c></summary>
internal static partial class Cautions
{
    private const string Example = "- **Hot tin.** What to do about it. *Source: common practice, no source.*";

    public static IReadOnlyList<Caution> Read(Section? section, LessonTexts texts, ProblemList problems)
    {
        var cautions = new List<Caution>();
        foreach (var entry in Lists.Entries(section, problems))
        {
            if (NamedItem.Read(entry.Text, Example, problems) is not { } item)
                continue;
            var match = TextAndSource().Match(item.Text.Text);
            if (match.Success)
                cautions.Add(
                    new(item.Name.Text, texts.Read(item.Text with { Text = match.Groups["text"].Value }), match.Groups["source"].Value)
                );
            else
                problems.Add(
                    item.Text.Line,
                    $"The caution `{item.Name.Text}` names no source",
                    $"End it with where that is published, or say that it is nowhere: `{Example}`."
                );
        }
        return cautions;
    }

    [GeneratedRegex(@"^(?<text>.*\S)\s*\*Source:\s*(?<source>[^*]*[^*.])\.?\*$")]
    private static partial Regex TextAndSource();
}
