using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cautions;

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
            {
                cautions.Add(
                    new(item.Name.Text, texts.Read(item.Text with { Text = match.Groups["text"].Value }), match.Groups["source"].Value)
                );
                Note(cautions[^1], item.Name.Line, problems);
            }
            else
                problems.Add(
                    item.Text.Line,
                    $"The caution `{item.Name.Text}` names no source",
                    $"End it with where that is published, or say that it is nowhere: `{Example}`."
                );
        }
        return cautions;
    }

    /// <summary>
    /// Says what an author could not expect: that a standing caution stays beside theirs, or goes for one that is called something else.
    /// A caution that replaces the one of its own name is what was meant.
    /// </summary>
    private static void Note(Caution caution, int line, ProblemList problems)
    {
        foreach (
            var title in ReplacedHazards.Of(caution).Select(StandingCautions.TitleOf).Where(title => !SharesAWord(title, caution.Title))
        )
            problems.Doubt(
                line,
                $"The caution `{caution.Title}` is printed in place of the standing one `{title}`",
                "If it is about something else, give it another title: the standing one is then printed as well.",
                Weight.Fine
            );
        foreach (var title in ReplacedHazards.OnlyNamed(caution).Select(StandingCautions.TitleOf))
            problems.Doubt(
                line,
                $"The caution `{caution.Title}` does not say the rule of the standing one `{title}`, and both are printed",
                "Leave it if both are meant. lessons/README.md says what a caution must say to stand alone.",
                Weight.Fine
            );
    }

    private static bool SharesAWord(string standing, string title) =>
        WordsOf(standing).Intersect(WordsOf(title), StringComparer.OrdinalIgnoreCase).Any();

    /// <summary>Without the plural's letter and without words that several titles have.</summary>
    private static IEnumerable<string> WordsOf(string title) =>
        title
            .Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)
            .Where(word => !Common.Contains(word))
            .Select(word => word.TrimEnd('s'));

    private static readonly HashSet<string> Common = new(StringComparer.OrdinalIgnoreCase) { "a", "and", "first", "for", "hot", "or" };

    [GeneratedRegex(@"^(?<text>.*\S)\s*\*Source:\s*(?<source>[^*]*[^*.])\.?\*$")]
    private static partial Regex TextAndSource();
}
