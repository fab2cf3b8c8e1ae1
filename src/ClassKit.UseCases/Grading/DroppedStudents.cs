using ClassKit.Content.Diagnostics;
using ClassKit.Grading.Results;

namespace ClassKit.UseCases.Grading;

/// <summary>
/// Those who were graded and would not be any more, because nothing of theirs is among what is graded now: who grades the late ones alone
/// into the same folder would lose everybody else's grades.
/// </summary>
internal static class DroppedStudents
{
    /// <summary>Why grades must not replace those on record, with everybody's name; null where nobody loses a grade.</summary>
    /// <param name="onRecord">The grades on record; null if there are none.</param>
    /// <param name="now">The new ones.</param>
    /// <param name="folder">The folder of grades.</param>
    public static Diagnostic? Objection(ClassGrades? onRecord, ClassGrades now, string folder)
    {
        if (onRecord is null)
            return null;

        // A correction alone makes points of no work, so that it is the status that tells.
        var without = now.Students.Where(student => student.Status == GradeStatus.Missing).Select(student => student.Who.Id).ToHashSet();
        List<string> dropped =
        [
            .. onRecord
                .Students.Where(student => student.Status == GradeStatus.Graded && without.Contains(student.Who.Id))
                .Select(student => $"{student.Who.Name} ({student.Who.Id})"),
        ];
        return dropped.Count == 0
            ? null
            : new(
                folder,
                null,
                $"Grades on record there would be lost, since nothing of theirs is among what is graded now: {string.Join(", ", dropped)}. Nothing was written",
                "Name all that came back together, in one folder and with the workbook of answers on paper, or grade this batch into a folder of its own."
            )
            {
                Remedy = Remedy.DropGraded,
            };
    }
}
