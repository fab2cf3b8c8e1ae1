using ClassKit.Exercises;
using ClosedXML.Excel;

namespace ClassKit.Workbooks;

/// <summary>Makes the practice workbooks of one class: a sheet to start from, then a sheet for every exercise.</summary>
/// <remarks>
/// The workbooks of a class differ in a few texts and numbers only. One is laid out cell by cell and serves as a template for all; nothing is
/// kept of a student once the workbook is written.
/// </remarks>
public sealed class DealtWorkbookWriter
{
    private readonly DealtClass _dealt;
    private readonly PracticeLayout _layout;
    private readonly Lazy<WorkbookTemplate> _template;

    /// <summary>Makes ready for a class.</summary>
    public DealtWorkbookWriter(DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        _dealt = dealt;
        _layout = PracticeLayout.For(dealt.Exercises);
        _template = new(() => WorkbookTemplate.Of(_layout, LayOut(StandIn.For(_layout))));
    }

    /// <summary>A student's workbook as the bytes of an .xlsx file; the same for the same arguments, always and everywhere.</summary>
    /// <param name="student">One of the class's students, dealt on the places that <see cref="PracticeLayout"/> gives.</param>
    /// <exception cref="ArgumentException">The student was dealt on other places.</exception>
    public byte[] Write(DealtStudent student)
    {
        ArgumentNullException.ThrowIfNull(student);
        RequireSamePlaces(student);
        return WorkbookTemplate.Suits(_layout, student) ? _template.Value.Fill(student) : LayOut(student);
    }

    /// <summary>One workbook of a class; for many, make one writer.</summary>
    public static byte[] Write(DealtClass dealt, DealtStudent student) => new DealtWorkbookWriter(dealt).Write(student);

    /// <summary>The workbook laid out cell by cell.</summary>
    internal byte[] LayOut(DealtStudent student)
    {
        using var workbook = new XLWorkbook();
        workbook.Properties.Title = $"Practice workbook: {_dealt.LessonTitle} – {student.Student.Name}";
        StartSheet.Write(workbook, _dealt, student, _layout);
        foreach (var exercise in _layout.Exercises)
            ExerciseSheet.Write(workbook, _dealt, student, exercise);

        workbook.Worksheet(PracticeLayout.StartSheet).SetTabActive().SetTabSelected();
        return workbook.ToBytes();
    }

    private void RequireSamePlaces(DealtStudent student)
    {
        var places = _layout.Exercises
            .SelectMany(exercise => exercise.Givens.Select(given => (given.DefinedName, given.Address))
                .Concat(exercise.Answers.Select(answer => (answer.DefinedName, answer.Address))))
            .ToHashSet();
        var dealt = student.Givens.Select(given => (given.DefinedName, given.Address))
            .Concat(student.Answers.Select(answer => (answer.DefinedName, answer.Address)));
        if (!places.SetEquals(dealt))
            throw new ArgumentException($"The places dealt to '{student.Student.Id}' are not those of the practice layout.", nameof(student));
    }
}
