using ClassKit.Content.Rosters;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Serving;

namespace ClassKit.Desk.Rounds;

/// <summary>A round as it was handed out: who gets which file; and the files of all its stages.</summary>
internal static class RoundScreen
{
    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside("rounds/{class}/{round}", visit => visit.InRound((known, state) => visit.Show<RoundPage>((nameof(RoundPage.Class), known), (nameof(RoundPage.Round), state), (nameof(RoundPage.Roster), known.Roster is { } list ? RosterReader.Read(list).Model : null))));
        routes.LookInside("rounds/{class}/{round}/dealt/{**file}", visit => visit.InRound((_, state) => FolderFiles.Answer(visit, state.Round.Dealt, visit.Step("file"))));
        routes.LookInside("rounds/{class}/{round}/graded/{**file}", visit => visit.InRound((_, state) => FolderFiles.Answer(visit, state.Round.Graded, visit.Step("file"))));
        routes.LookInside("rounds/{class}/{round}/follow-up/{**file}", visit => visit.InRound((_, state) => FolderFiles.Answer(visit, state.Round.FollowUp, visit.Step("file"))));
        routes.LookInside("rounds/{class}/{round}/zip/workbooks", visit => visit.InRound((_, state) => Workbooks(visit, state, state.Round.Dealt)));
        routes.LookInside("rounds/{class}/{round}/zip/follow-up", visit => visit.InRound((_, state) => Workbooks(visit, state, state.Round.FollowUp)));
    }

    /// <summary>What students get and nothing else: their workbooks.</summary>
    private static Task Workbooks(Visit visit, RoundState state, string folder) => ZipAnswer.Of(
        visit, $"{state.Round.Name}.zip", FolderFiles.In(folder).Where(path => path.StartsWith("workbooks/", StringComparison.Ordinal)).Select(path => (path["workbooks/".Length..], (Func<byte[]>)(() => File.ReadAllBytes(Path.Combine(folder, path))))));
}
