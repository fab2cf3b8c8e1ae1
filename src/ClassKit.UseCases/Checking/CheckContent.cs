using ClassKit.Content.Checking;
using ClassKit.Content.Classes;
using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Content.Recognition;
using ClassKit.Content.Rosters;
using ClassKit.Content.Rubrics;
using ClassKit.Content.Sources;
using ClassKit.Exercises.Layout;
using ClassKit.Lessons.Authored;
using ClassKit.Lessons.Classes;
using ClassKit.Notes;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Running;
using ClassKit.Wording.Notes;

namespace ClassKit.UseCases.Checking;

/// <summary>Checks authored content: every problem with its place.</summary>
public static class CheckContent
{
    /// <summary>
    /// Checks lessons, exercises, rubrics, profiles and rosters, proves every exercise that can be read by drawing it on trial, and plans
    /// every lesson for a class.
    /// </summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static ContentProof Run(CheckRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var library = request.Library;
        run.Begin(RunStep.ReadingContent);
        var check = ContentChecker.Check(request.Paths, library);
        List<(string Path, Lesson Lesson)> lessons =
        [
            .. Of(ContentKind.Lesson)
                .Select(item => (item.Path, LessonReader.Read(library.At(item.Path)).Model!))
                .Where(read => read.Item2 is not null),
        ];
        List<(string Path, ClassProfile Class)> classes =
        [
            .. Of(ContentKind.ClassProfile)
                .Select(item => (item.Path, ClassProfileReader.Read(library.At(item.Path)).Model!))
                .Where(read => read.Item2 is not null),
        ];

        List<Diagnostic> told =
        [
            .. check.Problems,
            .. lessons.Select(read => NameClash(read.Path, read.Lesson)).OfType<Diagnostic>(),
            .. check.Doubts,
            .. SameTitles.Among("lesson", lessons.Select(read => (FileOf(read.Path), read.Lesson.Title))),
            .. lessons.SelectMany(read =>
                SameTitles.Among(
                    "exercise",
                    LessonReader.ExerciseFiles(library.At(read.Path)).Zip(read.Lesson.Exercises, (file, exercise) => (file, exercise.Title))
                )
            ),
            .. lessons
                .Select(read => LessonFit.Of(FileOf(read.Path), read.Lesson, [.. classes.Select(known => known.Class)], run))
                .OfType<Diagnostic>(),
            .. lessons
                .Select(read => WarmRises.Of(FileOf(read.Path), read.Lesson, [.. classes.Select(known => known.Class)]))
                .OfType<Diagnostic>(),
            .. lessons
                .Select(read => UncountedCooking.Of(FileOf(read.Path), read.Lesson, [.. classes.Select(known => known.Class)]))
                .OfType<Diagnostic>(),
            .. lessons
                .Select(read => HeatsOfFat.Of(FileOf(read.Path), read.Lesson, [.. classes.Select(known => known.Class)]))
                .OfType<Diagnostic>(),
            .. lessons.Select(read => BlindTasting.Of(FileOf(read.Path), read.Lesson)).OfType<Diagnostic>(),
            .. UnlinkedItems.Of(
                library,
                check.Items,
                lessons.Count == Of(ContentKind.Lesson).Count(),
                classes.Count == Of(ContentKind.ClassProfile).Count()
            ),
            .. lessons.Count < Of(ContentKind.Lesson).Count()
                ? []
                : classes.SelectMany(read =>
                    PriceGaps.Of(PathOf(read.Class.Prices, read.Path), read.Class, [.. lessons.Select(known => known.Lesson)])
                ),
            .. classes
                .Select(read =>
                    TeamsOfList.Unread(read.Path, read.Class, [.. Of(ContentKind.Roster).Select(item => library.At(item.Path))])
                )
                .OfType<Diagnostic>(),
            .. Of(ContentKind.Roster).SelectMany(item => ArrangedWorks.Unknown(library.At(item.Path), check.Items)),
            .. Of(ContentKind.Roster).Select(item => Understood(library.At(item.Path))).OfType<Diagnostic>(),
        ];
        var proofs = ProvedExercises.Of(request.ProvesExercises ? ExerciseFiles(library, check.Items).Select(library.At) : [], run);
        told.AddRange(
            proofs
                .SelectMany(proof => new[] { proof.Problem, proof.Note, KnownSkills.Note(proof.Path, proof.Proof.Exercise) })
                .OfType<Diagnostic>()
        );
        return new(check.Items, OfWeight(Weight.Blocks), OfWeight(Weight.Noted), proofs)
        {
            Doubts = OfWeight(Weight.Doubtful),
            Fine = OfWeight(Weight.Fine),
            Rules =
            [
                .. Of(ContentKind.GradeRule)
                    .Select(item => (item.Path, GradeRuleReader.Read(library.At(item.Path)).Model))
                    .Where(read => read.Model is not null)
                    .Select(read => RuleProof.Of(read.Path, read.Model!)),
            ],
        };

        IEnumerable<CheckedItem> Of(ContentKind kind) => check.Items.Where(item => item.Kind == kind);

        string PathOf(PriceList? prices, string profile) =>
            Of(ContentKind.PriceList)
                .FirstOrDefault(item => ReferenceEquals(PriceListReader.Read(library.At(item.Path)).Model, prices))
                ?.Path
            ?? profile;

        List<Diagnostic> OfWeight(Weight weight) => [.. told.Where(one => one.Weight == weight).Distinct()];
    }

    private static List<string> ExerciseFiles(Library library, IEnumerable<CheckedItem> items) =>
        [
            .. items
                .SelectMany(item =>
                    item.Kind switch
                    {
                        ContentKind.Lesson => LessonReader.ExerciseFiles(library.At(item.Path)),
                        ContentKind.Exercise => [item.Path],
                        _ => [],
                    }
                )
                .DistinctBy(library.Tree.Full),
        ];

    /// <summary>A lesson's own file, which messages about the lesson as a whole name.</summary>
    private static string FileOf(string lesson) =>
        Path.GetFileName(lesson) == LessonReader.FileName ? lesson : Path.Combine(lesson, LessonReader.FileName).Replace('\\', '/');

    private static Diagnostic? Understood(Source roster) =>
        RosterReader.Read(roster).Model?.Origin is { IsPlain: false } origin
            ? new(
                roster.Path,
                null,
                string.Join(' ', NoteWords.Of(new Note.RosterUnderstood(origin))).TrimEnd('.'),
                "Rename a column in the file if it was taken for the wrong thing."
            )
            {
                Weight = origin.IsClear ? Weight.Fine : Weight.Noted,
            }
            : null;

    private static Diagnostic? NameClash(string path, Lesson lesson) =>
        PracticeLayout.FirstNameClash(lesson.Exercises) is { } clash ? PracticeSet.Clash(path, clash) : null;
}
