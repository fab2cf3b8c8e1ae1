using ClassKit.Content.Diagnostics;
using ClassKit.Content.Outline;
using ClassKit.Content.Quantities;
using ClassKit.Terms.Rules;

namespace ClassKit.Content.Rubrics;

/// <summary>Reads a scale of grades, from the highest to the lowest, which begins at 0 %.</summary>
internal static class ScaleTable
{
    private static readonly string[] Columns = ["Grade", "From"];

    public static GradeScale Read(Section? section, ProblemList problems)
    {
        var before = problems.Count;
        List<(ScaleStep Step, int Line)> steps = [];
        foreach (var row in Tables.Rows(section, Columns, problems))
        {
            var grade = row.Required("Grade", problems);
            var from = row.Required("From", problems) is { } text ? Dimensions.Percent.Read(text, "`From`", Bounds.Share, problems) : null;
            if (grade is null || from is null)
                continue;
            if (steps.Exists(known => known.Step.Grade.Equals(grade.Value.Text, StringComparison.OrdinalIgnoreCase)))
                problems.Add(row.Line, $"The grade `{grade.Value.Text}` is here a second time", "Keep one row for each grade.");
            steps.Add((new(grade.Value.Text, (decimal)from), row.Line));
        }
        if (problems.Count > before || section is null)
            return new([]);
        foreach (var ((higher, _), (lower, line)) in steps.Zip(steps.Skip(1)).Where(pair => pair.Second.Step.From >= pair.First.Step.From))
            problems.Add(
                line,
                $"`{lower.Grade}` begins no lower than `{higher.Grade}` above it",
                "Order the grades from the highest to the lowest."
            );
        if (steps.Count < 2)
            problems.Add(section.Line, "The scale has fewer than two grades", "Add a row for each grade, from the highest to the lowest.");
        else if (steps[^1].Step.From != 0)
            problems.Add(
                steps[^1].Line,
                $"The lowest grade, `{steps[^1].Step.Grade}`, does not begin at 0 %",
                "Whatever is reached must earn a grade: write `0 %`."
            );
        return new([.. Enumerable.Reverse(steps).Select(step => step.Step)]);
    }
}
