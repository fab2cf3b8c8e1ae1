using ClassKit.Grading.Results;

namespace ClassKit.Grading.Statistics;

/// <summary>How well a set of parts measured a class.</summary>
/// <param name="Students">How many students are in it: those graded, without an answer that was left to the instructor.</param>
/// <param name="Items">Statistics of every part, in workbook order.</param>
/// <param name="Reliability">How consistently the parts rank the students; null where undefined.</param>
public sealed record TestStatistics(int Students, IReadOnlyList<ItemStatistics> Items, Reliability? Reliability)
{
    /// <summary>Why there is no reliability; null where there is one.</summary>
    public NoReliability? WhyNone { get; init; }

    /// <summary>Computes them from what every part earned.</summary>
    public static TestStatistics Of(ClassGrades grades)
    {
        ArgumentNullException.ThrowIfNull(grades);
        if (!grades.Dealt.IsSameForAll)
            return SpreadStatistics.Of(grades);
        var most = grades.Dealt.Exercises.SelectMany(exercise => exercise.Parts).Select(part => part.Points).ToList();
        var rows = grades
            .Students.Where(IsWhole)
            .Select(student => (IReadOnlyList<decimal>)[.. student.Answers.Select(answer => answer.Points)]);
        var table = new ScoreTable(most, [.. rows]);
        var reliability = Reliability.Of(table);
        return new(table.Students, ItemStatistics.Of(table), reliability) { WhyNone = reliability is null ? WhyNot(table) : null };
    }

    private static NoReliability WhyNot(ScoreTable table) =>
        table.Students < 2 ? NoReliability.TooFewStudents
        : table.Items < 2 ? NoReliability.OnePart
        : NoReliability.NobodyDiffers;

    /// <summary>True if all answers of a student were graded.</summary>
    internal static bool IsWhole(StudentGrade student) =>
        student.Status == GradeStatus.Graded && !student.Answers.Any(answer => answer.IsUndecided);
}
