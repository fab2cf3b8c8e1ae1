using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rosters;
using ClassKit.Content.Sources;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Marks;
using ClassKit.Desk.Rounds;
using ClassKit.Desk.Safety;
using ClassKit.Desk.Serving;
using ClassKit.Grading.Results;
using ClassKit.UseCases.Touring;

namespace ClassKit.Desk.Returns;

/// <summary>What came back: handed in, judged, and from whom nothing has come.</summary>
internal static class ReturnsScreen
{
    private const string Page = "rounds/{class}/{round}/returns";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit => visit.InRound((known, state) => Show(visit, known, state, [])));
        routes.Receive(Page, (visit, files) => visit.InRound((known, state) => Take(visit, known, state, files)));
        routes.TakeInside(Page + "/away", visit => visit.InRound((known, state) => KeepAway(visit, known, state)));
        routes.TakeInside(Page + "/judge", visit => visit.InRound((_, state) => visit.Begin(RoundGrading.Judge(state))));
        routes.TakeInside(Page + "/invented", visit => visit.InRound(
                (_, state) =>
                {
                    if (HasInvented(visit, state))
                        TakeInvented(state.Round);
                    return visit.Begin(RoundGrading.Judge(state));
                }
            ));
    }

    /// <summary>Shows what came back, with what is wrong.</summary>
    public static Task Show(Visit visit, ClassEntry known, RoundState state, IReadOnlyList<Diagnostic> problems) =>
        visit.Show<ReturnsPage>(
            (nameof(ReturnsPage.Class), known),
            (nameof(ReturnsPage.Round), RoundAway.In(visit, known, state)),
            (nameof(ReturnsPage.Roster), known.Roster is { } list ? RosterReader.Read(list).Model : null),
            (nameof(ReturnsPage.Away), RoundAway.Of(visit.Folder, known, state.Round)),
            (
                nameof(ReturnsPage.Files),
                // What programs leave beside workbooks nobody has handed in.
                state.Grades?.Files.Count(file => file.Fate != FileFate.Leftover) ?? FolderFiles.In(state.Round.Returned).Count
            ),
            (nameof(ReturnsPage.HasInvented), HasInvented(visit, state)),
            (nameof(ReturnsPage.Problems), problems)
        );

    private static Task KeepAway(Visit visit, ClassEntry known, RoundState state)
    {
        if (RoundAway.Of(visit.Folder, known, state.Round) is not { } away)
            return visit.Nothing();
        var problems = away.Keep(visit.Typed("stamp"), student => visit.Sent(TypedWork.WordField(student, 1)));
        return problems.Count > 0 ? Show(visit, known, state, problems) : visit.GoTo($"rounds/{known.Key}/{state.Round.Name}/returns#who");
    }

    private static async Task Take(Visit visit, ClassEntry known, RoundState state, SentFiles files) =>
        await HandedInPage.After(
            visit,
            await HandIn.TakeAsync(state.Round.Folder, state.Round.Returned, files, visit.Context.RequestAborted),
            () => visit.Begin(SentHome.TakeIn(visit.Folder, known, state))
        );

    private static bool HasInvented(Visit visit, RoundState state) =>
        visit.Folder.IsLookRound
        && state.Dealt.Seed == DemoMaterial.Seed
        && state.Dealt.Lesson == Path.GetFileName(DemoMaterial.Shipped.Lesson);

    /// <summary>The work of the invented class, as if it had been handed in.</summary>
    private static void TakeInvented(Round round)
    {
        Directory.CreateDirectory(round.Returned);
        foreach (var name in PathTree.Instance.Files(DemoMaterial.Shipped.Returned))
        {
            var to = Path.Combine(round.Returned, name);
            if (File.Exists(to))
                continue;
            using var shipped = PathTree.Instance.Open(Path.Combine(DemoMaterial.Shipped.Returned, name));
            using var file = File.Create(to);
            shipped.CopyTo(file);
        }
    }
}
