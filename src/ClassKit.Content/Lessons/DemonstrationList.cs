using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Lessons;

namespace ClassKit.Content.Lessons;

/// <summary>Reads demonstrations: <c>1. **Stirring down** (3 min, before Batter buns: Stir down). What is shown.</c></summary>
internal static partial class DemonstrationList
{
    private const string Example = "Write a demonstration as `1. **Stirring down** (3 min, before Batter buns: Stir down). What is shown. *With: probe thermometer, small pan.*`";

    /// <summary>The demonstrations, held against the breads that they belong to.</summary>
    /// <param name="section">May be absent: not every lesson shows something to all at once.</param>
    /// <param name="formulas">The lesson's breads, as many as could be read.</param>
    /// <param name="allRead">False if some bread could not be read; then none is called unknown.</param>
    /// <param name="problems">Where to note what is wrong.</param>
    public static IReadOnlyList<LessonDemonstration> Read(Section? section, IReadOnlyList<LessonFormula> formulas, bool allRead, ProblemList problems) =>
        [.. Lists.Entries(section, problems).Select(entry => Demonstration(entry.Text, formulas, allRead, problems)).OfType<LessonDemonstration>()];

    private static LessonDemonstration? Demonstration(Located item, IReadOnlyList<LessonFormula> formulas, bool allRead, ProblemList problems)
    {
        var match = Shape().Match(item.Text);
        if (!match.Success)
        {
            problems.Add(item.Line, $"This demonstration reads `{Prose.Excerpt(item.Text)}`", Example);
            return null;
        }
        var minutes = int.Parse(match.Groups["minutes"].Value, CultureInfo.InvariantCulture);
        if (minutes == 0)
            problems.Add(item.Line, "The demonstration takes 0 min", "Write how long it takes.");
        var (formula, step) = match.Groups["bread"].Success
            ? BreadStep.Find(match.Groups["bread"].Value.Trim(), match.Groups["step"].Value.Trim(), item.Line, formulas, allRead, problems) ?? ("", "")
            : ("", "");
        return new(match.Groups["name"].Value, minutes, formula, step, match.Groups["text"].Value)
        {
            Tools = match.Groups["tools"].Value.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries),
        };
    }

    [GeneratedRegex(@"^\*\*(?<name>[^*]+?)\.?\*\*\s*\((?<minutes>[0-9]{1,3})\s*min(\s*,\s*before\s+(?<bread>[^:)]+):(?<step>[^)]+))?\)\.?\s*(?<text>\S.*?)(\s*\*With:\s*(?<tools>[^*]*[^*.])\.?\*)?$")]
    private static partial Regex Shape();
}
