using System.Globalization;
using ClassKit.Content.Diagnostics;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Rounds;
using ClassKit.Desk.Serving;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Practising;

namespace ClassKit.Desk.Again;

/// <summary>What to teach again, and practice aimed at what each student missed.</summary>
internal static class AgainScreen
{
    /// <summary>Nobody practises longer in one piece.</summary>
    private const int MostMinutes = 600;

    private const string Page = "rounds/{class}/{round}/again";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit => visit.InRound((known, state) => Show(visit, known, state, [])));
        routes.TakeInside(Page + "/round", visit => visit.InRound((known, state) => AsRound(visit, known, state)));
        routes.TakeInside(Page + "/practice", visit => visit.InRound((known, state) => Practice(visit, known, state)));
    }

    private static Task Show(Visit visit, ClassEntry known, RoundState state, IReadOnlyList<Diagnostic> problems) =>
        visit.Show<AgainPage>(
            (nameof(AgainPage.Class), known),
            (nameof(AgainPage.Round), state),
            (nameof(AgainPage.Followed), state.IsFollowedUp ? FolderFiles.In(state.Round.FollowUp) : null),
            (nameof(AgainPage.After), visit.Folder.After(known, state.Round)),
            (nameof(AgainPage.Problems), problems),
            (nameof(AgainPage.Minutes), visit.Sent("minutes"))
        );

    /// <summary>Practice that followed is taken in, marked and taught again like any other once it is a round: its folder becomes one.</summary>
    private static Task AsRound(Visit visit, ClassEntry known, RoundState state)
    {
        if (!state.IsFollowedUp)
            return visit.Nothing();
        var round = visit.Folder.NewRound(known, state.Round.Follows);
        return RoundAside.Move(visit, state.Round.FollowUp, round.Dealt) is { } refused
            ? Show(visit, known, state, [refused])
            : visit.GoTo($"rounds/{known.Key}/{round.Name}");
    }

    private static string Making(RoundState state) => $"Make practice after {state.Dealt.LessonTitle}";

    private static string PageOf(Round round) => $"rounds/{round.Class}/{round.Name}/again";

    private static Task Practice(Visit visit, ClassEntry known, RoundState state)
    {
        var round = state.Round;
        // Practice that students may have is never replaced, and more of it has other numbers.
        var seed = state.Dealt.Seed + (ulong)visit.Folder.After(known, round).Count;
        if (
            !int.TryParse(visit.Typed("minutes"), NumberStyles.None, CultureInfo.InvariantCulture, out var minutes)
            || minutes is < 1 or > MostMinutes
        )
            return Show(
                visit,
                known,
                state,
                [
                    new(
                        "minutes",
                        null,
                        $"The minutes are `{visit.Typed("minutes")}`",
                        string.Create(CultureInfo.InvariantCulture, $"Type a whole number from 1 to {MostMinutes}.")
                    ),
                ]
            );
        // Whoever presses once more while it is made sees how far it is.
        if (visit.Desk.Jobs.Open.FirstOrDefault(job => job.Order.Title == Making(state) && job.Order.Next == PageOf(round)) is { } open)
            return visit.GoTo($"jobs/{open.Id}");
        var paths = new FollowUpPaths(round.Dealt, round.Graded, new([], minutes, seed))
        {
            Pool = LessonEntry.Bank.Path,
            Into = round.FollowUp,
        };
        var target = new OutputTarget(round.FollowUp, MakeFollowUp.Kind, round.Dealt, round.Graded);
        return visit.Begin(
            new(Making(state), PageOf(round), "What to teach again", run =>
                JobEnd.Of(
                    OutputFolder.Write(
                        target,
                        () => Produced.Of(paths.Read(), request => MakeFollowUp.Run(request, run), FollowUpPaths.Write),
                        run
                    )
                )
            )
        );
    }
}
