using ClassKit.Content.Diagnostics;
using ClassKit.Records.Arrangements;
using ClassKit.Records.Changes;
using ClassKit.Records.Classes;
using ClassKit.Records.Deals;
using ClassKit.Records.Grades;
using ClassKit.Records.Gradings;
using ClassKit.Records.Marks;
using ClassKit.Records.Storage;
using ClassKit.UseCases.Erasing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>Shows all that the record holds of one student.</summary>
public static class ShowStudent
{
    /// <summary>The kind of folder that its files go into.</summary>
    public const string Kind = OwnOutput.OfOneStudent;

    /// <summary>What is on record.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<StudentFile> Run(ShowStudentRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        return RecordTroubles.Told(() =>
            request.Record.Read(session =>
                ClassRegister.FindStudent(session, request.Student) is { } student
                    ? new Reading<StudentFile>(
                        new(
                            student,
                            ClassRegister.OfStudent(session, student.Id),
                            [
                                .. run.Each(RunStep.Tabulating, DealRegister.OfStudent(session, student.Id))
                                    .Select(deal => Work(session, deal, student.Id)),
                            ],
                            GradesForPages.OfStudent(session, student.Id),
                            ChangeLog.OfStudent(session, student.Id)
                        )
                        {
                            Arrangements = ArrangementRegister.OfStudent(session, student.Id),
                            Marks = TypedMarks.OfStudent(session, student.Id),
                            Bench = BenchRegister.OfStudent(session, student.Id),
                            GivenOut = FrozenGrades.OfStudent(session, student.Id),
                        },
                        []
                    )
                    : new(
                        null,
                        [new(request.Student, null, "The record knows nobody of that id", "Name a student by the id on the roster.")]
                    )
            )
        );
    }

    /// <summary>The tables of what is on record.</summary>
    public static Produced Write(StudentFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return new([.. StudentTables.Of(file)], [], []) { Open = [StudentTables.Summary] };
    }

    private static StudentWork Work(RecordSession session, string deal, string student)
    {
        var grades = RecordedGrades.Of(session, deal);
        var dealt = grades?.Dealt ?? DealParts.Model(DealRegister.Read(session, deal)!);
        return new(dealt, grades?.Students.FirstOrDefault(grade => grade.Who.Id == student))
        {
            Dealt = dealt.Students.FirstOrDefault(seat => seat.Who.Id == student),
            Files = [.. grades?.Files.Where(file => file.Student?.Id == student) ?? []],
            Typed = [.. grades?.Waiting.Concat(grades.TakenOver).Where(typed => typed.Student.Id == student) ?? []],
        };
    }
}
