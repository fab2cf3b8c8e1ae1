using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Terms.Rules;
using ClassKit.Terms.Work;

namespace ClassKit.Content.Terms;

/// <summary>Reads what a class was set: a row a piece of work.</summary>
internal static class WorkTable
{
    private static readonly string[] Columns = ["Work", "Kind", "Category", "Out of", "Marks", "Resit", "Second marker"];

    /// <summary>A work a day of a school year and more; a sheet of the workbook has a column or more for each.</summary>
    private const int MostWorks = 400;

    private static readonly Dictionary<string, WorkKind> Kinds = new()
    {
        ["calculations"] = WorkKind.CalculationSet,
        ["bench work"] = WorkKind.BenchWork,
        ["written answers"] = WorkKind.WrittenAnswers,
        ["typed marks"] = WorkKind.TypedMarks,
    };

    public static IReadOnlyList<PlannedWork> Read(Section? section, GradeRule rule, BenchTables bench, ProblemList problems)
    {
        List<PlannedWork> works = [];
        foreach (var row in Tables.Rows(section, Columns, problems))
        {
            var title = row.Required("Work", problems);
            var kind = row.Required("Kind", problems) is { } word ? Kind(word, problems) : null;
            var category = row.Required("Category", problems) is { } named ? CategoryOf(named, rule, problems) : null;
            if (title is not { } called || kind is null || category is null)
                continue;
            if (works.Exists(work => work.Title.Equals(called.Text, StringComparison.OrdinalIgnoreCase)))
                problems.Add(
                    row.Line,
                    $"The work `{called.Text}` is here a second time",
                    "Give each work a name of its own; a resit stands in the column `Resit`."
                );
            if (
                called.Text.Equals("student", StringComparison.OrdinalIgnoreCase)
                || called.Text.EndsWith(MarksTableReader.Resit, StringComparison.OrdinalIgnoreCase)
            )
                problems.Add(
                    row.Line,
                    $"No work can be called `{called.Text}`",
                    "Choose another name: in the table of marks that column means something else."
                );
            works.Add(Sources(new(called.Text, kind.Value, category, null, row.Line), row, rule, bench, problems));
        }
        if (works.Count > MostWorks)
            problems.Add(works[MostWorks].Line, $"The term has {works.Count} works", $"A term has at most {MostWorks}: begin another one.");
        if (section is not null && works.Count == 0 && problems.IsEmpty)
            problems.Add(section.Line, "There is no work", "Add a row to the table for each work of the term.");
        return works;
    }

    private static PlannedWork Sources(PlannedWork work, TableRow row, GradeRule rule, BenchTables bench, ProblemList problems)
    {
        var (outOf, marks, resit, second) = (
            row.Optional("Out of"),
            row.Optional("Marks"),
            row.Optional("Resit"),
            row.Optional("Second marker")
        );
        if (work.Kind != WorkKind.BenchWork && second.Text.Length > 0)
            problems.Add(
                row.Line,
                $"`{work.Title}` has a second marker and is no bench work",
                "Leave the cell empty: two markers are compared by the criteria of a practical rubric."
            );
        switch (work.Kind)
        {
            case WorkKind.CalculationSet:
                if (outOf.Text.Length > 0)
                    problems.Add(row.Line, $"`{work.Title}` says what it is out of", "Leave the cell empty: the graded folder says it.");
                if (marks.Text.Length == 0)
                    problems.Add(
                        row.Line,
                        $"`{work.Title}` has no graded folder",
                        "Write the folder that grading made in the column `Marks`, or make its kind `typed marks`."
                    );
                return work with { Graded = [.. new[] { marks, resit }.Select(bench.Paths.Folder).OfType<string>()] };
            case WorkKind.BenchWork:
                return bench.Read(work, outOf, marks, resit, second, rule, problems);
            case WorkKind.WrittenAnswers or WorkKind.TypedMarks:
                if (marks.Text.Length + resit.Text.Length > 0)
                    problems.Add(
                        row.Line,
                        $"`{work.Title}` names a file of its own",
                        "Leave `Marks` and `Resit` empty: such marks stand in the table that `marks:` names, a resit in a column of its own."
                    );
                return row.Required("Out of", problems) is { } text && Number.Read(text, "`Out of`", Bounds.Worth, problems) is { } points
                    ? work with
                    {
                        OutOf = (decimal)points,
                    }
                    : work;
        }
        return work;
    }

    private static WorkKind? Kind(Located word, ProblemList problems)
    {
        if (Kinds.TryGetValue(word.Text.ToLowerInvariant(), out var kind))
            return kind;
        problems.Add(word.Line, $"The kind is `{word.Text}`", NearestWord.Advice(word.Text, [.. Kinds.Keys]));
        return null;
    }

    private static string? CategoryOf(Located named, GradeRule rule, ProblemList problems)
    {
        var names = rule.Categories.Select(category => category.Name).ToList();
        if (names.Find(name => name.Equals(named.Text, StringComparison.OrdinalIgnoreCase)) is { } found)
            return found;
        problems.Add(named.Line, $"`{named.Text}` is no category of the rule", NearestWord.Advice(named.Text, names));
        return null;
    }
}
