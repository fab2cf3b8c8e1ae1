using ClassKit.Content.Diagnostics;
using ClassKit.Content.Lessons;
using ClassKit.Notes;
using ClassKit.Records.Classes;
using ClassKit.Records.Observations;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Recording;

/// <summary>Puts on record that a class was given a lesson, so that what it measures has a place.</summary>
public static class EnterLesson
{
    /// <summary>Puts it on record.</summary>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static Reading<LessonGiven> Run(EnterLessonRequest request, Run run)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(run);
        var lesson = LessonReader.Read(request.Lesson);
        if (!lesson.Succeeded)
            return new(null, lesson.Problems);
        run.Begin(RunStep.Recording, 1).Next();
        return RecordTroubles.Told(() =>
            request.Record.Write(
                request.Author.Of(EnterGrades.Kind, $"{request.Class}: {lesson.Model.Title}"),
                session => new Reading<LessonGiven>(
                    LessonRegister.Put(
                        session,
                        ClassRegister.Put(session, request.Class),
                        lesson.Model.Id,
                        lesson.Model.Title,
                        request.Day ?? request.Author.Today
                    ),
                    []
                )
            )
        );
    }

    /// <summary>What the instructor is told.</summary>
    public static Produced Write(LessonGiven given)
    {
        ArgumentNullException.ThrowIfNull(given);
        return new([], [new Note.LessonEntered(given.Class.Name, given.Title, given.Day)], []);
    }
}
