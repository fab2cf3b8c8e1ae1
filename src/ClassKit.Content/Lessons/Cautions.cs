using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Sources;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Cautions;

namespace ClassKit.Content.Lessons;

/// <summary>
/// Reads cautions: <c>- **Hot tin.** What to do. *Source: where that is published.*</c>, with <c>(in place of: hot oven)</c> behind the name
/// of one that takes a standing one's place.
/// </summary>
internal static partial class Cautions
{
    private const string Example = "- **Hot tin.** What to do about it. *Source: common practice, no source.*";
    private const string Replacement = "- **Burners** (in place of: burner). What to do about it. *Source: common practice, no source.*";

    public static IReadOnlyList<Caution> Read(Section? section, LessonTexts texts, ProblemList problems)
    {
        var cautions = new List<Caution>();
        foreach (var entry in Lists.Entries(section, problems))
        {
            if (NamedItem.Read(entry.Text, Example, problems) is not { } item)
                continue;
            var (inPlaceOf, text) = InPlaceOf(item, problems);
            var match = TextAndSource().Match(text.Text);
            if (match.Success)
            {
                cautions.Add(
                    new(item.Name.Text, texts.Read(text with { Text = match.Groups["text"].Value }), match.Groups["source"].Value)
                    {
                        InPlaceOf = inPlaceOf,
                    }
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

    /// <summary>The standing cautions that the brackets behind a name are about, and what follows the brackets.</summary>
    private static (IReadOnlyList<Hazard> Of, Located Text) InPlaceOf(NamedItem item, ProblemList problems)
    {
        if (!Brackets().IsMatch(item.Text.Text))
            return ([], item.Text);
        var match = Replacing().Match(item.Text.Text);
        if (!match.Success)
        {
            problems.Add(
                item.Text.Line,
                $"The brackets of the caution `{item.Name.Text}` cannot be read",
                $"Write which standing caution it is printed in place of: `{Replacement}`."
            );
            return ([], item.Text);
        }
        var found = new List<Hazard>();
        foreach (
            var name in match
                .Groups["names"]
                .Value.Split([',', ';'], StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
        )
        {
            if (HazardNames.Find(name) is not { } hazard)
                problems.Add(
                    item.Text.Line,
                    $"The caution `{item.Name.Text}` is written in place of `{name}`, which is no standing caution",
                    $"Write one of {string.Join(", ", HazardNames.All.Select(known => $"`{known}`"))}, or leave the brackets out: both are then printed."
                );
            else if (!HazardNames.CanBeReplaced(hazard))
                problems.Add(
                    item.Text.Line,
                    $"The caution `{item.Name.Text}` is written in place of what must be declared",
                    "Leave the brackets out: what must be declared follows from the formula, and is always printed."
                );
            else
                found.Add(hazard);
        }
        return ([.. found.Distinct()], item.Text with { Text = match.Groups["text"].Value });
    }

    /// <summary>Says what an author could not see: that a standing caution which looks like theirs is printed besides.</summary>
    private static void Note(Caution caution, int line, ProblemList problems)
    {
        foreach (var hazard in StandingCautions.Alike(caution))
            problems.Doubt(
                line,
                $"The caution `{caution.Title}` looks like the standing one `{StandingCautions.TitleOf(hazard)}`, which is printed besides wherever the method makes it necessary",
                $"If yours says all that it says, write `- **{caution.Title}** (in place of: {string.Join(", ", caution.InPlaceOf.Append(hazard).Select(HazardNames.Of))}).`; if it says something else, leave it.",
                Weight.Fine
            );
    }

    [GeneratedRegex(@"^\(\s*in\s+(?:the\s+)?place\b", RegexOptions.IgnoreCase)]
    private static partial Regex Brackets();

    [GeneratedRegex(@"^\(\s*in\s+(?:the\s+)?place\s+of\s*:?\s*(?<names>[^)]*\S)\s*\)\s*[.:]?\s*(?<text>\S.*)$", RegexOptions.IgnoreCase)]
    private static partial Regex Replacing();

    [GeneratedRegex(@"^(?<text>.*\S)\s*\*Source:\s*(?<source>[^*]*[^*.])\.?\*$")]
    private static partial Regex TextAndSource();
}
