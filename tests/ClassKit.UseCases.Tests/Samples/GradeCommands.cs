using ClassKit.Exercises.Dealing;
using ClassKit.Grading.Results;
using ClassKit.Grading.Summaries;
using ClassKit.UseCases.Grading;
using ClassKit.UseCases.Output;
using ClassKit.UseCases.Running;

namespace ClassKit.UseCases.Tests.Samples;

/// <summary>Grading from folders to files, as a front does it.</summary>
internal static class GradeCommands
{
    public static Produced Grade(GradePaths paths) =>
        Produced.Of(paths.Read(), request => paths.Write(GradeClass.Run(request, Run.Unwatched)));

    public static Produced Grade(DealtClass dealt, string returned)
    {
        var paths = new GradePaths("dealt", returned);
        return Produced.Of(paths.Read(dealt), request => paths.Write(GradeClass.Run(request, Run.Unwatched)));
    }

    public static Produced Regrade(GradePaths paths)
    {
        var regrading = new RegradePaths(paths);
        return Produced.Of(regrading.Read(), request => regrading.Write(RegradeClass.Run(request, Run.Unwatched)));
    }

    /// <summary>What grading made, without its request.</summary>
    public static GradeResult ResultOf(ClassGrades grades) => new(grades, ClassSummarizer.Summarize(grades), SettledDeadline.None);
}
