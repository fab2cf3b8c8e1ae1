using ClassKit.Exercises.Cohorts;

namespace ClassKit.Grading.Results;

/// <summary>A student's answer in own words, there to be read.</summary>
/// <param name="Who">Whose it is.</param>
/// <param name="Answer">The answer; its value is a text.</param>
public sealed record WrittenAnswer(Student Who, AnswerGrade Answer)
{
    /// <summary>Every one of a class, student by student. Grades under pseudonyms have none: how somebody writes tells who it is.</summary>
    public static IEnumerable<WrittenAnswer> In(ClassGrades grades)
    {
        ArgumentNullException.ThrowIfNull(grades);
        return grades.Students.SelectMany(student =>
            student
                .Answers.Where(answer => answer.Part.InWords is not null && answer.Value.IsText)
                .Select(answer => new WrittenAnswer(student.Who, answer))
        );
    }
}
