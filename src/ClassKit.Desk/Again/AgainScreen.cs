using System.Globalization;
using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;
using ClassKit.Desk.Serving;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;
using ClassKit.UseCases.Practising;

namespace ClassKit.Desk.Again;

/// <summary>What to teach again, and practice aimed at what each student missed.</summary>
internal static class AgainScreen
{
    private const string Page = "rounds/{class}/{round}/again";

    public static void AddTo(DeskRoutes routes)
    {
        routes.LookInside(Page, visit =>
            visit.InRound(
                (known, state) =>
                    visit.Show<AgainPage>(
                        (nameof(AgainPage.Class), known),
                        (nameof(AgainPage.Round), state),
                        (nameof(AgainPage.Followed), state.IsFollowedUp ? FolderFiles.In(state.Round.FollowUp) : null)
                    )
            )
        );
        routes.TakeInside(Page + "/practice", visit => visit.InRound((_, state) => Practice(visit, state)));
    }

    private static Task Practice(Visit visit, RoundState state)
    {
        var round = state.Round;
        var minutes =
            int.TryParse(visit.Typed("minutes"), NumberStyles.None, CultureInfo.InvariantCulture, out var typed) && typed is > 0 and <= 600
                ? typed
                : MakeFollowUp.DefaultMinutes;
        var paths = new FollowUpPaths(round.Dealt, round.Graded, new([], minutes, state.Dealt.Seed))
        {
            Pool = LessonEntry.Bank.Path,
            Into = round.FollowUp,
        };
        var target = new OutputTarget(round.FollowUp, MakeFollowUp.Kind, round.Dealt, round.Graded);
        return visit.Begin(
            new($"Make practice after {state.Dealt.LessonTitle}", $"rounds/{round.Class}/{round.Name}/again", "What to teach again", run =>
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
