using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Serving;
using ClassKit.Pages;
using ClassKit.UseCases.Rehearsing;

namespace ClassKit.Desk.HandOut;

/// <summary>What an invented class shows of a set that was drawn, before the real one has it. Nothing of it is written.</summary>
internal static class RehearsalScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.TakeInside("rounds/{class}/rehearse", visit =>
            visit.InClass(known =>
                HandOutScreen.TriedOf(visit, known) is { } tried ? Rehearse(visit, known, tried) : visit.GoTo($"rounds/{known.Key}/new")
            )
        );
        routes.LookInside("rounds/{class}/rehearsed", visit =>
            visit.InClass(known =>
                RehearsalOf(visit, known) is { } made ? visit.ShowSheet(HtmlPages.Rehearsal(made.Report)) : visit.Nothing()
            )
        );
    }

    /// <summary>The rehearsal of the set that is drawn now; null if it was not rehearsed.</summary>
    public static RehearsalMade? RehearsalOf(Visit visit, ClassEntry known) =>
        HandOutScreen.TriedOf(visit, known) is { } tried ? visit.Desk.Kept.Begun<RehearsalMade>(NameOf(known), StampOf(tried)) : null;

    /// <summary>As many invented students as the class has, so that what is said of time and outcomes is of its size.</summary>
    private static Task Rehearse(Visit visit, ClassEntry known, TriedSet tried)
    {
        var (kept, students) = (visit.Desk.Kept, Math.Clamp(tried.Made.Dealt.Students.Count, 2, RehearseLesson.MostStudents));
        return visit.Begin(
            new(
                $"Rehearse {tried.Made.Dealt.LessonTitle} with an invented class",
                $"rounds/{known.Key}/tried",
                "See what a student gets",
                run =>
                {
                    var request = new RehearsalPaths(tried.Lesson.Path, students, tried.Paths.Wish).Read();
                    if (!request.Succeeded)
                        return JobEnd.Nothing(request.Problems);
                    var made = RehearseLesson.Run(request.Model, run);
                    if (!made.Succeeded)
                        return JobEnd.Nothing(made.Problems);
                    kept.Begin(NameOf(known), StampOf(tried), made.Model);
                    return JobEnd.Well;
                }
            )
            {
                GoesOn = true,
            }
        );
    }

    private static string NameOf(ClassEntry known) => $"rehearsed {known.File}";

    /// <summary>Another draw is rehearsed anew.</summary>
    private static string StampOf(TriedSet tried) => tried.Made.Dealt.Identity?.Digest ?? "";
}
