using ClassKit.Content.Diagnostics;
using ClassKit.Grading.Results;
using ClassKit.Notes;
using ClassKit.Records.Classes;
using ClassKit.Records.Deals;
using ClassKit.Records.Gradings;
using ClassKit.UseCases.Dealing;
using ClassKit.UseCases.Erasing;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>Puts the grades of a class on record, with its students and what was dealt to them.</summary>
public static class EnterGrades
{
    /// <summary>What the change is called.</summary>
    public const string Kind = "enter";

    /// <summary>The grades that lie in a folder, with what was dealt.</summary>
    /// <param name="graded">The folder that grading made.</param>
    /// <param name="dealtFolder">The folder that dealing made.</param>
    public static Reading<ClassGrades> Read(string graded, string dealtFolder)
    {
        var dealt = DealtFolder.Read(dealtFolder);
        return dealt.Succeeded ? GradedFolder.Read(graded, dealt.Model) : new(null, dealt.Problems);
    }

    /// <summary>Puts them on record.</summary>
    /// <returns>What is on record now, or why nothing was written.</returns>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<EnteredGrades> Run(EnterGradesRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var dealt = request.Grades.Dealt;
        var called = request.Class ?? dealt.Cohort;
        if (dealt.Identity is not { } identity)
            return Problem(dealt.LessonTitle, "It was dealt before deals had identities", "Deal and grade again with this program.");
        if (called.Length == 0)
            return Problem(dealt.LessonTitle, "Nobody has said what the class is called", "Name the class.");

        run.Begin(RunStep.Recording, 1).Next();
        return RecordTroubles.Told(() =>
            request.Record.Write(request.Author.Of(Kind, $"{called}: {dealt.LessonTitle}, deal {identity.Code}"), session =>
            {
                var erased = StillErased.Among(session, request.Grades.Students.Select(student => student.Who.Id));
                var grades = GradesWithout.Of(request.Grades, erased);
                var deal = DealParts.Of(grades.Dealt);
                var named = ClassRegister.Put(session, called);
                var others = ClassRegister.Enrol(
                    session,
                    named,
                    [.. grades.Students.Select(student => student.Who)],
                    request.Author.Today,
                    comeBack: false
                );
                if (others.Count > 0)
                {
                    session.Abandon();
                    return new Reading<EnteredGrades>(null, [.. others.Select(Of)]);
                }
                DealRegister.Put(session, named, deal);
                // Grades may be by another marking scheme than the deal has on record.
                var number = GradingRegister.Put(session, GradesParts.Of(grades, DealRegister.Read(session, deal.Digest)!));
                if (number is null)
                    session.Abandon();
                return new(new(called, identity.Code, grades.Students.Count, number) { StillErased = erased.Count }, []);
            })
        );
    }

    /// <summary>What the instructor is told.</summary>
    public static Produced Write(EnteredGrades entered)
    {
        ArgumentNullException.ThrowIfNull(entered);
        return new(
            [],
            [
                entered.Number is { } number
                    ? new Note.Entered(entered.Class, entered.Students, entered.Deal, number)
                    : new Note.EnteredBefore(entered.Deal),
                .. StillErased.Notes(entered.StillErased),
            ],
            []
        );
    }

    private static Reading<EnteredGrades> Problem(string file, string found, string expected) =>
        new(null, [new(file, null, found, expected)]);

    internal static Diagnostic Of(OtherOfThatId other) =>
        new(
            other.Student.Id,
            null,
            $"{other.Student.Name} has the id of {other.OnRecord.Name}, who is on record in another class",
            "Give one of them another id on the roster: an id is one person's throughout the record."
        );
}
