using ClassKit.Content;
using ClassKit.Exercises;

namespace ClassKit.UseCases;

/// <summary>Checks authored content: every problem with its place.</summary>
public static class CheckContent
{
    /// <summary>Checks lessons, exercises, rubrics, profiles and rosters, and proves every exercise by drawing it on trial.</summary>
    public static ContentProof Check(IEnumerable<string> paths)
    {
        var check = ContentChecker.Check(paths);
        if (check.Problems.Count > 0) return new(check.Items, check.Problems, [], []);

        List<ExerciseProof> proofs = [.. ExerciseFiles(check.Items).Select(file => ExerciseProof.Of(file, ExerciseReader.Read(file).Model!))];
        return new(
            check.Items,
            [.. check.Items.Where(item => item.Kind == ContentKind.Lesson).Select(NameClash).OfType<Diagnostic>(), .. proofs.Select(proof => proof.Problem).OfType<Diagnostic>()],
            [.. proofs.Select(proof => proof.Note).OfType<Diagnostic>()],
            proofs)
        {
            Rules = [.. check.Items.Where(item => item.Kind == ContentKind.GradeRule).Select(item => RuleProof.Of(item.Path, GradeRuleReader.Read(item.Path).Model!))],
        };
    }

    private static IEnumerable<string> ExerciseFiles(IEnumerable<CheckedItem> items) => items
        .SelectMany(item => item.Kind switch
        {
            ContentKind.Lesson => LessonReader.ExerciseFiles(item.Path),
            ContentKind.Exercise => [item.Path],
            _ => [],
        })
        .DistinctBy(Path.GetFullPath);

    private static Diagnostic? NameClash(CheckedItem item) =>
        LessonReader.Read(item.Path).Model is { } lesson && PracticeLayout.FirstNameClash(lesson.Exercises) is { } clash
            ? new(item.Path, null, $"Two cells of the practice workbook would both be named {clash}", "Rename an exercise, a given or a part.")
            : null;
}
