using ClassKit.Content.Diagnostics;
using ClassKit.Content.Rosters;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Frame;
using ClassKit.Desk.Serving;

namespace ClassKit.Desk.Rounds;

/// <summary>A round as it was handed out: who gets which file; and the files of all its stages.</summary>
internal static class RoundScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside("rounds/{class}/{round}", visit =>
            visit.InRound(
                (known, state) =>
                    visit.Show<RoundPage>(
                        (nameof(RoundPage.Class), known),
                        (nameof(RoundPage.Round), state),
                        (nameof(RoundPage.Roster), known.Roster is { } list ? RosterReader.Read(list).Model : null)
                    )
            )
        );
        routes.LookInside("rounds/{class}/{round}/aside", visit => visit.InRound((known, state) => Aside(visit, known, state, [])));
        routes.TakeInside("rounds/{class}/{round}/aside", visit =>
            visit.InRound(
                (known, state) =>
                    RoundAside.Take(visit, known, state.Round) is { } refused
                        ? Aside(visit, known, state, [refused])
                        : visit.GoTo("?away=" + known.Key)
            )
        );
        routes.TakeInside("rounds/{class}/back", visit =>
            visit.InClass(known =>
                RoundAside.Return(visit, known, visit.Typed("round")) is { } refused
                    ? visit.Show<WordPage>(
                        (nameof(WordPage.Title), "The round was not put back"),
                        (nameof(WordPage.Words), $"{refused.Found}. {refused.Expected}")
                    )
                    : visit.GoTo($"rounds/{known.Key}/{visit.Typed("round")}")
            )
        );
        routes.LookInside("rounds/{class}/{round}/dealt/{**file}", visit =>
            visit.InRound((_, state) => FolderFiles.Answer(visit, state.Round.Dealt, visit.Step("file")))
        );
        routes.LookInside("rounds/{class}/{round}/graded/{**file}", visit =>
            visit.InRound((_, state) => FolderFiles.Answer(visit, state.Round.Graded, visit.Step("file")))
        );
        routes.LookInside("rounds/{class}/{round}/follow-up/{**file}", visit =>
            visit.InRound((_, state) => FolderFiles.Answer(visit, state.Round.FollowUp, visit.Step("file")))
        );
        routes.LookInside("rounds/{class}/{round}/zip/workbooks", visit =>
            visit.InRound((_, state) => Workbooks(visit, state, state.Round.Dealt))
        );
        routes.LookInside("rounds/{class}/{round}/zip/follow-up", visit =>
            visit.InRound((_, state) => Workbooks(visit, state, state.Round.FollowUp))
        );
    }

    private static Task Aside(Visit visit, ClassEntry known, RoundState state, IReadOnlyList<Diagnostic> problems) =>
        visit.Show<AsidePage>(
            (nameof(AsidePage.Class), known),
            (nameof(AsidePage.Round), state),
            (nameof(AsidePage.Problems), problems),
            (nameof(AsidePage.Terms), RoundAside.CountedIn(visit.Folder, known, state.Round)),
            (nameof(AsidePage.Files), FolderFiles.In(state.Round.Returned).Count),
            (
                nameof(AsidePage.Where),
                Path.GetRelativePath(visit.Folder.Root, visit.Folder.AsideOf(known, state.Round.Name)).Replace('\\', '/')
            )
        );

    /// <summary>What students get and nothing else: their workbooks.</summary>
    private static Task Workbooks(Visit visit, RoundState state, string folder) =>
        ZipAnswer.Of(
            visit,
            $"{state.Round.Name}.zip",
            FolderFiles
                .In(folder)
                .Where(path => path.StartsWith("workbooks/", StringComparison.Ordinal))
                .Select(path => (path["workbooks/".Length..], (Func<byte[]>)(() => File.ReadAllBytes(Path.Combine(folder, path)))))
        );
}
