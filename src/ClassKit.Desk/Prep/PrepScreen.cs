using ClassKit.Content.Diagnostics;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Serving;
using ClassKit.Pages.Packs;
using ClassKit.UseCases.Checking;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Packs;

namespace ClassKit.Desk.Prep;

/// <summary>Lessons to prepare for a class: choose, read, look over, print.</summary>
internal static class PrepScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside("lessons/{class}", visit => visit.InClass(known => Choose(visit, known, [])));
        routes.TakeInside("lessons/{class}/begin", visit => visit.InClass(known =>
                NewLesson.Begin(visit) is { Succeeded: false } refused ? Choose(visit, known, refused.Problems)
                : visit.Folder.Lessons().FirstOrDefault(lesson => lesson.Title == visit.Typed("name")) is { } begun
                    ? visit.GoTo(PageOf(known, begun))
                : visit.GoTo($"lessons/{known.Key}")
            ));
        routes.LookInside("lessons/{class}/{lesson}", visit =>
            visit.InLesson(
                (known, lesson) =>
                    PreparedOf(visit, known, lesson) is { } pack
                        ? visit.Show<TrayPage>(
                            (nameof(TrayPage.Class), known),
                            (nameof(TrayPage.Lesson), lesson),
                            (nameof(TrayPage.Prepared), pack),
                            (nameof(TrayPage.Shown), visit.Typed("page")),
                            (nameof(TrayPage.Ticked), visit.All("file")),
                            (nameof(TrayPage.ByName), RoundPrint.Of(visit, known)),
                            (nameof(TrayPage.IsNothing), visit.Ticked("nothing")),
                            (nameof(TrayPage.Texts), TextsOf(visit, lesson))
                        )
                        : Prepare(visit, known, lesson)
            )
        );
        routes.LookInside("lessons/{class}/{lesson}/page/{file}", visit =>
            visit.InLesson(
                (known, lesson) =>
                    PreparedOf(visit, known, lesson) is { } pack ? File(visit, pack, visit.Step("file")) : Prepare(visit, known, lesson)
            )
        );
        routes.TakeInside("lessons/{class}/{lesson}/tray", visit =>
            visit.InLesson(
                (known, lesson) =>
                    PreparedOf(visit, known, lesson) is { } pack
                        ? Tray(visit, known, lesson, pack)
                        : Prepare(visit, known, lesson, $"{PageOf(known, lesson)}?{PrintScreen.Query(visit.All("file"))}")
            )
        );
        routes.TakeInside("lessons/{class}/{lesson}/keep", visit => visit.InLesson((known, lesson) => Keep(visit, known, lesson)));
        routes.LookInside("lessons/{class}/{lesson}/kept/{**file}", visit =>
            visit.InLesson((known, lesson) => FolderFiles.Answer(visit, visit.Folder.PackOf(known, lesson), visit.Step("file")))
        );
        routes.TakeInside("lessons/{class}/{lesson}/own", visit =>
            visit.InLesson((known, lesson) => lesson.IsShipped ? MakeOwn(visit, lesson) : visit.GoTo(PageOf(known, lesson)))
        );
        routes.TakeInside("lessons/{class}/{lesson}/check", visit =>
            visit.InLesson((known, lesson) => visit.Begin(new($"Look over {lesson.Title}", PageOf(known, lesson), lesson.Title, run =>
                        {
                            var proof = CheckContent.Run(new(Library.OfPaths(), [lesson.Path, known.File]), run);
                            return new(
                                [
                                    .. proof.Doubts.Concat(proof.Notes).Select(doubt => doubt.ToString()),
                                    .. proof.Problems.Count == 0 ? ["Nothing stands in the way."] : (IEnumerable<string>)[],
                                ],
                                proof.Problems
                            );
                        })))
        );
    }

    /// <summary>The lesson first, then its formulas and exercises, each by its heading.</summary>
    private static IReadOnlyList<(string Key, string Title)> TextsOf(Visit visit, LessonEntry lesson) =>
        lesson.IsShipped
            ? []
            :
            [
                .. visit
                    .Folder.Texts()
                    .Where(text =>
                        text.Path.StartsWith(lesson.Path + Path.DirectorySeparatorChar, StringComparison.Ordinal)
                        && text.Path.EndsWith(".md", StringComparison.Ordinal)
                    )
                    .OrderBy(text => Path.GetDirectoryName(text.Path)!.Length)
                    .ThenBy(text => text.Shown, StringComparer.Ordinal)
                    .Select(text => (text.Key, Heading(text.Path) is { Length: > 0 } heading ? heading : Path.GetFileName(text.Shown))),
            ];

    private static string? Heading(string path)
    {
        using var text = new StreamReader(path);
        return TextHeading.Of(text);
    }

    private static Task Choose(Visit visit, ClassEntry known, IReadOnlyList<Diagnostic> problems)
    {
        var lessons = visit.Folder.Lessons();
        return visit.Show<LessonsPage>(
            (nameof(LessonsPage.Class), known),
            (nameof(LessonsPage.Problems), problems),
            (nameof(LessonsPage.Typed), (Func<string, string?>)visit.Sent),
            (nameof(LessonsPage.Lessons), lessons),
            (nameof(LessonsPage.Cards), LessonCard.Of(visit, lessons)),
            (nameof(LessonsPage.Allergies), LessonAllergies.Of(visit, known, lessons))
        );
    }

    /// <summary>The pack as it was computed, if nothing that it was computed from has changed.</summary>
    public static PreparedLesson? PreparedOf(Visit visit, ClassEntry known, LessonEntry lesson) =>
        visit.Desk.Kept.Get<PreparedLesson>(NameOf(known, lesson), visit.Folder.Stamp());

    /// <summary>
    /// Computes the pack, and goes on with what was to be looked at: where the class was changed meanwhile nobody loses the page that is
    /// open.
    /// </summary>
    /// <param name="visit">The request.</param>
    /// <param name="known">The class.</param>
    /// <param name="lesson">The lesson.</param>
    /// <param name="next">The page to go on with; null for the one that was asked for.</param>
    public static Task Prepare(Visit visit, ClassEntry known, LessonEntry lesson, string? next = null)
    {
        var (kept, stamp) = (visit.Desk.Kept, visit.Folder.Stamp());
        return visit.Begin(new($"Prepare {lesson.Title} for {known.Name}", next ?? visit.Place.Here, lesson.Title, run =>
            {
                var request = BuildPack.Read(lesson.Path, known.File);
                if (!request.Succeeded)
                    return JobEnd.Nothing(request.Problems);
                var pack = BuildPack.Run(request.Model, run);
                if (!pack.Succeeded)
                    return JobEnd.Nothing(pack.Problems);
                kept.Put(NameOf(known, lesson), stamp, PreparedLesson.Of(pack.Model));
                kept.Begin(HandOut.HandOutScreen.PreparedName(known), "", lesson);
                return JobEnd.Well;
            }) { GoesOn = true });
    }

    private static Task File(Visit visit, PreparedLesson pack, string? asked)
    {
        if (pack.Files.FirstOrDefault(one => one.Entry.FileName == asked) is not { } file)
            return visit.Nothing();
        return file.IsPage ? visit.ShowSheet(file.Html) : visit.Download(file.Entry.FileName, "application/octet-stream", file.Content);
    }

    private static Task Tray(Visit visit, ClassEntry known, LessonEntry lesson, PreparedLesson pack)
    {
        var ticked = visit.All("file");
        var chosen = pack.Files.Where(file => ticked.Contains(file.Entry.FileName)).ToList();
        var byName = RoundPrint.Of(visit, known).Where(print => ticked.Contains(print.Name)).ToList();
        var page = visit.Place.Here[..^"/tray".Length];

        // Another page is looked at: what was ticked stays ticked.
        if (visit.Typed("page") is { Length: > 0 } shown)
            return visit.GoTo(
                $"{page}?page={Uri.EscapeDataString(shown)}&{PrintScreen.Query([.. chosen.Select(file => file.Entry.FileName), .. byName.Select(print => print.Name)])}"
            );
        if (chosen.Count + byName.Count == 0)
            return visit.GoTo(page + "?nothing=yes");
        if (visit.Typed("as") == PrintScreen.Asked)
            return PrintScreen.Begin(visit, [.. chosen.Select(file => file.Entry.FileName), .. byName.Select(print => print.Name)]);
        return ZipAnswer.Of(
            visit,
            $"{lesson.Key}.zip",
            [
                .. chosen.Select(file => (file.Entry.FileName, (Func<byte[]>)(() => file.Content))),
                .. byName.Select(print =>
                    (print.Name.Replace('/', ' '), (Func<byte[]>)(() => System.Text.Encoding.UTF8.GetBytes(print.Html)))
                ),
            ]
        );
    }

    private static Task Keep(Visit visit, ClassEntry known, LessonEntry lesson)
    {
        var target = new OutputTarget(visit.Folder.PackOf(known, lesson), BuildPack.Kind, [.. LessonInputs.Of(lesson.Path), known.File]);
        return visit.Begin(
            new($"Keep {lesson.Title} in the folder", PageOf(known, lesson), lesson.Title, run =>
                JobEnd.Of(
                    OutputFolder.Write(
                        target,
                        () => Produced.Of(BuildPack.Read(lesson.Path, known.File), request => BuildPack.Run(request, run), PackFiles.Write),
                        run
                    )
                )
            )
            {
                Made = ($"{PageOf(known, lesson)}/kept/{PackContents.Index.FileName}", "Open what was kept", target.Folder),
            }
        );
    }

    private static Task MakeOwn(Visit visit, LessonEntry lesson)
    {
        var folder = visit.Folder;
        return visit.Begin(
            new($"Put {lesson.Title} among your lessons", $"lessons/{visit.Step("class")}", "Your lessons", _ =>
                JobEnd.Nothing(OwnLesson.Make(folder, lesson))
            )
        );
    }

    private static string PageOf(ClassEntry known, LessonEntry lesson) => $"lessons/{known.Key}/{lesson.Key}";

    private static string NameOf(ClassEntry known, LessonEntry lesson) => $"pack {known.Key} {lesson.Key}";
}
