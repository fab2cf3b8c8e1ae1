using ClassKit.Content.Diagnostics;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sheets;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Lessons.Rubrics;
using ClassKit.Terms.Bench;

namespace ClassKit.Content.Terms;

/// <summary>Reads what one marker saw: a row a student, a column a criterion, in each cell a level's name or its points.</summary>
internal static class BenchTableReader
{
    private const string Student = "student";
    private const string Comment = "comment";

    public static Reading<BenchSheet> Read(Source source, PracticalRubric rubric, BenchForm form)
    {
        var problems = new ProblemList(source.Shown);
        if (SourceFile.Read(source, problems) is not { } text)
            return problems.Fail<BenchSheet>();
        string[] columns = [Student, .. rubric.Criteria.Select(criterion => criterion.Name.ToLowerInvariant()), Comment];
        var places = new Dictionary<string, IReadOnlyList<int>>(StringComparer.Ordinal);
        var begun = new Dictionary<string, IReadOnlyList<int?>>(StringComparer.Ordinal);
        var comments = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (
            var (row, student) in NamedStudent.InClass(
                CsvTable.Read(text, columns, columns.Length - 1, problems).Rows,
                form.Students,
                problems
            )
        )
        {
            // Words are kept of whoever has no level as well: they may be all that was seen of them.
            if (row[Comment] is { Length: > 0 } comment)
                comments[student] = comment;
            if (rubric.Criteria.All(criterion => Cell(row, criterion).Length == 0))
                continue;
            List<int?> levels =
            [
                .. rubric.Criteria.Select(
                    (criterion, at) => form.IsLeftOut(student, at) ? BenchScale.NotAsked : Level(row, criterion, rubric, problems)
                ),
            ];
            var isWhole = levels.TrueForAll(level => level is not null);
            if (!isWhole)
                AskFor(row, [.. rubric.Criteria.Where((_, at) => levels[at] is null)], problems);
            if (
                places.ContainsKey(student)
                || begun.ContainsKey(student)
                || !(isWhole ? places.TryAdd(student, [.. levels.OfType<int>()]) : begun.TryAdd(student, levels))
            )
                problems.Add(row.Line, $"`{student}` is marked in a line above already", "Keep one line for each student.");
        }
        return problems.Finish(() =>
            new BenchSheet(Path.GetFileNameWithoutExtension(source.Path), places) { Begun = begun, Comments = comments }
        );
    }

    private static string Cell(CsvRow row, RubricCriterion criterion) => row[criterion.Name.ToLowerInvariant()];

    /// <summary>What is complete counts; whoever is not is asked about.</summary>
    private static void AskFor(CsvRow row, IReadOnlyList<RubricCriterion> missing, ProblemList problems)
    {
        List<string> open = [.. missing.Where(criterion => Cell(row, criterion).Length == 0).Select(criterion => $"`{criterion.Name}`")];
        if (open.Count > 0)
            problems.Doubt(
                row.Line,
                $"`{row[Student]}` has no level in {string.Join(", ", open)}",
                "Write one, or leave the whole line empty: nothing of this work counts for them until then."
            );
    }

    private static int? Level(CsvRow row, RubricCriterion criterion, PracticalRubric rubric, ProblemList problems)
    {
        var cell = Cell(row, criterion);
        if (cell.Length == 0)
            return null;
        var levels = rubric.Levels;
        for (var place = 0; place < levels.Count; place++)
        {
            if (
                levels[place].Name.Equals(cell, StringComparison.OrdinalIgnoreCase)
                || (Number.TryParse(cell, out var points) && points == levels[place].Points)
            )
                return place;
        }
        problems.Add(
            row.Line,
            $"`{row[Student]}` has `{cell}` in `{criterion.Name}`",
            $"{(NearestWord.To(cell, levels.Select(level => level.Name)) is { } near ? $"Did you mean `{near}`? " : "")}Write one of {string.Join(", ", levels.Select(level => FormattableString.Invariant($"{level.Name} ({level.Points:0.####})")))}, or leave the whole line empty."
        );
        return null;
    }
}
