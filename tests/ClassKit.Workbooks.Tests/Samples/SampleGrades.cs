using ClassKit.CellFormulas.Formulas;
using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Authoring;
using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Findings.Refusals;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;

namespace ClassKit.Workbooks.Tests.Samples;

/// <summary>
/// A graded class in which everything happens that a gradebook must show: every outcome, a student without a file, names and files that
/// start as formulas do.
/// </summary>
internal static class SampleGrades
{
    private static readonly IReadOnlyDictionary<string, double> NothingOwn = new Dictionary<string, double>();

    /// <summary>The outcomes of the six parts, by student; a student without outcomes returned nothing that could be read.</summary>
    private static readonly (string Id, string Name, GradeStatus Status, string? File, Outcome[] Outcomes)[] Students =
    [
        (
            "ada-01",
            "Ada Example",
            GradeStatus.Graded,
            "ada-01.xlsx",
            [Outcome.Sound, Outcome.Sound, Outcome.Sound, Outcome.Sound, Outcome.Sound, Outcome.Sound]
        ),
        (
            "ben-02",
            "=HYPERLINK(\"http://example.org\",\"Ben\")",
            GradeStatus.Graded,
            "+cmd.xlsx",
            [Outcome.ValueOnly, Outcome.FollowThrough, Outcome.Misconception, Outcome.Incorrect, Outcome.Blank, Outcome.Unreadable]
        ),
        (
            "cho-03",
            "Chō Exämple",
            GradeStatus.Graded,
            "returned late/cho-03 (1).xlsx",
            [Outcome.Unsupported, Outcome.Sound, Outcome.Unsupported, Outcome.Sound, Outcome.Misconception, Outcome.ValueOnly]
        ),
        ("dee-04", "Dee Example", GradeStatus.Missing, null, []),
        ("eli-05", "-Eli", GradeStatus.Unreadable, "@eli.xlsx", []),
        (
            "fay-06",
            "Fay Example",
            GradeStatus.Graded,
            "fay-06.xlsx",
            [Outcome.Unsupported, Outcome.Unsupported, Outcome.Unsupported, Outcome.Unsupported, Outcome.Unsupported, Outcome.Unsupported]
        ),
    ];

    public static readonly ClassGrades Grades = new(
        SampleClass.Dealt,
        [.. Students.Select(Grade)],
        [
            new("=notes.docx", "00", null, FileFate.Refused, null, new Uncounted.NotRead(new Refusal.OtherKind(FileKind.Document))),
            new("photo.jpg", "01", null, FileFate.Refused, null, new Uncounted.NotRead(new Refusal.OtherKind(FileKind.Jpeg))),
        ]
    );

    public static readonly ClassSummary Summary = ClassSummarizer.Summarize(Grades);

    /// <summary>What a share of points an outcome earns here; any numbers would do.</summary>
    private static decimal ShareOf(Outcome outcome) =>
        outcome switch
        {
            Outcome.Sound or Outcome.FollowThrough => 1,
            Outcome.ValueOnly => 0.25m,
            _ => 0,
        };

    private static StudentGrade Grade((string Id, string Name, GradeStatus Status, string? File, Outcome[] Outcomes) student)
    {
        var parts = SampleClass.Exercises.SelectMany(exercise => exercise.Parts.Select(part => (exercise, part)));
        return new(
            new Student(student.Id, student.Name),
            student.Status,
            student.File,
            [.. student.Outcomes.Zip(parts, (outcome, at) => Answer(at.exercise, at.part, outcome))],
            student.Status == GradeStatus.Unreadable ? [new Flag.UnreadableFile(new("@eli.xlsx"), new Refusal.CutOff())] : []
        );
    }

    private static AnswerGrade Answer(Exercise exercise, Part part, Outcome outcome) =>
        new(
            exercise,
            part,
            outcome,
            ShareOf(outcome) * part.Points,
            outcome == Outcome.Unsupported ? 0 : part.Points,
            outcome == Outcome.Blank ? CellValue.Blank : CellValue.FromNumber(780),
            780,
            outcome is Outcome.ValueOnly or Outcome.Blank ? null : "=C7*C8",
            [
                outcome == Outcome.Misconception
                    ? new AnswerFinding.WrongTurn(new("divided", CellFormula.Of("=flour/hydration"), "Multiply."))
                    : new AnswerFinding.Right(),
            ],
            NothingOwn
        );
}
