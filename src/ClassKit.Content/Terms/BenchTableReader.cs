using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sheets;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Cohorts;
using ClassKit.Lessons.Rubrics;
using ClassKit.Terms.Bench;

namespace ClassKit.Content.Terms;

/// <summary>Reads what one marker saw: a row a student, a column a criterion, in each cell a level's name or its points.</summary>
internal static class BenchTableReader
{
    private const string Student = "student";
    private const string Comment = "comment";

    public static Reading<BenchSheet> Read(Source source, PracticalRubric rubric, IReadOnlyList<Student> students)
    {
        var problems = new ProblemList(source.Shown);
        if (SourceFile.Read(source, problems) is not { } text) return problems.Fail<BenchSheet>();
        string[] columns = [Student, .. rubric.Criteria.Select(criterion => criterion.Name.ToLowerInvariant()), Comment];
        var places = new Dictionary<string, IReadOnlyList<int>>(StringComparer.Ordinal);
        var comments = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var row in CsvTable.Read(text, columns, columns.Length - 1, problems).Rows)
        {
            if (NamedStudent.Find(row, students, problems) is not { } student || rubric.Criteria.All(criterion => Cell(row, criterion).Length == 0)) continue;
            if (row[Comment] is { Length: > 0 } comment) comments[student] = comment;
            List<int?> levels = [.. rubric.Criteria.Select(criterion => Level(row, criterion, rubric, problems))];
            if (levels.TrueForAll(level => level is not null) && !places.TryAdd(student, [.. levels.OfType<int>()]))
                problems.Add(row.Line, $"`{student}` is marked in a line above already", "Keep one line for each student.");
        }
        return problems.Finish(() => new BenchSheet(Path.GetFileNameWithoutExtension(source.Path), places) { Comments = comments });
    }

    private static string Cell(CsvRow row, RubricCriterion criterion) => row[criterion.Name.ToLowerInvariant()];

    private static int? Level(CsvRow row, RubricCriterion criterion, PracticalRubric rubric, ProblemList problems)
    {
        var cell = Cell(row, criterion);
        var levels = rubric.Levels;
        for (var place = 0; place < levels.Count; place++)
        {
            if (levels[place].Name.Equals(cell, StringComparison.OrdinalIgnoreCase) || (Number.TryParse(cell, out var points) && points == levels[place].Points)) return place;
        }
        problems.Add(
            row.Line,
            cell.Length == 0 ? $"`{row[Student]}` has no level in `{criterion.Name}`" : $"`{row[Student]}` has `{cell}` in `{criterion.Name}`",
            $"{(NearestWord.To(cell, levels.Select(level => level.Name)) is { } near ? $"Did you mean `{near}`? " : "")}Write one of {string.Join(", ", levels.Select(level => FormattableString.Invariant($"{level.Name} ({level.Points:0.####})")))}, or leave the whole line empty.");
        return null;
    }
}
