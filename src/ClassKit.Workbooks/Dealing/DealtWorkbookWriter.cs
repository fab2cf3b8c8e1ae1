using System.Collections.Concurrent;
using ClassKit.Exercises.Dealing;
using ClassKit.Exercises.Layout;
using ClassKit.Workbooks.Packages;
using ClosedXML.Excel;

namespace ClassKit.Workbooks.Dealing;

/// <summary>Makes the practice workbooks of one class: a sheet to start from, then a sheet for every exercise.</summary>
/// <remarks>
/// The workbooks of a class differ in a few texts and numbers only. One is laid out cell by cell and serves as a template for all; nothing
/// is kept of a student once the workbook is written.
/// </remarks>
public sealed class DealtWorkbookWriter
{
    private readonly DealtClass _dealt;
    private readonly PracticeLayout _layout;
    private readonly ConcurrentDictionary<string, Lazy<WorkbookTemplate>> _templates = [];

    /// <summary>Makes ready for a class.</summary>
    public DealtWorkbookWriter(DealtClass dealt)
    {
        ArgumentNullException.ThrowIfNull(dealt);
        _dealt = dealt;
        _layout = dealt.LayOut();
    }

    /// <summary>A student's workbook as the bytes of an .xlsx file; the same for the same arguments, always and everywhere.</summary>
    /// <param name="student">One of the class's students.</param>
    public byte[] Write(DealtStudent student)
    {
        ArgumentNullException.ThrowIfNull(student);
        var layout = _layout.Of(student);
        return WorkbookTemplate.Suits(layout, student) ? TemplateOf(layout).Fill(student) : LayOut(layout, student);
    }

    /// <summary>One workbook of a class; for many, make one writer.</summary>
    public static byte[] Write(DealtClass dealt, DealtStudent student) => new DealtWorkbookWriter(dealt).Write(student);

    /// <summary>The workbook laid out cell by cell.</summary>
    internal byte[] LayOut(DealtStudent student) => LayOut(_layout.Of(student), student);

    private byte[] LayOut(PracticeLayout layout, DealtStudent student)
    {
        using var workbook = new XLWorkbook();
        workbook.Properties.Title = $"Practice workbook: {_dealt.LessonTitle} – {student.Who.Shown}";
        StartSheet.Write(workbook, _dealt, student, layout);
        foreach (var sheet in layout.Exercises.GroupBy(exercise => exercise.Sheet))
            ExerciseSheet.Write(workbook, _dealt, student, layout, [.. sheet]);

        workbook.Worksheet(layout.Start.Sheet).SetTabActive().SetTabSelected();
        return workbook.ToBytesWithValues();
    }

    /// <summary>One template for all students who have the same exercises.</summary>
    private WorkbookTemplate TemplateOf(PracticeLayout layout) =>
        _templates
            .GetOrAdd(string.Join(' ', layout.Exercises.Select(exercise => exercise.Exercise.Id)), _ =>
                new(() => WorkbookTemplate.Of(layout, LayOut(layout, StandIn.For(layout))))
            )
            .Value;
}
