using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Series;

namespace ClassKit.Content.Lessons;

/// <summary>Reads the breads of a series: <c>- **Powder rolls: Held 20 min** (held 20 min after Shape). What it is to show.</c></summary>
internal static partial class SeriesList
{
    private const string Example =
        "Write a bread of a series as `- **Milk scones: No powder** (without Baking powder, double-acting). What it is to show.`";

    /// <summary>As far as percentages with a few decimals can miss 100 by binary fractions.</summary>
    private const double Slack = 1e-9;

    /// <summary>The breads, held against those of the lesson.</summary>
    /// <param name="section">May be absent: not every lesson has a series.</param>
    /// <param name="texts">The texts of the file.</param>
    /// <param name="formulas">The lesson's breads, as many as could be read.</param>
    /// <param name="allRead">False if some bread could not be read; then none is called unknown.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public static IReadOnlyList<SeriesMember> Read(
        Section? section,
        LessonTexts texts,
        IReadOnlyList<LessonFormula> formulas,
        bool allRead,
        ProblemList problems
    )
    {
        List<SeriesMember> members = [];
        foreach (var item in Lists.Entries(section, problems).Select(entry => entry.Text))
        {
            if (Member(item, texts, formulas, allRead, problems) is not { } member)
                continue;
            if (members.Exists(other => other.Id == member.Id) || formulas.Any(bread => bread.Formula.Id == member.Id))
                problems.Add(item.Line, $"`{member.Name}` is the name of two breads", "Give each bread of a series a name of its own.");
            members.Add(member);
        }
        return members;
    }

    private static SeriesMember? Member(
        Located item,
        LessonTexts texts,
        IReadOnlyList<LessonFormula> formulas,
        bool allRead,
        ProblemList problems
    )
    {
        var match = Shape().Match(item.Text);
        if (!match.Success)
        {
            problems.Add(item.Line, $"This bread of a series reads `{Prose.Excerpt(item.Text)}`", Example);
            return null;
        }
        var text = texts.Read(item with { Text = match.Groups["text"].Value });
        if (BreadStep.Bread(match.Groups["bread"].Value.Trim(), item.Line, formulas, allRead, problems) is not { } bread)
            return null;
        var before = problems.Count;
        var changes = match
            .Groups["changes"]
            .Value.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(change => SeriesChanges.Read(new(change, item.Line), bread, problems))
            .OfType<SeriesChange>()
            .ToList();
        var member = new SeriesMember(bread.Formula.Id, match.Groups["name"].Value.Trim(), text, changes);
        if (problems.Count > before || changes.Count == 0)
            return null;
        if (ChangedBread.Of(bread, member).Formula.FlourPercent is var flour && Math.Abs(flour - 100) > Slack)
            problems.Add(
                item.Line,
                FormattableString.Invariant(
                    $"The flour of `{member.Name}` adds up to {Math.Round(flour, 2, MidpointRounding.AwayFromZero)} %"
                ),
                "All flour together is 100 %, in every bread of a series too: write the shares of the other flours behind it, with `;` between them."
            );
        return member;
    }

    [GeneratedRegex(
        @"^\*\*(?<bread>[^:*]+):\s*(?<name>[^*]*[A-Za-z0-9][^*]*?)\.?\*\*\s*\((?<changes>(?:[^()]|\([^()]*\))+)\)\.?\s*(?<text>\S.*)$"
    )]
    private static partial Regex Shape();
}
