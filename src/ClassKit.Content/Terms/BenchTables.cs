using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Content.Wording;
using ClassKit.Exercises.Cohorts;
using ClassKit.Terms.Bench;
using ClassKit.Terms.Rules;

namespace ClassKit.Content.Terms;

/// <summary>Finds what was marked at the bench: the rubric, and a table a marker and sitting.</summary>
/// <param name="Students">The class.</param>
/// <param name="Paths">Follows the paths.</param>
internal sealed record BenchTables(IReadOnlyList<Student> Students, NamedPaths Paths)
{
    /// <summary>What the class is called, as forms of bench marks have it.</summary>
    public string Cohort { get; init; } = "";

    /// <summary>How many teams the class has.</summary>
    public int Teams { get; init; } = 1;

    public PlannedWork Read(PlannedWork work, Located outOf, Located marks, Located resit, Located second, GradeRule rule, ProblemList problems)
    {
        if (outOf.Text.Length == 0)
        {
            problems.Add(outOf.Line, $"`{work.Title}` does not say by which rubric it is marked", "Write the file of a practical rubric, such as `../rubrics/bench-work.md`, in the column `Out of`.");
            return work;
        }
        if (marks.Text.Length == 0 && resit.Text.Length + second.Text.Length > 0)
            problems.Add(outOf.Line, $"`{work.Title}` has no first table of marks", "Write its file in the column `Marks`.");
        if (Paths.Read(outOf, PracticalRubricReader.Read) is not { } rubric) return work;
        foreach (var line in rule.Lines.Where(line => line.Category == work.Category && line.Criterion is not null && rubric.Criteria.All(criterion => criterion.Name != line.Criterion)))
            problems.Add(outOf.Line, $"The rule asks for `{line.Category}: {line.Criterion}`, and the rubric of `{work.Title}` has no such criterion", NearestWord.Advice(line.Criterion!, [.. rubric.Criteria.Select(criterion => criterion.Name)]));

        var scale = BenchForms.ScaleOf(rubric);
        BenchSheet? Sheet(Located file) => Paths.Read(file, source => BenchFormReader.ReadAny(source, rubric, BenchForms.Of(rubric, Cohort, Students, Teams)));
        return work with
        {
            OutOf = scale.OutOf,
            Bench = [.. Sheet(marks) is { } first ? [new BenchMarking(scale, first, Sheet(second))] : Array.Empty<BenchMarking>(), .. Sheet(resit) is { } again ? [new BenchMarking(scale, again, null)] : Array.Empty<BenchMarking>()],
        };
    }
}
