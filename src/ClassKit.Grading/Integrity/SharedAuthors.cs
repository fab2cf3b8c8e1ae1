using ClassKit.Exercises.Cohorts;
using ClassKit.Grading.Findings;
using ClassKit.Grading.Intake;
using ClassKit.Grading.Results;

namespace ClassKit.Grading.Integrity;

/// <summary>Workbooks of different students that name the same person as having saved them last.</summary>
/// <remarks>
/// Where much of the class shares a name, it is that of a machine or a school account, and says nothing of anybody. Who it is stays in the
/// file: the fact is that it is the same.
/// </remarks>
internal static class SharedAuthors
{
    /// <summary>The greatest share of the class that is remarkable; common practice, no source.</summary>
    private const double Remarkable = 0.25;

    public static IEnumerable<(Student Student, Flag Flag)> In(ClassGrades grades, IReadOnlyList<JudgedFile> files)
    {
        var counts = grades.Files.Where(file => file.Fate == FileFate.Graded).Select(file => file.File).ToHashSet(StringComparer.Ordinal);
        var counting = files.Where(file => file is { Student: not null, SavedBy.Length: > 0 } && counts.Contains(file.Path)).ToList();
        foreach (var shared in counting.GroupBy(file => file.SavedBy!, StringComparer.OrdinalIgnoreCase))
        {
            var students = shared.Select(file => file.Student!.Who).DistinctBy(student => student.Id).ToList();
            if (students.Count < 2 || students.Count > Math.Max(2, Remarkable * counting.Count))
                continue;
            foreach (var student in students)
                yield return (student, new Flag.SharedAuthor([.. students.Where(other => other != student)]));
        }
    }
}
