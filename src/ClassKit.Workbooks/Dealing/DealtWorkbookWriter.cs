using ClassKit.Exercises;
using ClosedXML.Excel;

namespace ClassKit.Workbooks;

/// <summary>Makes the practice workbook that a student gets: a sheet to start from, then a sheet for every exercise.</summary>
public static class DealtWorkbookWriter
{
    /// <summary>The workbook as the bytes of an .xlsx file; the same for the same arguments, always and everywhere.</summary>
    /// <param name="dealt">The class's deal.</param>
    /// <param name="student">One of its students, dealt on the places that <see cref="PracticeLayout"/> gives.</param>
    /// <exception cref="ArgumentException">The student was dealt on other places.</exception>
    public static byte[] Write(DealtClass dealt, DealtStudent student)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        ArgumentNullException.ThrowIfNull(student);
        var layout = PracticeLayout.For(dealt.Exercises);
        RequireSamePlaces(layout, student);

        using var workbook = new XLWorkbook();
        workbook.Properties.Title = $"Practice workbook: {dealt.LessonTitle} – {student.Student.Name}";
        StartSheet.Write(workbook, dealt, student, layout);
        foreach (var exercise in layout.Exercises)
            ExerciseSheet.Write(workbook, dealt, student, exercise);

        workbook.Worksheet(PracticeLayout.StartSheet).SetTabActive().SetTabSelected();
        return workbook.ToBytes();
    }

    private static void RequireSamePlaces(PracticeLayout layout, DealtStudent student)
    {
        var places = layout.Exercises
            .SelectMany(exercise => exercise.Givens.Select(given => (given.DefinedName, given.Address))
                .Concat(exercise.Answers.Select(answer => (answer.DefinedName, answer.Address))))
            .ToHashSet();
        var dealt = student.Givens.Select(given => (given.DefinedName, given.Address))
            .Concat(student.Answers.Select(answer => (answer.DefinedName, answer.Address)));
        if (!places.SetEquals(dealt))
            throw new ArgumentException($"The places dealt to '{student.Student.Id}' are not those of the practice layout.", nameof(student));
    }
}
