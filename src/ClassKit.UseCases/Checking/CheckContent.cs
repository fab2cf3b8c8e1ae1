using ClassKit.Content.Checking;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Recognition;
using ClassKit.Content.Rosters;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Layout;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Running;
using ClassKit.Wording.Notes;

namespace ClassKit.UseCases.Checking;

/// <summary>Checks authored content: every problem with its place.</summary>
public static class CheckContent
{
    /// <summary>Checks lessons, exercises, rubrics, profiles and rosters, and proves every exercise by drawing it on trial.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static ContentProof Run(CheckRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var library = request.Library;
        run.Begin(RunStep.ReadingContent);
        var check = ContentChecker.Check(request.Paths, library);
        if (check.Problems.Count > 0) return new(check.Items, check.Problems, [], []);

        List<ProvedExercise> proofs = [.. run.Each(RunStep.ProvingExercises, ExerciseFiles(library, check.Items)).Select(file => ProvedExercise.Of(library.At(file))!)];
        return new(
            check.Items,
            [.. check.Items.Where(item => item.Kind == ContentKind.Lesson).Select(item => NameClash(library.At(item.Path))).OfType<Diagnostic>(), .. proofs.Select(proof => proof.Problem).OfType<Diagnostic>()],
            [.. check.Items.Where(item => item.Kind == ContentKind.Roster).Select(item => Understood(library.At(item.Path))).OfType<Diagnostic>(), .. proofs.Select(proof => proof.Note).OfType<Diagnostic>()],
            proofs)
        {
            Rules = [.. check.Items.Where(item => item.Kind == ContentKind.GradeRule).Select(item => RuleProof.Of(item.Path, GradeRuleReader.Read(library.At(item.Path)).Model!))],
        };
    }

    private static List<string> ExerciseFiles(Library library, IEnumerable<CheckedItem> items) =>
    [
        .. items
            .SelectMany(item => item.Kind switch
            {
                ContentKind.Lesson => LessonReader.ExerciseFiles(library.At(item.Path)),
                ContentKind.Exercise => [item.Path],
                _ => [],
            })
            .DistinctBy(library.Tree.Full),
    ];

    private static Diagnostic? Understood(Source roster) => RosterReader.Read(roster).Model?.Origin is { IsPlain: false } origin
        ? new(roster.Path, null, string.Join(' ', NoteWords.Of(new Note.RosterUnderstood(origin))).TrimEnd('.'), "Rename a column in the file if it was taken for the wrong thing.")
        : null;

    private static Diagnostic? NameClash(Source lessonFolder) =>
        LessonReader.Read(lessonFolder).Model is { } lesson && PracticeLayout.FirstNameClash(lesson.Exercises) is { } clash
            ? PracticeSet.Clash(lessonFolder.Path, clash)
            : null;
}
