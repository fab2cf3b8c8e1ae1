using ClassKit.Desk.Folders;
using ClassKit.Desk.Frame;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Returns;
using ClassKit.Desk.Safety;
using ClassKit.Desk.Serving;
using ClassKit.UseCases.Observing;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Running;

namespace ClassKit.Desk.Prep;

/// <summary>What the teams of a class measured of a lesson's breads: brought back, and drawn on what was predicted.</summary>
internal static class MeasuredScreen
{
    private const string Page = "lessons/{class}/{lesson}/measured";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit => visit.InLesson((known, lesson) => visit.Show<MeasuredPage>(
            (nameof(MeasuredPage.Class), known), (nameof(MeasuredPage.Lesson), lesson), (nameof(MeasuredPage.Files), FolderFiles.In(visit.Folder.MeasuredOf(known, lesson).Returned).Count), (nameof(MeasuredPage.IsDrawn), Directory.Exists(visit.Folder.MeasuredOf(known, lesson).Drawn)))));
        routes.LookInside(Page + "/form", visit => visit.InLesson((known, lesson) => Form(visit, known, lesson, MadeFiles.Answer)));
        routes.LookInside(Page + "/form/keep", visit => visit.InLesson((known, lesson) => Form(visit, known, lesson, (to, files, name) => MadeFiles.Keep(to, files.First(file => file.Path == name)))));
        routes.LookInside(Page + "/drawn/{**file}", visit => visit.InLesson((known, lesson) => FolderFiles.Answer(visit, visit.Folder.MeasuredOf(known, lesson).Drawn, visit.Step("file"))));
        routes.Receive(Page, (visit, files) => visit.InLesson((known, lesson) => Take(visit, known, lesson, files)));
        routes.TakeInside(Page + "/draw", visit => visit.InLesson((known, lesson) => visit.Begin(Draw(visit, known, lesson))));
    }

    private static Task Form(Visit visit, ClassEntry known, LessonEntry lesson, Func<Visit, IReadOnlyList<OutputFile>, string, Task> answer)
    {
        var made = Produced.Of(MakeObservationForm.Read(lesson.Path, known.File), request => MakeObservationForm.Run(request, Run.Unwatched), MakeObservationForm.Write);
        return made is { Succeeded: true, Files: [var only] } ? answer(visit, made.Files, only.Path) : visit.Nothing();
    }

    private static async Task Take(Visit visit, ClassEntry known, LessonEntry lesson, SentFiles files)
    {
        var place = visit.Folder.MeasuredOf(known, lesson);
        if (await HandIn.TakeAsync(place.Folder, place.Returned, files, visit.Context.RequestAborted) is not null) await visit.Begin(Draw(visit, known, lesson));
        else await visit.Show<WordPage>((nameof(WordPage.Title), "Not all of it came through"), (nameof(WordPage.Words), "What came whole is kept, and nothing else. Bring the rest back again."));
    }

    private static JobOrder Draw(Visit visit, ClassEntry known, LessonEntry lesson)
    {
        var place = visit.Folder.MeasuredOf(known, lesson);
        var target = new OutputTarget(place.Drawn, DrawObservations.Kind, [.. LessonInputs.Of(lesson.Path), known.File, place.Returned]);
        return new($"Draw what {known.Name} measured", $"lessons/{known.Key}/{lesson.Key}/measured", "What we measured", run => JobEnd.Of(OutputFolder.Write(
            target, () => Produced.Of(DrawObservations.Read(lesson.Path, known.File, place.Returned), request => DrawObservations.Run(request, run), DrawObservations.Write), run)));
    }
}
