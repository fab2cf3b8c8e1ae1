using ClassKit.CellFormulas.Values;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Marking;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Corrections;

/// <summary>
/// Puts an instructor's corrections over the points of a graded class. Outcomes stay: they say what the answer is, not what it is worth.
/// </summary>
public static class Corrector
{
    /// <summary>The grades with every correction applied.</summary>
    /// <param name="grades">As graded.</param>
    /// <param name="corrections">At most one an answer, each naming a student and a part of the deal.</param>
    public static ClassGrades Apply(ClassGrades grades, IReadOnlyList<Correction> corrections)
    {
        ArgumentNullException.ThrowIfNull(grades);
        ArgumentNullException.ThrowIfNull(corrections);
        var byStudent = corrections.ToLookup(correction => correction.Student);
        return grades with
        {
            Students = [.. grades.Students.Select(student => Apply(student, grades.Dealt, [.. byStudent[student.Who.Id]]))],
        };
    }

    private static StudentGrade Apply(StudentGrade student, DealtClass dealt, IReadOnlyList<Correction> corrections)
    {
        if (corrections.Count == 0)
            return student;
        var answers = student.Answers.Count > 0 ? student.Answers : ByHand(dealt.SeatOf(student.Who), dealt, corrections);
        return student with
        {
            Answers =
            [
                .. answers.Select(answer =>
                    corrections.FirstOrDefault(correction => correction.Exercise == answer.Exercise.Id && correction.Part == answer.Part.Id)
                        is { } correction
                        ? answer with
                        {
                            Points = correction.Points,
                            OutOf = answer.Part.Points,
                            Correction = new(answer.Points, correction.Reason),
                        }
                        : answer
                ),
            ],
        };
    }

    /// <summary>
    /// The answers of a student whose work the instructor marks by hand: nothing came back that could be read. Points for one part say that
    /// there is work somewhere, so that the others wait to be decided too; a correction to nothing says that there is none, and they are empty.
    /// </summary>
    private static IReadOnlyList<AnswerGrade> ByHand(DealtStudent student, DealtClass dealt, IReadOnlyList<Correction> corrections)
    {
        var isThereWork = corrections.Any(correction => correction.Points > 0);
        return
        [
            .. dealt
                .ExercisesOf(student)
                .SelectMany(exercise =>
                {
                    var expected = student.AnswersOf(exercise.Id);
                    return exercise
                        .Parts.Select(part => (Part: part, Waits: isThereWork && !IsCorrected(exercise.Id, part.Id)))
                        .Select(one => new AnswerGrade(
                            exercise,
                            one.Part,
                            one.Waits ? Outcome.Unsupported : Outcome.Blank,
                            0,
                            one.Waits ? 0 : one.Part.Points,
                            CellValue.Blank,
                            expected[one.Part.Id],
                            null,
                            [new AnswerFinding.NoWorkbook()],
                            new Dictionary<string, double>()
                        ));
                }),
        ];

        bool IsCorrected(string exercise, string part) =>
            corrections.Any(correction => correction.Exercise == exercise && correction.Part == part);
    }
}
