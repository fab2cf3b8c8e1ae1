using ClassKit.Grading.Findings;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Integrity;

/// <summary>
/// Facts that only show when a class's work is looked at together, each with how likely chance alone makes it. Never a verdict.
/// </summary>
internal static class IntegrityFacts
{
    /// <summary>
    /// A fact is put before the instructor if chance alone would bring one like it in at most this many classes: one in twenty. Any such
    /// line is a convention; common practice, no source.
    /// </summary>
    public const double Line = 0.05;

    /// <summary>The flags of every student whom some fact concerns, by the student's id.</summary>
    /// <param name="grades">Of the class.</param>
    /// <param name="files">What they were made of.</param>
    public static ILookup<string, Flag> In(ClassGrades grades, IReadOnlyList<JudgedFile> files) =>
        FittingElsewhere
            .In(grades)
            .Concat(SharedMistakes.In(grades))
            .Concat(SharedAuthors.In(grades, files))
            .ToLookup(fact => fact.Student.Id, fact => fact.Flag);

    /// <summary>The answers that a wrong turn of the student's own made: neither right nor carried on from a slip.</summary>
    public static IEnumerable<AnswerGrade> Wrong(StudentGrade student) =>
        student.Answers.Where(answer => answer.Outcome is Outcome.Incorrect or Outcome.Misconception);
}
