using ClassKit.Desk.Folders;
using ClassKit.Desk.Jobs;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Output.Writing;

namespace ClassKit.Desk.Rounds;

/// <summary>Judging what came back of a round: the use cases of the command line, on the round's folders.</summary>
internal static class RoundGrading
{
    /// <summary>Judges all of it, like before where it was judged before.</summary>
    /// <param name="state">The round.</param>
    /// <param name="page">The page of the round to go on with.</param>
    public static JobOrder Judge(RoundState state, string page = "returns") =>
        Order(
            state,
            page,
            page == "returns" ? "What came back" : "What is left to decide",
            $"Mark what came back of {state.Dealt.LessonTitle}",
            (paths, run) => Produced.Of(paths.Read(), request => paths.Write(GradeClass.Run(request, run)))
        );

    /// <summary>Judges again under the instructor's decisions, and says who changes.</summary>
    /// <param name="state">The round.</param>
    /// <param name="takesOver">True to let points typed into the gradebook count.</param>
    public static JobOrder Again(RoundState state, bool takesOver) =>
        Order(state, "decisions", "What is left to decide", $"Put it on record: {state.Dealt.LessonTitle}", (paths, run) =>
        {
            var again = new RegradePaths(paths with { TakeOver = takesOver });
            return Produced.Of(again.Read(), request => again.Write(RegradeClass.Run(request, run)));
        });

    private static JobOrder Order(
        RoundState state,
        string page,
        string title,
        string what,
        Func<GradePaths, UseCases.Running.Run, Produced> make
    )
    {
        var round = state.Round;
        var target = new OutputTarget(round.Graded, GradeClass.Kind, round.Dealt, round.Returned, round.Paper);
        return new(what, $"rounds/{round.Class}/{round.Name}/{page}", title, run =>
        {
            Directory.CreateDirectory(round.Returned);
            var paths = new GradePaths(round.Dealt, WhatCameBack(round))
            {
                Graded = round.Graded,
                Paper = File.Exists(round.Paper) ? round.Paper : null,
            };
            return JobEnd.Of(OutputFolder.Write(target, () => make(paths, run), run));
        });
    }

    private static string WhatCameBack(Round round) => ZipAlone(round) ?? round.Returned;

    /// <summary>
    /// A zip alone holds what the whole class handed in, and its files are named without it; among other files it would be one student's.
    /// Null where none lies there alone.
    /// </summary>
    public static string? ZipAlone(Round round) =>
        Directory.Exists(round.Returned)
        && Directory.GetFileSystemEntries(round.Returned) is [var only]
        && only.EndsWith(".zip", StringComparison.OrdinalIgnoreCase)
        && File.Exists(only)
            ? only
            : null;
}
