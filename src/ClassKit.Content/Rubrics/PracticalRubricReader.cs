using System.Globalization;
using System.Text.RegularExpressions;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.FrontMatter;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Lessons.Rubrics;

namespace ClassKit.Content.Rubrics;

/// <summary>Reads a practical rubric: a table of criteria whose columns are the levels, each with its points.</summary>
public static partial class PracticalRubricReader
{
    private static readonly string[] Example = ["Criterion", "Weight", "Not yet (0)", "Secure (1)"];

    /// <summary>The rubric, or everything that is wrong with its file.</summary>
    public static Reading<PracticalRubric> Read(Source source)
    {
        ArgumentNullException.ThrowIfNull(source);
        return source.Once(() => ReadFile(source));
    }

    private static Reading<PracticalRubric> ReadFile(Source source)
    {
        var problems = new ProblemList(source.Shown);
        if (SourceFile.Read(source, problems) is not { } text)
            return problems.Fail<PracticalRubric>();

        if (FrontMatterBlock.Split(text, problems) is not { } block || Document.Read(block.Markdown, problems) is not { } document)
            return problems.Fail<PracticalRubric>();
        var sections = new Sections(document.Sections, "##", problems);
        var section = sections.Required("Criteria");
        var (headings, rows) = Tables.Any(section, Example, problems);
        sections.Finish();
        if (headings.Count == 0)
            return problems.Fail<PracticalRubric>();

        var columns = LevelColumns(headings, section!.Line, problems);
        var criteria = rows.Select(row => Criterion(row, columns, problems)).ToList();
        if (criteria.Count == 0)
            problems.Add(section.Line, "There are no criteria", "Add a row to the table for each thing that is looked at.");
        return problems.Finish(() =>
            new PracticalRubric(
                Path.GetFileNameWithoutExtension(source.Path),
                document.Title.Text,
                [.. columns.Select(column => column.Level)],
                criteria,
                document.Opening.Markdown
            )
        );
    }

    private static List<(string Heading, RubricLevel Level)> LevelColumns(IReadOnlyList<string> headings, int line, ProblemList problems)
    {
        foreach (var missing in Example.Take(2).Where(column => !headings.Contains(column, StringComparer.OrdinalIgnoreCase)))
            problems.Add(
                line,
                $"The table has no column `{missing}`",
                $"Its columns are `Criterion`, `Weight` and the levels, such as `{Example[2]}`."
            );
        var levels = new List<(string Heading, RubricLevel Level)>();
        foreach (var heading in headings.Where(heading => !Example.Take(2).Contains(heading, StringComparer.OrdinalIgnoreCase)))
        {
            var match = NameAndPoints().Match(heading);
            if (!match.Success)
                problems.Add(line, $"The column `{heading}` is no level", $"Write a level's name and its points: `{Example[2]}`.");
            else
                levels.Add(
                    (heading, new(match.Groups["name"].Value, decimal.Parse(match.Groups["points"].Value, CultureInfo.InvariantCulture)))
                );
        }
        if (levels.Count < 2)
            problems.Add(line, "The rubric has fewer than two levels", "Add a column for each level, from the lowest to the highest.");
        foreach (var ((_, lower), (heading, higher)) in levels.Zip(levels.Skip(1)))
        {
            if (higher.Points <= lower.Points)
                problems.Add(
                    line,
                    $"`{heading}` earns no more than the level before it",
                    "Order the levels from the lowest to the highest, each with more points."
                );
        }
        return levels;
    }

    private static RubricCriterion Criterion(TableRow row, IReadOnlyList<(string Heading, RubricLevel Level)> columns, ProblemList problems)
    {
        var name = row.Required("Criterion", problems)?.Text ?? "";
        var weight = row.Required("Weight", problems) is { } text
            ? (decimal)(Number.Read(text, "The weight", Bounds.Worth, problems) ?? 1)
            : 1;
        return new(name, weight, [.. columns.Select(column => row.Required(column.Heading, problems)?.Text ?? "")]);
    }

    [GeneratedRegex(@"^(?<name>.+?)\s*\((?<points>[0-9]{1,4}(\.[0-9]{1,4})?)\)$")]
    private static partial Regex NameAndPoints();
}
