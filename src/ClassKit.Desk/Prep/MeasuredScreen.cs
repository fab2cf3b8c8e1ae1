using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Returns;
using ClassKit.Desk.Safety;
using ClassKit.Desk.Serving;
using ClassKit.Lessons.Measured;
using ClassKit.UseCases.Observing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Recording;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Prep;

/// <summary>What the teams of a class measured of a lesson's breads: brought back, and drawn on what was predicted.</summary>
internal static class MeasuredScreen
{
    private const string Page = "lessons/{class}/{lesson}/measured";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit => visit.InLesson((known, lesson) => Show(visit, known, lesson, [])));
        routes.TakeInside(Page + "/team/{team}", visit => visit.InLesson((known, lesson) => Type(visit, known, lesson)));
        routes.TakeInside(Page + "/record", visit => visit.InLesson((known, lesson) => PutOnRecord(visit, known, lesson)));
        routes.LookInside(Page + "/form", visit => visit.InLesson((known, lesson) => Form(visit, known, lesson, MadeFiles.Answer)));
        routes.LookInside(Page + "/form/keep", visit =>
            visit.InLesson(
                (known, lesson) =>
                    Form(visit, known, lesson, (to, files, name) => MadeFiles.Keep(to, files.First(file => file.Path == name)))
            )
        );
        routes.LookInside(Page + "/drawn/{**file}", visit =>
            visit.InLesson((known, lesson) => FolderFiles.Answer(visit, visit.Folder.MeasuredOf(known, lesson).Drawn, visit.Step("file")))
        );
        routes.Receive(Page, (visit, files) => visit.InLesson((known, lesson) => Take(visit, known, lesson, files)));
        routes.TakeInside(Page + "/draw", visit => visit.InLesson((known, lesson) => visit.Begin(Draw(visit, known, lesson))));
    }

    private static Task Show(Visit visit, ClassEntry known, LessonEntry lesson, IReadOnlyList<Diagnostic> problems)
    {
        var place = visit.Folder.MeasuredOf(known, lesson);
        var form = FormOf(known, lesson);
        var team =
            form.Model is { } sheet
            && int.TryParse(visit.Step("team") ?? visit.Typed("team"), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            && number >= 1
            && number <= sheet.Teams
                ? new TypedTeam(place, sheet, number)
                : null;
        return visit.Show<MeasuredPage>(
            (nameof(MeasuredPage.Class), known),
            (nameof(MeasuredPage.Lesson), lesson),
            (nameof(MeasuredPage.Files), FolderFiles.In(place.Returned).Count),
            (nameof(MeasuredPage.IsDrawn), Directory.Exists(place.Drawn)),
            (nameof(MeasuredPage.Problems), (IReadOnlyList<Diagnostic>)[.. problems, .. form.Problems]),
            (nameof(MeasuredPage.Teams), form.Model?.TeamNames ?? []),
            (nameof(MeasuredPage.Team), team),
            (nameof(MeasuredPage.Again), (Func<string, string?>)visit.Sent)
        );
    }

    /// <summary>Keeps what was typed of one team and draws all of it anew.</summary>
    private static Task Type(Visit visit, ClassEntry known, LessonEntry lesson)
    {
        if (
            !int.TryParse(visit.Step("team"), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || number < 1
            || FormOf(known, lesson) is not { Succeeded: true, Model: var form }
            || number > form.Teams
        )
            return visit.Nothing();
        var problems = new TypedTeam(visit.Folder.MeasuredOf(known, lesson), form, number).Keep(visit.Typed);
        return problems.Count > 0 ? Show(visit, known, lesson, problems) : visit.Begin(Draw(visit, known, lesson) with { GoesOn = true });
    }

    /// <summary>What was measured, under the lesson and the day on which it was given.</summary>
    private static Task PutOnRecord(Visit visit, ClassEntry known, LessonEntry lesson)
    {
        var day = DateOnly.TryParseExact(visit.Typed("day"), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var typed)
            ? typed
            : (DateOnly?)null;
        if (day is null && visit.Typed("day").Length > 0)
            return Show(
                visit,
                known,
                lesson,
                [new("day", null, $"The day is `{visit.Typed("day")}`", "Type it as 2026-11-25, or nothing for the last day on record.")]
            );
        var (folder, author, returned) = (visit.Folder.Root, visit.Author(""), visit.Folder.MeasuredOf(known, lesson).Returned);
        return visit.Begin(
            new($"Put on record what {known.Name} measured", PageOf(known, lesson), "What we measured", run =>
                JobEnd.Of(
                    Produced.Of(
                        DrawObservations.Read(lesson.Path, known.File, returned),
                        request => DrawObservations.Run(request, run),
                        observed =>
                            Produced.Within(RecordPlace.Open(folder, author.Now, mayBegin: true), record =>
                                Produced.Of(EnterObservations.Run(new(record, author, observed, day), run), EnterObservations.Write)
                            )
                    )
                )
            )
        );
    }

    private static Reading<ObservationForm> FormOf(ClassEntry known, LessonEntry lesson)
    {
        var request = MakeObservationForm.Read(lesson.Path, known.File);
        return request.Succeeded ? MakeObservationForm.Run(request.Model, Run.Unwatched) : new(null, request.Problems);
    }

    private static string PageOf(ClassEntry known, LessonEntry lesson) => $"lessons/{known.Key}/{lesson.Key}/measured";

    private static Task Form(Visit visit, ClassEntry known, LessonEntry lesson, Func<Visit, IReadOnlyList<OutputFile>, string, Task> answer)
    {
        var made = Produced.Of(FormOf(known, lesson), MakeObservationForm.Write);
        return made is { Succeeded: true, Files: [var only] } ? answer(visit, made.Files, only.Path) : visit.Nothing();
    }

    private static async Task Take(Visit visit, ClassEntry known, LessonEntry lesson, SentFiles files)
    {
        var place = visit.Folder.MeasuredOf(known, lesson);
        await HandedInPage.After(visit, await HandIn.TakeAsync(place.Folder, place.Returned, files, visit.Context.RequestAborted), () =>
            visit.Begin(Draw(visit, known, lesson))
        );
    }

    private static JobOrder Draw(Visit visit, ClassEntry known, LessonEntry lesson)
    {
        var place = visit.Folder.MeasuredOf(known, lesson);
        var target = new OutputTarget(place.Drawn, DrawObservations.Kind, [.. LessonInputs.Of(lesson.Path), known.File, place.Returned]);
        return new($"Draw what {known.Name} measured", PageOf(known, lesson), "What we measured", run =>
            JobEnd.Of(
                OutputFolder.Write(
                    target,
                    () =>
                        Produced.Of(
                            DrawObservations.Read(lesson.Path, known.File, place.Returned),
                            request => DrawObservations.Run(request, run),
                            DrawObservations.Write
                        ),
                    run
                )
            )
        );
    }
}
