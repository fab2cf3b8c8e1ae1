using ClassKit.Exercises.Authoring;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Statistics;

/// <summary>Statistics where students had different sets of equal weight.</summary>
/// <remarks>
/// Every item is looked at among those who were asked it, held against the share that each of them earned of their own set. There is no
/// reliability: alpha compares items over students who were asked all of them.
/// </remarks>
internal static class SpreadStatistics
{
    public static TestStatistics Of(ClassGrades grades)
    {
        var students = grades.Students.Where(TestStatistics.IsWhole).ToList();
        return new(
            students.Count,
            [.. grades.Dealt.Exercises.SelectMany(exercise => exercise.Parts.Select(part => Of(students, exercise, part)))],
            null
        )
        {
            WhyNone = NoReliability.DifferentSets,
        };
    }

    private static ItemStatistics Of(List<StudentGrade> students, Exercise exercise, Part part)
    {
        var asked = students
            .Select(student =>
                (
                    Student: student,
                    Answer: student.Answers.FirstOrDefault(answer => answer.Exercise.Id == exercise.Id && answer.Part.Id == part.Id)
                )
            )
            .Where(pair => pair.Answer is not null)
            .ToList();
        var scores = asked.ConvertAll(pair => pair.Answer!.Points);
        var totals = asked.ConvertAll(pair => Earned(pair.Student) / Possible(pair.Student));
        // A set of this one part has no rest to hold it against.
        var hasRest = asked.TrueForAll(pair => Possible(pair.Student) > part.Points);
        var rests = hasRest
            ? asked.ConvertAll(pair => (Earned(pair.Student) - pair.Answer!.Points) / (Possible(pair.Student) - part.Points))
            : [];
        return new(
            scores.Count == 0 ? null : (double)(scores.Average() / part.Points),
            Moments.Correlation(scores, totals),
            hasRest ? Moments.Correlation(scores, rests) : null,
            ExtremeGroups.Of(totals)?.Difference(scores) / (double)part.Points,
            null
        )
        {
            Asked = scores.Count,
        };
    }

    /// <summary>What a student can do, whatever lateness costs and however few exercises count.</summary>
    private static decimal Earned(StudentGrade student) => student.Answers.Sum(answer => answer.Points);

    private static decimal Possible(StudentGrade student) => student.Answers.Sum(answer => answer.OutOf);
}
