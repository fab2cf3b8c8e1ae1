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

    /// <summary>What is arranged with a student, by the student's id.</summary>
    public Func<string, Arrangement> Arranged { get; init; } = _ => Arrangement.None;

    /// <summary>How many teams the class has.</summary>
    public int Teams { get; init; } = 1;

    public PlannedWork Read(
        PlannedWork work,
        Located outOf,
        Located marks,
        Located resit,
        Located second,
        GradeRule rule,
        ProblemList problems
    )
    {
        if (outOf.Text.Length == 0)
        {
            problems.Add(
                outOf.Line,
                $"`{work.Title}` does not say by which rubric it is marked",
                "Write the file of a practical rubric, such as `../rubrics/bench-work.md`, in the column `Out of`."
            );
            return work;
        }
        if (marks.Text.Length == 0 && resit.Text.Length + second.Text.Length > 0)
            problems.Add(outOf.Line, $"`{work.Title}` has no first table of marks", "Write its file in the column `Marks`.");
        if (Paths.Read(outOf, PracticalRubricReader.Read) is not { } rubric)
            return work;
        foreach (
            var line in rule.Lines.Where(line =>
                line.Category == work.Category
                && line.Criterion is not null
                && rubric.Criteria.All(criterion => criterion.Name != line.Criterion)
            )
        )
            problems.Add(
                outOf.Line,
                $"The rule asks for `{line.Category}: {line.Criterion}`, and the rubric of `{work.Title}` has no such criterion",
                NearestWord.Advice(line.Criterion!, [.. rubric.Criteria.Select(criterion => criterion.Name)])
            );

        var scale = BenchForms.ScaleOf(rubric);
        var form = BenchForms.Of(rubric, Cohort, Students, Teams) with { NotAsked = NotAsked(work) };
        foreach (var (student, _) in form.NotAsked.Where(one => rubric.Criteria.All(criterion => one.Value.Contains(criterion.Name))))
            problems.Add(
                outOf.Line,
                $"`{student}` leaves out every criterion of `{work.Title}`",
                "Leave one in, or excuse the student in the column `excused from` of the class list."
            );
        foreach (
            var (student, name) in form
                .NotAsked.SelectMany(one => one.Value.Select(name => (one.Key, name)))
                .Where(one => !rubric.Criteria.Any(criterion => criterion.Name.Equals(one.name, StringComparison.OrdinalIgnoreCase)))
        )
            problems.Doubt(
                outOf.Line,
                $"`{student}` leaves out `{name}` of `{work.Title}`, and its rubric has no such criterion",
                NearestWord.Advice(name, [.. rubric.Criteria.Select(criterion => criterion.Name)])
            );
        BenchSheet? Sheet(Located file) => Paths.Read(file, source => BenchFormReader.ReadAny(source, rubric, form));
        return work with
        {
            Rubric = Paths.File(outOf),
            BenchSources = (Paths.File(marks), Paths.File(second), Paths.File(resit)),
            OutOf = scale.OutOf,
            NotAsked = form.NotAsked,
            Bench =
            [
                .. Sheet(marks) is { } first ? [new BenchMarking(scale, first, Sheet(second))] : Array.Empty<BenchMarking>(),
                .. Sheet(resit) is { } again ? [new BenchMarking(scale, again, null)] : Array.Empty<BenchMarking>(),
            ],
        };
    }

    /// <summary>The criteria that are arranged to be left out of a work, by students' ids.</summary>
    private Dictionary<string, IReadOnlySet<string>> NotAsked(PlannedWork work) =>
        Students
            .Select(student =>
                (
                    student.Id,
                    Left: Arranged(student.Id)
                        .OnlyFor.Where(one => one.Work == work.Title)
                        .SelectMany(one => one.LeavesOut)
                        .ToHashSet(StringComparer.OrdinalIgnoreCase)
                )
            )
            .Where(one => one.Left.Count > 0)
            .ToDictionary(one => one.Id, one => (IReadOnlySet<string>)one.Left);
}
